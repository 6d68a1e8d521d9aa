import type { CellFault, CellValue } from '../../catalogue/argument';

/** An error in a cell given to the function; it is passed on unchanged. */
export class PassedError extends Error {
  readonly code: string;
  constructor(code: string, message: string) {
    super(message);
    this.name = 'PassedError';
    this.code = code;
  }
}

/** A block of more than one cell. */
export type Block = readonly (readonly unknown[])[];

/** Unwraps the value of one cell; leaves a larger block as it is. */
export function unwrap(value: unknown): unknown {
  if (!Array.isArray(value)) return value;
  if (value.length === 1) {
    const first: unknown = value[0];
    if (!Array.isArray(first)) return first;
    if (first.length === 1) return first[0];
  }
  const block: readonly unknown[] = Array.isArray(value[0]) ? value : [value];
  return block.some((line) => Array.isArray(line) && line.length > 0) ? block : '';
}

export function isBlock(value: unknown): value is Block {
  return Array.isArray(value);
}

/**
 * The plain value of one cell; blank is the empty string. Hosts hand errors over as objects of several shapes
 * (`code`, or the `basicValue` of a cell value of type Error), and other cell values as objects with a `basicValue`.
 */
export function cell(value: unknown): CellValue {
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return value;
  if (value === null || value === undefined) return '';
  if (typeof value === 'object') {
    const shape = value as { code?: unknown; message?: unknown; basicValue?: unknown; text?: unknown };
    const code = typeof shape.code === 'string' ? shape.code : shape.basicValue;
    if (typeof code === 'string' && code.startsWith('#')) {
      throw new PassedError(code, typeof shape.message === 'string' ? shape.message : '');
    }
    const basic = shape.basicValue;
    if (typeof basic === 'number' || typeof basic === 'string' || typeof basic === 'boolean') return basic;
    return typeof shape.text === 'string' ? shape.text : 'something that is neither a number nor text';
  }
  return String(value).slice(0, 255);
}

/** The rows and columns that blocks and single cells make together, as spreadsheet arrays do. */
export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

export function height(block: Block): number {
  return block.length;
}

export function width(block: Block): number {
  return block[0]?.length ?? 0;
}

/** The cell of a block or single value at a place of the joint shape. */
export function at(value: unknown, row: number, column: number): unknown {
  if (!isBlock(value)) return value;
  const line = value.length === 1 ? value[0] : value[row];
  return line?.length === 1 ? line[0] : line?.[column];
}

/** A block as rows of plain cells; an error in a cell is passed on. */
export function plainRows(value: unknown): readonly (readonly CellValue[])[] {
  const block = isBlock(value) ? value : [[value]];
  return block.map((line) => line.map(cell));
}

/** A block as rows of plain cells, with errors in their cells. */
export function openRows(value: unknown): readonly (readonly (CellValue | CellFault)[])[] {
  const block = isBlock(value) ? value : [[value]];
  return block.map((line) => line.map(cellOrFault));
}

function cellOrFault(value: unknown): CellValue | CellFault {
  try {
    return cell(value);
  } catch (error) {
    if (error instanceof PassedError) return error;
    throw error;
  }
}
