import { type CellRange, contains } from '../address';
import { type LineMove, movedLines } from '../moved-lines';
import type { WorkbookData } from '../workbook-model';

interface Note {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly note: string;
}

interface Cells {
  readonly sheet: string;
  readonly range: CellRange;
}

const isIn = ({ sheet, range }: Cells, note: Note): boolean =>
  note.sheet === sheet && contains(range, note.row, note.column);

/**
 * Notes of cells, which the embedded spreadsheet does not hold itself. They belong to a sheet by its id, so that they stay
 * with it under another name, and move with their cells.
 */
export class Notes {
  private readonly idOf: (sheet: string) => string | undefined;
  private notes: readonly Note[] = [];
  /** Notes of cells that were deleted or written over, the latest first, by what did it, for when that is undone. */
  private readonly gone: { readonly by: string; readonly notes: readonly Note[] }[] = [];

  /** `idOf` gives the id of a sheet by its present name. */
  constructor(workbook: WorkbookData, idOf: (sheet: string) => string | undefined) {
    this.idOf = idOf;
    this.add(workbook);
  }

  add(workbook: WorkbookData): void {
    for (const sheet of workbook.sheets) {
      for (const { row, column, note } of sheet.cells) if (note !== undefined) this.set(sheet.name, row, column, note);
    }
  }

  set(name: string, row: number, column: number, note: string): void {
    const sheet = this.idOf(name);
    if (sheet === undefined) return;
    const others = this.notes.filter((one) => one.sheet !== sheet || one.row !== row || one.column !== column);
    this.notes = note === '' ? others : [...others, { sheet, row, column, note }];
  }

  at(name: string, row: number, column: number): string | undefined {
    const id = this.idOf(name);
    return this.notes.find((one) => one.sheet === id && one.row === row && one.column === column)?.note;
  }

  /** The notes of a sheet by its id. */
  of(id: string): readonly Note[] {
    return this.notes.filter(({ sheet }) => sheet === id);
  }

  /** Gives the copy of a sheet its notes. */
  copied(from: string, to: string): void {
    this.notes = [...this.notes, ...this.of(from).map((note) => ({ ...note, sheet: to }))];
  }

  /** Rows or columns of a sheet come, go or move. */
  moved(sheet: string, move: LineMove, isUndo: boolean): void {
    const { across, first, count } = move;
    const deleted: Note[] = [];
    this.notes = this.notes.flatMap((note) => {
      if (note.sheet !== sheet) return [note];
      const [now] = movedLines(across, note[across], 1, [move]) ?? [];
      if (now === undefined) deleted.push(note);
      return now === undefined ? [] : [{ ...note, [across]: now }];
    });
    if (isUndo && count > 0 && move.to === undefined) this.bringBack(JSON.stringify([sheet, across, first, -count]));
    if (deleted.length > 0) this.gone.unshift({ by: JSON.stringify([sheet, across, first, count]), notes: deleted });
  }

  /** Cells are cut and pasted elsewhere; notes that were there are written over. */
  movedCells(from: Cells, to: Cells, isUndo: boolean): void {
    const overwritten = this.notes.filter((note) => isIn(to, note) && !isIn(from, note));
    this.notes = this.notes
      .filter((note) => !overwritten.includes(note))
      .map((note) =>
        isIn(from, note)
          ? {
              ...note,
              sheet: to.sheet,
              row: note.row - from.range.row + to.range.row,
              column: note.column - from.range.column + to.range.column,
            }
          : note,
      );
    if (isUndo) this.bringBack(JSON.stringify([to, from]));
    else if (overwritten.length > 0) this.gone.unshift({ by: JSON.stringify([from, to]), notes: overwritten });
  }

  private bringBack(by: string): void {
    const at = this.gone.findIndex((one) => one.by === by);
    if (at >= 0) this.notes = [...this.notes, ...this.gone.splice(at, 1).flatMap(({ notes }) => notes)];
  }
}
