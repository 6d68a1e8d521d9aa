import { cellName, parseRange, splitSheet } from '../address';
import type { CellError } from '../workbook-model';

/** The data of one cell in the search for the reason of an error. */
export interface TracedCell {
  readonly error: CellError | undefined;
  /** The formula that fills the cell, as typed; for a cell of a spill the formula that spilled. */
  readonly formula: string | undefined;
}

type Look = (sheet: string, row: number, column: number) => TracedCell;

const reference =
  /(?:'(?:[^']|'')+'!|[A-Za-z_][\w.]*!)?\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6})?(?![\w(.!])/g;
const mostSteps = 6;
const mostCells = 2_000;

/** The references in a cell formula, outside quoted text, as written. */
export function references(formula: string): readonly string[] {
  return formula.replace(/"(?:[^"]|"")*"/g, '""').match(reference) ?? [];
}

/**
 * Follows an error through references back to the cell with the reason, because a reference passes only the code.
 * Returns the reason with its cell, or undefined.
 */
export function findReason(
  start: { readonly sheet: string; readonly formula: string; readonly code: string },
  look: Look,
): string | undefined {
  const seen = new Set<string>();
  let budget = mostCells;
  const search = (sheet: string, formula: string, steps: number): string | undefined => {
    for (const text of references(formula)) {
      const { sheet: named, rest } = splitSheet(text);
      const range = parseRange(rest);
      if (range === undefined) continue;
      const place = named ?? sheet;
      for (let cell = 0; cell < range.rows * range.columns && budget > 0; cell += 1, budget -= 1) {
        const row = range.row + Math.floor(cell / range.columns);
        const column = range.column + (cell % range.columns);
        const key = `${place}!${row},${column}`;
        if (seen.has(key)) continue;
        seen.add(key);
        const { error, formula: source } = look(place, row, column);
        if (error?.code !== start.code) continue;
        if (error.message !== '')
          return `${named === undefined ? '' : `${named} `}${cellName(row, column)}: ${error.message}`;
        const further = source === undefined || steps === 0 ? undefined : search(place, source, steps - 1);
        if (further !== undefined) return further;
      }
    }
    return undefined;
  };
  return search(start.sheet, start.formula, mostSteps);
}
