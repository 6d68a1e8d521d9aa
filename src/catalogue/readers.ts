import { Unreadable } from '../units/unreadable';
import type { CellValue, ReaderArgument } from './argument';

/** Any one cell, handed on as it is to a function that reads it with the help of its other arguments. */
export function anyCell(meaning: string, accepts: string): ReaderArgument<CellValue> {
  return { meaning, accepts, reader: (value) => value };
}

/** Words in a cell. */
export function words(meaning: string, accepts: string): ReaderArgument<string> {
  return {
    meaning,
    accepts,
    reader: (value) => {
      if (typeof value !== 'string') throw new Unreadable(`${value} is not text; give ${accepts}`);
      return value.trim();
    },
  };
}
