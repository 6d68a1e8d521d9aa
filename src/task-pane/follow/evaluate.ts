import type { ReferenceIdentifier } from '@borgar/fx';
import type { FunctionLibrary } from '../../functions/function-library';
import type { SheetHost } from '../../hosts/sheet-host';
import type { CellResult, DefinedName } from '../../hosts/workbook-model';
import { childrenOf } from '../cell-formula/children';
import { type Part, readFormula, siltName, targetOf } from '../cell-formula/read-formula';
import type { Scope } from '../cell-formula/scope';
import { cellByCell, compared, type Grid, NotFollowed, numberIn, single } from './grid';
import { sheetFunction } from './sheet-functions';

/** What is needed to evaluate the parts of a formula. */
export interface Surroundings {
  readonly host: Pick<SheetHost, 'read'>;
  readonly functionLibrary: FunctionLibrary;
  readonly names: readonly DefinedName[];
}

const deepest = 40;
const mostCells = 200_000;

/**
 * The values of a part of a cell formula, if it is made of references, numbers, simple arithmetic, our functions and
 * the few ordinary ones that pick rows of a table. Throws NotFollowed for anything else and never guesses.
 */
export async function evaluate(part: Part, scope: Scope, around: Surroundings, depth = 0): Promise<Grid> {
  if (depth > deepest) throw new NotFollowed('is nested too deep');
  const of = (child: Part, inner: Scope = scope): Promise<Grid> => evaluate(child, inner, around, depth + 1);
  switch (part.type) {
    case 'Literal':
      return single(part.value as CellResult);
    case 'ArrayExpression':
      return Promise.all(
        part.elements.map(async (line) =>
          Promise.all(line.map(async (element) => (await of(element as Part))[0]?.[0] ?? '')),
        ),
      );
    case 'ReferenceIdentifier':
      return reference(part, scope, around, depth);
    case 'UnaryExpression': {
      const [inside] = part.arguments as readonly Part[];
      if (inside === undefined) throw new NotFollowed(`uses ${part.operator} on nothing`);
      if (part.operator === '#') return spilled(inside, scope, around);
      const given = await of(inside);
      if (part.operator === '@') return single(given[0]?.[0] ?? '');
      const sign = part.operator === '-' ? -1 : part.operator === '%' ? 0.01 : undefined;
      return sign === undefined ? given : cellByCell([given], (value) => numberIn(value ?? '') * sign);
    }
    case 'BinaryExpression': {
      const work = operators[part.operator];
      if (work === undefined) throw new NotFollowed(`uses ${part.operator}`);
      const sides = await Promise.all((part.arguments as readonly Part[]).map((side) => of(side)));
      return cellByCell(sides, (a, b) => work(a ?? '', b ?? ''));
    }
    case 'LetExpression': {
      const [body, inner] = [...childrenOf(part, scope)].at(-1) ?? [];
      if (body === undefined) throw new NotFollowed('uses LET without a result');
      return of(body, inner);
    }
    case 'CallExpression': {
      if (part.callee.type !== 'Identifier') throw new NotFollowed('calls a function of its own');
      const given = await Promise.all(
        part.arguments.map(async (child) => (child === null ? undefined : of(child as Part))),
      );
      return call(part.callee.name, given, around.functionLibrary);
    }
    default:
      throw new NotFollowed('uses something that the pane cannot read');
  }
}

const operators: Readonly<Record<string, (a: CellResult, b: CellResult) => CellResult>> = {
  '+': (a, b) => numberIn(a) + numberIn(b),
  '-': (a, b) => numberIn(a) - numberIn(b),
  '*': (a, b) => numberIn(a) * numberIn(b),
  '/': (a, b) => numberIn(a) / numberIn(b),
  '&': (a, b) => `${a}${b}`,
  '=': (a, b) => compared(a, b) === 0,
  '<>': (a, b) => compared(a, b) !== 0,
  '<': (a, b) => compared(a, b) < 0,
  '>': (a, b) => compared(a, b) > 0,
  '<=': (a, b) => compared(a, b) <= 0,
  '>=': (a, b) => compared(a, b) >= 0,
};

