import { parseRange } from '../../hosts/address';
import type { Block, SheetHost } from '../../hosts/sheet-host';
import type { CellResult } from '../../hosts/workbook-model';
import { shownValue } from '../follow/grid';
import type { JobSheets, SheetRole } from './find-sheets';

/** The cells that the guide shows or fills, by the purpose of their sheet. */
const windows: Readonly<Record<SheetRole, string>> = {
  drums: 'A4:M22',
  patterns: 'A4:M27',
  cutPlan: 'A4:F71',
  baseMix: 'A4:D23',
  stand: 'A4:F28',
  bank: 'A5:D23',
  parts: 'A4:D38',
  materials: 'A4:E51',
  calendar: 'A4:C17',
};

/** Cells as they were last read, by sheet and address. */
export class JobCells {
  private readonly blocks: ReadonlyMap<SheetRole, Block>;

  constructor(blocks: ReadonlyMap<SheetRole, Block>) {
    this.blocks = blocks;
  }

  has(role: SheetRole): boolean {
    return this.blocks.has(role);
  }

  value(role: SheetRole, address: string): CellResult {
    return this.pick(role, address, ({ values }) => values) ?? '';
  }

  formula(role: SheetRole, address: string): string | undefined {
    return this.pick(role, address, ({ formulas }) => formulas);
  }

  /** What a person would see in the formula bar, as text. */
  content(role: SheetRole, address: string): string {
    return this.formula(role, address) ?? shownValue(this.value(role, address));
  }

  /** The values of a range, line by line. */
  rows(role: SheetRole, range: string): readonly (readonly CellResult[])[] {
    const place = parseRange(range);
    const block = this.blocks.get(role);
    if (place === undefined || block === undefined) return [];
    const down = place.row - block.range.row;
    const over = place.column - block.range.column;
    return block.values.slice(down, down + place.rows).map((line) => line.slice(over, over + place.columns));
  }

  private pick<T>(role: SheetRole, address: string, grid: (block: Block) => readonly (readonly T[])[]): T | undefined {
    const place = parseRange(address);
    const block = this.blocks.get(role);
    if (place === undefined || block === undefined) return undefined;
    return grid(block)[place.row - block.range.row]?.[place.column - block.range.column];
  }
}

/** Reads all cells of the job's sheets that the guide knows. */
export async function readJobCells(host: SheetHost, sheets: JobSheets): Promise<JobCells> {
  const roles = Object.entries(sheets) as [SheetRole, string][];
  const blocks = await Promise.all(
    roles.map(async ([role, sheet]) => {
      const range = parseRange(windows[role]);
      if (range === undefined) throw new Error(`no cells are known for ${role}`);
      return [role, await host.read({ sheet, range })] as const;
    }),
  );
  return new JobCells(new Map(blocks));
}
