import type { WorkbookData } from '../workbook-model';

/** Rows or columns of a sheet that come or go. */
export interface Lines {
  readonly sheet: string;
  readonly across: 'row' | 'column';
  readonly first: number;
  readonly count: number;
}

interface Note {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly note: string;
}

/**
 * Notes of cells, which the embedded spreadsheet does not hold itself. They belong to a sheet by its id, so that they stay
 * with it under another name, and move with the rows and columns of their cells.
 */
export class Notes {
  private readonly idOf: (sheet: string) => string | undefined;
  private notes: readonly Note[] = [];
  /** Notes of deleted rows and columns, the latest first, for when that is undone. */
  private readonly gone: (Lines & { readonly notes: readonly Note[] })[] = [];

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

  inserted(lines: Lines, isUndo: boolean): void {
    const { sheet, across, first, count } = lines;
    this.notes = this.notes.map((note) =>
      note.sheet === sheet && note[across] >= first ? { ...note, [across]: note[across] + count } : note,
    );
    const back = this.gone.findIndex(
      (one) => one.sheet === sheet && one.across === across && one.first === first && one.count === count,
    );
    if (isUndo && back >= 0) this.notes = [...this.notes, ...this.gone.splice(back, 1).flatMap(({ notes }) => notes)];
  }

  deleted(lines: Lines): void {
    const { sheet, across, first, count } = lines;
    const isIn = (note: Note): boolean => note.sheet === sheet && note[across] >= first && note[across] < first + count;
    this.gone.unshift({ ...lines, notes: this.notes.filter(isIn) });
    this.notes = this.notes
      .filter((note) => !isIn(note))
      .map((note) =>
        note.sheet === sheet && note[across] >= first ? { ...note, [across]: note[across] - count } : note,
      );
  }
}
