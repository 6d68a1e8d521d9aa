import { numberFormats } from '../../catalogue/number-formats';
import type { Border, CellStyle } from '../../hosts/workbook-model';

const hair: Border = { style: 'thin', color: 'BFBFBF' };
const boxed = { borderTop: hair, borderRight: hair, borderBottom: hair, borderLeft: hair } as const;

/** The look of a cell shows its purpose. Only inputs stay unlocked if a user protects the sheet. */
export const styles = {
  title: { bold: true, fontSize: 16, fontColor: '1F4E5F', vertical: 'middle' },
  section: { bold: true, fontSize: 12, fontColor: '1F4E5F' },
  text: { wrap: true, vertical: 'top' },
  step: { wrap: true, vertical: 'top', italic: true },
  caution: { wrap: true, vertical: 'top', fontColor: '7A2E00', fill: 'FDEBDD' },
  alarm: { bold: true, fontColor: 'B00020', wrap: true, vertical: 'middle' },
  heading: { ...boxed, bold: true, wrap: true, vertical: 'middle', fill: 'DCE9EC' },
  label: {},
  input: { ...boxed, fill: 'FFF9DB', fontColor: '1B3A8A', locked: false },
  result: { ...boxed, fill: 'F4F6F6' },
  /** A result in a tall row, beside a note of several lines. */
  tall: { ...boxed, fill: 'F4F6F6', vertical: 'middle' },
  total: { ...boxed, fill: 'E6ECEC', bold: true },
  note: { italic: true, fontColor: '595959' },
} as const satisfies Readonly<Record<string, CellStyle>>;

/** The look of a cell whose figure must be a mistake or endangers fish; it replaces the cell's own style. */
export const alarmed: CellStyle = { bold: true, fontColor: 'B00020', fill: 'FDE0E0' };

export type StyleName = keyof typeof styles;

/** A named style with its own number format. */
export function formatted(style: StyleName, numberFormat: string): CellStyle {
  return { ...styles[style], numberFormat };
}

export const formats = { ...numberFormats, date: 'yyyy-mm-dd' } as const;
