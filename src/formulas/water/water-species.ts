/**
 * What fish are kept within, by species and by group, each with where the limits come from.
 */

import { fao } from '../citations';
import { AMMONIA_PER_NITROGEN, atomicMass, molarMass } from './atomic-mass';

/** kg of NO2 per kg of N, and of NO3 per kg of N. */
export const NITRITE_PER_NITROGEN = molarMass.nitrite / atomicMass.nitrogen;
export const NITRATE_PER_NITROGEN = molarMass.nitrate / atomicMass.nitrogen;

/** Limits in SI: °C, pH, kg N/m3 for ammonia, nitrite and nitrate, kg/m3 for oxygen and carbon dioxide. */
export interface FishLimits {
  /** Temperatures that the fish live through; none is published for a group. */
  readonly survives?: readonly [low: number, high: number];
  /** Temperatures to keep a group within, and at which a species grows best. */
  readonly growsBest: readonly [low: number, high: number];
  readonly ph: readonly [low: number, high: number];
  /** Most total ammonia nitrogen, and most of it un-ionized. */
  readonly ammonia: number;
  readonly unionized: number;
  readonly nitrite: number;
  readonly nitrate: number;
  readonly carbonDioxide: number;
  /** Least dissolved oxygen to keep, and the floor under which the fish are in danger. */
  readonly oxygen: number;
  readonly oxygenFloor: number;
  /** Where the temperatures are from, and where the other limits are. */
  readonly temperatureSource: string;
  /** Largest fish on record, kg: FishBase; carp, barramundi and mullet read, the others from memory; the largest of a group. */
  readonly largest: number;
  readonly source: string;
  readonly carbonDioxideSource: string;
  /** Which of the figures were read in their source, and which are from memory or practice. */
  readonly known: string;
}

/** Where the limits by group come from, and for every fish those of pH and nitrate. */
export const groupSource = `${fao}, table 3.1`;
const bySpecies = `${fao}, table 7.1, from memory`;
const between = 'between the warm-water and cold-water limits of FAO 589; common practice, no source';

/** Un-ionized ammonia as N: 0.05 mg/L in general, 0.025 mg/L as NH3 for trout and their kin. */
const UNIONIZED = 5e-5;
const UNIONIZED_COLD = 2.5e-5 / AMMONIA_PER_NITROGEN;
export const unionizedSource = {
  general: 'UF/IFAS FA16: above 0.05 mg/L harms',
  cold: 'EIFAC Technical Paper 11 (1970): 0.025 mg/L as NH3, from memory',
} as const;

type Range = readonly [number, number];

/** Figures in mg/L; the oxygen floor is 3 and the most carbon dioxide 20 unless the species has its own. */
interface Stated {
  /** kg. */
  readonly largest: number;
  readonly survives?: Range;
  readonly growsBest: Range;
  readonly ammonia: number;
  readonly nitrite: number;
  readonly oxygen: number;
  readonly oxygenFloor?: number;
  readonly carbonDioxide?: number;
  readonly carbonDioxideSource?: string;
  readonly cold?: true;
}

/**
 * Figures as published, in mg/L: ammonia as N, nitrite and nitrate taken as the ion, which is the stricter reading where the
 * source does not say. The pH range and the nitrate limit are those of FAO 589, table 3.1, for all fish. Carbon dioxide of
 * 20 mg/L is common practice for trout; salmonids are said not to bear 5 to 10 mmHg, some 13 to 26 mg/L (FAO AC183E).
 */
function limits(stated: Stated, temperatureSource: string, source: string, known: string): FishLimits {
  const { survives, growsBest, largest, ammonia, nitrite, oxygen, oxygenFloor = 3, carbonDioxide = 20, cold } = stated;
  const { carbonDioxideSource = 'common practice, no source' } = stated;
  return {
    ...(survives && { survives }),
    growsBest,
    largest,
    ph: [6, 8.5],
    ammonia: ammonia * 1e-3,
    unionized: cold ? UNIONIZED_COLD : UNIONIZED,
    nitrite: (nitrite * 1e-3) / NITRITE_PER_NITROGEN,
    nitrate: 0.4 / NITRATE_PER_NITROGEN,
    carbonDioxide: carbonDioxide * 1e-3,
    oxygen: oxygen * 1e-3,
    oxygenFloor: oxygenFloor * 1e-3,
    temperatureSource,
    source,
    carbonDioxideSource,
    known,
  };
}

const GROUP_KNOWN = 'read; oxygen floor and carbon dioxide common practice';
const NITROGEN_FROM_MEMORY = 'nitrogen and oxygen from memory';
const PRACTICE = 'oxygen floor and carbon dioxide common practice';

