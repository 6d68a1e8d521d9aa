import { cellName, parseRange, quoteSheet } from '../../src/hosts/address';
import { type Block, HostError, type Place, type SheetHost, type Write } from '../../src/hosts/sheet-host';
import type { CellResult, DefinedName, WorkbookData } from '../../src/hosts/workbook-model';

interface StoredCell {
  value: CellResult;
  formula: string | undefined;
}
type StoredSheet = Map<string, StoredCell>;

/** A spreadsheet that holds cells and computes nothing, for tests of what reads and writes them. */
export class MemoryHost implements SheetHost {
  readonly name = 'the test';
  downloads = true;
  file?: () => Promise<Uint8Array>;
  openFile?: (file: Uint8Array) => Promise<void>;
  dark = false;
  /** As of a spreadsheet whose cells can still show old results. */
  holdsOldResults = false;
  /** How often somebody asked whether it is calculating. */
  askedWhetherCalculating = 0;
  readonly pages: string[] = [];
  /** Sheets that refuse to be written. */
  readonly protectedSheets = new Set<string>();
  /** Told after each step, so that a test can count steps. */
  readonly steps: (readonly Write[])[] = [];
  private readonly stored = new Map<string, StoredSheet>();
  private readonly defined = new Map<string, DefinedName>();
  private readonly spilled = new Map<string, string[]>();
  private selected: Place = { sheet: 'Sheet1', range: { row: 0, column: 0, rows: 1, columns: 1 } };
  private readonly selectionListeners = new Set<() => void>();
  private readonly changeListeners = new Set<() => void>();
  private readonly themeListeners = new Set<() => void>();

  /** Each sheet as addresses and what is typed there; text beginning with `=` is a formula, whose value may follow. */
  constructor(
    sheets: Readonly<Record<string, Readonly<Record<string, CellResult>>>> = { Sheet1: {} },
    names: Readonly<Record<string, string>> = {},
  ) {
    for (const [name, cells] of Object.entries(sheets)) {
      const sheet: StoredSheet = new Map();
      for (const [address, content] of Object.entries(cells)) {
        const range = parseRange(address);
        if (range === undefined) throw new Error(`${address} is no address`);
        sheet.set(`${range.row},${range.column}`, stored(content));
      }
      this.stored.set(name, sheet);
    }
    for (const [name, refersTo] of Object.entries(names)) this.defined.set(name.toLowerCase(), { name, refersTo });
    const first = Object.keys(sheets)[0];
    if (first !== undefined) this.selected = { ...this.selected, sheet: first };
  }

  /** What stands in a cell: the formula where there is one, else the value. */
  at(sheet: string, address: string): CellResult {
    const { row, column } = parseRange(address)!;
    const cell = this.sheet(sheet).get(`${row},${column}`);
    return cell?.formula ?? cell?.value ?? '';
  }

  /** Says what a formula last gave. */
  give(sheet: string, address: string, value: CellResult): void {
    const { row, column } = parseRange(address)!;
    this.sheet(sheet).get(`${row},${column}`)!.value = value;
  }

  /** Says that a formula fills this range. */
  spill(sheet: string, range: string): void {
    this.spilled.set(sheet, [...(this.spilled.get(sheet) ?? []), range]);
  }

  change(sheet: string, address: string, content: CellResult): void {
    const { row, column } = parseRange(address)!;
    this.sheet(sheet).set(`${row},${column}`, stored(content));
    for (const listener of this.changeListeners) listener();
  }

  choose(sheet: string, address: string): void {
    this.selected = { sheet, range: parseRange(address)! };
    for (const listener of this.selectionListeners) listener();
  }

  turn(dark: boolean): void {
    this.dark = dark;
    for (const listener of this.themeListeners) listener();
  }

  selection = (): Promise<Block> => this.read(this.selected);

  onSelectionChanged = async (listener: () => void): Promise<() => void> =>
    listening(this.selectionListeners, listener);

  select = async (place: Place): Promise<void> => {
    this.sheet(place.sheet);
    this.choose(place.sheet, cellName(place.range.row, place.range.column));
  };

  read = async ({ sheet, range }: Place): Promise<Block> => {
    const cells = this.sheet(sheet);
    const each = <T>(pick: (cell: StoredCell | undefined) => T): T[][] =>
      Array.from({ length: range.rows }, (_, down) =>
        Array.from({ length: range.columns }, (__, across) =>
          pick(cells.get(`${range.row + down},${range.column + across}`)),
        ),
      );
    return {
      sheet,
      range,
      values: each((cell) => cell?.value ?? ''),
      formulas: each((cell) => cell?.formula),
      spills: (this.spilled.get(sheet) ?? []).map((text) => parseRange(text)!),
    };
  };

