import type { IRange } from '@univerjs/core';

/** The cells that the formula in one cell fills, or would fill where there is no room. */
export interface Spill {
  readonly row: number;
  readonly column: number;
  readonly range: IRange;
}

const none: readonly Spill[] = [];

export function isInside({ startRow, endRow, startColumn, endColumn }: IRange, row: number, column: number): boolean {
  return row >= startRow && row <= endRow && column >= startColumn && column <= endColumn;
}

export function intersect(one: IRange, other: IRange): boolean {
  return (
    one.startRow <= other.endRow &&
    other.startRow <= one.endRow &&
    one.startColumn <= other.endColumn &&
    other.startColumn <= one.endColumn
  );
}

/** The spills of one sheet, found by their first cell or by a row that they cross. */
export class SpillIndex {
  private readonly origins = new Map<string, Spill>();
  private readonly rows = new Map<number, Spill[]>();

  get(row: number, column: number): IRange | undefined {
    return this.origins.get(`${row},${column}`)?.range;
  }

  set(row: number, column: number, range: IRange): void {
    this.delete(row, column);
    const spill = { row, column, range };
    this.origins.set(`${row},${column}`, spill);
    for (let at = range.startRow; at <= range.endRow; at += 1) {
      const line = this.rows.get(at);
      if (line === undefined) this.rows.set(at, [spill]);
      else line.push(spill);
    }
  }

  delete(row: number, column: number): void {
    const spill = this.origins.get(`${row},${column}`);
    if (spill === undefined) return;
    this.origins.delete(`${row},${column}`);
    for (let at = spill.range.startRow; at <= spill.range.endRow; at += 1) {
      const line = this.rows.get(at)?.filter((one) => one !== spill) ?? [];
      if (line.length === 0) this.rows.delete(at);
      else this.rows.set(at, line);
    }
  }

  /** Every spill that covers a cell. */
  at(row: number, column: number): readonly Spill[] {
    const line = this.rows.get(row);
    if (line === undefined) return none;
    return line.filter(({ range }) => column >= range.startColumn && column <= range.endColumn);
  }

  all(): Iterable<Spill> {
    return this.origins.values();
  }
}

/** The spills of every sheet of every open workbook. */
export class SpillIndexes {
  private readonly sheets = new Map<string, SpillIndex>();

  of(unitId: string, sheetId: string): SpillIndex {
    const key = `${unitId}\n${sheetId}`;
    let index = this.sheets.get(key);
    if (index === undefined) {
      index = new SpillIndex();
      this.sheets.set(key, index);
    }
    return index;
  }

  all(): Iterable<readonly [unitId: string, sheetId: string, index: SpillIndex]> {
    return Array.from(this.sheets, ([key, index]) => {
      const [unitId = '', sheetId = ''] = key.split('\n');
      return [unitId, sheetId, index] as const;
    });
  }
}

/** The parts of one range that another does not cover; both begin in the same cell. */
export function outside(range: IRange, other: IRange | undefined): IRange[] {
  const { startRow, startColumn, endRow, endColumn } = range;
  const lastRow = Math.min(endRow, other?.endRow ?? startRow);
  const lastColumn = Math.min(endColumn, other?.endColumn ?? startColumn);
  return [
    ...(lastColumn < endColumn ? [{ startRow, endRow, startColumn: lastColumn + 1, endColumn }] : []),
    ...(lastRow < endRow ? [{ startRow: lastRow + 1, endRow, startColumn, endColumn: lastColumn }] : []),
  ];
}
