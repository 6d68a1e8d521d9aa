/**
 * What fish are kept within, by species and by group, each with where the limits come from.
 */

import { fao } from '../citations';
import { AMMONIA_PER_NITROGEN, atomicMass, molarMass } from './atomic-mass';

/** kg of NO2 per kg of N, and of NO3 per kg of N. */
export const NITRITE_PER_NITROGEN = molarMass.nitrite / atomicMass.nitrogen;
export const NITRATE_PER_NITROGEN = molarMass.nitrate / atomicMass.nitrogen;

/** Limits in SI: °C, pH, kg N/m3 for ammonia, nitrite and nitrate, kg/m3 for oxygen. */
export interface FishLimits {
  readonly temperature: readonly [low: number, high: number];
  readonly ph: readonly [low: number, high: number];
  /** Most total ammonia nitrogen, and most of it un-ionized. */
  readonly ammonia: number;
  readonly unionized: number;
  readonly nitrite: number;
  readonly nitrate: number;
  /** Least dissolved oxygen. */
  readonly oxygen: number;
  readonly source: string;
}

/** Where the limits by group come from, and for every fish those of pH and nitrate. */
export const groupSource = `${fao}, table 3.1`;
const bySpecies = `${fao}, table 7.1, from memory`;

/** Un-ionized ammonia as N: 0.05 mg/L in general, 0.025 mg/L as NH3 for trout and their kin. */
const UNIONISED = 5e-5;
const UNIONISED_COLD = 2.5e-5 / AMMONIA_PER_NITROGEN;
export const unionizedSource = {
  general: 'UF/IFAS FA16: above 0.05 mg/L harms',
  cold: 'EIFAC Technical Paper 11 (1970): 0.025 mg/L as NH3, from memory',
} as const;

interface Stated {
  readonly temperature: readonly [number, number];
  readonly ammonia: number;
  readonly nitrite: number;
  readonly oxygen: number;
  readonly cold?: true;
}

/**
 * Figures as published, in mg/L: ammonia as N, nitrite and nitrate taken as the ion, which is the stricter reading where the
 * source does not say. The pH range and the nitrate limit are the table's own for all fish.
 */
function limits({ temperature, ammonia, nitrite, oxygen, cold }: Stated, source: string): FishLimits {
  return {
    temperature,
    ph: [6, 8.5],
    ammonia: ammonia * 1e-3,
    unionized: cold ? UNIONISED_COLD : UNIONISED,
    nitrite: (nitrite * 1e-3) / NITRITE_PER_NITROGEN,
    nitrate: 0.4 / NITRATE_PER_NITROGEN,
    oxygen: oxygen * 1e-3,
    source,
  };
}

const table = {
  'warm-water': limits({ temperature: [22, 32], ammonia: 3, nitrite: 1, oxygen: 4 }, groupSource),
  'cool-water': limits(
    { temperature: [15, 25], ammonia: 1, nitrite: 0.5, oxygen: 5 },
    'between the warm-water and cold-water limits of FAO 589; common practice, no source',
  ),
  'cold-water': limits({ temperature: [10, 18], ammonia: 1, nitrite: 0.1, oxygen: 6, cold: true }, groupSource),
  tilapia: limits({ temperature: [14, 36], ammonia: 2, nitrite: 1, oxygen: 4 }, bySpecies),
  'common carp': limits({ temperature: [4, 34], ammonia: 1, nitrite: 1, oxygen: 4 }, bySpecies),
  'channel catfish': limits({ temperature: [5, 34], ammonia: 1, nitrite: 1, oxygen: 3 }, bySpecies),
  'rainbow trout': limits({ temperature: [10, 18], ammonia: 0.5, nitrite: 0.3, oxygen: 6, cold: true }, bySpecies),
  barramundi: limits({ temperature: [18, 34], ammonia: 1, nitrite: 1, oxygen: 4 }, bySpecies),
  'flathead mullet': limits({ temperature: [8, 32], ammonia: 1, nitrite: 1, oxygen: 4 }, bySpecies),
} as const satisfies Record<string, FishLimits>;

export type FishKind = keyof typeof table;

/** Species and groups that have limits, groups first. */
export const fishKinds = Object.keys(table) as readonly FishKind[];

/** Limits of a species or group. */
export function fishLimits(kind: FishKind): FishLimits {
  return table[kind];
}

/** Whether the un-ionized limit is the stricter one of trout and their kin. */
export function isColdWater(kind: FishKind): boolean {
  return fishLimits(kind).unionized === UNIONISED_COLD;
}
