import type { CellResult } from '../../hosts/workbook-model';
import type { Book, BookCell, Spot } from '../cell-formula/book';
import { type SiltCall, siltCalls } from '../cell-formula/calls';
import { childrenOf } from '../cell-formula/children';
import { type Part, readFormula, targetOf } from '../cell-formula/read-formula';
import { type Scope, scopeOf } from '../cell-formula/scope';
import { CalledError, callOurs, evaluate, type Surroundings } from '../follow/evaluate';
import { type Grid, NotFollowed } from '../follow/grid';
import { atPlace, type Origins, originsOf, type PlaceInGrid } from '../follow/origins';
import { placeWords } from './place-words';
import { refusedCells } from './refused-cells';

/** The cause of an error. */
export interface Cause {
  /** The cells that were typed, or left empty; the cell in error itself where they cannot be found. */
  readonly spots: readonly Spot[];
  readonly isTyped: boolean;
  /** The message of the function that gave the error; undefined if it is not known. */
  readonly reason: string | undefined;
  /** The cell where the error first appears. */
  readonly at: BookCell;
}

/** More steps than this mean a circle. */
const mostSteps = 30;
const lookups = /^(?:_xlfn\.)?(?:X?MATCH|[XVH]?LOOKUP)$/i;

export interface CauseFinder {
  /** Follows an error to what was typed. */
  readonly ofError: (cell: BookCell) => Promise<Cause>;
  /** Follows a value to what was typed: the cells in the order in which a formula takes them. */
  readonly typedFor: (spot: Spot) => Promise<readonly Spot[]>;
}

