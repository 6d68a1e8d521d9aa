/**
 * A small Excel behind Excel's own manners: whatever is asked for waits for the next sync, a property can be read only
 * after it was loaded and synced, and the first request that fails stops the rest of its batch, with those before it done.
 */
import { parseRange } from '../../../src/hosts/address';

export class ExcelError extends Error {
  readonly code: string;
  constructor(code: string, message = code) {
    super(message);
    this.code = code;
  }
}

interface Cell {
  value: unknown;
  formula?: string;
  format?: unknown;
}

export class FakeSheet {
  name: string;
  isProtected = false;
  readonly cells = new Map<string, Cell>();
  /** By the cell that spills, its range. */
  readonly spills = new Map<string, string>();
  /** Set where a version repeats the formula in all cells of a spill. */
  repeatsFormulas = false;
  /** What was done to looks and layout. */
  readonly done: string[] = [];
  constructor(name: string, cells: Readonly<Record<string, unknown>> = {}) {
    this.name = name;
    for (const [address, content] of Object.entries(cells)) {
      const { row, column } = parseRange(address)!;
      this.put(row, column, content);
    }
  }
  at(address: string): unknown {
    const { row, column } = parseRange(address)!;
    const cell = this.cells.get(`${row},${column}`);
    return cell?.formula ?? cell?.value ?? '';
  }
  put(row: number, column: number, content: unknown): void {
    if (content === '') this.cells.delete(`${row},${column}`);
    else if (typeof content === 'string' && content.startsWith('=')) {
      this.cells.set(`${row},${column}`, { value: 0, formula: content });
    } else if (typeof content === 'string' && content.startsWith("'")) {
      this.cells.set(`${row},${column}`, { value: content.slice(1) });
    } else if (typeof content === 'string' && content.trim() !== '' && !Number.isNaN(Number(content))) {
      this.cells.set(`${row},${column}`, { value: Number(content) });
    } else this.cells.set(`${row},${column}`, { value: content });
  }
}

type Place = { sheet: FakeSheet; row: number; column: number; rows: number; columns: number };
type Resolve<T> = () => T | undefined;

class Proxied<T> {
  readonly context: FakeContext;
  protected readonly resolve: Resolve<T>;
  private readonly loaded = new Map<string, unknown>();
  private known: boolean | undefined;
  protected readonly orNull: boolean;

  constructor(context: FakeContext, resolve: Resolve<T>, orNull = false) {
    this.context = context;
    this.resolve = resolve;
    this.orNull = orNull;
    context.queue(() => {
      this.known = resolve() !== undefined;
      if (!this.known && !orNull) throw new ExcelError('ItemNotFound');
    });
  }
  get isNullObject(): boolean {
    if (this.known === undefined) throw new ExcelError('PropertyNotLoaded', 'isNullObject');
    return !this.known;
  }
  protected fetch(_thing: T, _property: string): unknown {
    return undefined;
  }
  load(properties: string): void {
    this.context.queue(() => {
      const thing = this.resolve();
      if (thing === undefined) return;
      for (const property of properties.split(',')) this.loaded.set(property, this.fetch(thing, property));
    });
  }
  protected get<V>(property: string): V {
    if (!this.loaded.has(property)) throw new ExcelError('PropertyNotLoaded', property);
    return this.loaded.get(property) as V;
  }
  protected act(action: (thing: T) => void): void {
    this.context.queue(() => {
      const thing = this.resolve();
      if (thing === undefined) throw new ExcelError('ItemNotFound');
      action(thing);
    });
  }
}

/** Takes any wish about looks, and writes down that it was made. */
function looks(context: FakeContext, note: (what: string) => void, path = ''): unknown {
  return new Proxy(() => undefined, {
    get: (_, property) => looks(context, note, `${path}.${String(property)}`),
    set: (_, property, value) => {
      context.queue(() => note(`${path}.${String(property)}=${JSON.stringify(value)}`));
      return true;
    },
    apply: (_, __, values: unknown[]) => {
      context.queue(() =>
        note(`${path}(${values.filter((one) => typeof one !== 'object' && typeof one !== 'function').join()})`),
      );
      return looks(context, note, `${path}()`);
    },
  });
}

