import { Refusal } from '../../formulas/refusal';
import type { Profile } from '../../units/profile';
import type { NamedInputs } from '../named-input';
import { Complaint } from './complaint';
import { inputName } from './named-table';
import { digitsToType, type KindOf, word } from './wording';

export interface PlannedWith {
  /** Begins every message. */
  readonly place: string;
  readonly inputs: NamedInputs;
  /** What formulas call an argument, by the key of the input that it stands for. */
  readonly renamed: Readonly<Record<string, string>>;
  readonly profile: Profile;
}

/** Puts the refusal of a formula into a message that names the input at fault. */
export function planned<V>({ place, inputs, renamed, profile }: PlannedWith, compute: () => V): V {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const keyOf = (argument: string) => renamed[argument] ?? argument;
    const kindOf: KindOf = (argument) => {
      const spec = inputs[keyOf(argument)];
      return spec !== undefined && 'kind' in spec ? spec.kind : undefined;
    };
    const advice = word({ text: error.advice, figures: error.figures }, kindOf, profile, digitsToType);
    throw new Complaint(`${place}${inputName(inputs, keyOf(error.argument))}: ${advice}`);
  }
}
