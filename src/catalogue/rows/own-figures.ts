import { airTest } from '../../formulas/air/air-test';
import { type FilterPair, filterTest } from '../../formulas/filter/filter-test';
import { loadShare } from '../../formulas/load/own-share';
import { HOUR } from '../../formulas/numeric/time';
import { stockCoefficient, stockConversion } from '../../formulas/stock/own-growth';
import type { Profile } from '../../units/profile';
import type { CellFault, CellValue } from '../argument';
import { define } from '../define';
import { ammoniaAsNitrogen } from '../readers';
import { ArgumentError, asArgumentError } from '../reading/argument-error';
import { isBlank } from '../reading/blank';
import { elevation, salinity, temperature } from '../water-arguments';

const typed =
  'In a scenario, type it with its error, as `value ± half-width`: half-width = 2.449 × standard error, more if you have few readings.';

export const stockOwnRows = [
  define({
    name: 'STOCK.COEFFICIENT',
    summary: 'Thermal-growth coefficient of your own fish, with its standard error, from several weighings.',
    arguments: {
      weighings: {
        table: {
          date: { kind: 'date' },
          mass: { kind: 'fish', above: 0, heading: 'mean mass of one' },
          temperature: { kind: 'temperature', atLeast: 0, atMost: 40, blank: true },
        },
        meaning: 'rows of date, mean mass of one fish, mean water temperature since the row before',
      },
    },
    result: {
      row: {
        coefficient: { kind: 'number', heading: 'growth coefficient' },
        standardError: { kind: 'number' },
        weighings: { kind: 'count' },
      },
    },
    compute: ({ weighings }) => stockCoefficient(weighings),
    formula: '100 × slope of the cube root of mass in g on degree-days, with intercept',
    notes: [
      'How to measure: about every two weeks weigh a net of counted fish (STOCK.SAMPLE gives the mean), and note the mean temperature since the last weighing. The temperature of the first row is ignored.',
      'Three weighings give a coefficient but a poor estimate of its error: weigh five times or more.',
      typed,
    ],
    sources: ['Iwama and Tautz, Canadian Journal of Fisheries and Aquatic Sciences 38:649 (1981)'],
    example: {
      formula: '=SILT.STOCK.COEFFICIENT("metric",{46000,50,14;46028,80,14;46056,118,15;46084,170,15})',
      gives: '0.1497, 0.0022, 4',
    },
  }),
  define({
    name: 'STOCK.CONVERSION',
    summary: 'Feed per growth of your own fish.',
    arguments: {
      fed: { kind: 'mass', above: 0, meaning: 'feed given in the period' },
      gained: { kind: 'mass', meaning: 'biomass now - biomass at the start + fish taken out' },
      loss: { kind: 'mass', atLeast: 0, default: 0, meaning: 'mass of the fish that died' },
    },
    result: { scalar: 'number' },
    compute: ({ fed, gained, loss }) => stockConversion(fed, gained, loss),
    formula: 'conversion = fed / (gained + loss)',
    notes: [
      'Biomass is count × mean mass of one fish, from STOCK.SAMPLE. Dead fish ate feed too, so their mass counts as growth.',
    ],
    sources: ['Definition of the feed conversion ratio'],
    example: { formula: '=SILT.STOCK.CONVERSION("metric",30,24,1)', gives: '1.2' },
  }),
];

export const loadShareRow = define({
  name: 'LOAD.SHARE',
  summary: 'Dry solids per feed, from what you draw off.',
  arguments: {
    dry: { kind: 'mass', atLeast: 0, meaning: 'dry solids drawn off in a period' },
    feed: { kind: 'mass', above: 0, meaning: 'feed given in the same period' },
    captured: {
      kind: 'share',
      above: 0,
      default: 1,
      meaning: 'share of all solids drawn off there, at steady state',
    },
  },
  result: { scalar: 'share' },
  compute: ({ dry, feed, captured }) => loadShare(dry, feed, captured),
  formula: 'solids share = dry / (captured × feed)',
  notes: [
    'How to measure: weigh a cup of stirred slurry, dry it in an oven at 105 °C until its mass no longer falls, and multiply the dry share by all that was drawn off. HARVEST.LOG adds up a season.',
    'Captured is the share of the load at steady state, from LOAD.SHARES, not the share per pass, because the water comes back.',
  ],
  sources: ['Mass balance'],
  example: { formula: '=SILT.LOAD.SHARE("metric",4.2,30,70%)', gives: '0.2' },
  unpublished: 'A quotient of two weighings; its own test checks that it undoes LOAD.SOLIDS.',
});

type Cells = readonly (readonly (CellValue | CellFault)[])[];

/** Readings before and after the filter, row by row, without headings and rows that are blank at both ends. */
function readPairs(inlet: Cells, outlet: Cells, profile: Profile): readonly FilterPair[] {
  const lines = Math.max(inlet.length, outlet.length);
  const pairs: FilterPair[] = [];
  for (let i = 0; i < lines; i++) {
    const before = inlet[i]?.[0] ?? '';
    const after = outlet[i]?.[0] ?? '';
    if (isBlank(before) && isBlank(after)) continue;
    if (i === 0 && lines > 1 && isHeading(before) && isHeading(after)) continue;
    if (isBlank(before) || isBlank(after)) {
      const where = isBlank(before) ? 'inlet' : 'outlet';
      throw new ArgumentError(`${where}: row ${i + 1} is blank but the other end is not; give both or neither`);
    }
    pairs.push({
      row: i + 1,
      inlet: readAmmonia('inlet', i, before, profile),
      outlet: readAmmonia('outlet', i, after, profile),
    });
  }
  return pairs;
}

