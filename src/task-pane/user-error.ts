import { ArgumentError } from '../catalogue/reading/argument-error';
import { Refusal } from '../formulas/refusal';
import { HostError } from '../hosts/sheet-host';
import { Unreadable } from '../units/unreadable';

/** Something that cannot be done, in one sentence that says what to do instead. */
export class UserError extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = 'UserError';
  }
}

/** The sentence of an error that was meant to be read; undefined for a fault of ours. */
export function sentenceIn(error: unknown): string | undefined {
  if (error instanceof UserError || error instanceof HostError) return error.message;
  if (error instanceof ArgumentError || error instanceof Refusal || error instanceof Unreadable) return error.message;
  // The writers are loaded when asked for, so that their error is known by its name alone.
  return error instanceof Error && error.name === 'DrawingTooLarge' ? error.message : undefined;
}
