import type { WorkbookData } from '../workbook-model';

/** Notes of cells, which the embedded spreadsheet does not hold itself. They stay at their address. */
export class Notes {
  private readonly texts = new Map<string, string>();

  constructor(workbook: WorkbookData) {
    this.add(workbook);
  }

  add(workbook: WorkbookData): void {
    for (const sheet of workbook.sheets) {
      for (const { row, column, note } of sheet.cells) if (note !== undefined) this.set(sheet.name, row, column, note);
    }
  }

  set(sheet: string, row: number, column: number, note: string): void {
    const key = JSON.stringify([sheet, row, column]);
    if (note === '') this.texts.delete(key);
    else this.texts.set(key, note);
  }

  at(sheet: string, row: number, column: number): string | undefined {
    return this.texts.get(JSON.stringify([sheet, row, column]));
  }

  of(sheet: string): readonly { readonly row: number; readonly column: number; readonly note: string }[] {
    return [...this.texts].flatMap(([key, note]) => {
      const [name, row, column] = JSON.parse(key) as [string, number, number];
      return name === sheet ? [{ row, column, note }] : [];
    });
  }
}
