import type { CellRange } from './address';
import type { CellResult, CellScalar, DefinedName, WorkbookData } from './workbook-model';

/**
 * What the task pane asks of the spreadsheet beside it: the same small set of wishes for Excel and for the embedded
 * spreadsheet. Every wish is a promise; one that cannot be met is rejected with a HostError, never with anything raw,
 * and leaves the workbook as it was.
 */
export interface SheetHost {
  /** As it is called in a sentence: `Excel`, `the workbench`. */
  readonly name: string;
  /** Whether a link with a `download` attribute saves a file from where the pane is shown. */
  readonly downloads: boolean;

  readonly selection: () => Promise<Block>;
  /** Calls back after the selection moved; gives what ends it. */
  readonly onSelectionChanged: (listener: () => void) => Promise<Unsubscribe>;
  /** Shows a sheet and selects cells of it. */
  readonly select: (place: Place) => Promise<void>;

  readonly read: (place: Place) => Promise<Block>;
  /** The used cells of every sheet that has any, hidden ones included. */
  readonly readUsed: () => Promise<readonly Block[]>;
  /** Whether cells may still show results of before; left out where the host is never caught at that. */
  readonly isCalculating?: () => Promise<boolean>;
  /** Calls back after cells changed, by whoever, and after they were computed; gives what ends it. */
  readonly onCellsChanged: (listener: () => void) => Promise<Unsubscribe>;
  /** Writes all cells or none, as one step for the host's own undo where it can. */
  readonly write: (writes: readonly Write[]) => Promise<void>;

  readonly names: () => Promise<readonly DefinedName[]>;
  /** Sets a name of the whole workbook, in place of what it stood for. */
  readonly setName: (name: DefinedName) => Promise<void>;
  readonly removeName: (name: string) => Promise<void>;

  /** Names of the sheets in their order. */
  readonly sheets: () => Promise<readonly string[]>;
  readonly addSheet: (name: string) => Promise<void>;
  readonly removeSheet: (name: string) => Promise<void>;
  /**
   * Adds whole sheets, with their styles and names, behind the others: all or none. A sheet name that is taken is refused.
   * `step` is told between sheets how far it is, from 0 to 1; what it throws stops the work, and nothing stays.
   */
  readonly insert: (workbook: WorkbookData, step?: (share: number) => Promise<void>) => Promise<void>;

  readonly theme: () => HostTheme;
  readonly onThemeChanged: (listener: () => void) => Unsubscribe;
  /** Opens a page of this site beside the spreadsheet, in the browser. */
  readonly openPage: (address: string) => void;
}

export type Unsubscribe = () => void;

/** Cells of one sheet, rows and columns counted from 0. */
export interface Place {
  readonly sheet: string;
  readonly range: CellRange;
}

/** What stands in cells. Blank is the empty string; a formula is as typed, beginning with `=`, undefined where there is none. */
export interface Block extends Place {
  readonly values: readonly (readonly CellResult[])[];
  readonly formulas: readonly (readonly (string | undefined)[])[];
  /** The ranges that single formulas fill, where more than one cell; all their cells but the first only show results. */
  readonly spills: readonly CellRange[];
}

/** New content for a block of cells; its size is that of `cells`. Undefined leaves a cell as it is. */
export interface Write {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** A number, TRUE or FALSE, text, or a cell formula beginning with `=`; the empty string clears. */
  readonly cells: readonly (readonly (CellScalar | undefined)[])[];
  /** An Excel number format for the whole block. */
  readonly numberFormat?: string;
  readonly bold?: boolean;
  /** Characters, as Excel counts, by column of the block. */
  readonly widths?: readonly (number | undefined)[];
  /** A note on the block's first cell. */
  readonly note?: string;
}

export interface HostTheme {
  readonly dark: boolean;
}

export type HostReason =
  /** The sheet or workbook is protected or opened for reading only. */
  | 'protected'
  /** A sheet or name of that kind is there already. */
  | 'taken'
  /** A sheet, name or cell that was asked for is not there. */
  | 'missing'
  /** The cells overlap something that may not be changed in part: a spill, a merged cell, a table. */
  | 'occupied'
  /** The host is busy, as while a cell is being edited. */
  | 'busy'
  /** This version of the host cannot do it. */
  | 'unsupported'
  | 'failed';

/** Why a host could not do what was asked, in one sentence that says what to do. */
export class HostError extends Error {
  readonly reason: HostReason;
  constructor(reason: HostReason, message: string) {
    super(message);
    this.name = 'HostError';
    this.reason = reason;
  }
}