async function reference(part: ReferenceIdentifier, scope: Scope, around: Surroundings, depth: number): Promise<Grid> {
  const target = targetOf(part);
  if (target === undefined) throw new NotFollowed(`reads ${part.value}, a table or another workbook`);
  if (!('name' in target)) return cells(target, part.value, scope, around);
  const wanted = target.name.toLowerCase();
  if (scope.bound.has(wanted)) {
    const bound = scope.bound.get(wanted);
    if (bound === undefined) throw new NotFollowed('calls a function of its own');
    return evaluate(bound.part, bound.scope, around, depth + 1);
  }
  const name = around.names.find((one) => one.name.toLowerCase() === wanted);
  const meant = name === undefined ? undefined : readFormula(`=${name.refersTo.replace(/^=/, '')}`);
  if (meant === undefined) throw new NotFollowed(`uses the name ${target.name}, which is not defined`);
  return evaluate(meant, scope, around, depth + 1);
}

type Cells = Extract<ReturnType<typeof targetOf>, { readonly range: unknown }>;

async function cells({ sheet, range }: Cells, shown: string, scope: Scope, { host }: Surroundings): Promise<Grid> {
  const { top, left, bottom, right } = range;
  if (top === null || left === null || bottom === null || right === null) {
    throw new NotFollowed(`reads whole rows or columns, ${shown}`);
  }
  const size = { rows: bottom - top + 1, columns: right - left + 1 };
  if (size.rows * size.columns > mostCells) throw new NotFollowed(`reads more cells than a drawing needs, ${shown}`);
  const block = await host.read({ sheet: sheet ?? scope.home.sheet, range: { row: top, column: left, ...size } });
  return block.values;
}

/** `A5#`, the whole result of the formula of A5. */
async function spilled(part: Part, scope: Scope, { host }: Surroundings): Promise<Grid> {
  const target = part.type === 'ReferenceIdentifier' ? targetOf(part) : undefined;
  if (target === undefined || 'name' in target || target.range.top === null || target.range.left === null) {
    throw new NotFollowed('reads a spill that is not found');
  }
  const { top: row, left: column } = target.range;
  const sheet = target.sheet ?? scope.home.sheet;
  const block = await host.read({ sheet, range: { row, column, rows: 1, columns: 1 } });
  const spill = block.spills.find((one) => one.row === row && one.column === column);
  return spill === undefined ? block.values : (await host.read({ sheet, range: spill })).values;
}

function call(name: string, given: readonly (Grid | undefined)[], functionLibrary: FunctionLibrary): Grid {
  const ours = siltName(name);
  if (ours !== undefined) return callOurs(ours, given, functionLibrary);
  const known = sheetFunction(name);
  if (known === undefined || given.includes(undefined)) throw new NotFollowed(`uses ${name.toUpperCase()}`);
  return known(...(given as readonly Grid[]));
}

/** Calls one of our functions as a cell does; an error that it gives ends the evaluation with its message. */
export function callOurs(name: string, given: readonly (Grid | undefined)[], functionLibrary: FunctionLibrary): Grid {
  const row = functionLibrary.catalogue.find((one) => one.name === name);
  if (row === undefined) throw new NotFollowed(`uses SILT.${name}, which is not known here`);
  const adapted = functionLibrary.adapt(row, (code, message) => new CalledError(code, message));
  const values = adapted(...given.map((grid) => grid?.map((line) => line.map(toArgument))));
  return values.map((line) => line.map(toCellResult));
}

/** An error that one of our functions gave. */
export class CalledError extends NotFollowed {
  readonly code: string;
  /** The function's message. */
  readonly reason: string;
  constructor(code: string, reason: string) {
    super(reason === '' ? `gives ${code}` : `gives ${code}: ${reason}`);
    this.name = 'CalledError';
    this.code = code;
    this.reason = reason;
  }
}

function toArgument(value: CellResult): unknown {
  return typeof value === 'object' ? value.error : value;
}

function toCellResult(value: unknown): CellResult {
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return value;
  if (value instanceof CalledError) return { error: { code: value.code, message: value.reason } };
  return '';
}
