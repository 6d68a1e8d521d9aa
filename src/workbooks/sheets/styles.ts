import { numberFormats } from '../../catalogue/number-formats';
import type { Border, CellStyle } from '../workbook-model';

const hair: Border = { style: 'thin', color: 'BFBFBF' };
const boxed = { borderTop: hair, borderRight: hair, borderBottom: hair, borderLeft: hair } as const;

/** What a cell is for shows in how it looks; inputs are the only cells that a protected sheet would leave open. */
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
  /** A result in a row that is made taller for a note of several lines. */
  tall: { ...boxed, fill: 'F4F6F6', vertical: 'middle' },
  total: { ...boxed, fill: 'E6ECEC', bold: true },
  note: { italic: true, fontColor: '595959' },
} as const satisfies Readonly<Record<string, CellStyle>>;

/** How a cell looks whose figure cannot be meant or endangers fish, whatever its own style. */
export const alarmed: CellStyle = { bold: true, fontColor: 'B00020', fill: 'FDE0E0' };

export type StyleName = keyof typeof styles;

/** A named style with a number format of its own. */
export function formatted(style: StyleName, numberFormat: string): CellStyle {
  return { ...styles[style], numberFormat };
}

export const formats = { ...numberFormats, date: 'yyyy-mm-dd' } as const;