function isHeading(value: CellValue | CellFault): boolean {
  return typeof value === 'string' && !/\d/.test(value);
}

function readAmmonia(name: string, line: number, value: CellValue | CellFault, profile: Profile): number {
  if (value instanceof Error) throw value;
  try {
    return ammoniaAsNitrogen.reader(value, profile);
  } catch (error) {
    throw asArgumentError(`${name}: row ${line + 1}`, error);
  }
}

export const filterTestRow = define({
  name: 'FILTER.TEST',
  summary: 'Ammonia that your own filter removes, from readings before and after it.',
  arguments: {
    flow: { kind: 'flow', above: 0, meaning: 'flow through the filter' },
    inlet: { cells: true, meaning: 'total ammonia nitrogen before the filter, one reading or a column' },
    outlet: { cells: true, meaning: 'total ammonia nitrogen after the filter, at the same times' },
    area: { kind: 'area', above: 0, optional: true, meaning: 'surface of the media' },
    temperature: { ...temperature, default: 20 },
  },
  result: {
    row: {
      taken: { kind: 'daily', heading: 'ammonia N taken' },
      share: { kind: 'share', heading: 'share a pass' },
      rate: { kind: 'areal rate', blank: true },
      rateAt20: { kind: 'areal rate', heading: 'rate at 20 °C', blank: true },
      standardError: { kind: 'share', heading: 'standard error of share', blank: true },
    },
  },
  compute: ({ flow, inlet, outlet, area, temperature: warmth }, profile) =>
    filterTest(flow, readPairs(inlet, outlet, profile), area, warmth),
  formula: 'taken = flow × mean of (in - out); share = mean of (in - out) / in, error s / √n',
  notes: [
    'How to measure: a few hours after feeding, take both samples within a minute. Do this on five days or more, with the same kit.',
    'From the rate at 20 °C FILTER.NITRIFY gives the measured rate again. It is blank outside 14 to 27 °C, the range in which biofilms were studied.',
    'What limits your filter is not known from one temperature, so at 20 °C it may do less than that: 15 % less if you measured at 26 °C, 20 % less if at 14 °C. For a cautious plan, give FILTER.NITRIFY the measured rate, 20 °C, and your temperature as the reference.',
    typed,
  ],
  sources: ['Mass balance', 'Zhu and Chen, Aquacultural Engineering 26:221 (2002)'],
  example: {
    formula: '=SILT.FILTER.TEST("metric",100,{1;1.2;0.9},{0.6;0.8;0.6},20)',
    gives: '0.053, 0.356, 2.64, 2.64, 0.022',
  },
});

export const airTestRow = define({
  name: 'AIR.TEST',
  summary: 'Oxygen transfer of your own aerator, from how fast oxygen rises in a tank without fish.',
  arguments: {
    log: {
      table: {
        minutes: { kind: 'minutes', atLeast: 0 },
        oxygen: { kind: 'concentration', atLeast: 0 },
      },
      meaning: 'rows of minutes and oxygen, from under a third to over nine tenths of saturation',
    },
    volume: { kind: 'volume', above: 0, meaning: 'water in the tank' },
    temperature,
    elevation,
    salinity,
  },
  result: {
    row: {
      transfer: { kind: 'number', heading: 'KLa (an hour)' },
      transferAt20: { kind: 'number', heading: 'KLa at 20 °C (an hour)' },
      saturation: { kind: 'concentration', heading: 'saturation fitted' },
      standard: { kind: 'transfer', heading: 'standard transfer' },
      standardError: { kind: 'number', heading: 'standard error of KLa (an hour)' },
    },
  },
  compute: ({ log, volume, temperature: warmth, elevation: height, salinity: salt }) => {
    const readings = log.map(({ row, minutes, oxygen }) => ({ row, time: minutes, oxygen }));
    const fit = airTest(readings, volume, warmth, height, salt);
    return {
      ...fit,
      transfer: fit.transfer * HOUR,
      transferAt20: fit.transferAt20 * HOUR,
      standardError: fit.standardError * HOUR,
    };
  },
  formula:
    'C = Cs - (Cs - C0) exp(-KLa t), with Cs, C0 and KLa fitted together; standard transfer = KLa × 1.024^(20 - T) × 9.09 mg/L × volume',
  notes: [
    'How to measure: move the fish to another well-aerated tank. Remove the oxygen with sodium sulfite (about 8 mg/L for each mg/L of oxygen, plus 10 %, with a pinch of cobalt salt; keep that water out of the system). Start the aerator and read the meter ten times or more until it stops rising.',
    'AIR.TRANSFER and the scenario call the standard transfer rated.',
  ],
  sources: ['ASCE/EWRI 2-06, Measurement of Oxygen Transfer in Clean Water, non-linear regression'],
  example: {
    formula: '=SILT.AIR.TEST("metric",{0,1;2,3.3;4,5;6,6.2;8,7.1;12,8;18,8.7},1000,20)',
    gives: '10.38, 10.38, 9.06, 0.0944, 0.207',
  },
});
