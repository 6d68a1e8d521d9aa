import { HostError, type SheetHost, type Write } from '../../hosts/sheet-host';
import type { CellScalar } from '../../hosts/workbook-model';
import { type Book, openBook, placeText, type Spot } from '../cell-formula/book';

/**
 * A cell that changes: its content before, which must still be there, and after. Content that begins with `=` is a
 * formula.
 */
export interface CellChange {
  readonly spot: Spot;
  readonly before: CellScalar;
  readonly after: CellScalar;
}

/**
 * Makes all changes in one step, or none. The workbook is read again first: where a cell no longer holds what it held
 * when it was listed, nothing is changed, so that no number is ever converted twice. Returns the workbook as it was read.
 */
export async function makeChanges(host: SheetHost, changes: readonly CellChange[]): Promise<Book> {
  const book = openBook(await host.readUsed(), []);
  const moved = changes.find(({ spot, before }) => !isSameContent(contentOf(book, spot), before));
  if (moved !== undefined) {
    throw new HostError(
      'failed',
      `${placeText(moved.spot)} has changed since it was listed, so nothing was changed; look again, then try again.`,
    );
  }
  await host.write(inRuns(changes).flatMap(toWrite));
  return book;
}

/** The same changes reversed. */
export function backwards(changes: readonly CellChange[]): readonly CellChange[] {
  return changes.map(({ spot, before, after }) => ({ spot, before: after, after: before }));
}

/** What a cell holds; undefined for an error. */
export function contentOf(book: Book, spot: Spot): CellScalar | undefined {
  const cell = book.cell(spot);
  if (cell === undefined) return '';
  return cell.formula ?? (typeof cell.value === 'object' ? undefined : cell.value);
}

/** Hosts keep 15 digits of a number, and may change spaces and capitals of a formula. */
export function isSameContent(one: CellScalar | undefined, other: CellScalar): boolean {
  if (typeof one === 'number' && typeof other === 'number') {
    return Math.abs(one - other) <= 1e-14 * Math.max(Math.abs(one), Math.abs(other));
  }
  if (typeof one === 'string' && typeof other === 'string' && other.startsWith('=')) {
    return withoutSpaces(one) === withoutSpaces(other);
  }
  return one === other;
}

function withoutSpaces(formula: string): string {
  return formula.replace(/\s/g, '').toLowerCase();
}

function toWrite(run: readonly CellChange[]): Write[] {
  const [first] = run;
  if (first === undefined) return [];
  const { sheet, row, column } = first.spot;
  return [{ sheet, row, column, cells: run.map(({ after }) => [after]) }];
}

/** Groups changes of cells that are below each other. */
function inRuns(changes: readonly CellChange[]): readonly (readonly CellChange[])[] {
  const sorted = [...changes].sort(
    ({ spot: a }, { spot: b }) => a.sheet.localeCompare(b.sheet) || a.column - b.column || a.row - b.row,
  );
  const runs: CellChange[][] = [];
  for (const change of sorted) {
    const last = runs.at(-1)?.at(-1)?.spot;
    const { sheet, row, column } = change.spot;
    if (last?.sheet === sheet && last.column === column && last.row === row - 1) runs.at(-1)?.push(change);
    else runs.push([change]);
  }
  return runs;
}
