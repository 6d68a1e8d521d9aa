import { loadLevel, loadShares } from '../../formulas/balance/waste-balance';
import { loadAmmonia, loadCarbonDioxide, loadFlow, loadOxygen, loadSolids } from '../../formulas/load/load';
import { loadFlows, loadTable } from '../../formulas/load/load-flows';
import { DAY } from '../../formulas/numeric/time';
import { coefficient, coefficientRange } from '../coefficients/all';
import { define } from '../define';

const timmons = 'Timmons and Ebeling, Recirculating Aquaculture (from memory)';
const balance = 'Mass balance';
const spread = 'Sources differ several-fold: REF.LIST and LOAD.TABLE show the range. Measure your own.';
const feed = { kind: 'daily', atLeast: 0, meaning: 'feed a day' } as const;
const protein = { kind: 'share', meaning: 'protein in the feed' } as const;
const scopes = ['fish', 'system'] as const;

const rest = {
  volume: { kind: 'volume', atLeast: 0, default: 0, meaning: 'water in which the waste decays' },
  decay: {
    kind: 'number',
    atLeast: 0,
    atMost: 1000,
    default: 0,
    per: 'day',
    meaning: 'share of the waste in that water that decays a day; can exceed 1',
  },
  out: {
    kind: 'volume',
    atLeast: 0,
    default: 0,
    per: 'day',
    meaning: 'water let out a day, as concentrated as the tank',
  },
} as const;
const steadyNote =
  'The water is well mixed and all of the flow goes through every stage. Levels and loads are at steady state: removal equals production.';

