import { filterArea, filterFeed, filterMedia } from '../../formulas/filter/filter-size';
import { mediaTable } from '../../formulas/filter/media';
import {
  filterAlkalinity,
  filterNitrify,
  filterOxygen,
  nitrificationLimits,
} from '../../formulas/filter/nitrification';
import { define } from '../define';
import { temperature } from '../water-arguments';

const fao = 'FAO Fisheries Technical Paper 589 (2014), appendix 4';
const nitrogenNotes = [
  'The rate is in grams of nitrogen. Convert a rate published as ammonia: 0.57 g NH3 is 0.469 g N.',
  'Rates fall in cold water: see FILTER.NITRIFY. Sources differ fivefold: REF.LIST shows the range.',
];
const protein = { kind: 'share', above: 0, meaning: 'protein in the feed' } as const;
const rate = {
  kind: 'areal rate',
  above: 0,
  per: 'day',
  meaning: 'nitrogen nitrified per unit of surface, as N',
} as const;
const reserve = {
  kind: 'share',
  atMost: 10,
  default: 0,
  meaning: 'extra share, 0.5 for half as much again',
} as const;
const surface = { kind: 'surface', above: 0, meaning: 'specific surface of the media' } as const;
const factor = {
  kind: 'number',
  above: 0,
  atMost: 0.16,
  default: 'ammonia factor',
  meaning: 'ammonia nitrogen per protein fed',
} as const;
const ammoniaLoad = { kind: 'daily', atLeast: 0, meaning: 'ammonia nitrogen nitrified a day, as N' } as const;

export const filterRows = [
  define({
    name: 'FILTER.NITRIFY',
    summary: 'Areal nitrification rate at another temperature.',
    arguments: {
      rate,
      temperature,
      reference: { ...temperature, default: 20, meaning: 'temperature at which the rate is known' },
      limit: { choice: nitrificationLimits, default: 'lower', meaning: 'what limits the bacteria' },
    },
    result: { scalar: 'areal rate' },
    compute: (given) => filterNitrify(given.rate, given.temperature, given.reference, given.limit),
    formula: 'rate × (1 + g (T - 20)) / (1 + g (reference - 20)), g 0.04275 by ammonia, 0.01108 by oxygen',
    notes: [
      '`lower` uses the limit that gives the lower rate. Biofilms were studied from 14 to 27 °C; outside that the result is #N/A.',
      'A moving bed at 1 °C for a long time kept 18 ± 5.1 % of its rate at 20 °C (Hoang et al., Water Research 49:215, 2014).',
    ],
    sources: ['Zhu and Chen, Aquacultural Engineering 26:221 (2002)'],
    example: { formula: '=SILT.FILTER.NITRIFY("metric",0.469,15)', gives: '0.3688' },
  }),
  define({
    name: 'FILTER.AREA',
    summary: 'Media surface that nitrifies the ammonia of a day’s feed.',
    arguments: {
      feed: { kind: 'daily', atLeast: 0, meaning: 'feed a day' },
      protein: { ...protein, atLeast: 0 },
      rate,
      reserve,
      factor,
    },
    result: { scalar: 'area' },
    compute: (given) => filterArea(given.feed, given.protein, given.rate, given.reserve, given.factor),
    formula: 'surface = feed × protein × factor × (1 + reserve) / rate',
    notes: nitrogenNotes,
    sources: [fao],
    example: { formula: '=SILT.FILTER.AREA("metric","200 g/d",32%,0.469)', gives: '12.55' },
  }),
  define({
    name: 'FILTER.MEDIA',
    summary: 'Bulk of media that has a given surface.',
    arguments: { area: { kind: 'area', atLeast: 0, meaning: 'media surface' }, surface },
    result: { scalar: 'bulk' },
    compute: ({ area, surface: specific }) => filterMedia(area, specific),
    formula: 'bulk = area / specific surface',
    sources: [fao],
    example: { formula: '=SILT.FILTER.MEDIA("metric",13.15,300)', gives: '43.8' },
  }),
  define({
    name: 'FILTER.FEED',
    summary: 'Feed a day that a filter can carry.',
    arguments: {
      media: { kind: 'bulk', atLeast: 0, meaning: 'bulk of the media' },
      surface,
      protein,
      rate,
      reserve,
      factor,
    },
    result: { scalar: 'daily' },
    compute: (given) => filterFeed(given.media, given.surface, given.protein, given.rate, given.reserve, given.factor),
    formula: 'feed = media × specific surface × rate / (protein × factor × (1 + reserve))',
    notes: nitrogenNotes,
    sources: [fao],
    example: { formula: '=SILT.FILTER.FEED("metric",43.8,300,32%,0.469)', gives: '0.2093' },
  }),
  define({
    name: 'FILTER.OXYGEN',
    summary: 'Oxygen that nitrification uses a day.',
    arguments: { ammoniaLoad },
    result: { scalar: 'daily' },
    compute: (given) => filterOxygen(given.ammoniaLoad),
    formula: 'oxygen = 4.57 × ammonia nitrogen',
    notes: ['This leaves out growth of the bacteria; with growth it is 4.18.'],
    sources: ['Ebeling, Timmons and Bisogni, Aquaculture 257:346 (2006)', 'NH4+ + 2 O2 → NO3- + 2 H+ + H2O'],
    example: { formula: '=SILT.FILTER.OXYGEN("metric",0.1)', gives: '0.457' },
  }),
  define({
    name: 'FILTER.ALKALINITY',
    summary: 'Alkalinity, as CaCO3, that nitrification uses a day.',
    arguments: { ammoniaLoad },
    result: { scalar: 'daily' },
    compute: (given) => filterAlkalinity(given.ammoniaLoad),
    formula: 'alkalinity as CaCO3 = 7.15 × ammonia nitrogen',
    notes: [
      'This leaves out growth of the bacteria; with growth it is 7.05. Some tables print 7.14 from rounded masses.',
    ],
    sources: ['Ebeling, Timmons and Bisogni, Aquaculture 257:346 (2006)', 'NH4+ + 2 O2 → NO3- + 2 H+ + H2O'],
    example: { formula: '=SILT.FILTER.ALKALINITY("metric",0.1)', gives: '0.715' },
  }),
  define({
    name: 'FILTER.LIST',
    summary: 'Biofilter media: specific surface, low and high areal rate.',
    arguments: {},
    result: {
      rows: {
        media: { text: true },
        surface: { kind: 'surface', heading: 'specific surface' },
        rateLow: { kind: 'areal rate' },
        rateHigh: { kind: 'areal rate' },
        source: { text: true },
      },
    },
    compute: () =>
      mediaTable.map(({ name, surface: { typical }, rateLow, rateHigh, source }) => ({
        media: name,
        surface: typical,
        rateLow,
        rateHigh,
        source,
      })),
    notes: ['Rates are in grams of nitrogen. REF.LIST has the range of each surface.'],
    sources: ['Each row names its own'],
    example: { formula: '=SILT.FILTER.LIST("US",TRUE)', gives: 'one row per medium' },
  }),
];
