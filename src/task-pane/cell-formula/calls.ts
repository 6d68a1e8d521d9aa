import type { CellRange } from '../../hosts/address';
import { contains } from '../../hosts/address';
import type { Place, SheetHost } from '../../hosts/sheet-host';
import type { BookCell } from './book';
import { childrenOf } from './children';
import { type Part, readFormula, siltName } from './read-formula';
import { type Scope, scopeOf } from './scope';

/** A call of one of our functions inside a cell formula. */
export interface SiltCall {
  /** Without `SILT.`: `CUT.PLAN`. */
  readonly name: string;
  readonly given: readonly (Part | null)[];
  readonly scope: Scope;
  /** Place in the formula's text after its closing bracket. */
  readonly end: number | undefined;
}

/** Every call of our functions in a formula, the outermost first. */
export function* siltCalls(part: Part, scope: Scope): Iterable<SiltCall> {
  if (part.type === 'CallExpression' && part.callee.type === 'Identifier') {
    const name = siltName(part.callee.name);
    if (name !== undefined)
      yield { name, given: part.arguments as readonly (Part | null)[], scope, end: part.loc?.[1] };
  }
  for (const [child, inner] of childrenOf(part, scope)) yield* siltCalls(child, inner);
}

/** The formula whose result a cell shows, with the cells that it fills. */
export interface Source {
  readonly sheet: string;
  readonly range: CellRange;
  readonly formula: string;
  readonly calls: readonly SiltCall[];
}

/** The call of our functions in a cell or spilling into it; undefined if there is none. */
export async function sourceAt(host: Pick<SheetHost, 'read'>, place: Place): Promise<Source | undefined> {
  const { row, column } = place.range;
  const here = { row, column, rows: 1, columns: 1 };
  const block = await host.read({ sheet: place.sheet, range: here });
  const spill = block.spills.find((one) => contains(one, row, column));
  const range = spill ?? here;
  const home = { row: range.row, column: range.column, rows: 1, columns: 1 };
  const formula = (spill === undefined ? block : await host.read({ sheet: place.sheet, range: home })).formulas[0]?.[0];
  if (formula === undefined || !/SILT[._]/i.test(formula)) return undefined;
  const part = readFormula(formula);
  if (part === undefined) return undefined;
  const cell: BookCell = {
    sheet: place.sheet,
    row: range.row,
    column: range.column,
    value: '',
    formula,
    source: undefined,
  };
  return { sheet: place.sheet, range, formula, calls: [...siltCalls(part, scopeOf(cell))] };
}
