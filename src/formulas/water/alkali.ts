/**
 * Alkalis that restore the alkalinity that nitrification uses, and how much of each.
 */
import { ALKALINITY_PER_NITROGEN, atomicMass, molarMass } from './atomic-mass';

const { hydrogen, carbon, oxygen, sodium, magnesium, potassium, calcium } = atomicMass;
const carbonate = carbon + 3 * oxygen;
const hydroxide = oxygen + hydrogen;

/** Molar mass, g/mol; the acid that a mole neutralizes and the inorganic carbon that it brings, mol. */
const table = {
  'sodium bicarbonate': [sodium + hydrogen + carbonate, 1, 1],
  'potassium bicarbonate': [potassium + hydrogen + carbonate, 1, 1],
  'sodium carbonate': [2 * sodium + carbonate, 2, 1],
  'potassium carbonate': [2 * potassium + carbonate, 2, 1],
  'calcium carbonate': [calcium + carbonate, 2, 1],
  'calcium magnesium carbonate': [calcium + magnesium + 2 * carbonate, 4, 2],
  'calcium hydroxide': [calcium + 2 * hydroxide, 2, 0],
  'magnesium hydroxide': [magnesium + 2 * hydroxide, 2, 0],
  'potassium hydroxide': [potassium + hydroxide, 1, 0],
  'sodium hydroxide': [sodium + hydroxide, 1, 0],
} as const satisfies Record<string, readonly [number, number, number]>;

export type Alkali = keyof typeof table;

/** Every alkali by its chemical name. */
export const alkalis = Object.keys(table) as readonly Alkali[];

/** Molar mass, g/mol, with the alkalinity (mol of charge) and the inorganic carbon (mol) that a mole brings. */
export function alkaliMole(alkali: Alkali): {
  readonly mass: number;
  readonly equivalents: number;
  readonly carbon: number;
} {
  const [mass, equivalents, carbon] = table[alkali];
  return { mass, equivalents, carbon };
}

/** Whether it dissolves so slowly that there is no pH at once: carbonates of calcium and magnesium. */
export function dissolvesSlowly(alkali: Alkali): boolean {
  return alkali === 'calcium carbonate' || alkali === 'calcium magnesium carbonate';
}

/**
 * Alkalinity that a pure alkali brings, kg as CaCO3 per kg: its equivalents over those of calcium carbonate.
 *
 * Carbonates of calcium and magnesium dissolve slowly and not above about pH 8, so much of a dose may lie on the bottom.
 * Source: standard atomic weights.
 */
export function alkaliStrength(alkali: Alkali): number {
  const { mass, equivalents } = alkaliMole(alkali);
  return (equivalents / mass) * (molarMass.calciumCarbonate / 2);
}

/**
 * Alkali to replace what nitrification uses, kg/s: ammonia nitrogen x 7.15 / (strength x purity).
 *
 * `ammoniaLoad` kg N/s; purity above 0 up to 1. Stoichiometry without cell growth (with growth 7.05, Ebeling, Timmons and Bisogni 2006).
 * What plants and denitrification give back is left out. Source: NH4+ + 2 O2 -> NO3- + 2 H+ + H2O.
 */
export function waterBuffer(ammoniaLoad: number, alkali: Alkali, purity: number): number {
  return (ammoniaLoad * ALKALINITY_PER_NITROGEN) / (alkaliStrength(alkali) * purity);
}

/**
 * Alkali that raises the alkalinity of a volume, kg: V rise / (strength x purity).
 *
 * V in m3, rise in kg/m3 as CaCO3, purity above 0 up to 1. Source: standard atomic weights.
 */
export function waterDose(volume: number, rise: number, alkali: Alkali, purity: number): number {
  return (volume * rise) / (alkaliStrength(alkali) * purity);
}
