import type { Spot } from '../cell-formula/book';
import { childrenOf } from '../cell-formula/children';
import { type Part, readFormula, siltName, targetOf } from '../cell-formula/read-formula';
import type { Scope } from '../cell-formula/scope';
import { evaluate, type Surroundings } from './evaluate';
import { cellByCell, type Grid, isTrue, NotFollowed } from './grid';
import { sheetFunction } from './sheet-functions';

/** The cells that each value of a part came from, as many rows and columns as the part has values. */
export type Origins = readonly (readonly (readonly Spot[])[])[];

export interface PlaceInGrid {
  readonly down: number;
  readonly across: number;
}

/** The cells at one place; a single row or column is repeated, as in spreadsheet arrays. */
export function atPlace(grid: Origins | undefined, { down, across }: PlaceInGrid): readonly Spot[] {
  const line = grid?.length === 1 ? grid[0] : grid?.[down];
  return (line?.length === 1 ? line[0] : line?.[across]) ?? [];
}

const mostCells = 20_000;
const deepest = 80;

/** Functions that only pick or stack cells: which arguments are the cells; the other arguments say which to pick. */
const movers: Readonly<Record<string, (at: number) => boolean>> = {
  FILTER: (at) => at === 0,
  INDEX: (at) => at === 0,
  CHOOSEROWS: (at) => at === 0,
  VSTACK: () => true,
};

/**
 * The cells that a part of a formula passes on, cell by cell, through references, names, LET and functions that pick
 * rows. If a value is chosen, the chosen one counts, or if that is a constant, the conditions. Throws NotFollowed for
 * anything else.
 */
export async function originsOf(part: Part, scope: Scope, around: Surroundings, depth = 0): Promise<Origins> {
  if (depth > deepest) throw new NotFollowed('is nested too deep');
  const of = (child: Part, inner: Scope = scope): Promise<Origins> => originsOf(child, inner, around, depth + 1);
  switch (part.type) {
    case 'Literal':
      return [[[]]];
    case 'ReferenceIdentifier': {
      const target = targetOf(part);
      if (target === undefined) throw new NotFollowed(`reads ${part.value}, a table or another workbook`);
      if (!('name' in target)) return cellsOf(target.sheet ?? scope.home.sheet, target.range);
      const bound = scope.bound.get(target.name.toLowerCase());
      if (bound !== undefined) return of(bound.part, bound.scope);
      const name = around.names.find((one) => one.name.toLowerCase() === target.name.toLowerCase());
      const meant = name === undefined ? undefined : readFormula(`=${name.refersTo.replace(/^=/, '')}`);
      if (meant === undefined) throw new NotFollowed(`uses the name ${target.name}`);
      return of(meant);
    }
    case 'UnaryExpression':
    case 'BinaryExpression':
      return combinedOrigins(await Promise.all(part.arguments.map((child) => of(child as Part))));
    case 'LetExpression': {
      const last = [...childrenOf(part, scope)].at(-1);
      if (last === undefined) throw new NotFollowed('is empty');
      return of(...last);
    }
    case 'CallExpression':
      if (part.callee.type !== 'Identifier') throw new NotFollowed('calls a function of its own');
      return ofCall(part.callee.name, part.arguments as readonly (Part | null)[], scope, around, of);
    default:
      throw new NotFollowed('uses something that the pane cannot read');
  }
}

async function ofCall(
  name: string,
  given: readonly (Part | null)[],
  scope: Scope,
  around: Surroundings,
  of: (part: Part) => Promise<Origins>,
): Promise<Origins> {
  const plain = name.toUpperCase().replace(/^_XLFN\.(?:_XLWS\.)?/, '');
  const isOurs = siltName(name) !== undefined;
  // The first argument of our functions is the units, which never holds the wrong number.
  const parts = given.slice(isOurs ? 1 : 0).filter((one) => one !== null);
  const [first, second, third] = parts;
  if (plain === 'IF' && first !== undefined && second !== undefined) {
    const [by, then, otherwise] = await Promise.all([of(first), of(second), third === undefined ? [[[]]] : of(third)]);
    const asked = await evaluateOrNone(first, scope, around);
    return asked === undefined ? combinedOrigins([by, then, otherwise]) : chosenOrigins(asked, by, then, otherwise);
  }
  const isCell = movers[plain];
  if (isCell === undefined) {
    const combined = combinedOrigins(await Promise.all(parts.map((one) => of(one))));
    // The one text that it gives comes from every cell.
    return plain === 'TEXTJOIN' ? [[combined.flat(2)]] : combined;
  }
  const mover = sheetFunction(plain);
  if (mover === undefined) throw new NotFollowed(`uses ${plain}`);
  // Numbers in a list replace the values, so that they are moved as the values would be.
  const list: (readonly Spot[])[] = [];
  const grids = await Promise.all(
    parts.map(async (one, at): Promise<Grid | undefined> => {
      if (!isCell(at)) return evaluateOrNone(one, scope, around);
      return (await of(one)).map((line) => line.map((spots) => list.push(spots) - 1));
    }),
  );
  // The cells that it picks are not known; naming none is better than naming a wrong one.
  if (grids.includes(undefined)) return [[[]]];
  return mover(...(grids as readonly Grid[])).map((line) =>
    line.map((value) => (typeof value === 'number' ? (list[value] ?? []) : [])),
  );
}

/** Undefined if it cannot be evaluated here. */
async function evaluateOrNone(part: Part, scope: Scope, around: Surroundings): Promise<Grid | undefined> {
  try {
    return await evaluate(part, scope, around);
  } catch (error) {
    if (error instanceof NotFollowed) return undefined;
    throw error;
  }
}

/** Origins of constants: the cells of the conditions that chose them. */
const ofConditions = new WeakSet<readonly Spot[]>();

function chosenOrigins(asked: Grid, by: Origins, then: Origins, otherwise: Origins): Origins {
  const list: (readonly Spot[])[] = [];
  const listed = (origins: Origins): Grid => origins.map((line) => line.map((spots) => list.push(spots) - 1));
  return cellByCell([asked, listed(by), listed(then), listed(otherwise)], (test, reason, yes, no) => {
    const taken = (test !== undefined && isTrue(test) ? yes : no) ?? '';
    const spots = list[Number(taken)] ?? [];
    if (spots.length > 0 && !ofConditions.has(spots)) return taken;
    // A constant in a choice within a choice comes from both conditions.
    const conditions = [...(list[Number(reason)] ?? []), ...spots];
    ofConditions.add(conditions);
    return list.push(conditions) - 1;
  }).map((line) => line.map((value) => (typeof value === 'number' ? (list[value] ?? []) : [])));
}

/** A value calculated from several comes from all of them. */
function combinedOrigins(all: readonly Origins[]): Origins {
  const rows = Math.max(1, ...all.map((one) => one.length));
  const columns = Math.max(1, ...all.map((one) => one[0]?.length ?? 0));
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => all.flatMap((one) => atPlace(one, { down: row, across: column }))),
  );
}

type Bounds = Extract<ReturnType<typeof targetOf>, { readonly range: unknown }>['range'];

function cellsOf(sheet: string, { top, left, bottom, right }: Bounds): Origins {
  if (top === null || left === null || bottom === null || right === null) {
    throw new NotFollowed('reads whole rows or columns');
  }
  if ((bottom - top + 1) * (right - left + 1) > mostCells) throw new NotFollowed('reads too many cells');
  return Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (__, across) => [{ sheet, row: top + down, column: left + across }]),
  );
}
