import { parseRange } from '../../../src/hosts/address';

export interface Cell {
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

export interface Place {
  sheet: FakeSheet;
  row: number;
  column: number;
  rows: number;
  columns: number;
}
