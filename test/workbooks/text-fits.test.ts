import { numfmt } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { capitalHeight, textWidth, wrapped } from '../../src/drawing/text-width';
import { cellName, contains, parseRange } from '../../src/hosts/address';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import type { CellData, CellStyle, SheetData } from '../../src/hosts/workbook-model';
import { calculateWorkbook } from '../../src/workbooks/calculate';
import { checkYourExcel } from '../../src/workbooks/sheets/check-your-excel';
import { readyMade, readyProfiles } from '../../src/workbooks/sheets/ready-made';

/**
 * Column widths are counted in digits of Calibri at 11 points, 7 pixels each. Where it is not installed, programs and
 * browsers take a face of the widths of Helvetica, whose digits are 0.556 of the type size (Adobe Core 14 font metrics):
 * 8.155 pixels.
 */
const digit = 0.556;
const wider = 8.155 / 7;
const standardColumn = 8.43;
const lineHeight = 15;

/** Width of a text, in the characters in which column widths are counted. Bold letters are up to 9 % wider (the same metrics). */
function characters(text: string, { bold, fontSize = 11 }: CellStyle = {}): number {
  return ((textWidth(text, capitalHeight) / digit) * wider * (bold ? 1.09 : 1) * fontSize) / 11;
}

/** How many lines a text needs in a width in characters. */
function linesOf(text: string, across: number, style: CellStyle = {}): number {
  const perCharacter = characters('0', style);
  return wrapped(text, capitalHeight, (across / perCharacter) * digit).length;
}

interface Fault {
  readonly cell: string;
  readonly text: string;
  readonly needs: number;
  readonly has: number;
  readonly wraps: boolean;
}

class Printed {
  private readonly sheet: SheetData;
  private readonly filled: Set<string>;
  private readonly lastColumn: number;

  constructor(sheet: SheetData) {
    this.sheet = sheet;
    // A formula keeps text of its neighbor out, even where it shows nothing.
    this.filled = new Set(
      sheet.cells
        .filter(({ formula, value, row, column }) => {
          return formula !== undefined || (value ?? '') !== '' || this.isSpilled(row, column);
        })
        .map(({ row, column }) => cellName(row, column)),
    );
    const area = parseRange(sheet.print?.area ?? '');
    this.lastColumn =
      area === undefined ? Math.max(...sheet.cells.map(({ column }) => column)) : area.column + area.columns - 1;
  }

  private isSpilled(row: number, column: number): boolean {
    return this.sheet.cells.some(({ spill }) => {
      const range = parseRange(spill ?? '');
      return range !== undefined && contains(range, row, column);
    });
  }

  width(column: number): number {
    return this.sheet.columnWidths?.[column] ?? standardColumn;
  }

  private widthOnPaper(column: number): number {
    return column > this.lastColumn ? 0 : this.width(column);
  }

  /** How small the sheet is printed so that its width fits, and its height if it must be on one page. */
  scale(): number {
    const { print, rowHeights = {} } = this.sheet;
    const area = parseRange(print?.area ?? '');
    if (print === undefined || area === undefined) return 1;
    const points = (characters: number): number => 5.25 * characters + 3.75;
    const across = Array.from({ length: area.columns }, (_, at) => points(this.width(area.column + at)));
    const down = Array.from({ length: area.rows }, (_, at) => rowHeights[area.row + at] ?? lineHeight);
    const total = (sizes: readonly number[]): number => sizes.reduce((sum, size) => sum + size, 0);
    // Letter or A4 with margins of 0.5 in at the sides and 0.6 in above and below.
    const [short, long] = print.paper === 1 ? [612, 792] : [595, 842];
    const [wide, high] = print.landscape ? [long - 72, short - 86] : [short - 72, long - 86];
    return Math.min(1, wide / total(across), print.fitToHeight === 1 ? high / total(down) : 1);
  }

