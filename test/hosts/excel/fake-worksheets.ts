import { ExcelError, looks, Proxied, type Resolve } from './fake-proxies';
import { FakeRange } from './fake-range';
import { FakeSheet } from './fake-sheet';

export class FakeWorksheet extends Proxied<FakeSheet> {
  protected override fetch(sheet: FakeSheet, property: string): unknown {
    return property === 'name' ? sheet.name : undefined;
  }
  get name(): string {
    return this.get('name');
  }
  getRangeByIndexes(row: number, column: number, rows: number, columns: number): FakeRange {
    return new FakeRange(this.context, () => {
      const sheet = this.resolve();
      return sheet && { sheet, row, column, rows, columns };
    });
  }
  getCell(row: number, column: number): FakeRange {
    return this.getRangeByIndexes(row, column, 1, 1);
  }
  getUsedRangeOrNullObject(): FakeRange {
    return new FakeRange(
      this.context,
      () => {
        const sheet = this.resolve();
        if (sheet === undefined || sheet.cells.size === 0) return undefined;
        const places = [...sheet.cells.keys()].map((key) => key.split(',').map(Number) as [number, number]);
        const rows = places.map(([row]) => row);
        const columns = places.map(([, column]) => column);
        const [row, column] = [Math.min(...rows), Math.min(...columns)];
        return { sheet, row, column, rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
      },
      true,
    );
  }
  delete(): void {
    this.act((sheet) => {
      this.context.excel.sheets = this.context.excel.sheets.filter((one) => one !== sheet);
    });
  }
  activate(): void {
    this.act(() => undefined);
  }
  get freezePanes(): unknown {
    return this.looks('freeze');
  }
  get tables(): unknown {
    return this.looks('tables');
  }
  get charts(): unknown {
    return this.looks('charts');
  }
  get pageLayout(): unknown {
    return this.looks('page');
  }
  get notes(): unknown {
    return this.looks('notes');
  }
  set tabColor(color: string) {
    this.act((sheet) => sheet.done.push(`tab ${color}`));
  }
  set showGridlines(shown: boolean) {
    this.act((sheet) => sheet.done.push(`gridlines ${shown}`));
  }
  private looks(path: string): unknown {
    return looks(this.context, (what) => this.resolve()?.done.push(what), path);
  }
}

export class FakeWorksheets extends Proxied<readonly FakeSheet[]> {
  protected override fetch(sheets: readonly FakeSheet[]): unknown {
    return sheets.map((sheet) => {
      const worksheet = new FakeWorksheet(this.context, () => sheet);
      worksheet.load('name');
      return worksheet;
    });
  }
  get items(): FakeWorksheet[] {
    return this.get('items/name');
  }
  private byName(name: string): Resolve<FakeSheet> {
    return () => this.context.excel.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  }
  getItem(name: string): FakeWorksheet {
    return new FakeWorksheet(this.context, this.byName(name));
  }
  getItemOrNullObject(name: string): FakeWorksheet {
    return new FakeWorksheet(this.context, this.byName(name), true);
  }
  add(name: string): FakeWorksheet {
    const sheet = new FakeSheet(name);
    this.context.queue(() => {
      if (this.byName(name)() !== undefined) throw new ExcelError('ItemAlreadyExists');
      this.context.excel.sheets.push(sheet);
    });
    return new FakeWorksheet(this.context, () => this.context.excel.sheets.find((one) => one === sheet));
  }
  get onChanged(): unknown {
    return this.context.excel.event(this.context, 'changed');
  }
  get onCalculated(): unknown {
    return this.context.excel.event(this.context, 'calculated');
  }
}
