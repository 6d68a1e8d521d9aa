import { DAY } from '../../formulas/numeric/time';
import { planBalance } from '../../formulas/plan/plan-balance';
import { planCheck } from '../../formulas/plan/plan-check';
import { planFarm } from '../../formulas/plan/plan-farm';
import { planLimit } from '../../formulas/plan/plan-limit';
import type { MixedCell } from '../argument';
import { define } from '../define';
import { inputKinds } from '../input-kinds';
import { bankInputs } from '../plan/bank-inputs';
import { planCompare } from '../plan/plan-compare';
import { planInputs } from '../plan/plan-inputs';
import { bankParts } from '../plan/plan-parts';
import { scenarioFactors, withOneScenario } from '../plan/scenario';
import { scenarioInputs } from '../plan/scenario-inputs';
import { resultKeys, resultName, scenarioResults } from '../plan/scenario-results';
import { inputName } from '../reading/input-table';
import { planDatesRow } from './plan-dates';

const stages = 'Each stage’s own function names its source';
const scenarioNotes = [
  'Rows in any order, one an input: PLAN.INPUTS lists them all. Fish count, fish mass and feeding rate, or feed, are required; coefficients and limits have defaults, equipment has none. Blank or 0 is not given; text none says that the stage is absent.',
];
const worst =
  'Nitrification is figured at the coldest water, oxygen at the hottest, un-ionized ammonia at the hottest and the highest pH.';
const steadyState =
  'Water comes round again every turnover, so each stage takes more than its share a pass: drums nearly all that settles, and what is too fine to settle builds up until pads, beds, decay or water let out take it; rises says that nothing does. Pumped flow runs in full through every stage.';
const uncertain =
  'Least certain are how fast fine solids decay, what gravel beds take in a pass, how much nitrogen is denitrified unasked, and the settleable share: each is published or practiced several times apart (REF.LIST). Levels are of a farm that has run for months: nitrate rise time says how many.';
const local = 'A plan, not a promise: defer to makers’ sheets, local advice and licensed practice.';

const scenario = {
  cells: true,
  inputs: inputKinds(scenarioInputs),
  meaning: 'rows of input name and value, in any order',
} as const;

/** A figure of a kind, or the words that stand for it. */
function cell(kind: 'daily' | 'count' | 'share', value: number | string): MixedCell {
  return typeof value === 'number' ? { kind, si: value } : value;
}

const smallFarm =
  '{"fish count",100;"fish mass",250;"feeding rate",0.01;"tank volume",2000;"pump flow",40;"drums","none";"pads","none";"media volume","none";"bed area",12}';

