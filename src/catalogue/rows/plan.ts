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
  'One row per input, in any order: PLAN.INPUTS lists them all. Give fish count, fish mass and feeding rate, or feed. Coefficients and limits have defaults, equipment has none. Blank or 0 means not given; the word none means that the farm does not have that stage.',
];
const worst =
  'Nitrification is calculated at the coldest water, oxygen at the hottest, un-ionized ammonia at the hottest water and the highest pH.';
const steadyState =
  'The same water comes back every turnover, so a stage removes more in a day than its share per pass suggests. Drums remove nearly all that settles. What is too fine to settle builds up until pads, beds, decay or water let out remove it; rises means that nothing removes it. All of the pumped flow goes through every stage.';
const uncertain =
  'Most results depend on the solids share, for which published figures run from 0.04 to 0.7: measure it first. Four more figures are uncertain: how fast fine solids decay, what gravel beds remove in a pass, how much nitrogen denitrifies without a filter for it, and the settleable share. Sources differ by a factor of two to ten (REF.LIST). PLAN.RANGE shows how far the results move. Levels are those of a farm that has run for months: nitrate rise time says how long. The model leaves out nitrite, the peak of ammonia after each feeding, the alkalinity that new water brings and water let out takes away, and the nutrients that solids lying in drums, pads and beds give back to the water. It takes the tank as well mixed, and every share per pass as the same from the first day to the last: pads and beds that fill remove less.';
const local = 'This is a plan, not a promise: makers’ sheets, local advice and licensed practice come first.';

const scenario = {
  cells: true,
  inputs: inputKinds(scenarioInputs),
  meaning: 'rows of input name and value, in any order',
} as const;

/** A figure with its kind, or the word shown in its place. */
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
    example: { formula: '=SILT.PLAN.INPUTS("US",TRUE)', gives: 'one row per input' },
    unpublished: 'A list; the functions that use its figures are checked.',
  }),
  define({
    name: 'PLAN.COMPARE',
    summary:
      'Scenarios side by side: feed, waste, flow, drums, pads, media, beds, harvest, money, and the first limit.',
    arguments: {
      scenarios: {
        cells: true,
        inputs: inputKinds(scenarioInputs),
        meaning: 'input names in the first column, then one column per scenario',
      },
    },
    result: {
      grid: true,
      rowsOf: resultKeys.map((key) => ({ name: resultName(key), ...scenarioResults[key] })),
    },
    compute: ({ scenarios }, profile) => planCompare(scenarios, profile),
    formula: 'steady state: removal equals production; sizes and money by each stage’s own function',
    notes: [
      ...scenarioNotes,
      steadyState,
      'Oxygen and carbon dioxide are those of the whole system. Flow needed is the lowest flow that keeps ammonia, un-ionized ammonia (if pH is given), solids, carbon dioxide (if degassing is given) and oxygen (if in and out are given) within their limits; it is never if no flow is enough. Turnover, drums needed and overflow rate are for the flow that runs: the pump’s flow, or the flow needed if no pump is given. If flow needed is larger, the feed needs more drums than drums needed; if it is never, no number of drums is enough (PLAN.CHECK says so). Pads needed are for one change a day.',
      'mixed and ideal settlers are calculated at the overflow rate of the drums given, or at the overflow limit if none are. The slowest solids decide, so a spread above 6 is refused. Nutrients harvested are those in the solids that the drums remove.',
      uncertain,
      worst,
      local,
    ],
    sources: [stages],
    example: { formula: `=SILT.PLAN.COMPARE("metric",${smallFarm})`, gives: 'one row per result' },
  }),
  define({
    name: 'PLAN.LIMIT',
    summary: 'What each stage can carry, as feed a day and as fish; the last row names the first limit and the next.',
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
    formula: 'the feed that uses the stage to the full, at steady state',
    notes: [
      ...scenarioNotes,
      worst,
      'The capacity is the feed at which PLAN.COMPARE shows the stage at its limit. It assumes one pad change a day, gravel cleaned every 30 days (common practice, no source) and the day’s mean oxygen demand for air. Fish are whole fish, at today’s feed per fish.',
      uncertain,
      local,
    ],
    sources: [stages],
    example: { formula: `=SILT.PLAN.LIMIT("metric",${smallFarm},TRUE)`, gives: 'one row per stage' },
  }),
  define({
    name: 'PLAN.BALANCE',
    summary: 'Where a farm’s solids, nitrogen and phosphorus go in a day, at steady state.',
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
    formula: 'each row follows from the level in the water; traced is their sum; not traced = in - traced',
    notes: [
      ...scenarioNotes,
      steadyState,
      'In is the solids made and the nitrogen and phosphorus fed. Fish keep their gain (feed / conversion) × their share; without conversion that row is blank and what they keep is not traced. Phosphorus that fish excrete in dissolved form is not traced either.',
      'Solids that decay in the water count as air, because they become carbon dioxide; their nitrogen and phosphorus stay in the water, dissolved. Only denitrified nitrogen goes to air. What the source water brings in is subtracted from the nitrate let out.',
      uncertain,
      local,
    ],
    sources: ['Mass balance of each stage', stages],
    example: { formula: `=SILT.PLAN.BALANCE("metric",${smallFarm},TRUE)`, gives: 'one row per place' },
    unpublished: 'A sum that must close; the tests of each stage check its terms.',
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
    formula: 'the function named in each row',
    notes: [
      `Names, in any order: ${Object.keys(bankInputs)
        .map((key) => inputName(bankInputs, key))
        .join(', ')}. Required are drums, drum diameter and height, cone bottom and height, sheet length and width.`,
      'The cone is measured as `fit`: its top fits into the drum’s bore, its bottom is the drain’s bore. COST.LINES finds prices by item, in the unit shown.',
      'Never heat or cut a closed drum, or one that held anything flammable; hot plastic burns and gives off fumes. Wear a respirator against aggregate and lime dust, and gloves and goggles for wet cement. Zinc, brass and copper harm fish.',
      local,
    ],
    sources: ['Each row names its function', 'Counts of fittings and runs of pipe: common practice, no source'],
    example: {
      formula:
        '=SILT.PLAN.PARTS("US",{"drums",4;"drum diameter",22.5;"drum height",33;"cone bottom",4;"cone height",9.25;"lap",0.75;"sheet length",96;"sheet width",48},TRUE)',
      gives: 'one row per part',
    },
  }),
  planDatesRow,
  define({
    name: 'PLAN.CHECK',
    summary: 'Cautions about every stage of one scenario.',
    arguments: { scenario },
    result: { lines: true },
    compute: (given, profile) =>
      withOneScenario(given.scenario, profile, (read) => planCheck(read.scenario, scenarioFactors)),
    notes: [...scenarioNotes, worst, local],
    sources: [stages, 'Limits of fish by species: see WATER.CHECK', 'Raw manure: 7 CFR 205.203(c)(1)'],
    example: { formula: `=SILT.PLAN.CHECK("metric",${smallFarm})`, gives: 'sentences, one per row' },
    unpublished: 'Sentences about figures that other functions check.',
  }),
];
