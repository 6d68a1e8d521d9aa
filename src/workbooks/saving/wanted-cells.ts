import { type CellRange, cellName, parseRange } from '../../hosts/address';
import type { CellData, CellResult, CellStyle, SheetData } from '../../hosts/workbook-model';
import { isDynamic } from '../array-flag';
import { fitted } from '../older-array';
import { type FormulaResult, key, type WantedCell, wantedValues } from '../patch-sheet';
import type { ScannedCell, ScannedSheet } from '../sheet-scan';
import { storedFormula } from '../stored-formula';

export interface CellContext {
  /** The number of a cell style in the file. */
  readonly styleNumber: (style: CellStyle | undefined) => number;
  /** The number by which a formula is flagged as a dynamic array; undefined where the file cannot have one. */
  readonly arrayFlag: () => string | undefined;
  readonly isRangeName: (name: string) => boolean;
}

type Cells = ReadonlyMap<string, CellData>;

const cellsByPlace = ({ cells }: SheetData): Cells => new Map(cells.map((cell) => [key(cell.row, cell.column), cell]));

function spillOf(cell: CellData): CellRange | undefined {
  return cell.formula === undefined || cell.spill === undefined ? undefined : parseRange(cell.spill);
}

/** The cells that formulas fill besides their own. */
function filledPlaces(cells: Cells): ReadonlySet<string> {
  const places = new Set<string>();
  for (const cell of cells.values()) {
    const range = spillOf(cell);
    if (range === undefined) continue;
    for (let row = range.row; row < range.row + range.rows; row += 1)
      for (let column = range.column; column < range.column + range.columns; column += 1)
        if (row !== cell.row || column !== cell.column) places.add(key(row, column));
  }
  return places;
}

function valuesOf(cell: CellData, cells: Cells): CellResult[][] {
  const { row, column, rows, columns } = spillOf(cell) ?? { row: cell.row, column: cell.column, rows: 1, columns: 1 };
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (__, c) => cells.get(key(row + r, column + c))?.value ?? ''),
  );
}

function sameContent(one: CellData | undefined, other: CellData | undefined): boolean {
  if (one?.formula !== other?.formula) return false;
  if (one?.formula !== undefined) return true;
  return JSON.stringify(one?.value ?? '') === JSON.stringify(other?.value ?? '');
}

function styleText(style: CellStyle | undefined): string {
  return JSON.stringify(Object.entries(style ?? {}).sort(([one], [other]) => (one < other ? -1 : 1)));
}

export const sameStyle = (one: CellStyle | undefined, other: CellStyle | undefined): boolean =>
  styleText(one) === styleText(other);

/** The content of a typed cell for the file. */
function typedCell(cell: CellData | undefined, context: CellContext): WantedCell {
  if (cell?.formula === undefined)
    return { value: cell?.value === undefined || cell.value === '' ? undefined : cell.value, formula: 'none' };
  const text = storedFormula(cell.formula);
  const isArray = cell.spill !== undefined || isDynamic(cell.formula, context.isRangeName);
  const flag = isArray ? context.arrayFlag() : undefined;
  const array = isArray ? { array: cell.spill ?? cellName(cell.row, cell.column) } : {};
  return { value: cell.value ?? '', formula: { text, ...array, ...(flag === undefined ? {} : { flag }) } };
}

export interface SheetChanges {
  readonly wanted: ReadonlyMap<string, WantedCell>;
  /** Whether a formula was added, removed or changed. */
  readonly formulasChanged: boolean;
}

