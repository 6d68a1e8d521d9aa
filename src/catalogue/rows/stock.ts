import { DAY } from '../../formulas/numeric/time';
import { stockFeed, stockGrow, stockSample } from '../../formulas/stock/stock';
import { stockFeedRate } from '../../formulas/stock/stock-feed-rate';
import { stockSchedule } from '../../formulas/stock/stock-schedule';
import { fishKinds } from '../../formulas/water/water-species';
import { define } from '../define';
import { stockSpeciesRow } from './stock-species';

const fishMass = { kind: 'fish', above: 0, meaning: 'mass of one fish' } as const;
const steadyTemperature = { kind: 'temperature', atLeast: 0, atMost: 40, meaning: 'steady water temperature' } as const;
const growthCoefficient = {
  kind: 'number',
  atLeast: 0,
  meaning: 'thermal-growth coefficient, per cent form, 0.13 to 0.20 for trout',
} as const;
const belowOptimum =
  'Growth is linear in temperature only below the optimum of the species. The result is #N/A above 33 °C';
const growthNotes = [
  `${belowOptimum}, or above the range in which the named species grows best, and for a fish larger than the largest on record (60 kg, or that of the species).`,
];
const scheduleNotes = [
  `${belowOptimum}, and for a fish larger than the largest on record (60 kg). The species is not asked for: try its temperature in STOCK.GROW first.`,
];
const formNotes = [
  'A coefficient above 0.5 is in the x 1000 form, ten times the per cent form; one from 0 to 0.01 is in the plain form, a hundredth of it. Both are refused.',
];
const growthSources = [
  'Iwama and Tautz, Canadian Journal of Fisheries and Aquatic Sciences 38:649 (1981)',
  'Jobling, Aquaculture Research 34:581 (2003)',
];

export const stockRows = [
  define({
    name: 'STOCK.FEED',
    summary: 'Feed a day for a number of fish.',
    arguments: {
      count: { kind: 'count', atLeast: 0, meaning: 'fish' },
      fishMass: { ...fishMass, atLeast: 0 },
      feedingRate: { kind: 'share', meaning: 'share of body mass a day', per: 'day' },
    },
    result: { scalar: 'daily' },
    compute: ({ count, fishMass: mass, feedingRate }) => stockFeed(count, mass, feedingRate),
    formula: 'feed = count × mass of one × feeding rate',
    sources: ['Definition of the feeding rate'],
    example: { formula: '=SILT.STOCK.FEED("metric",350,250,1.5%)', gives: '1.3125' },
  }),
  define({
    name: 'STOCK.FEEDRATE',
    summary: 'Feeding rate from a published chart; #N/A if no chart covers the fish or the water.',
    arguments: {
      species: { choice: fishKinds, meaning: 'rainbow trout or tilapia, which have a chart; #N/A for others' },
      fishMass,
      temperature: steadyTemperature,
    },
    result: { scalar: 'share' },
    compute: ({ species, fishMass: mass, temperature }) => stockFeedRate(species, mass, temperature),
    formula: 'the chart’s class for the mass of one fish, interpolated between its temperature rows',
    notes: ['Charts are starting points: feed what the fish eat up, and less when the water is poor.'],
    sources: [
      'Leitritz and Lewis, Trout and Salmon Culture, California Fish Bulletin 164 (1980)',
      'Rakocy, Tank Culture of Tilapia, SRAC Publication 282 (from memory)',
      'FAO, Aquaculture Feed and Fertilizer Resources Information System: channel catfish',
    ],
    example: { formula: '=SILT.STOCK.FEEDRATE("US","rainbow trout","0.5 lb",55)', gives: '0.01' },
  }),
  define({
    name: 'STOCK.GROW',
    summary: 'Mass of one fish after some days at a steady temperature.',
    arguments: {
      fishMass,
      days: { kind: 'days', atLeast: 0, atMost: 3650 * DAY, meaning: 'days of growth' },
      temperature: steadyTemperature,
      coefficient: growthCoefficient,
      species: { choice: fishKinds, optional: true, meaning: 'species, to check its temperatures and size' },
    },
    result: { scalar: 'fish' },
    compute: ({ fishMass: mass, days, temperature, coefficient, species }) =>
      stockGrow(mass, days, temperature, coefficient, species),
    formula: 'W₂ = (W₁^(1/3) + coefficient × °C × days / 100)³, W in g',
    notes: [...growthNotes, ...formNotes],
    sources: growthSources,
    example: { formula: '=SILT.STOCK.GROW("metric",100,60,14,0.16)', gives: '214.4' },
  }),
  define({
    name: 'STOCK.SCHEDULE',
    summary: 'A season step by step: mass of one fish, count, biomass and feed a day, until the target mass.',
    arguments: {
      count: { kind: 'count', above: 0, meaning: 'fish at the start' },
      fishMass,
      target: { kind: 'fish', above: 0, meaning: 'mass of one fish at harvest' },
      temperature: steadyTemperature,
      coefficient: growthCoefficient,
      conversion: { kind: 'number', above: 0, atMost: 20, meaning: 'feed per growth, by mass' },
      loss: {
        kind: 'share',
        below: 1,
        atLeast: 0,
        default: 0,
        per: 'month',
        meaning: 'share of the fish lost a month',
      },
      step: { kind: 'days', above: 0, default: 7 * DAY, meaning: 'days between rows' },
    },
    result: {
      rows: {
        day: { kind: 'days' },
        massOfOne: { kind: 'fish' },
        count: { kind: 'count' },
        biomass: { kind: 'mass' },
        feedADay: { kind: 'daily', heading: 'feed a day' },
      },
    },
    compute: (given) => stockSchedule(given),
    formula: 'mass as in STOCK.GROW; count × (1 - loss)^(days / month); feed = conversion × growth',
    notes: [
      ...scheduleNotes,
      ...formNotes,
      'Counts are not rounded, so that no fish are lost or gained by rounding. A month is a twelfth of 365 days.',
    ],
    sources: growthSources,
    example: {
      formula: '=SILT.STOCK.SCHEDULE("metric",350,100,350,14,0.16,1.1,1%,14,TRUE)',
      gives: 'one row per step',
    },
  }),
  define({
    name: 'STOCK.SAMPLE',
    summary: 'Mean mass of one fish from your own weighings, with its standard error.',
    arguments: {
      weighings: {
        table: {
          gross: { kind: 'mass', above: 0 },
          tare: { kind: 'mass', atLeast: 0 },
          count: { kind: 'count', atLeast: 1, whole: true },
        },
        meaning: 'rows of gross mass, tare mass, count',
      },
    },
    result: {
      row: {
        fishCounted: { kind: 'count' },
        meanMass: { kind: 'fish', heading: 'mean mass of one' },
        standardError: { kind: 'fish', blank: true },
      },
    },
    compute: ({ weighings }) => stockSample(weighings),
    formula: 'mean = Σ(gross - tare) / Σcount; standard error of a ratio of totals',
    notes: [
      'How to measure: weigh a bucket of tank water. Crowd the fish, net some, let the net drip, put them in the bucket and weigh again. Count the fish back into the tank. Do this five times or more, in different places, before feeding.',
      'A single weighing has no standard error.',
    ],
    sources: ['Cochran, Sampling Techniques, 3rd ed. (1977), section 6.4'],
    example: { formula: '=SILT.STOCK.SAMPLE("metric",{12.5,10,10;13.1,10,12})', gives: '22, 254.5, 4.1' },
  }),
  stockSpeciesRow,
];
