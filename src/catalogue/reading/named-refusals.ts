import { Refusal } from '../../formulas/refusal';
import type { Profile } from '../../units/profile';
import { wordQuantity } from '../../units/quantity';
import type { NamedInputs } from '../plan/named-input';
import { ArgumentError } from './argument-error';
import { inputName } from './input-table';
import { digitsToType, formatMessage, type KindOf } from './wording';

export interface RefusalNames {
  /** Begins every message. */
  readonly place: string;
  readonly inputs: NamedInputs;
  /** The key of the input for each argument name that formulas use. */
  readonly renamed: Readonly<Record<string, string>>;
  readonly profile: Profile;
  /** What each input was given or left at, in SI, so that a message says what it refuses. */
  readonly values: Readonly<Record<string, unknown>>;
}

/** Turns the refusal of a formula into a message that names the input at fault. */
export function withNamedRefusals<V>({ place, inputs, renamed, profile, values }: RefusalNames, compute: () => V): V {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const keyOf = (argument: string) => renamed[argument] ?? argument;
    const kindOf: KindOf = (argument) => {
      const spec = inputs[keyOf(argument)];
      return spec !== undefined && 'kind' in spec ? spec.kind : undefined;
    };
    const advice = formatMessage({ text: error.advice, figures: error.figures }, kindOf, profile, digitsToType);
    const key = keyOf(error.argument);
    const [given, kind] = [values[key], kindOf(error.argument)];
    const what = kind && typeof given === 'number' ? `${wordQuantity(profile, kind, given)} is not allowed; ` : '';
    throw new ArgumentError(`${place}${inputName(inputs, key)}: ${what}${advice}`);
  }
}
