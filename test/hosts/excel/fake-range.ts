import { parseRange } from '../../../src/hosts/address';
import { ExcelError, looks, Proxied } from './fake-proxies';
import type { Cell, FakeSheet, Place } from './fake-sheet';
import { FakeWorksheet } from './fake-worksheets';

export class FakeRange extends Proxied<Place> {
  protected override fetch(place: Place, property: string): unknown {
    const each = (pick: (cell: Cell | undefined, key: string) => unknown): unknown[][] =>
      Array.from({ length: place.rows }, (_, down) =>
        Array.from({ length: place.columns }, (__, across) => {
          const key = `${place.row + down},${place.column + across}`;
          return pick(place.sheet.cells.get(key), key);
        }),
      );
    if (property === 'values') this.context.excel.cellsRead += place.rows * place.columns;
    if (property === 'values') return each((cell) => cell?.value ?? '');
    if (property === 'formulas')
      return each((cell, key) => cell?.formula ?? this.repeated(place.sheet, key) ?? cell?.value ?? '');
    if (property === 'valueTypes') return each((cell) => (/^#/.test(String(cell?.value)) ? 'Error' : 'Unknown'));
    if (property === 'numberFormat') return each((cell) => cell?.format ?? 'General');
    return { rowIndex: place.row, columnIndex: place.column, rowCount: place.rows, columnCount: place.columns }[
      property
    ];
  }
  private repeated(sheet: FakeSheet, key: string): string | undefined {
    if (!sheet.repeatsFormulas) return undefined;
    const [row, column] = key.split(',').map(Number) as [number, number];
    const anchor = this.anchorOf(sheet, row, column);
    return anchor === undefined ? undefined : sheet.cells.get(anchor)?.formula;
  }
  private anchorOf(sheet: FakeSheet, row: number, column: number): string | undefined {
    for (const [anchor, address] of sheet.spills) {
      const range = parseRange(address)!;
      const isInside =
        row >= range.row &&
        row < range.row + range.rows &&
        column >= range.column &&
        column < range.column + range.columns;
      if (isInside) return anchor;
    }
    return undefined;
  }
  get values(): unknown[][] {
    return this.get('values');
  }
  get formulas(): unknown[][] {
    return this.get('formulas');
  }
  get valueTypes(): unknown[][] {
    return this.get('valueTypes');
  }
  get numberFormat(): unknown[][] {
    return this.get('numberFormat');
  }
  get rowIndex(): number {
    return this.get('rowIndex');
  }
  get columnIndex(): number {
    return this.get('columnIndex');
  }
  get rowCount(): number {
    return this.get('rowCount');
  }
  get columnCount(): number {
    return this.get('columnCount');
  }
  set formulas(block: unknown[][]) {
    this.act(({ sheet, row, column, rows, columns }) => {
      if (sheet.isProtected) throw new ExcelError('AccessDenied');
      if (block.length !== rows || block.some((line) => line.length !== columns))
        throw new ExcelError('InvalidArgument');
      block.forEach((line, down) => {
        line.forEach((content, across) => {
          if (content !== null) sheet.put(row + down, column + across, content);
        });
      });
    });
  }
  set numberFormat(formats: unknown) {
    this.act(({ sheet, row, column }) => {
      if (sheet.isProtected) throw new ExcelError('AccessDenied');
      sheet.done.push(`numberFormat ${row},${column} ${JSON.stringify(formats)}`);
    });
  }
  get worksheet(): FakeWorksheet {
    return new FakeWorksheet(this.context, () => this.resolve()?.sheet);
  }
  get format(): unknown {
    return this.looks('format');
  }
  get dataValidation(): unknown {
    return this.looks('validation');
  }
  get conditionalFormats(): unknown {
    return this.looks('conditions');
  }
  private looks(path: string): unknown {
    return looks(this.context, (what) => this.resolve()?.sheet.done.push(what), path);
  }
  merge(): void {
    this.act(({ sheet, row, column }) => sheet.done.push(`merge ${row},${column}`));
  }
  getColumn(): FakeRange {
    return this;
  }
  select(): void {
    this.act((place) => {
      this.context.excel.selected = place;
    });
  }
  getSpillParentOrNullObject(): FakeRange {
    return new FakeRange(
      this.context,
      () => {
        const place = this.resolve();
        const anchor = place && this.anchorOf(place.sheet, place.row, place.column);
        if (anchor === undefined) return undefined;
        const [row, column] = anchor.split(',').map(Number) as [number, number];
        return { sheet: place!.sheet, row, column, rows: 1, columns: 1 };
      },
      true,
    );
  }
  getSpillingToRangeOrNullObject(): FakeRange {
    return new FakeRange(
      this.context,
      () => {
        const place = this.resolve();
        const address = place?.sheet.spills.get(`${place.row},${place.column}`);
        return address === undefined ? undefined : { sheet: place!.sheet, ...parseRange(address)! };
      },
      true,
    );
  }
}