  /** The width from a cell to the next one that is filled, or to the edge of the paper. */
  private room({ row, column }: CellData): number {
    let across = this.width(column);
    for (let next = column + 1; next <= this.lastColumn; next += 1) {
      if (this.filled.has(cellName(row, next))) break;
      across += this.width(next);
    }
    return across;
  }

  /** Numbers in a format of their own that are wider than their column, which programs show as a row of number signs. */
  wideNumbers(): readonly Fault[] {
    return this.sheet.cells.flatMap(({ row, column, value, style = {} }): readonly Fault[] => {
      if (typeof value !== 'number' || style.numberFormat === undefined) return [];
      const text = numfmt.format(style.numberFormat, value);
      const [needs, has] = [characters(text, style), this.width(column)];
      return needs <= has + 0.3 ? [] : [{ cell: cellName(row, column), text, needs, has, wraps: false }];
    });
  }

  faults(): readonly Fault[] {
    const { merges = [], cells, rowHeights = {} } = this.sheet;
    const merged = merges.flatMap((merge) => parseRange(merge) ?? []);
    return cells.flatMap((cell): readonly Fault[] => {
      const { row, column, value: text, style = {} } = cell;
      if (typeof text !== 'string' || text === '') return [];
      // Beside the printed area a text may run on over the next cells; one that wraps is cut off there too.
      const isBeside = column > this.lastColumn;
      if (isBeside && !style.wrap) return [];
      const merge = merged.find((one) => contains(one, row, column));
      const across =
        merge === undefined
          ? this.width(column)
          : Array.from({ length: merge.columns }, (_, at) =>
              isBeside ? this.width(merge.column + at) : this.widthOnPaper(merge.column + at),
            ).reduce((a, b) => a + b);
      const height = rowHeights[row];
      if (style.wrap) {
        // A row does not grow with what a formula shows, so one without a height has room for one line.
        const needs = linesOf(text, across, style) * lineHeight * ((style.fontSize ?? 11) / 11);
        const has = height ?? lineHeight;
        const longest = Math.max(...text.split(/[\s/-]+/).map((word) => characters(word, style)));
        if (longest > across + 0.3)
          return [{ cell: cellName(row, column), text, needs: longest, has: across, wraps: true }];
        return needs <= has + 2 ? [] : [{ cell: cellName(row, column), text, needs, has, wraps: true }];
      }
      const has = merge === undefined ? this.room(cell) : across;
      const needs = characters(text, style);
      return needs <= has + 0.3 ? [] : [{ cell: cellName(row, column), text, needs, has, wraps: false }];
    });
  }
}

describe.each(readyProfiles)('on the printed sheets (%s)', (profile) => {
  it.each(readyMade.map(({ id }) => id))('no text of %s is cut off, and every number has room', async (id) => {
    const made = readyMade.find((one) => one.id === id)!;
    const { sheets } = await calculateWorkbook(await sourceFunctions(), made.build(profile));
    const faults = sheets.flatMap((sheet) =>
      [...new Printed(sheet).faults(), ...new Printed(sheet).wideNumbers()].map((fault) => ({
        sheet: sheet.name,
        ...fault,
      })),
    );
    expect(faults).toEqual([]);
  });

  it.each(readyMade.map(({ id }) => id))('%s can be read', (id) => {
    const made = readyMade.find((one) => one.id === id)!;
    const scales = made
      .build(profile)
      .sheets.map((sheet) => ({ sheet: sheet.name, scale: new Printed(sheet).scale() }));
    // Text of 11 points is then 6.6 points high or more, that of this sort of table in a book.
    expect(scales.filter(({ scale }) => scale < 0.6)).toEqual([]);
  });
});

it('no text that wraps is cut off in the workbook that checks Excel', async () => {
  const { sheets } = await calculateWorkbook(await sourceFunctions(), checkYourExcel());
  const wrapping = sheets.flatMap((sheet) => new Printed(sheet).faults()).filter(({ wraps }) => wraps);
  expect(wrapping).toEqual([]);
});
