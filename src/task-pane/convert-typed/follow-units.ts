import type { Book } from '../cell-formula/book';
import { childrenOf } from '../cell-formula/children';
import type { ReadFormulas } from '../cell-formula/read-formula';
import { type Part, readFormula, type Target, targetOf } from '../cell-formula/read-formula';
import { type Scope, scopeOf } from '../cell-formula/scope';

/** Longer chains of cells to the units cell than this are not followed. */
const furthest = 8;

/** Tells which calls follow the units of the whole workbook. */
export class UnitsFollower {
  private readonly book: Book;
  private readonly formulas: ReadFormulas;
  private readonly unitsName: string;
  private readonly unitsCell: Target;

  constructor(book: Book, formulas: ReadFormulas, unitsName: string) {
    this.book = book;
    this.formulas = formulas;
    this.unitsName = unitsName.toLowerCase();
    this.unitsCell = this.meant(unitsName);
  }

  /** Whether this is the name of the units cell. */
  isName(name: string): boolean {
    return name.toLowerCase() === this.unitsName;
  }

  /**
   * `yes` for the units cell, by name, by address or through cells that repeat it; `worked` if it is part of a
   * calculation.
   */
  follows(part: Part, scope: Scope, depth = 0): 'yes' | 'worked' | 'no' {
    if (depth > furthest) return 'no';
    if (part.type === 'UnaryExpression' && part.operator === '@') {
      return this.follows(part.arguments[0] as Part, scope, depth + 1);
    }
    if (part.type !== 'ReferenceIdentifier') {
      const inside = [...childrenOf(part, scope)].some(
        ([child, inner]) => this.follows(child, inner, depth + 1) !== 'no',
      );
      return inside ? 'worked' : 'no';
    }
    const target = targetOf(part);
    if (target === undefined) return 'no';
    if ('name' in target) return this.followsName(target.name, scope, depth);
    const { top, left, bottom, right } = target.range;
    const sheet = target.sheet ?? scope.home.sheet;
    if (top === null || left === null || top !== bottom || left !== right) return 'no';
    if (this.isUnitsCell(sheet, top, left)) return 'yes';
    const cell = this.book.cell({ sheet, row: top, column: left });
    const targetOfName = cell === undefined ? undefined : this.formulas.of(cell);
    return targetOfName === undefined || cell === undefined
      ? 'no'
      : this.follows(targetOfName, scopeOf(cell), depth + 1);
  }

  private followsName(name: string, scope: Scope, depth: number): 'yes' | 'worked' | 'no' {
    if (this.isName(name)) return 'yes';
    const bound = scope.bound.get(name.toLowerCase());
    if (bound) return this.follows(bound.part, bound.scope, depth + 1);
    const stands = this.book.named(name);
    const meant = stands === undefined ? undefined : readFormula(`=${stands}`);
    return meant === undefined ? 'no' : this.follows(meant, scope, depth + 1);
  }

  private isUnitsCell(sheet: string, row: number, column: number): boolean {
    const target = this.unitsCell;
    if (target === undefined || 'name' in target || target.sheet === undefined) return false;
    const { top, left } = target.range;
    return target.sheet.toLowerCase() === sheet.toLowerCase() && top === row && left === column;
  }

  /** The cells that a name refers to. */
  meant(name: string): Target {
    const stands = this.book.named(name);
    const part = stands === undefined ? undefined : readFormula(`=${stands}`);
    return part?.type === 'ReferenceIdentifier' ? targetOf(part) : undefined;
  }
}
