import type { CellRange } from './address';
import type { CellResult, CellScalar, DefinedName, WorkbookData } from './workbook-model';

/**
 * What the task pane needs from the spreadsheet beside it: the same small set of requests for Excel and for the embedded
 * spreadsheet. Every request is a promise. If it fails, it is rejected with a HostError, never with anything else,
 * and the workbook is unchanged.
 */
export interface SheetHost {
  /** Its name in a sentence: `Excel`, `the workbench`. */
  readonly name: string;
  /** Whether a link with a `download` attribute saves a file from where the pane is shown. */
  readonly downloads: boolean;

  readonly selection: () => Promise<Block>;
  /** Calls back when the selection moves; gives a function that stops this. */
  readonly onSelectionChanged: (listener: () => void) => Promise<Unsubscribe>;
  /** Shows a sheet and selects cells of it. */
  readonly select: (place: Place) => Promise<void>;

  readonly read: (place: Place) => Promise<Block>;
  /** The used cells of every sheet that has some, including hidden sheets. */
  readonly readUsed: () => Promise<readonly Block[]>;
  /** Whether cells can still show old results; absent if that never happens in the host. */
  readonly isCalculating?: () => Promise<boolean>;
  /**
   * Takes what is being typed into a cell, and resolves once all that was written has been calculated; absent if the
   * host cannot tell, but for `isCalculating`.
   */
  readonly settled?: () => Promise<void>;
  /** Calls back after anyone or a calculation changed cells; gives a function that stops this. */
  readonly onCellsChanged: (listener: () => void) => Promise<Unsubscribe>;
  /** Writes all cells or none, as one undo step if the host can. */
  readonly write: (writes: readonly Write[]) => Promise<void>;

  readonly names: () => Promise<readonly DefinedName[]>;
  /** Sets a name of the whole workbook and replaces its old meaning. */
  readonly setName: (name: DefinedName) => Promise<void>;
  readonly removeName: (name: string) => Promise<void>;

  /** Names of the sheets in their order. */
  readonly sheets: () => Promise<readonly string[]>;
  readonly addSheet: (name: string) => Promise<void>;
  readonly removeSheet: (name: string) => Promise<void>;
  /**
   * Adds whole sheets, with their styles and names, after the others: all or none. Refuses a sheet name that is in use.
   * `step` gets the progress between sheets, from 0 to 1; if it throws, the work stops and no new sheet stays.
   */
  readonly insert: (workbook: WorkbookData, step?: (share: number) => Promise<void>) => Promise<void>;

  /** The workbook as an .xlsx file with its last results; absent if the host cannot give it. */
  readonly file?: () => Promise<Uint8Array>;
  /** Opens a file as a new workbook; absent if the host cannot do it. */
  readonly openFile?: (file: Uint8Array) => Promise<void>;

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

/** What cells hold. Blank is the empty string; a formula is as typed, beginning with `=`, undefined if there is none. */
export interface Block extends Place {
  readonly values: readonly (readonly CellResult[])[];
  readonly formulas: readonly (readonly (string | undefined)[])[];
  /** The ranges of more than one cell that a single formula fills; only the first cell holds the formula. */
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
  /** A sheet or name with that name already exists. */
  | 'taken'
  /** The requested sheet, name or cell does not exist. */
  | 'missing'
  /** The cells overlap something that cannot change in part: a spill, a merged cell, a table. */
  | 'occupied'
  /** The host is busy, for example while a cell is being edited. */
  | 'busy'
  /** This version of the host cannot do it. */
  | 'unsupported'
  | 'failed';

/** Why the host could not do something; the message also says what to do. */
export class HostError extends Error {
  readonly reason: HostReason;
  constructor(reason: HostReason, message: string) {
    super(message);
    this.name = 'HostError';
    this.reason = reason;
  }
}
