import { patternColumns } from '../../catalogue/pattern-columns';
import { readPatterns } from '../../catalogue/reading/read-patterns';
import { readPattern } from '../../formulas/cone/read-pattern';
import type { CellResult, CellScalar } from '../../hosts/workbook-model';
import type { Profile } from '../../units/profile';
import { sentenceIn } from '../user-error';

export const patternWidth = Object.keys(patternColumns).length;

/** Where pattern rows were found in a block of cells, and what is wrong with rows that only look like them. */
export interface FoundPatterns {
  /** The first of the ten columns, counted in the block. */
  readonly column: number;
  /** Rows of the block whose numbers agree. */
  readonly rows: readonly number[];
  readonly faults: readonly { readonly row: number; readonly why: string }[];
}

type Line = readonly CellResult[];

/**
 * Looks for pattern rows among the chosen rows of a block: ten neighboring columns whose numbers agree with each other.
 * Undefined where nothing even looks like one. A heading row and blank rows are passed over.
 */
export function findPatterns(
  lines: readonly Line[],
  rows: readonly number[],
  reach: { readonly from: number; readonly to: number },
  profile: Profile,
): FoundPatterns | undefined {
  const found: FoundPatterns[] = [];
  const wide = Math.max(0, ...lines.map((line) => line.length));
  for (let column = 0; column + patternWidth <= wide; column++) {
    if (column > reach.to || column + patternWidth <= reach.from) continue;
    const agreeing: number[] = [];
    const faults: { row: number; why: string }[] = [];
    for (const row of rows) {
      const cells = scalars(lines[row]?.slice(column, column + patternWidth) ?? []);
      if (cells === undefined || !looksLikePattern(cells)) continue;
      const why = disagreement(cells, profile);
      if (why === undefined) agreeing.push(row);
      else faults.push({ row, why });
    }
    if (agreeing.length + faults.length > 0) found.push({ column, rows: agreeing, faults });
  }
  return found.sort(
    (a, b) => b.rows.length - a.rows.length || Math.abs(a.column - reach.from) - Math.abs(b.column - reach.from),
  )[0];
}

function scalars(line: Line): readonly CellScalar[] | undefined {
  return line.some((value) => typeof value === 'object') ? undefined : (line as readonly CellScalar[]);
}

/** Numbers, or text that begins with one, where a cone and a cylinder both have them; a whole count of pieces. */
function looksLikePattern(cells: readonly CellScalar[]): boolean {
  const figures = [0, 1, 5, 6, 7, 8, 9].map((at) => cells[at] ?? '');
  if (cells.length < patternWidth || !figures.every(isFigure)) return false;
  if (![2, 3, 4].every((at) => isFigure(cells[at] ?? '') || cells[at] === '')) return false;
  const pieces = Number(cells[8]);
  return Number.isInteger(pieces) && pieces >= 1 && !(Number(cells[0]) > 90);
}

function isFigure(value: CellScalar): boolean {
  return typeof value === 'number' || (typeof value === 'string' && /^\s*[\d.]/.test(value));
}

function disagreement(cells: readonly CellScalar[], profile: Profile): string | undefined {
  try {
    const [row] = readPatterns('pattern', [cells], profile);
    if (row !== undefined) readPattern(row, 'pattern', 1, profile.text);
    return undefined;
  } catch (error) {
    const sentence = sentenceIn(error);
    if (sentence === undefined) throw error;
    return sentence.replace(/^pattern: row 1,? /, '');
  }
}
