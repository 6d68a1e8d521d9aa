import { define } from '../define';
import { inputKinds } from '../input-kinds';
import { figureResults, planDrivers, planRange } from '../plan/plan-sure';
import { withOneScenario } from '../plan/scenario';
import { scenarioInputs } from '../plan/scenario-inputs';
import { type ResultKey, resultName } from '../plan/scenario-results';

const scenario = {
  cells: true,
  inputs: inputKinds(scenarioInputs),
  meaning: 'rows of input name and value, in any order; a value may be a range, 0.2 to 0.4 or 350 ± 20',
} as const;

const varying =
  'Two kinds of figure vary: coefficients left at their default, between low and high in REF.LIST, and inputs typed as a range. Limits, choices and inputs typed as one figure do not vary. Each has a triangular distribution with the typical value as its mode, on a logarithmic scale if the ends are more than five times apart. They vary independently.';
const sample =
  'The sample is a Latin hypercube of 1,024 points. Each input’s name fixes its own random order: the same cells always give the same result, and adding a range does not change the draws of other inputs.';
const limits =
  'The band shows only how far published coefficients and typed ranges move the plan. It does not show what the model itself leaves out (see PLAN.COMPARE), and it is no wider for a farm that differs from those that were published.';

const example =
  '{"fish count",350;"fish mass",225;"feeding rate",0.015;"tank volume",4200;"pump flow",94;"drums",2;"drum diameter",570;"pads",4;"pad area",0.28;"media volume",680;"bed area",26}';

const keyOf = new Map<string, ResultKey>(figureResults.map((key) => [resultName(key), key]));

/** How sure a plan is and which figures decide it. */
export const planSureRows = [
  define({
    name: 'PLAN.RANGE',
    summary: 'How sure a plan is: a band for each result, and the chance that each stage is the first limit.',
    arguments: { scenario },
    result: {
      rows: {
        result: { text: true },
        unit: { text: true },
        low: { mixed: true },
        plan: { mixed: true },
        high: { mixed: true },
      },
    },
    compute: (given, profile) => withOneScenario(given.scenario, profile, (read) => planRange(read, profile)),
    formula: 'low and high are the 10th and 90th percentiles of the draws; plan is the result of PLAN.COMPARE',
    notes: [
      varying,
      sample,
      limits,
      'Four of five draws fall in the band. Its ends are interpolated between draws; of whole results, such as pads needed, they are figures of draws. The plan can fall outside it if the typical value of a coefficient is one of its ends. rises and never rank above every number. The last row counts the draws that a formula refuses.',
      'The chances of the stages add up to 1; if two stages have equal capacity, the earlier one is the first limit.',
    ],
    sources: [
      'McKay, Beckman and Conover, Technometrics 21:239 (1979): Latin hypercube',
      'Coefficients: REF.LIST names the source of each',
    ],
    example: { formula: `=SILT.PLAN.RANGE("metric",${example},TRUE)`, gives: 'one row per result, then one per stage' },
    unpublished:
      'Percentiles of a sample of PLAN.COMPARE; quantiles are checked against closed forms, in the tests of sampling.',
  }),
  define({
    name: 'PLAN.DRIVERS',
    summary: 'Which uncertain figures affect a result most, ranked: measure the one in the first row first.',
    arguments: {
      scenario,
      result: { choice: [...keyOf.keys()], meaning: 'a result by its name in PLAN.COMPARE, such as flow needed' },
    },
    result: {
      rows: {
        input: { text: true },
        unit: { text: true },
        low: { mixed: true },
        plan: { mixed: true },
        high: { mixed: true },
        atLow: { mixed: true, heading: 'result at low' },
        atHigh: { mixed: true, heading: 'result at high' },
        share: { kind: 'share', heading: 'share of the variance' },
      },
    },
    compute: (given, profile) =>
      withOneScenario(given.scenario, profile, (read) => planDrivers(read, keyOf.get(given.result) ?? 'feed', profile)),
    formula:
      'share = variance of the means of 32 equal bins of the input / variance of the result, minus what chance alone gives',
    notes: [
      varying,
      sample,
      limits,
      'Result at low and at high: that one input is at its end and all others are as planned. The last row is what no single input explains.',
    ],
    sources: [
      'Saltelli et al., Global Sensitivity Analysis (2008): first-order index',
      'Kelley, Proceedings of the National Academy of Sciences 21:554 (1935): correction of the correlation ratio',
    ],
    example: {
      formula: `=SILT.PLAN.DRIVERS("metric",${example},"solids captured",TRUE)`,
      gives: 'one row per input, ranked',
    },
    unpublished:
      'Shares of the variance of PLAN.COMPARE; checked against the published indices of Ishigami’s function, in the tests of sampling.',
  }),
];
