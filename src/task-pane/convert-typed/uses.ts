import type { CatalogueRow } from '../../catalogue/define';
import type { Book } from '../cell-formula/book';
import { childrenOf } from '../cell-formula/children';
import { type Part, ReadFormulas, siltName, targetOf } from '../cell-formula/read-formula';
import { type Scope, scopeOf } from '../cell-formula/scope';
import { UnitsFollower } from './follow-units';
import { nothing, other, roleOfArgument } from './role';
import type { Uses } from './use';
import { Walk } from './walk';

export interface UsesSought {
  readonly catalogue: readonly CatalogueRow[];
  readonly unitsName: string;
  /** Called between formulas, so that the page can respond and the work can be stopped. */
  readonly step?: (share: number) => Promise<void>;
}

/**
 * Follows every number of a workbook to the formula that reads it. First each call of our functions gives roles to
 * its arguments, also through cells that only pass numbers on; every other formula is another kind of use.
 */
export async function findUses(book: Book, { catalogue, unitsName, step }: UsesSought): Promise<Uses> {
  const formulas = new ReadFormulas();
  const units = new UnitsFollower(book, formulas, unitsName);
  const walk = new Walk(book, formulas, units);
  const visitor: Visitor = {
    book,
    walk,
    units,
    rows: new Map(catalogue.map((row) => [row.name.toUpperCase(), row])),
  };
  const { length } = book.formulas;
  for (const [index, cell] of book.formulas.entries()) {
    if (index % 16 === 0) await step?.((0.6 * index) / length);
    const part = formulas.of(cell);
    if (part !== undefined) visitCalls(part, scopeOf(cell), visitor);
    else if (/\bSILT[._]/i.test(cell.formula ?? '')) walk.leave(cell, 'its formula cannot be read here');
  }
  for (const [index, cell] of book.formulas.entries()) {
    if (index % 64 === 0) await step?.(0.6 + (0.4 * index) / length);
    const part = walk.isFollowed(cell) ? undefined : formulas.of(cell);
    if (part !== undefined) walk.start(part, other, scopeOf(cell));
  }
  return walk.uses();
}

interface Visitor {
  readonly book: Book;
  readonly walk: Walk;
  readonly units: UnitsFollower;
  readonly rows: ReadonlyMap<string, CatalogueRow>;
}

/** Finds every call of ours in a formula, inside one another too, and walks its arguments in their roles. */
function visitCalls(part: Part, scope: Scope, visitor: Visitor): void {
  if (part.type === 'CallExpression' && part.callee.type === 'Identifier') {
    const name = siltName(part.callee.name);
    if (name !== undefined) visitCall(name, part.arguments as readonly (Part | null)[], scope, visitor);
  }
  for (const [child, inner] of childrenOf(part, scope)) visitCalls(child, inner, visitor);
}

function visitCall(name: string, given: readonly (Part | null)[], scope: Scope, visitor: Visitor): void {
  const { walk, units, book } = visitor;
  const row = visitor.rows.get(name);
  const first = given[0];
  const follows = row !== undefined && row.units !== false && first ? units.follows(first, scope) : 'no';
  if (row === undefined || follows !== 'yes') {
    // Read in units that do not change, so that a change would be wrong here.
    if (follows === 'worked') walk.leave(scope.home, `the units of SILT.${name} are calculated from SiltUnits`);
    for (const part of given) if (part) walk.start(part, other, scope);
    return;
  }
  const specs = Object.entries(row.arguments);
  const kindAt = specs.findIndex(([argument]) => argument === 'kind');
  const kindPart = kindAt < 0 ? undefined : given[kindAt + 1];
  const kindWord = kindPart ? wordOf(kindPart, scope, book) : undefined;
  specs.forEach(([, spec], at) => {
    const part = given[at + 1];
    if (part) walk.start(part, roleOfArgument(spec, kindWord), scope);
  });
  const headings = given[specs.length + 1];
  if (headings) walk.start(headings, nothing, scope);
}

/** The text of an argument such as a kind, typed there or in the cell that it refers to. */
function wordOf(part: Part, scope: Scope, book: Book): string | undefined {
  if (part.type === 'Literal') return String(part.value);
  if (part.type !== 'ReferenceIdentifier') return undefined;
  const target = targetOf(part);
  if (target === undefined || 'name' in target) return undefined;
  const [cell] = book.cellsIn(target.sheet ?? scope.home.sheet, target.range);
  return typeof cell?.value === 'string' ? cell.value : undefined;
}