/** The cells to write so that a sheet in the file equals the present one; unchanged cells are left alone. */
export function changedCells(
  scanned: ScannedSheet,
  sheetBefore: SheetData,
  sheetNow: SheetData,
  context: CellContext,
): SheetChanges {
  const [before, now] = [cellsByPlace(sheetBefore), cellsByPlace(sheetNow)];
  const [filledBefore, filledNow] = [filledPlaces(before), filledPlaces(now)];
  const inFile = new Map<string, ScannedCell>();
  for (const { cells } of scanned.rows) for (const cell of cells) inFile.set(key(cell.row, cell.column), cell);
  const changed = new Set<string>();
  for (const place of new Set([...before.keys(), ...now.keys()])) {
    const was = filledBefore.has(place) ? undefined : before.get(place);
    const is = filledNow.has(place) ? undefined : now.get(place);
    if (!sameContent(was, is)) changed.add(place);
  }
  const results = [...now.values()].flatMap((cell): FormulaResult[] => {
    const place = key(cell.row, cell.column);
    if (cell.formula === undefined || changed.has(place)) return [];
    const file = inFile.get(place);
    const values = valuesOf(cell, now);
    const isOlder = file?.formula?.type === 'array' && file.attributes.cm === undefined;
    return [{ row: cell.row, column: cell.column, values: isOlder ? fitted(values, file.formula?.ref ?? '') : values }];
  });
  const wanted = wantedValues(scanned, results);
  let formulasChanged = false;
  // First the cells that formulas no longer fill, then the new ones.
  for (const place of changed) clearOldSpill(inFile.get(place), wanted);
  for (const place of changed) {
    const is = filledNow.has(place) ? undefined : now.get(place);
    const was = before.get(place);
    if (was?.formula !== undefined || is?.formula !== undefined) formulasChanged = true;
    if (filledNow.has(place)) {
      if (was?.formula !== undefined) wanted.set(place, { value: now.get(place)?.value ?? '', formula: 'none' });
      continue;
    }
    wanted.set(place, typedCell(is, context));
    if (is?.formula !== undefined) fill(is, now, wanted);
  }
  keepShared(inFile, changed, before, wanted);
  for (const place of new Set([...before.keys(), ...now.keys()])) {
    const style = now.get(place)?.style;
    if (sameStyle(before.get(place)?.style, style)) continue;
    const found = wanted.get(place) ?? { value: undefined, keepsValue: true };
    wanted.set(place, { ...found, style: context.styleNumber(style) });
  }
  return { wanted, formulasChanged };
}

function clearOldSpill(cell: ScannedCell | undefined, wanted: Map<string, WantedCell>): void {
  const range = cell?.formula?.type === 'array' ? parseRange(cell.formula.ref ?? '') : undefined;
  if (cell === undefined || range === undefined) return;
  for (let row = range.row; row < range.row + range.rows; row += 1)
    for (let column = range.column; column < range.column + range.columns; column += 1)
      if ((row !== cell.row || column !== cell.column) && !wanted.has(key(row, column)))
        wanted.set(key(row, column), { value: undefined });
}

function fill(cell: CellData, now: Cells, wanted: Map<string, WantedCell>): void {
  valuesOf(cell, now).forEach((line, downwards) => {
    line.forEach((value, across) => {
      if (downwards + across === 0) return;
      wanted.set(key(cell.row + downwards, cell.column + across), { value });
    });
  });
}

/** A formula stored as a copy of a removed one gets its own text. */
function keepShared(
  inFile: ReadonlyMap<string, ScannedCell>,
  changed: ReadonlySet<string>,
  before: Cells,
  wanted: Map<string, WantedCell>,
): void {
  const gone = new Set<string | undefined>();
  for (const place of changed) {
    const formula = inFile.get(place)?.formula;
    if (formula?.type === 'shared' && formula.ref !== undefined) gone.add(formula.attributes.si);
  }
  if (gone.size === 0) return;
  for (const [place, cell] of inFile) {
    const typed = before.get(place)?.formula;
    if (changed.has(place) || cell.formula?.type !== 'shared' || typed === undefined) continue;
    if (!gone.has(cell.formula.attributes.si)) continue;
    const value = wanted.get(place)?.value;
    wanted.set(place, { value, formula: { text: storedFormula(typed) } });
  }
}
