import { Unreadable } from '../../units/unreadable';

/** A refusal whose message is whole: argument, what was given, what is allowed, in the user's units. */
export class ArgumentError extends Error {
  readonly code: '#VALUE!' | '#N/A';
  constructor(message: string, code: '#VALUE!' | '#N/A' = '#VALUE!') {
    super(message);
    this.name = 'Complaint';
    this.code = code;
  }
}

/** What units could not read, as a complaint that begins with the name; anything else as it is. */
export function asArgumentError(name: string, error: unknown): unknown {
  return error instanceof Unreadable ? new ArgumentError(`${name}: ${error.message}`) : error;
}

/** Puts the place before a complaint. */
export function withPlace<V>(place: string, read: () => V): V {
  try {
    return read();
  } catch (error) {
    if (error instanceof ArgumentError) throw new ArgumentError(place + error.message, error.code);
    throw error;
  }
}
