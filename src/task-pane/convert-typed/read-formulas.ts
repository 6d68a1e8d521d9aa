import type { BookCell } from './book';
import { type Part, readFormula } from './read-formula';

/** Reads each cell's formula once. */
export class ReadFormulas {
  private readonly read = new Map<BookCell, Part | undefined>();

  of(cell: BookCell): Part | undefined {
    if (this.read.has(cell)) return this.read.get(cell);
    const part = cell.formula === undefined ? undefined : readFormula(cell.formula);
    this.read.set(cell, part);
    return part;
  }
}
