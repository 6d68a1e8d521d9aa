import type { CallExpression, ReferenceIdentifier } from '@borgar/fx';
import type { Book, BookCell } from '../cell-formula/book';
import { childrenOf } from '../cell-formula/children';
import type { ReadFormulas } from '../cell-formula/read-formula';
import { type Part, siltName, targetOf } from '../cell-formula/read-formula';
import { type Scope, scopeOf } from '../cell-formula/scope';
import { isShifted, roleInside } from './carry';
import type { UnitsFollower } from './follow-units';
import { inColumn, isOurs, keyOf, nothing, other, type Role, sign, worked } from './role';
import type { ByHand, LiteralUse, Use, Uses } from './use';

const nowhere: Scope = scopeOf({ sheet: '', row: 0, column: 0, value: '', formula: undefined, source: undefined });
const comparisons = new Set(['=', '<', '>', '<=', '>=', '<>']);

/** Follows roles down into formulas and records how the typed numbers at the end are read. */
export class Walk {
  private readonly ofCell = new Map<BookCell, Map<string, Use>>();
  private readonly literals = new Map<BookCell, Map<string, LiteralUse>>();
  private readonly byHand = new Map<string, ByHand>();
  /** By cell, the roles that its formula was walked in. */
  private readonly passed = new Map<BookCell, Set<string>>();
  private readonly followed = new Set<BookCell>();
  /** Formulas that references lead to, in a list because a chain of them may be longer than calls can nest. */
  private readonly waiting: (readonly [Part, Role, Scope])[] = [];
  private readonly book: Book;
  private readonly formulas: ReadFormulas;
  private readonly units: UnitsFollower;

  constructor(book: Book, formulas: ReadFormulas, units: UnitsFollower) {
    this.book = book;
    this.formulas = formulas;
    this.units = units;
  }

  uses(): Uses {
    const lists = <T>(maps: ReadonlyMap<BookCell, ReadonlyMap<string, T>>): Map<BookCell, T[]> =>
      new Map([...maps].map(([cell, uses]) => [cell, [...uses.values()]]));
    return { ofCell: lists(this.ofCell), literals: lists(this.literals), byHand: [...this.byHand.values()] };
  }

  /** Whether a formula passes numbers to one of our functions. */
  isFollowed(cell: BookCell): boolean {
    return this.followed.has(cell);
  }

  /** Records a cell that a person must check. */
  leave(at: BookCell, why: string, role: Role = other): void {
    const kind = role.as === 'figure' ? { kind: role.kind } : {};
    this.byHand.set(`${at.sheet}!${at.row},${at.column} ${why}`, { at, why, ...kind });
  }

  /** Walks a part and everything that it leads to. */
  start(part: Part, role: Role, scope: Scope): void {
    this.walkPart(part, role, scope);
    for (let next = this.waiting.pop(); next !== undefined; next = this.waiting.pop()) this.walkPart(...next);
  }

  private walkPart(part: Part, role: Role, scope: Scope): void {
    if (part.type === 'ReferenceIdentifier') this.reference(part, role, scope);
    else if (part.type === 'Literal') {
      if (typeof part.value !== 'boolean') this.literal(part.loc, part.value, role, scope);
    } else if (part.type === 'UnaryExpression' && part.operator === '#') {
      this.spilled(part.arguments[0] as Part, role, scope);
    } else if (part.type === 'UnaryExpression') {
      const isExact = part.operator !== '%' && !(part.operator === '-' && isShifted(role));
      this.walkPart(part.arguments[0] as Part, isExact ? role : worked(role, part.operator), scope);
    } else if (part.type === 'BinaryExpression') {
      this.binary(part.operator, part.arguments as readonly Part[], role, scope);
    } else if (part.type === 'CallExpression') this.call(part, role, scope);
    else if (part.type === 'ArrayExpression') {
      for (const line of part.elements) {
        const name = line[0]?.type === 'Literal' ? String(line[0].value) : '';
        line.forEach((element, across) => {
          this.walkPart(element as Part, inColumn(role, across, name), scope);
        });
      }
    } else if (part.type === 'LetExpression' || part.type === 'LambdaExpression') {
      const [body, inner] = [...childrenOf(part, scope)].at(-1) ?? [];
      if (body && inner) this.walkPart(body, part.type === 'LetExpression' ? role : other, inner);
    }
  }

  private reference(part: ReferenceIdentifier, role: Role, scope: Scope): void {
    if (role.as === 'nothing') return;
    const target = targetOf(part);
    if (target === undefined) {
      if (isOurs(role)) this.leave(scope.home, `${part.value} is a table or in another workbook`, role);
    } else if ('name' in target) this.name(target.name, role, scope);
    else this.range(target.sheet ?? scope.home.sheet, target.range, role, scope);
  }

  /** `A5#`, the whole result of the formula of A5. */
  private spilled(part: Part, role: Role, scope: Scope): void {
    const target = part.type === 'ReferenceIdentifier' ? targetOf(part) : undefined;
    if (target === undefined || 'name' in target) return;
    const [cell] = this.book.cellsIn(target.sheet ?? scope.home.sheet, target.range);
    if (cell?.formula !== undefined) this.reachCell(cell, role, scope);
  }

  private name(name: string, role: Role, scope: Scope): void {
    if (scope.bound.has(name.toLowerCase())) {
      const bound = scope.bound.get(name.toLowerCase());
      if (bound) this.walkPart(bound.part, role, bound.scope);
    } else if (!this.units.isName(name)) {
      const target = this.units.meant(name);
      if (target !== undefined && !('name' in target)) {
        this.range(target.sheet ?? scope.home.sheet, target.range, role, scope);
      } else if (isOurs(role)) this.leave(scope.home, `the name ${name} does not refer to cells`, role);
    }
  }