export const planRows = [
  define({
    name: 'PLAN.INPUTS',
    summary: 'Every scenario input: name, kind, unit, default and its source, meaning.',
    arguments: {},
    result: {
      rows: {
        input: { text: true },
        kind: { text: true },
        unit: { text: true },
        default: { mixed: true },
        source: { text: true },
        meaning: { text: true },
      },
    },
    compute: (_, profile) => planInputs(profile),
    notes: ['Each default is a coefficient with its range in REF.LIST, or another input.'],
    sources: ['Each row names its own'],
    example: { formula: '=SILT.PLAN.INPUTS("US",TRUE)', gives: 'a row an input' },
    unpublished: 'A listing; its figures are checked where they are used.',
  }),
  define({
    name: 'PLAN.COMPARE',
    summary:
      'Scenarios side by side: feed, waste, flow, drums, pads, media, beds, harvest, money, and the first limit.',
    arguments: {
      scenarios: {
        cells: true,
        inputs: inputKinds(scenarioInputs),
        meaning: 'first column input names, then one column a scenario',
      },
    },
    result: {
      grid: true,
      rowsOf: resultKeys.map((key) => ({ name: resultName(key), ...scenarioResults[key] })),
    },
    compute: ({ scenarios }, profile) => planCompare(scenarios, profile),
    formula: 'steady state: what goes out equals what is made; sizes and money by each stage’s own function',
    notes: [
      ...scenarioNotes,
      steadyState,
      'Oxygen and carbon dioxide are those of the whole system. Flow needed is the least at which ammonia, un-ionized ammonia (where pH is given), solids, carbon dioxide (where degassing is given) and oxygen (where in and out are given) are all within their limits: never where no flow suffices. Turnover, drums and overflow rate are for the pump’s flow, or the flow needed where no pump is given. Pads needed are for one change a day.',
      'mixed and ideal settlers are computed at the overflow rate of the drums given, else at the overflow limit; the slowest solids decide, so a spread above 6 is refused. Nutrients harvested are those of the solids that the drums take.',
      uncertain,
      worst,
      local,
    ],
    sources: [stages],
    example: { formula: `=SILT.PLAN.COMPARE("metric",${smallFarm})`, gives: 'a row a result' },
  }),
  define({
    name: 'PLAN.LIMIT',
    summary: 'What each stage carries, as feed a day and as fish; the last row is the first limit and the next.',
    arguments: { scenario },
    result: {
      rows: {
        stage: { text: true },
        capacity: { mixed: true, unitOf: 'daily', heading: 'feed a day' },
        fish: { mixed: true },
        shareInUse: { mixed: true },
        from: { mixed: true, heading: 'figured from' },
      },
    },
    compute: (given, profile) =>
      withOneScenario(given.scenario, profile, (read) =>
        planLimit(planFarm(read.scenario, scenarioFactors)).rows.map((row) => ({
          ...row,
          capacity: cell('daily', row.capacity),
          fish: cell('count', row.fish),
          shareInUse: cell('share', row.shareInUse),
        })),
      ),
    formula: 'the feed at which what the stage has is what that feed needs of it, at steady state',
    notes: [
      ...scenarioNotes,
      worst,
      'The capacity is the feed at which PLAN.COMPARE shows the stage used to the full, its level at the limit. Pads at one change a day; gravel at a cleaning every 30 days (common practice, no source); air at the mean of the day. Fish are whole, at today’s feed for each.',
      local,
    ],
    sources: [stages],
    example: { formula: `=SILT.PLAN.LIMIT("metric",${smallFarm},TRUE)`, gives: 'a row a stage' },
  }),
  define({
    name: 'PLAN.BALANCE',
    summary: 'Where solids, nitrogen and phosphorus of a farm go in a day at steady state.',
    arguments: { scenario },
    result: {
      rows: {
        where: { text: true },
        solids: { kind: 'portion' },
        nitrogen: { kind: 'portion', blank: true },
        phosphorus: { kind: 'portion', blank: true },
      },
    },
    compute: (given, profile) =>
      withOneScenario(given.scenario, profile, (read) =>
        planBalance(planFarm(read.scenario, scenarioFactors)).map(({ where, solids, nitrogen, phosphorus }) => ({
          where,
          solids: solids * DAY,
          nitrogen: nitrogen === undefined ? undefined : nitrogen * DAY,
          phosphorus: phosphorus === undefined ? undefined : phosphorus * DAY,
        })),
      ),
    formula: 'each row from the level in the water; traced is their sum, not traced is in less traced',
    notes: [
      ...scenarioNotes,
      steadyState,
      'In is solids made, nitrogen and phosphorus fed. Fish keep gain (feed / conversion) × their share; without conversion that row is blank and what they keep is not traced. Phosphorus that fish excrete dissolved is not traced either.',
      'Solids that decay in the water are under air, as carbon dioxide; their nitrogen and phosphorus go on dissolved. Only nitrogen that is denitrified goes to air. Nitrate let out is counted less what the source water brings in.',
      uncertain,
      local,
    ],
    sources: ['Mass balance of each stage', stages],
    example: { formula: `=SILT.PLAN.BALANCE("metric",${smallFarm},TRUE)`, gives: 'a row a place' },
    unpublished: 'A sum that has to close; what goes into it is checked where it is made.',
  }),
  define({
    name: 'PLAN.PARTS',
    summary: 'Bill of materials of a settling bank: item, quantity, unit, how figured.',
    arguments: {
      bank: {
        cells: true,
        inputs: inputKinds(bankInputs),
        meaning: 'rows of name and value, in any order: drums, drum diameter, cone height …',
      },
    },
    result: {
      rows: {
        item: { text: true },
        quantity: { mixed: true },
        unit: { text: true },
        how: { mixed: true, heading: 'how figured' },
      },
    },
    compute: ({ bank }, profile) => bankParts(bank, profile),
    formula: 'each part by the function that it names',
    notes: [
      `Names, in any order: ${Object.keys(bankInputs)
        .map((key) => inputName(bankInputs, key))
        .join(', ')}. Required are drums, drum diameter and height, cone bottom and height, sheet length and width.`,
      'The cone is measured as `fit`: its top goes into the drum’s bore, its bottom is the drain’s bore. Prices in COST.LINES are matched by item, in the unit shown.',
      'Never heat or cut a closed drum, or one that held anything flammable; hot plastic burns and fumes. Mask for dust of aggregate and lime, gloves and goggles for wet cement. Zinc, brass and copper harm fish.',
      local,
    ],
    sources: ['Each row names its function', 'Counts of fittings and runs of pipe: common practice, no source'],
    example: {
      formula:
        '=SILT.PLAN.PARTS("US",{"drums",4;"drum diameter",22.5;"drum height",33;"cone bottom",4;"cone height",9.25;"lap",0.75;"sheet length",96;"sheet width",48},TRUE)',
      gives: 'a row a part',
    },
  }),
  planDatesRow,
  define({
    name: 'PLAN.CHECK',
    summary: 'Cautions over the whole train of one scenario.',
    arguments: { scenario },
    result: { lines: true },
    compute: (given, profile) =>
      withOneScenario(given.scenario, profile, (read) => planCheck(read.scenario, scenarioFactors)),
    notes: [...scenarioNotes, worst, local],
    sources: [stages, 'Limits of fish by species: see WATER.CHECK', 'Raw manure: 7 CFR 205.203(c)(1)'],
    example: { formula: `=SILT.PLAN.CHECK("metric",${smallFarm})`, gives: 'sentences, one a row' },
    unpublished: 'Sentences about figures that other functions check.',
  }),
];