class FakeRange extends Proxied<Place> {
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

class FakeWorksheet extends Proxied<FakeSheet> {
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
  set tabColor(colour: string) {
    this.act((sheet) => sheet.done.push(`tab ${colour}`));
  }
  set showGridlines(shown: boolean) {
    this.act((sheet) => sheet.done.push(`gridlines ${shown}`));
  }
  private looks(path: string): unknown {
    return looks(this.context, (what) => this.resolve()?.done.push(what), path);
  }
}

class FakeWorksheets extends Proxied<readonly FakeSheet[]> {
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
}

interface StoredName {
  name: string;
  formula: string;
  comment: string;
}

class FakeName extends Proxied<StoredName> {
  protected override fetch(name: StoredName, property: string): unknown {
    return name[property as keyof StoredName];
  }
  get name(): string {
    return this.get('name');
  }
  get formula(): string {
    return this.get('formula');
  }
  set formula(formula: string) {
    this.act((name) => {
      name.formula = formula;
    });
  }
  get comment(): string {
    return this.get('comment');
  }
  set comment(comment: string) {
    this.act((name) => {
      name.comment = comment;
    });
  }
  delete(): void {
    this.act((name) => {
      this.context.excel.names = this.context.excel.names.filter((one) => one !== name);
    });
  }
}

class FakeNames extends Proxied<readonly StoredName[]> {
  protected override fetch(names: readonly StoredName[], property: string): unknown {
    this.asked.add(property.replace('items/', ''));
    return names;
  }
  private readonly asked = new Set<string>();
  get items(): StoredName[] {
    return this.get('items/name');
  }
  private byName(name: string): Resolve<StoredName> {
    return () => this.context.excel.names.find((one) => one.name.toLowerCase() === name.toLowerCase());
  }
  getItem(name: string): FakeName {
    return new FakeName(this.context, this.byName(name));
  }
  getItemOrNullObject(name: string): FakeName {
    return new FakeName(this.context, this.byName(name), true);
  }
  add(name: string, formula: string, comment: string): void {
    this.context.queue(() => {
      if (this.byName(name)() !== undefined) throw new ExcelError('ItemAlreadyExists');
      this.context.excel.names.push({ name, formula, comment });
    });
  }
}

class FakeContext {
  readonly excel: FakeExcel;
  private waiting: (() => void)[] = [];
  constructor(excel: FakeExcel) {
    this.excel = excel;
  }
  queue(request: () => void): void {
    this.waiting.push(request);
  }
  async sync(): Promise<void> {
    this.excel.syncs += 1;
    // Requests may make further ones, such as the items of a collection.
    for (let request = this.waiting.shift(); request !== undefined; request = this.waiting.shift()) {
      try {
        if (this.excel.isEditing) throw new ExcelError('InvalidOperationInCellEditMode');
        request();
      } catch (error) {
        this.waiting = [];
        throw error;
      }
    }
  }
  get workbook(): unknown {
    const context = this;
    return {
      worksheets: new FakeWorksheets(this, () => this.excel.sheets),
      names: new FakeNames(this, () => this.excel.names),
      getSelectedRange: () =>
        new FakeRange(this, () => {
          if (this.excel.selected === undefined) throw new ExcelError('InvalidSelection');
          return this.excel.selected;
        }),
      get onSelectionChanged(): unknown {
        return context.excel.event(context, 'selected');
      },
    };
  }
}

export class FakeExcel {
  sheets: FakeSheet[];
  names: StoredName[] = [];
  selected: Place | undefined;
  isEditing = false;
  version = 1.18;
  syncs = 0;
  cellsRead = 0;
  readonly opened: string[] = [];
  private readonly heard = new Map<string, Set<() => Promise<void>>>();

  constructor(...sheets: FakeSheet[]) {
    this.sheets = sheets;
    this.select(sheets[0]!, 'A1');
  }

  select(sheet: FakeSheet, address: string): void {
    this.selected = { sheet, ...parseRange(address)! };
  }

  event(context: FakeContext, name: string): unknown {
    return {
      add: (listener: () => Promise<void>) => {
        const listeners = this.heard.get(name) ?? new Set();
        this.heard.set(name, listeners);
        context.queue(() => listeners.add(listener));
        return { context, remove: () => context.queue(() => listeners.delete(listener)) };
      },
    };
  }

  async happen(name: string): Promise<void> {
    for (const listener of this.heard.get(name) ?? []) await listener();
  }

  listeners(name: string): number {
    return this.heard.get(name)?.size ?? 0;
  }

  /** Puts the globals in place that Excel's own library leaves in a page. */
  install(): void {
    const globals = globalThis as { Excel?: unknown; Office?: unknown };
    globals.Excel = {
      run: async (first: unknown, second?: unknown) => {
        const batch = (second ?? first) as (context: FakeContext) => Promise<unknown>;
        const context = second === undefined ? new FakeContext(this) : (first as FakeContext);
        const answer = await batch(context);
        await context.sync();
        return answer;
      },
    };
    globals.Office = {
      PlatformType: { PC: 'PC', OfficeOnline: 'OfficeOnline', Mac: 'Mac' },
      HostType: { Excel: 'Excel' },
      onReady: async () => ({ host: 'Excel', platform: 'PC' }),
      context: {
        platform: 'PC',
        officeTheme: { isDarkTheme: true },
        requirements: {
          isSetSupported: (set: string, version: string) =>
            set === 'OpenBrowserWindowApi' || Number(version.replace(/^1\.(\d)$/, '1.0$1')) <= this.padded(),
        },
        ui: { openBrowserWindow: (address: string) => this.opened.push(address) },
      },
    };
  }

  private padded(): number {
    return Number(String(this.version).replace(/^1\.(\d)$/, '1.0$1'));
  }
}