/** Follows errors, and values that are wrong, back through the formulas of a workbook. */
export function createCauseFinder(book: Book, around: Surroundings): CauseFinder {
  const causes = new Map<string, Promise<Cause>>();

  const ofError = (cell: BookCell, steps = 0): Promise<Cause> => {
    const known = causes.get(keyOf(cell));
    if (known !== undefined) return known;
    const found = followed(cell, steps);
    causes.set(keyOf(cell), found);
    return found;
  };

  const followed = async (cell: BookCell, steps: number): Promise<Cause> => {
    const home = cell.source ?? cell;
    const itself: Cause = { spots: [cell], isTyped: false, reason: reasonIn(cell.value), at: cell };
    const part = home.formula === undefined ? undefined : readFormula(home.formula);
    if (part === undefined || steps > mostSteps) return itself;
    const [down, across] = [cell.row - home.row, cell.column - home.column];
    for (const call of [...siltCalls(part, scopeOf(home))].reverse()) {
      const found = await inCall(call, down, across, codeOf(cell.value));
      if (found === undefined) continue;
      if ('from' in found) return ofError(found.from, steps + 1);
      const spots = await typedAll(found.spots);
      return spots.length === 0
        ? { ...itself, reason: found.reason }
        : { spots, isTyped: true, reason: found.reason, at: cell };
    }
    const before = firstError(part, scopeOf(home), new Set([keyOf(cell), keyOf(home)]));
    if (before !== undefined) return ofError(before, steps + 1);
    return (await inLookup(part, scopeOf(home), cell)) ?? itself;
  };

  /** A value that is looked up and is not in the list. */
  const inLookup = async (part: Part, scope: Scope, cell: BookCell): Promise<Cause | undefined> => {
    if (part.type === 'CallExpression' && part.callee.type === 'Identifier' && lookups.test(part.callee.name)) {
      const [sought] = part.arguments as readonly (Part | null)[];
      const origins = sought ? await originsOrNone(sought, scope, around) : undefined;
      const spots = await typedAll(atPlace(origins, { down: 0, across: 0 }));
      const reason = 'this is not allowed; choose a value from the list';
      return spots.length === 0 ? undefined : { spots, isTyped: true, reason, at: cell };
    }
    for (const [child, inner] of childrenOf(part, scope)) {
      const found = await inLookup(child, inner, cell);
      if (found !== undefined) return found;
    }
    return undefined;
  };

  /** The argument of a call that makes the value at this place of its result an error. */
  const inCall = async (
    call: SiltCall,
    down: number,
    across: number,
    code: string,
  ): Promise<
    { readonly from: BookCell } | { readonly reason: string; readonly spots: readonly Spot[] } | undefined
  > => {
    const row = around.functionLibrary.catalogue.find(({ name }) => name === call.name);
    if (row === undefined) return undefined;
    const names = Object.keys(row.arguments);
    const offset = row.units === false ? 0 : 1;
    const headings = call.given[names.length + offset];
    try {
      const under = headings && (await evaluate(headings, call.scope, around))[0]?.[0] === true ? 1 : 0;
      const place = { down: Math.max(0, down - under), across };
      const origins = await Promise.all(
        call.given.map((part) => (part === null ? undefined : originsOrNone(part, call.scope, around))),
      );
      // An error in an argument has its cause in the cell that was passed.
      for (const [at, grid] of origins.entries()) {
        const spec = Object.values(row.arguments)[at - offset];
        const isTable = spec !== undefined && ('table' in spec || 'cells' in spec);
        const from = errorIn(isTable ? (grid?.flat() ?? []) : [atPlace(grid, place)]);
        if (from !== undefined) return { from };
      }
      const reason = await reasonOf(call, { down, across }, code);
      if (reason === undefined) return undefined;
      const spots = await refusedCells({ call, row, origins, place, reason }, around);
      return { reason: withLabels(reason, names, (at) => atPlace(origins[at + offset], place)), spots };
    } catch (error) {
      if (error instanceof NotFollowed) return undefined;
      throw error;
    }
  };

  /** A message in which other arguments, as in `up to top (22.5 in)`, have the labels of their cells. */
  const withLabels = (reason: string, names: readonly string[], spotsOf: (at: number) => readonly Spot[]): string =>
    names.reduce((words, name, at) => {
      const [spot] = words.includes(` ${name} (`) ? spotsOf(at) : [];
      const [label = ''] = spot === undefined ? [] : placeWords(book, spot).split(', ');
      return label === '' ? words : words.replace(` ${name} (`, ` “${label}” (`);
    }, reason);

  const errorIn = (spots: readonly (readonly Spot[])[]): BookCell | undefined => {
    for (const spot of spots.flat()) {
      // The first cell of a faulty row holds the error, and its other cells are blank.
      const filler = book.fillerOf(spot);
      const first = filler === undefined ? undefined : book.cell({ ...spot, column: filler.column });
      for (const cell of [book.cell(spot), first, failedBefore(spot)]) {
        if (cell !== undefined && typeof cell.value === 'object') return cell;
      }
    }
    return undefined;
  };

  /** The formula that would fill an empty cell, if its row, or its whole table with the headings, had not failed. */
  const failedBefore = ({ sheet, row, column }: Spot): BookCell | undefined => {
    for (let above = row; above >= 0 && book.cell({ sheet, row: above, column }) === undefined; above--) {
      const line = book.cellsIn(sheet, { top: above, bottom: above, left: null, right: column - 1 });
      const before = line.at(-1);
      if (before?.formula !== undefined && typeof before.value === 'object') return before;
    }
    return undefined;
  };

  /** The function's message about one place of its result; undefined if it gives no error there. */
  const reasonOf = async (call: SiltCall, { down, across }: PlaceInGrid, code: string): Promise<string | undefined> => {
    try {
      const given = await Promise.all(
        call.given.map((part) => (part === null ? undefined : evaluate(part, call.scope, around))),
      );
      const result = callOurs(call.name, given, around.functionLibrary);
      const value = valueAt(result, down, across) ?? result[0]?.[0];
      return typeof value === 'object' && value.error.code === code ? value.error.message : undefined;
    } catch (error) {
      if (error instanceof CalledError) return error.code === code ? error.reason : undefined;
      throw error;
    }
  };

  /** Follows spots through formulas that only pass values on, down to what was typed. */
  const typedAll = async (spots: readonly Spot[], steps = 0): Promise<readonly Spot[]> => {
    const found = new Map<string, Spot>();
    for (const spot of spots) {
      const typed = await typedBehind(spot, steps);
      for (const one of typed) found.set(keyOf(one), one);
    }
    return [...found.values()];
  };

  const typedBehind = async (spot: Spot, steps: number): Promise<readonly Spot[]> => {
    const cell = book.cell(spot);
    const home = cell?.source ?? cell ?? book.fillerOf(spot);
    if (home?.formula === undefined) return [spot];
    const part = readFormula(home.formula);
    if (part === undefined || steps > mostSteps) return [spot];
    try {
      const origins = await originsOf(part, scopeOf(home), around);
      const before = atPlace(origins, { down: spot.row - home.row, across: spot.column - home.column });
      return before.length === 0 ? [spot] : await typedAll(before, steps + 1);
    } catch (error) {
      if (error instanceof NotFollowed) return [spot];
      throw error;
    }
  };

  const firstError = (part: Part, scope: Scope, seen: ReadonlySet<string>): BookCell | undefined => {
    if (part.type === 'ReferenceIdentifier') {
      const target = targetOf(part);
      if (target === undefined) return undefined;
      if ('name' in target) {
        const bound = scope.bound.get(target.name.toLowerCase());
        const named = bound?.part ?? readFormula(`=${book.named(target.name) ?? ''}`);
        return named === undefined ? undefined : firstError(named, bound?.scope ?? scope, seen);
      }
      const sheet = target.sheet ?? scope.home.sheet;
      const { top, left } = target.range;
      const inside = book.cellsIn(sheet, target.range);
      // A table whose formula fails shows only the error, in place of its headings, just above the range that is read.
      const above =
        inside.length > 0 || top === null || left === null
          ? undefined
          : book.cell({ sheet, row: top - 1, column: left });
      return [...inside, above].find(
        (cell) => cell !== undefined && typeof cell.value === 'object' && !seen.has(keyOf(cell)),
      );
    }
    for (const [child, inner] of childrenOf(part, scope)) {
      const found = firstError(child, inner, seen);
      if (found !== undefined) return found;
    }
    return undefined;
  };

  return { ofError, typedFor: (spot) => typedAll([spot]) };
}

async function originsOrNone(part: Part, scope: Scope, around: Surroundings): Promise<Origins | undefined> {
  try {
    return await originsOf(part, scope, around);
  } catch (error) {
    if (error instanceof NotFollowed) return undefined;
    throw error;
  }
}

function valueAt(grid: Grid, down: number, across: number): CellResult | undefined {
  return (grid.length === 1 ? grid[0] : grid[down])?.[across];
}

function reasonIn(value: CellResult): string | undefined {
  return typeof value === 'object' && value.error.message !== '' ? value.error.message : undefined;
}

function codeOf(value: CellResult): string {
  return typeof value === 'object' ? value.error.code : '';
}

export function keyOf({ sheet, row, column }: Spot): string {
  return `${sheet.toLowerCase()}!${row},${column}`;
}
