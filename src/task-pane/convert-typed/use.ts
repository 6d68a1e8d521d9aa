import type { Kind } from '../../units/kinds';
import type { BookCell } from '../cell-formula/book';
import type { Role } from './role';

/** One way in which a number is read: as a figure of a kind, by its sign, or by something else. */
export interface Use {
  readonly role: Role;
  /** The cell whose formula reads it. */
  readonly by: BookCell;
}

/** A number typed inside a formula, from one place of its text to another. */
export interface LiteralUse extends Use {
  readonly from: number;
  readonly to: number;
  readonly value: number | string;
}

/** A use that cannot be followed, so that a person must check it. */
export interface ByHand {
  readonly at: BookCell;
  readonly why: string;
  /** The kind of the number, if it is known: it matters only if the unit of that kind changes. */
  readonly kind?: Kind;
}

export interface Uses {
  readonly ofCell: ReadonlyMap<BookCell, readonly Use[]>;
  readonly literals: ReadonlyMap<BookCell, readonly LiteralUse[]>;
  readonly byHand: readonly ByHand[];
}