  private range(sheet: string, range: Parameters<Book['cellsIn']>[1], role: Role, scope: Scope): void {
    const cells = this.book.cellsIn(sheet, range);
    const first = cells[0];
    if (first === undefined) return;
    if (
      first.formula !== undefined &&
      cells.length > 1 &&
      cells.every((one) => one === first || one.source === first)
    ) {
      this.reachCell(first, role, scope);
      return;
    }
    const left = range.left ?? Math.min(...cells.map(({ column }) => column));
    for (const cell of cells) {
      const named = role.as === 'inputs' ? this.book.cell({ sheet, row: cell.row, column: left })?.value : '';
      this.reachCell(cell, inColumn(role, cell.column - left, typeof named === 'string' ? named : ''), scope);
    }
  }

  /** A cell at the end of a reference: typed, or one whose formula passes other cells on. */
  private reachCell(cell: BookCell, role: Role, scope: Scope): void {
    if (role.as === 'nothing') return;
    if (cell.source !== undefined) {
      this.reachCell(cell.source, worked(role, 'a result of several cells'), scope);
    } else if (cell.formula === undefined) {
      if (cell.value !== '') addUse(this.ofCell, cell, keyOf(role), { role, by: scope.home });
    } else {
      const passed = this.passed.get(cell) ?? new Set();
      if (isOurs(role)) this.followed.add(cell);
      if (passed.has(keyOf(role))) return;
      this.passed.set(cell, passed.add(keyOf(role)));
      const part = this.formulas.of(cell);
      if (part !== undefined) this.waiting.push([part, role, scopeOf(cell)]);
    }
  }

  private literal(loc: readonly number[] | null | undefined, value: number | string, role: Role, scope: Scope): void {
    const [from, to] = loc ?? [];
    if (role.as !== 'figure' || from === undefined || to === undefined) return;
    if (role.afterArithmetic !== undefined) {
      this.leave(scope.home, `a number in its formula is used in ${role.afterArithmetic}`, role);
      return;
    }
    addUse(this.literals, scope.home, `${from} ${keyOf(role)}`, { role, by: scope.home, from, to, value });
  }

  private binary(operator: string, [left, right]: readonly Part[], role: Role, scope: Scope): void {
    if (left === undefined || right === undefined) return;
    let [forLeft, forRight] = [other, other];
    if (comparisons.has(operator)) [forLeft, forRight] = [readBeside(right), readBeside(left)];
    else if (operator === ',' || operator === ' ') [forLeft, forRight] = [role, role];
    else if (operator === '+' || operator === '-') {
      forLeft = isShifted(role) ? worked(role, 'a sum') : role;
      forRight = forLeft;
    } else if (operator === '*' || operator === '/') {
      const factor = worked(role, operator === '*' ? 'a product' : 'a division');
      forLeft = left.type === 'Literal' && refers(right) ? nothing : factor;
      forRight = operator === '*' ? factor : role.as === 'nothing' ? nothing : other;
      if (right.type === 'Literal' && refers(left)) forRight = nothing;
    } else if (operator === ':' && isOurs(role)) this.leave(scope.home, 'its range is calculated', role);
    this.walkPart(left, forLeft, scope);
    this.walkPart(right, forRight, scope);
  }

  private call(part: CallExpression, role: Role, scope: Scope): void {
    if (part.callee.type !== 'Identifier') {
      for (const [child, inner] of childrenOf(part, scope))
        this.walkPart(child, role.as === 'nothing' ? role : other, inner);
      return;
    }
    const { name } = part.callee;
    // The result of our functions follows the workbook's units, and their arguments have roles of their own.
    if (siltName(name) !== undefined) return;
    const given = part.arguments as readonly (Part | null)[];
    const roles = given.map((_, at) => roleInside(name, at, given.length, role, keepsColumns(name, given)));
    if (isOurs(role) && roles.length > 0 && !roles.some(isOurs))
      this.leave(scope.home, `numbers are used in ${name}() first`, role);
    const doesRefer = given.some((child) => child !== null && refers(child));
    given.forEach((child, at) => {
      const inner = roles[at] ?? other;
      // Beside a reference, a number in arithmetic is a count of places or a factor.
      const isFactor =
        doesRefer && child?.type === 'Literal' && inner.as === 'figure' && inner.afterArithmetic !== undefined;
      if (child && !isFactor) this.walkPart(child, inner, scope);
    });
  }
}

/** Whether a function returns whole rows unchanged: `TAKE(range, 5)`, `INDEX(range, 3, 0)`. */
function keepsColumns(name: string, given: readonly (Part | null)[]): boolean {
  const columns = given[2];
  const isAll = !columns || (columns.type === 'Literal' && columns.value === 0);
  return isAll && /^(?:TAKE|DROP|CHOOSEROWS|INDEX)$/i.test(name);
}

/** Whether any cell or name is part of it. */
function refers(part: Part): boolean {
  if (part.type === 'ReferenceIdentifier') return true;
  return [...childrenOf(part, nowhere)].some(([child]) => refers(child));
}

/** A comparison with blank text only asks whether there is a number, one with 0 only for its sign. */
function readBeside(part: Part): Role {
  if (part.type !== 'Literal') return other;
  return typeof part.value === 'string' ? nothing : part.value === 0 ? sign : other;
}

function addUse<T>(notes: Map<BookCell, Map<string, T>>, cell: BookCell, key: string, use: T): void {
  const uses = notes.get(cell) ?? new Map<string, T>();
  if (!uses.has(key)) uses.set(key, use);
  notes.set(cell, uses);
}
