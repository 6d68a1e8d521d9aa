import type { IRange, IUnitRange } from '@univerjs/core';
import type { FormulaDataModel } from '@univerjs/engine-formula';
import { intersect, SpillIndexes } from './spill-index';

/** The first cells of spills with what they fill, as the engine keeps them. */
export type StoredSpills = ReturnType<FormulaDataModel['getArrayFormulaRange']>;

/** The spills known while one calculation runs. */
export class SpillState {
  /** The cells that each formula filled before this calculation. */
  readonly before: SpillIndexes;
  /** The cells that each formula computed in this calculation fills. */
  readonly now = new SpillIndexes();
  /** Formulas computed in this calculation that found no room, with the cells that they would fill. */
  readonly blocked = new SpillIndexes();
  private dirty: IUnitRange[] = [];
  private readonly vacated: IUnitRange[] = [];

  constructor(before: SpillIndexes) {
    this.before = before;
  }

  /** Cells whose values have changed since those that read them may have been computed. */
  addDirty(unitId: string, sheetId: string, range: IRange): void {
    this.dirty.push({ unitId, sheetId, range });
  }

  addVacated(unitId: string, sheetId: string, range: IRange): void {
    this.vacated.push({ unitId, sheetId, range });
  }

  /** The ranges to compute from next; each is returned once. */
  takeDirty(isBlocked: (unitId: string, sheetId: string, row: number, column: number) => boolean): IUnitRange[] {
    const dirty = this.dirty;
    this.dirty = [];
    if (this.vacated.length === 0) return dirty;
    for (const spills of [this.blocked, this.before])
      for (const [unitId, sheetId, index] of spills.all()) {
        const free = this.vacated.filter((range) => range.unitId === unitId && range.sheetId === sheetId);
        if (free.length === 0) continue;
        for (const { row, column, range } of index.all())
          if (isBlocked(unitId, sheetId, row, column) && free.some((one) => intersect(one.range, range)))
            dirty.push({ unitId, sheetId, range: cell(row, column) });
      }
    this.vacated.length = 0;
    return dirty;
  }
}

export function cell(row: number, column: number): IRange {
  return { startRow: row, endRow: row, startColumn: column, endColumn: column };
}

export function indexed(stored: StoredSpills): SpillIndexes {
  const indexes = new SpillIndexes();
  for (const [unitId, sheets] of Object.entries(stored))
    for (const [sheetId, rows] of Object.entries(sheets ?? {})) {
      const index = indexes.of(unitId, sheetId);
      for (const [row, line] of Object.entries(rows ?? {}))
        for (const [column, range] of Object.entries(line ?? {}))
          if (range) index.set(Number(row), Number(column), range as IRange);
    }
  return indexes;
}
