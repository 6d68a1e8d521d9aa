import { Unreadable } from '../../units/unreadable';

/** A refusal with its full message: argument, what was given and what is allowed, in the user's units. */
export class ArgumentError extends Error {
  readonly code: '#VALUE!' | '#N/A';
  constructor(message: string, code: '#VALUE!' | '#N/A' = '#VALUE!') {
    super(message);
    this.name = 'ArgumentError';
    this.code = code;
  }
}

/** Turns text that units cannot read into an ArgumentError that begins with the name; returns other errors as they are. */
export function asArgumentError(name: string, error: unknown): unknown {
  return error instanceof Unreadable ? new ArgumentError(`${name}: ${error.message}`) : error;
}

/** Reads something, and begins the message of what cannot be read with the name. */
export function namingErrors<V>(name: string, read: () => V): V {
  try {
    return read();
  } catch (error) {
    throw asArgumentError(name, error);
  }
}

/** Puts the place before the message of an ArgumentError. */
export function withPlace<V>(place: string, read: () => V): V {
  try {
    return read();
  } catch (error) {
    if (error instanceof ArgumentError) throw new ArgumentError(place + error.message, error.code);
    throw error;
  }
}
