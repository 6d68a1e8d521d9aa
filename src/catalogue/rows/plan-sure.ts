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
  'What varies: coefficients that the scenario leaves at their default, between the low and high of REF.LIST, and inputs typed as a range. Limits, choices and what was typed as one figure do not. Each is a triangle with its typical value as mode, in the logarithm where the ends are more than five times apart; independent of each other.';
const sample =
  '1,024 points of a Latin hypercube whose shuffles the name of each input fixes: the same cells always give the same answer, and one more range changes no other input’s draws.';

const example =
  '{"fish count",350;"fish mass",225;"feeding rate",0.015;"tank volume",4200;"pump flow",94;"drums",2;"drum diameter",570;"pads",4;"pad area",0.28;"media volume",680;"bed area",26}';

const keyOf = new Map<string, ResultKey>(figureResults.map((key) => [resultName(key), key]));

/** How sure a plan is and what it hangs on. */
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
    formula: 'low and high are the 10th and 90th percentile of the draws; plan is as PLAN.COMPARE gives it',
    notes: [
      varying,
      sample,
      'Four draws of five lie in the band. The plan may lie outside it, where the typical value of a coefficient is one of its ends. rises and never rank above every number. Draws that a formula refuses are counted in the last row.',
      'The chances of the stages add up to 1; of stages with equal capacity the earlier is the first limit.',
    ],
    sources: [
      'McKay, Beckman and Conover, Technometrics 21:239 (1979): Latin hypercube',
      'Coefficients: REF.LIST names the source of each',
    ],
    example: { formula: `=SILT.PLAN.RANGE("metric",${example},TRUE)`, gives: 'a row a result, then a row a stage' },
    unpublished:
      'Percentiles of a sample of PLAN.COMPARE; quantiles are checked against closed forms, in the tests of sampling.',
  }),
  define({
    name: 'PLAN.DRIVERS',
    summary: 'Which uncertain figures a result hangs on, ranked: the first row is what to measure first.',
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
      'share = variance of the means of 32 equal bins of the input / variance of the result, less what chance gives',
    notes: [
      varying,
      sample,
      'Result at low and at high: with that one input at its end and all others as planned. The last row is what no single input explains.',
    ],
    sources: [
      'Saltelli et al., Global Sensitivity Analysis (2008): first-order index',
      'Kelley, Proceedings of the National Academy of Sciences 21:554 (1935): correction of the correlation ratio',
    ],
    example: {
      formula: `=SILT.PLAN.DRIVERS("metric",${example},"solids captured",TRUE)`,
      gives: 'a row an input, ranked',
    },
    unpublished:
      'Shares of the variance of PLAN.COMPARE; checked against the published indices of Ishigami’s function, in the tests of sampling.',
  }),
];