const table = {
  'warm-water': limits(
    { largest: 60, growsBest: [22, 32], ammonia: 3, nitrite: 1, oxygen: 4 },
    groupSource,
    groupSource,
    GROUP_KNOWN,
  ),
  'cool-water': limits(
    { largest: 40.1, growsBest: [15, 25], ammonia: 1, nitrite: 0.5, oxygen: 5, oxygenFloor: 4 },
    between,
    between,
    'common practice',
  ),
  'cold-water': limits(
    { largest: 25.4, growsBest: [10, 18], ammonia: 1, nitrite: 0.1, oxygen: 6, oxygenFloor: 5, cold: true },
    groupSource,
    groupSource,
    GROUP_KNOWN,
  ),
  tilapia: limits(
    {
      largest: 4.3,
      survives: [14, 36],
      growsBest: [27, 30],
      ammonia: 2,
      nitrite: 1,
      oxygen: 4,
      carbonDioxide: 50,
      carbonDioxideSource: 'aquaculture education council, tilapia manual: optimum under 50 mg/L',
    },
    `${fao}, section 7.4`,
    bySpecies,
    `temperatures and carbon dioxide read; ${NITROGEN_FROM_MEMORY}; oxygen floor common practice`,
  ),
  'common carp': limits(
    { largest: 40.1, survives: [3, 35], growsBest: [23, 30], ammonia: 1, nitrite: 1, oxygen: 4 },
    'NBFGR, common carp; FAO, cultured aquatic species, Cyprinus carpio',
    bySpecies,
    `temperatures read; ${NITROGEN_FROM_MEMORY}; ${PRACTICE}`,
  ),
  'channel catfish': limits(
    { largest: 26.3, survives: [5, 33.5], growsBest: [26, 29], ammonia: 1, nitrite: 1, oxygen: 3 },
    'US Fish and Wildlife Service, habitat suitability of channel catfish (1982)',
    bySpecies,
    `temperatures and oxygen floor read but for 5 °C; ${NITROGEN_FROM_MEMORY}; carbon dioxide common practice`,
  ),
  'rainbow trout': limits(
    {
      largest: 25.4,
      survives: [0, 25],
      growsBest: [13.1, 19],
      ammonia: 0.5,
      nitrite: 0.3,
      oxygen: 6,
      oxygenFloor: 5,
      cold: true,
    },
    'FishBase, Oncorhynchus mykiss; Nevada Division of Environmental Protection (2015), optimum of rainbow trout',
    bySpecies,
    `temperatures read; ${NITROGEN_FROM_MEMORY}; ${PRACTICE}`,
  ),
  barramundi: limits(
    { largest: 60, survives: [16, 35], growsBest: [27, 33], ammonia: 1, nitrite: 1, oxygen: 4 },
    'Schipp, Bosmans and Humphrey, Northern Territory Barramundi Farming Handbook (2007); Katersky and Carter (2007)',
    bySpecies,
    `temperatures read; ${NITROGEN_FROM_MEMORY}; ${PRACTICE}`,
  ),
  'flathead mullet': limits(
    { largest: 8, survives: [8, 32], growsBest: [20, 27], ammonia: 1, nitrite: 1, oxygen: 4 },
    bySpecies,
    bySpecies,
    `from memory; ${PRACTICE}`,
  ),
} as const satisfies Record<string, FishLimits>;

export type FishKind = keyof typeof table;

/** Species and groups that have limits, groups first. */
export const fishKinds = Object.keys(table) as readonly FishKind[];

/** Limits of a species or group. */
export function fishLimits(kind: FishKind): FishLimits {
  return table[kind];
}

/** Temperatures that the fish live through; where none is published, those that they are kept within. */
export function survivalRange(kind: FishKind): readonly [low: number, high: number] {
  const { survives, growsBest } = fishLimits(kind);
  return survives ?? growsBest;
}

/** Temperatures at which fish grow, °C, and the largest mass of one, kg. */
interface GrowthRange {
  readonly coolest: number;
  readonly warmest: number;
  readonly largest: number;
}

const everyKind = fishKinds.map(fishLimits);
const growthOfAny: GrowthRange = {
  coolest: 0,
  warmest: Math.max(...everyKind.map(({ growsBest }) => growsBest[1])),
  largest: Math.max(...everyKind.map(({ largest }) => largest)),
};

/** Where fish of any kind, or of one, can be said to grow. */
export function growthRange(kind?: FishKind): GrowthRange {
  if (kind === undefined) return growthOfAny;
  const { growsBest, largest } = fishLimits(kind);
  return { coolest: survivalRange(kind)[0], warmest: growsBest[1], largest };
}

/** Whether the un-ionized limit is the stricter one of trout and their kin. */
export function isColdWater(kind: FishKind): boolean {
  return fishLimits(kind).unionized === UNIONIZED_COLD;
}
