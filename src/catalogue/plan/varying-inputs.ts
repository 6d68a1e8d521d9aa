import type { Scenario, ScenarioFactors } from '../../formulas/plan/plan-scenario';
import type { Kind } from '../../units/kinds';
import { coefficient } from '../coefficients/all';
import { inputName } from '../reading/input-table';
import type { NamedInput } from './named-input';
import type { ReadScenario } from './scenario';
import { type InputKey, inputKeys, scenarioInputs } from './scenario-inputs';

/**
 * An uncertain figure of a scenario: its range, and how to replace it by another figure. `planResults(scenario,
 * factors)` then calculates every result, without side effects, in some tens of microseconds.
 */
export interface VaryingInput {
  /** The name of the input, or of the coefficient if no input sets it. */
  readonly name: string;
  readonly kind: Kind;
  /** In SI; low and high equal the plan if no range is published. */
  readonly low: number;
  readonly plan: number;
  readonly high: number;
  readonly put: (into: Drawn, si: number) => void;
}

/** A scenario and its factors, changed in place. */
export interface Drawn {
  readonly scenario: { -readonly [K in keyof Scenario]: Scenario[K] };
  readonly factors: { -readonly [K in keyof ScenarioFactors]: ScenarioFactors[K] };
}

/** Factors that no input sets, with their coefficients; each capture counts only for its own settler. */
const factorKeys = {
  ammoniaFactor: 'ammonia factor',
  oxygenRatio: 'oxygen ratio system',
  swirlCapture: 'swirl capture',
  radialCapture: 'radial capture',
  alpha: 'aerator alpha',
  beta: 'aerator beta',
} as const satisfies Partial<Record<keyof ScenarioFactors, string>>;

/**
 * What varies in a scenario: coefficients left at their default, and inputs typed as a range. Limits, choices and inputs
 * typed as one figure do not vary.
 */
export function varyingInputs({ scenario, defaults, ranges }: ReadScenario): readonly VaryingInput[] {
  const taken = new Set(defaults);
  const inputs = inputKeys.flatMap((key): readonly VaryingInput[] => {
    const spec: NamedInput = scenarioInputs[key];
    const name = inputName(scenarioInputs, key);
    const range = ranges.get(key);
    if (range !== undefined && 'kind' in spec) {
      const { low, middle, high } = range;
      return [{ name, kind: spec.kind, low, plan: middle, high, put: putInput(key) }];
    }
    const from = coefficientOf(spec, name);
    return from === undefined || !taken.has(name) || key === 'settler' ? [] : [varying(name, from, putInput(key))];
  });
  const factors = (Object.keys(factorKeys) as readonly (keyof typeof factorKeys)[]).flatMap((key) => {
    const unused = key.endsWith('Capture') && key !== `${scenario.settler}Capture`;
    return unused ? [] : [varying(factorKeys[key], factorKeys[key], ({ factors: into }, si) => (into[key] = si))];
  });
  return [...inputs, ...factors];
}

/** The coefficient that an input uses if it is left out; none if it is a limit or a choice of the farmer. */
function coefficientOf(spec: NamedInput, name: string): string | undefined {
  if ('reader' in spec) return spec.coefficient;
  if (!('kind' in spec) || spec.decided) return undefined;
  return spec.default === 'coefficient' ? name : undefined;
}

function putInput(key: InputKey): VaryingInput['put'] {
  if (key === 'crop') {
    return ({ scenario }, feed) => {
      scenario.crop = { ...scenario.crop, feed };
    };
  }
  return ({ scenario }, si) => {
    // Every other input with a coefficient is a figure of its own name.
    (scenario as Record<string, unknown>)[key] = si;
  };
}

function varying(name: string, key: string, put: VaryingInput['put']): VaryingInput {
  const { kind, low, typical, high } = coefficient(key);
  return { name, kind, low: low ?? typical, plan: typical, high: high ?? typical, put };
}