export const loadRows = [
  define({
    name: 'LOAD.SOLIDS',
    summary: 'Dry suspended solids that a day’s feed makes.',
    arguments: {
      feed,
      solidsShare: { kind: 'share', above: 0, default: 'solids share', meaning: 'dry solids per feed' },
    },
    result: { scalar: 'daily' },
    compute: ({ feed: eaten, solidsShare }) => loadSolids(eaten, solidsShare),
    formula: 'solids = feed × solids share',
    notes: [spread],
    sources: [timmons, 'Clark, Harman and Forster, Journal of Fish Biology 27:381 (1985)'],
    unpublished: 'A product of feed and a share; LOAD.TABLE is checked against the published shares.',
    example: { formula: '=SILT.LOAD.SOLIDS("metric",10)', gives: '2.5' },
  }),
  define({
    name: 'LOAD.AMMONIA',
    summary: 'Total ammonia nitrogen that a day’s feed makes.',
    arguments: {
      feed,
      protein,
      factor: {
        kind: 'number',
        above: 0,
        atMost: 0.16,
        default: 'ammonia factor',
        meaning: 'ammonia nitrogen per protein fed',
      },
    },
    result: { scalar: 'daily' },
    compute: ({ feed: eaten, protein: share, factor }) => loadAmmonia(eaten, share, factor),
    formula: 'ammonia nitrogen = feed × protein × factor',
    notes: ['Protein holds 16 % nitrogen, so a factor above 0.16 is refused.'],
    sources: [timmons],
    example: { formula: '=SILT.LOAD.AMMONIA("metric",1,40%)', gives: '0.0368' },
  }),
  define({
    name: 'LOAD.OXYGEN',
    summary: 'Oxygen used a day by the fish, or by the whole system with its bacteria.',
    arguments: {
      feed,
      scope: { choice: scopes, default: 'fish', meaning: 'the fish alone, or the system with its bacteria' },
      ratio: {
        kind: 'number',
        above: 0,
        atMost: 3,
        default: ({ scope }: { readonly scope: string }) => coefficient(`oxygen ratio ${scope}`).typical,
        defaultReads: '0.4 for fish, 1.25 for system (oxygen ratio fish, oxygen ratio system)',
        meaning: 'kg oxygen per kg feed',
      },
    },
    result: { scalar: 'daily' },
    compute: ({ feed: eaten, ratio }) => loadOxygen(eaten, ratio),
    formula: 'oxygen = feed × ratio',
    notes: ['Fish alone use 0.25 to 0.5, a whole system about 1.25: choose which you mean.'],
    sources: [timmons, 'Boyd: 1.25 kg of oxygen per kg of feed, whole system'],
    unpublished: 'A product of feed and a ratio, whose published range REF.VALUE gives with its source.',
    example: { formula: '=SILT.LOAD.OXYGEN("metric",4,"system")', gives: '5' },
  }),
  define({
    name: 'LOAD.CO2',
    summary: 'Carbon dioxide that fish breathe out a day for the oxygen they use.',
    arguments: { oxygen: { kind: 'daily', atLeast: 0, meaning: 'oxygen used a day' } },
    result: { scalar: 'daily' },
    compute: ({ oxygen }) => loadCarbonDioxide(oxygen),
    formula: 'carbon dioxide = oxygen × 44.01 / 32.00',
    notes: ['For a respiratory quotient of 1: as many molecules out as in.'],
    sources: ['Atomic masses, IUPAC (2021)'],
    example: { formula: '=SILT.LOAD.CO2("metric",4)', gives: '5.501' },
  }),
  define({
    name: 'LOAD.FLOW',
    summary: 'Circulation that keeps one dissolved waste at its limit.',
    arguments: {
      load: { kind: 'daily', atLeast: 0, meaning: 'waste made a day' },
      limit: { kind: 'concentration', above: 0, meaning: 'highest level allowed in the tank' },
      removal: { kind: 'share', above: 0, meaning: 'share removed in one pass' },
    },
    result: { scalar: 'flow' },
    compute: ({ load, limit, removal }) => loadFlow(load, limit, removal),
    formula: 'flow = load / (limit × removal)',
    notes: ['For steady state, a well-mixed tank and make-up water without this waste.'],
    sources: [balance, 'Losordo and Westers, in Timmons and Losordo, Aquaculture Water Reuse Systems (1994)'],
    example: { formula: '=SILT.LOAD.FLOW("metric","50 g/d",1,35%)', gives: '99.2' },
  }),
  define({
    name: 'LOAD.FLOWS',
    summary: 'Circulation that each waste needs; the last row is the largest and names the waste that sets it.',
    arguments: {
      feed,
      protein,
      ammoniaLimit: { kind: 'concentration', above: 0, default: 'ammonia limit', meaning: 'total ammonia nitrogen' },
      removal: { kind: 'share', above: 0, default: 'removal', meaning: 'share of ammonia removed in one pass' },
      solidsLimit: { kind: 'concentration', above: 0, default: 'solids limit', meaning: 'suspended solids' },
      capture: { kind: 'share', above: 0, default: 'capture', meaning: 'share of solids removed in one pass' },
      oxygenIn: { kind: 'concentration', above: 0, optional: true, meaning: 'oxygen in water entering the tank' },
      oxygenOut: { kind: 'concentration', above: 0, optional: true, meaning: 'oxygen in water leaving the tank' },
    },
    result: { rows: { waste: { text: true }, limit: { kind: 'concentration' }, flow: { kind: 'flow' } } },
    compute: (given) =>
      loadFlows({
        ...given,
        ammoniaFactor: coefficient('ammonia factor').typical,
        solidsShare: coefficient('solids share').typical,
        oxygenRatio: coefficient('oxygen ratio system').typical,
      }),
    formula: 'flow = load / (limit × removal); for oxygen, load / (in - out)',
    notes: [
      'Oxygen sets a flow only if both its concentrations are given. Its load is that of the whole system, with bacteria.',
    ],
    sources: [balance],
    example: { formula: '=SILT.LOAD.FLOWS("metric",2,32%,1,35%)', gives: 'one row per waste' },
  }),
  define({
    name: 'LOAD.LEVEL',
    summary: 'Level of a waste in recirculating water at steady state.',
    arguments: {
      load: { kind: 'daily', atLeast: 0, meaning: 'waste made a day' },
      flow: { kind: 'flow', atLeast: 0, meaning: 'flow through the train' },
      removal: { kind: 'share', meaning: 'share that the whole train removes in one pass' },
      ...rest,
    },
    result: { scalar: 'concentration' },
    compute: ({ load, flow, removal, volume, decay, out }) =>
      loadLevel(load, removal, { flow, volume, decay: decay / DAY, out: out / DAY }),
    formula: 'level = load / (flow × removal + decay × volume + out)',
    notes: [steadyNote, 'Refused if nothing removes the waste, because the level would rise without end.'],
    sources: [balance, 'Losordo and Westers, in Timmons and Losordo, Aquaculture Water Reuse Systems (1994)'],
    example: { formula: '=SILT.LOAD.LEVEL("metric","328.125 g/d",120,37.1%)', gives: '5.118' },
  }),
  define({
    name: 'LOAD.SHARES',
    summary: 'What each stage removes of a waste at steady state, and the level after it.',
    arguments: {
      load: { kind: 'daily', atLeast: 0, meaning: 'waste made a day' },
      flow: { kind: 'flow', atLeast: 0, meaning: 'flow through the train' },
      stages: {
        table: { stage: { text: true }, removal: { kind: 'share' } },
        meaning: 'rows of name and share removed in one pass, in order of flow',
      },
      ...rest,
    },
    result: {
      rows: {
        stage: { text: true },
        share: { kind: 'share', heading: 'share of the load' },
        taken: { kind: 'daily', heading: 'a day' },
        level: { kind: 'concentration', heading: 'level after it' },
      },
    },
    compute: ({ load, flow, stages, volume, decay, out }) =>
      loadShares(
        load,
        stages.map(({ stage, removal }) => ({ name: stage, removal })),
        { flow, volume, decay: decay / DAY, out: out / DAY },
      ),
    formula: 'stage j removes flow × level × (1 − r1)…(1 − r(j−1)) × rj',
    notes: [
      steadyNote,
      'A share of the load, not the share per pass: what a stage does not remove comes back with the water. Decay and water let out have a row each if they remove anything, at the level of the tank. The last row is the total.',
    ],
    sources: [balance, 'Losordo and Westers, in Timmons and Losordo, Aquaculture Water Reuse Systems (1994)'],
    example: {
      formula: '=SILT.LOAD.SHARES("metric","328.125 g/d",120,{"drums",0.371;"pads",0.5})',
      gives: 'one row per stage',
    },
    unpublished: 'The shares follow from the level that LOAD.LEVEL gives.',
  }),
  define({
    name: 'LOAD.TABLE',
    summary: 'Every waste of a day’s feed: low, typical and high, over the published range.',
    arguments: { feed, protein },
    result: {
      rows: {
        waste: { text: true },
        low: { mixed: true },
        typical: { mixed: true },
        high: { mixed: true },
        unit: { text: true },
      },
    },
    compute: ({ feed: eaten, protein: share }, profile) =>
      loadTable(eaten, share, {
        solidsShare: coefficientRange('solids share'),
        ammoniaFactor: coefficientRange('ammonia factor'),
        oxygenFish: coefficientRange('oxygen ratio fish'),
        oxygenSystem: coefficientRange('oxygen ratio system'),
      }).map((row) => ({ ...row, unit: profile.units.daily.symbol })),
    formula: 'as LOAD.SOLIDS, LOAD.AMMONIA, LOAD.OXYGEN and LOAD.CO2, at each end of the coefficient’s range',
    notes: [spread],
    sources: ['Each coefficient names its own: see REF.LIST'],
    example: { formula: '=SILT.LOAD.TABLE("metric",1,40%)', gives: 'one row per waste' },
  }),
];
