import { ArgumentError } from '../catalogue/reading/argument-error';
import { Refusal } from '../formulas/refusal';
import { HostError } from '../hosts/sheet-host';
import { Unreadable } from '../units/unreadable';

/** An error that the user can correct, in one sentence that says what to do. */
export class UserError extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = 'UserError';
  }
}

/** The sentence of an error for the user; undefined for a fault of the add-in. */
export function sentenceIn(error: unknown): string | undefined {
  if (error instanceof UserError || error instanceof HostError) return error.message;
  if (error instanceof ArgumentError || error instanceof Refusal || error instanceof Unreadable) return error.message;
  // The writers are loaded later, so their error is recognized by its name.
  return error instanceof Error && error.name === 'DrawingTooLarge' ? error.message : undefined;
}
