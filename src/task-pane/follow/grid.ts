import type { CellResult } from '../../hosts/workbook-model';

/** Values as a formula works with them: rows of equal length, at least one of each. */
export type Grid = readonly (readonly CellResult[])[];

/** What a formula does that is not followed here, as the end of a sentence. */
export class NotFollowed extends Error {
  constructor(what: string) {
    super(what);
    this.name = 'NotFollowed';
  }
}

/** What a cell shows, without its number format. */
export function shownValue(value: CellResult): string {
  return typeof value === 'object' ? value.error.code : String(value);
}

export function single(value: CellResult): Grid {
  return [[value]];
}

export function widthOf(grid: Grid): number {
  return grid[0]?.length ?? 0;
}

/** The first value, for arguments that take only one. */
export function first(grid: Grid): CellResult {
  return grid[0]?.[0] ?? '';
}

/**
 * Computes cell by cell, as spreadsheet arrays do: equal sizes, or one row or column for all. An error passes
 * through.
 */
export function cellByCell(grids: readonly Grid[], work: (...values: CellResult[]) => CellResult): Grid {
  const rows = Math.max(...grids.map((grid) => grid.length));
  const columns = Math.max(...grids.map(widthOf));
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => {
      const values = grids.map((grid) => at(grid, row, column));
      return values.find((value) => typeof value === 'object') ?? work(...values);
    }),
  );
}

function at(grid: Grid, row: number, column: number): CellResult {
  const line = grid.length === 1 ? grid[0] : grid[row];
  const value = line?.length === 1 ? line[0] : line?.[column];
  return value ?? { error: { code: '#N/A', message: '' } };
}

/** A number, as arithmetic takes a cell: blank is 0. */
export function numberIn(value: CellResult): number {
  if (value === '') return 0;
  const number = typeof value === 'object' ? Number.NaN : Number(value);
  if (Number.isFinite(number)) return number;
  throw new NotFollowed('works with text as a number');
}

export function isTrue(value: CellResult): boolean {
  return value === true || (typeof value === 'number' && value !== 0);
}

/** Compares as cells do: text without regard to case, blank as empty text or 0. */
export function compared(one: CellResult, other: CellResult): number {
  const [a, b] = [comparable(one, other), comparable(other, one)];
  const order = (value: number | string): number => (typeof value === 'string' ? 1 : 0);
  if (typeof a !== typeof b) return order(a) - order(b);
  return a < b ? -1 : a > b ? 1 : 0;
}

function comparable(value: CellResult, beside: CellResult): number | string {
  if (value === '' && typeof beside === 'number') return 0;
  if (typeof value === 'boolean') return Number(value);
  return typeof value === 'string' ? value.toLowerCase() : typeof value === 'number' ? value : '';
}
