import { parseRange } from '../../../src/hosts/address';
import type { Block, Place, SheetHost, Write } from '../../../src/hosts/sheet-host';
import { type Headless, openHeadless } from '../../../src/hosts/univer/headless';
import { sourceFunctions } from '../../../src/hosts/univer/source-functions';
import type { CellData, CellResult, CellScalar, DefinedName, WorkbookData } from '../../../src/hosts/workbook-model';
import { MemoryHost } from '../memory-host';

type Sheets = Map<string, { rows: number; columns: number }>;

/** A host whose cells are calculated, by the engine without a page. */
export class ComputingHost extends MemoryHost implements SheetHost {
  private workbook: WorkbookData;
  private book: Headless;
  private isBehind = false;
  private calculating: Promise<void> = Promise.resolve();
  private readonly used: Sheets = new Map();

  private constructor(workbook: WorkbookData, book: Headless) {
    super();
    this.workbook = workbook;
    this.book = book;
    this.measure();
  }

  static async open(workbook: WorkbookData): Promise<ComputingHost> {
    return new ComputingHost(workbook, await openHeadless(await sourceFunctions(), workbook));
  }

  /** What the workbook holds, for another host that opens it as a page does after a reload. */
  saved(): WorkbookData {
    return this.workbook;
  }

  close(): void {
    this.book.dispose();
  }

  override read = async ({ sheet, range }: Place): Promise<Block> => {
    await this.calculated();
    const cells = this.book.read(sheet, range);
    return {
      sheet,
      range,
      values: cells.map((line) => line.map(({ value }) => value)),
      formulas: cells.map((line) => line.map(({ formula }) => formula)),
      spills: [],
    };
  };

  override readUsed = (): Promise<readonly Block[]> =>
    Promise.all(
      [...this.used].map(([sheet, { rows, columns }]) =>
        this.read({ sheet, range: { row: 0, column: 0, rows, columns } }),
      ),
    );

  override write = async (writes: readonly Write[]): Promise<void> => {
    const sheets = new Map(this.workbook.sheets.map((sheet) => [sheet.name, sheet]));
    for (const { sheet, row, column, cells } of writes) {
      this.book.setCells(sheet, row, column, cells as readonly (readonly CellScalar[])[]);
      const data = sheets.get(sheet);
      if (data === undefined) throw new Error(`no sheet ${sheet}`);
      const kept = new Map(data.cells.map((cell) => [`${cell.row},${cell.column}`, cell]));
      cells.forEach((line, down) => {
        line.forEach((content, across) => {
          const cell = { row: row + down, column: column + across };
          kept.set(`${cell.row},${cell.column}`, withContent(cell, content ?? ''));
        });
      });
      sheets.set(sheet, { ...data, cells: [...kept.values()] });
    }
    this.workbook = { ...this.workbook, sheets: [...sheets.values()] };
    this.isBehind = true;
  };

  override names = async (): Promise<readonly DefinedName[]> => this.workbook.names ?? [];

  override setName = async (name: DefinedName): Promise<void> => {
    const others = (this.workbook.names ?? []).filter((one) => one.name !== name.name);
    this.workbook = { ...this.workbook, names: [...others, name] };
  };

  override sheets = async (): Promise<readonly string[]> => this.workbook.sheets.map(({ name }) => name);

  override insert = async ({ sheets, names = [] }: WorkbookData): Promise<void> => {
    const before = this.workbook;
    this.workbook = {
      ...before,
      sheets: [...before.sheets, ...sheets],
      names: [...(before.names ?? []), ...names],
    };
    this.book.dispose();
    this.book = await openHeadless(await sourceFunctions(), this.workbook);
    this.isBehind = false;
    this.measure();
  };

  /** The values of a range of a sheet. */
  async values(sheet: string, address: string): Promise<readonly (readonly CellResult[])[]> {
    const range = parseRange(address);
    if (range === undefined) throw new Error(`${address} is no range`);
    return (await this.read({ sheet, range })).values;
  }

  /** Calculates what has been written, as late as it can. */
  private calculated(): Promise<void> {
    if (this.isBehind) {
      this.isBehind = false;
      this.calculating = this.book.recalculate();
    }
    return this.calculating;
  }

  private measure(): void {
    for (const { name, cells } of this.workbook.sheets) {
      const rows = 1 + Math.max(0, ...cells.map(({ row }) => row));
      const columns = 1 + Math.max(0, ...cells.map(({ column }) => column));
      this.used.set(name, { rows: Math.max(rows, 30), columns });
    }
  }
}

function withContent(at: { readonly row: number; readonly column: number }, content: CellScalar): CellData {
  if (content === '') return at;
  return typeof content === 'string' && content.startsWith('=')
    ? { ...at, formula: content }
    : { ...at, value: content };
}