  readUsed = async (): Promise<readonly Block[]> => {
    const blocks: Block[] = [];
    for (const [sheet, cells] of this.stored) {
      if (cells.size === 0) continue;
      const places = [...cells.keys()].map((key) => key.split(',').map(Number) as [number, number]);
      const [rows, columns] = [0, 1].map((i) => places.map((place) => place[i]!)) as [number[], number[]];
      const [row, column] = [Math.min(...rows), Math.min(...columns)];
      const range = { row, column, rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
      blocks.push(await this.read({ sheet, range }));
    }
    return blocks;
  };

  isCalculating = async (): Promise<boolean> => {
    this.askedWhetherCalculating += 1;
    return this.holdsOldResults;
  };

  /** Says that all is calculated, as a spreadsheet reports it. */
  finishCalculating(): void {
    this.holdsOldResults = false;
    for (const listener of this.changeListeners) listener();
  }

  onCellsChanged = async (listener: () => void): Promise<() => void> => listening(this.changeListeners, listener);

  write = async (writes: readonly Write[]): Promise<void> => {
    for (const { sheet } of writes) {
      this.sheet(sheet);
      if (this.protectedSheets.has(sheet)) {
        throw new HostError('protected', `The sheet ${sheet} is protected; remove the protection, then try again.`);
      }
    }
    this.steps.push(writes);
    for (const { sheet, row, column, cells } of writes) {
      cells.forEach((line, down) => {
        line.forEach((content, across) => {
          const key = `${row + down},${column + across}`;
          if (content === '') this.sheet(sheet).delete(key);
          else if (content !== undefined) this.sheet(sheet).set(key, stored(content));
        });
      });
    }
    for (const listener of this.changeListeners) listener();
  };

  names = async (): Promise<readonly DefinedName[]> => [...this.defined.values()];

  setName = async (name: DefinedName): Promise<void> => {
    this.defined.set(name.name.toLowerCase(), name);
    for (const listener of this.changeListeners) listener();
  };

  removeName = async (name: string): Promise<void> => {
    this.defined.delete(name.toLowerCase());
  };

  sheets = async (): Promise<readonly string[]> => [...this.stored.keys()];

  addSheet = async (name: string): Promise<void> => {
    if (this.stored.has(name)) throw new HostError('taken', `A sheet called ${name} already exists.`);
    this.stored.set(name, new Map());
  };

  removeSheet = async (name: string): Promise<void> => {
    this.sheet(name);
    this.stored.delete(name);
  };

  insert = async (workbook: WorkbookData, step?: (share: number) => Promise<void>): Promise<void> => {
    for (const { name } of workbook.sheets) {
      if (this.stored.has(name)) throw new HostError('taken', `A sheet called ${name} already exists.`);
    }
    const added: string[] = [];
    try {
      for (const sheet of workbook.sheets) {
        await step?.(added.length / workbook.sheets.length);
        const cells: StoredSheet = new Map();
        for (const cell of sheet.cells) {
          if (cell.value === undefined && cell.formula === undefined) continue;
          cells.set(`${cell.row},${cell.column}`, { value: cell.value ?? '', formula: cell.formula });
        }
        this.stored.set(sheet.name, cells);
        added.push(sheet.name);
      }
    } catch (error) {
      for (const name of added) this.stored.delete(name);
      throw error;
    }
    for (const name of workbook.names ?? []) this.defined.set(name.name.toLowerCase(), name);
    for (const listener of this.changeListeners) listener();
  };

  theme = (): { dark: boolean } => ({ dark: this.dark });

  onThemeChanged = (listener: () => void): (() => void) => listening(this.themeListeners, listener);

  openPage = (address: string): void => {
    this.pages.push(address);
  };

  private sheet(name: string): StoredSheet {
    const sheet = this.stored.get(name);
    if (sheet === undefined) throw new HostError('missing', `There is no sheet ${quoteSheet(name)}.`);
    return sheet;
  }
}

function stored(content: CellResult): StoredCell {
  return typeof content === 'string' && content.startsWith('=')
    ? { value: '', formula: content }
    : { value: content, formula: undefined };
}

function listening(listeners: Set<() => void>, listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
