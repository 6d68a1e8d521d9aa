import { describe, expect, it } from 'vitest';
import { capitalHeight, textWidth } from '../../src/drawing/text-width';
import { parseRange } from '../../src/hosts/address';
import { readyMade, readyProfiles } from '../../src/workbooks/sheets/ready-made';

/** What a window of 1280 pixels leaves for cells beside the row numbers, the scroll bar and the task pane of the workbench. */
const inView = 878;
const pixels = (characters: number): number => 7 * characters + 5;

/** Sheets with cells that warn, and the column in which they do it. */
const warnings: readonly (readonly [id: string, sheet: string, lastColumn: number])[] = [
  ['water-book', 'Tests', 8],
  ['water-book', 'Verdict', 5],
  ['own-figures', 'Figures', 8],
  ['stocking-scenarios', 'Limit', 4],
  ['materials-sheet', 'Bank', 3],
  ['harvest-book', 'Pulls', 4],
  ['materials-sheet', 'Materials', 4],
];

describe.each(readyProfiles)('at 1280 pixels (%s)', (profile) => {
  it.each(readyMade.map(({ id }) => id))('no caution of %s is cut off', (id) => {
    const book = readyMade.find((one) => one.id === id)?.build(profile);
    for (const { name, merges = [], columnWidths = {}, cells } of book?.sheets ?? []) {
      for (const merge of merges) {
        const range = parseRange(merge);
        if (range === undefined) continue;
        const across = Array.from({ length: range.columns }, (_, at) => pixels(columnWidths[range.column + at] ?? 9));
        expect([name, merge, across.reduce((sum, width) => sum + width, 0) <= inView]).toEqual([name, merge, true]);
        const cell = cells.find((one) => one.row === range.row && one.column === range.column);
        expect([name, merge, cell?.style?.wrap ?? range.row === 0]).toEqual([name, merge, true]);
      }
    }
  });

  it.each(warnings)('%s, %s shows its verdicts', (id, sheet, lastColumn) => {
    const book = readyMade.find((one) => one.id === id)?.build(profile);
    const widths = book?.sheets.find((one) => one.name === sheet)?.columnWidths ?? {};
    let across = 0;
    for (let column = 0; column <= lastColumn; column += 1) across += pixels(widths[column] ?? 9);
    expect(across).toBeLessThanOrEqual(inView);
  });

  it('a size that is not likely is told of beside the scenarios in view, in the height of its row', () => {
    const book = readyMade.find((one) => one.id === 'stocking-scenarios')?.build(profile);
    const {
      columnWidths = {},
      rowHeights = {},
      cells = [],
    } = book?.sheets.find((one) => one.name === 'Scenarios') ?? {};
    let before = 0;
    for (let column = 0; column <= 6; column += 1) before += pixels(columnWidths[column] ?? 9);
    // At 9 points, in the widths of Helvetica: 0.75 points to a pixel; the lines are 12 points high.
    const sentence = 'CAUTION: 2,250 mm for 350 fish is not likely; the usual range is 150 to 1,500 mm.';
    const lines = Math.ceil((1.1 * textWidth(sentence, capitalHeight) * (9 / 0.75)) / (inView - before));
    const telling = cells.filter(({ column, formula }) => column === 7 && formula?.includes('CAUTION'));
    expect(telling.length).toBeGreaterThan(10);
    for (const { row, style } of telling) {
      expect(style).toMatchObject({ wrap: true, fontSize: 9 });
      expect(rowHeights[row]).toBeGreaterThanOrEqual(12 * lines);
    }
  });

  it('a pull that is not likely is told of beside the log in view', () => {
    const book = readyMade.find((one) => one.id === 'harvest-book')?.build(profile);
    const { columnWidths = {} } = book?.sheets.find((one) => one.name === 'Pulls') ?? {};
    let before = 0;
    for (let column = 0; column <= 3; column += 1) before += pixels(columnWidths[column] ?? 9);
    const sentence = 'CAUTION: a pull of 160.25 gal is not likely; the usual range here is 2.85 to 88.5 gal.';
    expect(before + textWidth(sentence, capitalHeight) * (9 / 0.75)).toBeLessThanOrEqual(inView);
  });

  it('a dangerous reading colors the cell that was typed', () => {
    const book = readyMade.find((one) => one.id === 'water-book')?.build(profile);
    const conditions = book?.sheets.find((one) => one.name === 'Tests')?.conditions ?? [];
    for (const column of 'BCDEFGHIJ') {
      const rule = conditions.find(({ range }) => range.startsWith(`${column}6:`));
      expect([column, rule?.style.fill]).toEqual([column, 'FDE0E0']);
      // Colors may not call functions of an add-in.
      expect(rule?.formula).not.toMatch(/SILT/);
    }
  });
});
