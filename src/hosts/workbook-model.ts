import type { Move } from './moved-lines';

/**
 * A workbook as plain data: the form of ready-made sheets, of an .xlsx file that is read or written,
 * and of what a host opens. Rows and columns count from 0 here; addresses in text (`B5:K7`) are as a user writes them.
 */

export type CellScalar = number | string | boolean;

/** An error as a cell shows it, with the reason if it is known. */
export interface CellError {
  readonly code: string;
  readonly message: string;
}

export type CellResult = CellScalar | { readonly error: CellError };

export interface Border {
  readonly style: 'thin' | 'medium' | 'thick' | 'dashed' | 'dotted' | 'double' | 'hair';
  /** Six hexadecimal digits without `#`; black by default. */
  readonly color?: string;
}

export interface CellStyle {
  /** An Excel number format, such as `0.00` or `yyyy-mm-dd`. */
  readonly numberFormat?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly fontName?: string;
  /** Points. */
  readonly fontSize?: number;
  /** Colors are six hexadecimal digits without `#`. */
  readonly fontColor?: string;
  readonly fill?: string;
  readonly horizontal?: 'left' | 'center' | 'right';
  readonly vertical?: 'top' | 'middle' | 'bottom';
  readonly wrap?: boolean;
  readonly borderTop?: Border;
  readonly borderRight?: Border;
  readonly borderBottom?: Border;
  readonly borderLeft?: Border;
  /** False if users can type into the cell when the sheet is protected. */
  readonly locked?: boolean;
}

export interface CellData {
  readonly row: number;
  readonly column: number;
  /** As the user types it, beginning with `=`, functions as `SILT.CONE.PATTERN(`. */
  readonly formula?: string;
  /** The value typed in, or the last result of the formula. Left out of a cell that is only formatted. */
  readonly value?: CellResult;
  /** The cells that the formula's result covers (`B5:K7`), where it is more than one cell; the other cells hold their last results as plain values. */
  readonly spill?: string;
  readonly style?: CellStyle;
  readonly note?: string;
}

export interface Validation {
  /** Its cells: `B5:B20`. */
  readonly range: string;
  readonly type: 'list' | 'decimal' | 'whole' | 'date' | 'textLength' | 'custom';
  readonly operator?:
    | 'between'
    | 'notBetween'
    | 'equal'
    | 'notEqual'
    | 'greaterThan'
    | 'lessThan'
    | 'greaterThanOrEqual'
    | 'lessThanOrEqual';
  /** Formulas or constants without `=`; a list is either one range or its words in quotes, `"a,b"`. */
  readonly formulas: readonly string[];
  readonly allowBlank?: boolean;
  readonly promptTitle?: string;
  readonly prompt?: string;
  readonly errorTitle?: string;
  readonly error?: string;
  /** `stop` refuses the entry, the others only show a message. */
  readonly errorStyle?: 'stop' | 'warning' | 'information';
}

export interface PrintSetup {
  readonly landscape?: boolean;
  /** 1 is US letter, 9 is A4. */
  readonly paper?: number;
  readonly fitToWidth?: number;
  readonly fitToHeight?: number;
  /** `A1:K60`. */
  readonly area?: string;
  /** Rows repeated on each page, `1:4`. */
  readonly titleRows?: string;
  readonly header?: string;
  readonly footer?: string;
}

export interface ChartSeries {
  /** Text, or a reference to the cell that holds it: `'Compare'!$B$4`. */
  readonly name: string;
  /** References with their sheet: `'Compare'!$B$5:$F$5`. */
  readonly categories?: string;
  readonly values: string;
}

/** A chart that the spreadsheet draws itself, over the cells `place`. */
export interface ChartData {
  readonly type: 'column' | 'bar' | 'line' | 'scatter';
  readonly title: string;
  /** `D2:K16`. */
  readonly place: string;
  readonly series: readonly ChartSeries[];
  readonly categoryTitle?: string;
  /** Text, or the cell that holds it, as a unit does that changes with the profile. */
  readonly valueTitle?: string;
  /** Number format of the values, such as `0.0`. */
  readonly valueFormat?: string;
  /** Number format of the categories, such as `yyyy-mm-dd`. */
  readonly categoryFormat?: string;
}

/** A chart of a file that the model does not hold, such as a pie: it is named, and saving keeps it as it is. */
export interface OtherChart {
  /** `pie`, `stacked column`. */
  readonly kind: string;
  readonly title: string;
}

/** A table of typed rows; its first row holds the headings, which are cells like any other. No formula may spill inside. */
export interface TableData {
  readonly name: string;
  /** Headings and rows: `A4:D20`. */
  readonly range: string;
}

export interface SheetData {
  readonly name: string;
  /** The name that the sheet had in the file that was opened; absent for a sheet that was added later. */
  readonly openedAs?: string;
  /** The name that a sheet had when it was added later; its parts still have it. */
  readonly addedAs?: string;
  readonly cells: readonly CellData[];
  /** Column width in characters, as Excel counts, by column. */
  readonly columnWidths?: Readonly<Record<number, number>>;
  /** Points, by row. */
  readonly rowHeights?: Readonly<Record<number, number>>;
  readonly hiddenRows?: readonly number[];
  readonly hiddenColumns?: readonly number[];
  readonly merges?: readonly string[];
  /** Rows and columns that stay in view. */
  readonly frozenRows?: number;
  readonly frozenColumns?: number;
  readonly validations?: readonly Validation[];
  /** Cells whose style follows a formula (`=$B$2<>$B$3`); the first true formula wins. */
  readonly conditions?: readonly { readonly range: string; readonly formula: string; readonly style: CellStyle }[];
  readonly charts?: readonly ChartData[];
  /** Rows and columns that came, went or moved, and cells that were cut and pasted, since the file was opened, in order; what is not in cells, such as rules and charts, is as before them. */
  readonly moves?: readonly Move[];
  readonly otherCharts?: readonly OtherChart[];
  readonly tables?: readonly TableData[];
  readonly print?: PrintSetup;
  readonly tabColor?: string;
  readonly hidden?: boolean;
  readonly hideGridlines?: boolean;
}

export interface DefinedName {
  readonly name: string;
  /** A reference or formula without `=`: `'Silt units'!$B$2`. */
  readonly refersTo: string;
  readonly comment?: string;
}

export interface WorkbookData {
  readonly sheets: readonly SheetData[];
  readonly names?: readonly DefinedName[];
  /** The sheet that is open first; by default the first one. */
  readonly activeSheet?: string;
  readonly title?: string;
  readonly subject?: string;
}
