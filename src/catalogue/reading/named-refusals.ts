import { Refusal } from '../../formulas/refusal';
import type { Profile } from '../../units/profile';
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
}

/** Turns the refusal of a formula into a message that names the input at fault. */
export function withNamedRefusals<V>({ place, inputs, renamed, profile }: RefusalNames, compute: () => V): V {
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
    throw new ArgumentError(`${place}${inputName(inputs, keyOf(error.argument))}: ${advice}`);
  }
}
