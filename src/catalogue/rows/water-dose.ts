import { Refusal } from '../../formulas/refusal';
import { alkalis, dissolvesSlowly, waterDose } from '../../formulas/water/alkali';
import { safeWaterDose, type WaterBefore, waterAfter, waterSteps } from '../../formulas/water/alkali-dose';
import { define } from '../define';
import { ammoniaAsNitrogen } from '../readers';
import { ph, temperature } from '../water-arguments';

export const weights = 'Standard atomic weights, IUPAC (2021)';
export const care = 'Local advice for your fish comes first; use a test kit that you trust.';
export const caustic =
  'Caustic alkalis burn skin and eyes and can kill fish at once: wear goggles, dissolve the alkali first, add it slowly and test pH as you go.';

export const purity = {
  kind: 'share',
  above: 0,
  default: 'alkali purity',
  meaning: 'share of pure alkali in the product you buy',
} as const;
export const alkali = { choice: alkalis, meaning: 'alkali by its chemical name' } as const;

const volume = { kind: 'volume', above: 0, meaning: 'water' } as const;
const alkalinity = { kind: 'alkalinity', atLeast: 0, meaning: 'alkalinity now, as CaCO3' } as const;
const chemistry = [
  'Plummer and Busenberg, Geochimica et Cosmochimica Acta 46:1011 (1982)',
  'Stumm and Morgan, Aquatic Chemistry',
  weights,
];
const limits =
  'For fresh water whose alkalinity is carbonate, if nothing precipitates: hard water that turns cloudy has lost alkalinity. Carbonates of calcium and magnesium dissolve over days, so they have no pH at once.';

/** Alkalis that are safe without knowing the pH: they cannot raise water above pH 9. */
const mild = new Set<string>(['sodium bicarbonate', 'potassium bicarbonate']);

/** The water before the dose, undefined if nothing was given; a caustic alkali needs all three readings. */
function waterBefore(given: {
  readonly alkali: (typeof alkalis)[number];
  readonly alkalinity: number | undefined;
  readonly ph: number | undefined;
  readonly temperature: number | undefined;
}): WaterBefore | undefined {
  const { alkalinity: now, ph: acidity, temperature: warmth } = given;
  if (now !== undefined && acidity !== undefined && warmth !== undefined) {
    return { alkalinity: now, ph: acidity, temperature: warmth };
  }
  const none = now === undefined && acidity === undefined && warmth === undefined;
  if (none && (mild.has(given.alkali) || dissolvesSlowly(given.alkali))) return undefined;
  const missing = now === undefined ? 'alkalinity' : acidity === undefined ? 'ph' : 'temperature';
  throw new Refusal(
    missing,
    none
      ? `${given.alkali} can raise the pH far enough to kill; give alkalinity, pH and temperature, so that the dose can be checked`
      : 'give alkalinity, pH and temperature together, or none of them',
  );
}

export const waterDoseRows = [
  define({
    name: 'WATER.DOSE',
    summary: 'Alkali that raises the alkalinity of a volume; refused if the pH would exceed 9 at once.',
    arguments: {
      volume: { kind: 'volume', atLeast: 0, meaning: 'water' },
      rise: { kind: 'alkalinity', atLeast: 0, meaning: 'rise in alkalinity, as CaCO3' },
      alkali,
      purity,
      alkalinity: { ...alkalinity, optional: true },
      ph: { ...ph, optional: true, meaning: 'pH now' },
      temperature: { ...temperature, optional: true },
    },
    result: { scalar: 'portion' },
    compute: (given) => {
      const before = waterBefore(given);
      const { volume: water, rise, alkali: chemical, purity: share } = given;
      return before === undefined
        ? waterDose(water, rise, chemical, share)
        : safeWaterDose(water, rise, chemical, share, before);
    },
    formula: 'alkali = volume × rise / (strength as CaCO3 × purity)',
    notes: [
      'Hydroxides and soluble carbonates need alkalinity, pH and temperature. If these are given, a dose of any alkali that would exceed pH 9 at once is refused, and the message gives the largest safe dose.',
      'Raise alkalinity over several days: see WATER.STEPS. A jump in pH makes ammonia un-ionized.',
      caustic,
    ],
    sources: [weights],
    example: { formula: '=SILT.WATER.DOSE("metric",1000,50,"sodium bicarbonate")', gives: '83.9' },
  }),
  define({
    name: 'WATER.AFTER',
    summary: 'Alkalinity, pH and un-ionized ammonia after a dose of alkali: at once and after airing.',
    arguments: {
      volume,
      alkalinity,
      ph: { ...ph, meaning: 'pH now' },
      temperature,
      alkali,
      amount: { kind: 'portion', atLeast: 0, meaning: 'alkali added' },
      purity,
      ammonia: { ...ammoniaAsNitrogen, optional: true, meaning: 'total ammonia nitrogen' },
    },
    result: {
      row: {
        alkalinity: { kind: 'alkalinity', heading: 'alkalinity after' },
        atOnce: { kind: 'number', heading: 'pH at once', blank: true },
        aired: { kind: 'number', heading: 'pH after airing' },
        unionized: { kind: 'concentration', heading: 'un-ionized ammonia as N', blank: true },
      },
    },
    compute: ({ volume: water, alkali: chemical, amount, purity: share, ammonia, ...before }) =>
      // A 0 may be an empty cell; without ammonia the result is the same either way.
      waterAfter(water, before, chemical, amount, share, ammonia === 0 ? undefined : ammonia),
    formula:
      'carbonate equilibrium with the alkalinity and carbon that the alkali adds; after airing, carbon dioxide is as before',
    notes: [
      limits,
      'Compared with a general-purpose geochemistry program, which also counts salts, pH at once is within 0.1 with sodium alkalis and up to 0.2 too high with calcium hydroxide; pH after airing is within 0.02.',
      'Un-ionized ammonia is calculated at the higher of the two pH values.',
      caustic,
      care,
    ],
    sources: chemistry,
    example: { formula: '=SILT.WATER.AFTER("metric",1000,50,6.8,25,"sodium bicarbonate",84)', gives: '100, 7.1, 7.1' },
  }),
  define({
    name: 'WATER.STEPS',
    summary: 'Alkali to add day by day until the target alkalinity, so that pH never jumps.',
    arguments: {
      volume,
      alkalinity,
      target: { kind: 'alkalinity', above: 0, meaning: 'target alkalinity, as CaCO3' },
      ph: { ...ph, meaning: 'pH now' },
      temperature,
      alkali,
      most: { kind: 'number', atLeast: 0.01, atMost: 1, default: 0.2, meaning: 'largest rise in pH allowed in a day' },
      purity,
    },
    result: {
      rows: {
        day: { kind: 'count' },
        amount: { kind: 'portion' },
        alkalinity: { kind: 'alkalinity' },
        atOnce: { kind: 'number', heading: 'pH at once', blank: true },
        aired: { kind: 'number', heading: 'pH after airing' },
      },
    },
    compute: ({ volume: water, target, alkali: chemical, most, purity: share, ...before }) =>
      waterSteps(water, before, target, chemical, most, share),
    formula: 'each day, the largest dose that raises pH by at most `most`, both at once and after airing',
    notes: [
      'The alkalinity that nitrification uses meanwhile is not counted: measure alkalinity and pH every day, and stop at the target.',
      limits,
      caustic,
      care,
    ],
    sources: chemistry,
    example: {
      formula: '=SILT.WATER.STEPS("metric",1000,50,100,6.8,25,"sodium carbonate",,,TRUE)',
      gives: 'one row per day',
    },
  }),
];
