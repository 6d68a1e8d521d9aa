import type { Bounds } from '../../catalogue/argument';
import type { Kind } from '../../units/kinds';
import type { Profile } from '../../units/profile';
import type { SheetRole } from './find-sheets';

/** How a figure is given that the sheet takes only in another form: as a formula in its cell. */
interface Worked {
  /** The formula for what was typed, in a row of Drums; `entry` is a number or quoted text. */
  readonly formula: (entry: string, row: number) => string;
  /** Finds the entry in such a formula. */
  readonly entry: RegExp;
}

/** An input of the guide: one cell of a ready-made sheet. */
export interface Field {
  readonly label: string;
  readonly hint?: string;
  /** The letter of the measurement in the picture. */
  readonly letter?: string;
  readonly sheet: SheetRole;
  /** Its address; `#` stands for the drum's row. */
  readonly cell: string;
  /** What it is read as; text where left out. */
  readonly kind?: Kind;
  /** What its figure may be, in SI; what depends on other figures is found by the sheets. */
  readonly bounds?: Bounds;
  /** Reads a text that is no quantity, and throws Unreadable where the sheets would not read it. */
  readonly reader?: (value: string, profile: Profile) => unknown;
  readonly choices?: readonly string[];
  readonly isNeeded?: true;
  readonly worked?: Worked;
}
