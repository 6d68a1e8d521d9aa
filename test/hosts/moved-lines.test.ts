import { describe, expect, test } from 'vitest';
import { parseRange, rangeName } from '../../src/hosts/address';
import type { CellMove } from '../../src/hosts/moved-cells';
import { type LineMove, movedRange, withMove } from '../../src/hosts/moved-lines';

const rows = (first: number, count: number): LineMove => ({ across: 'row', first: first - 1, count });
const columns = (first: number, count: number): LineMove => ({ across: 'column', first: first - 1, count });
const placeAfter = (range: string, ...moves: LineMove[]): string | undefined => {
  const now = movedRange(parseRange(range)!, moves);
  return now === undefined ? undefined : rangeName(now);
};

describe('a range of cells', () => {
  // Rows by their numbers on the sheet, as a spreadsheet moves a formula's references.
  test.each([
    ['above it', rows(2, 3), 'B8:C12'],
    ['at its first row', rows(5, 1), 'B6:C10'],
    ['inside it', rows(6, 2), 'B5:C11'],
    ['below it', rows(10, 2), 'B5:C9'],
    ['in columns before it', columns(1, 1), 'C5:D9'],
  ])('moves or grows with lines inserted %s', (_, move, wanted) => {
    expect(placeAfter('B5:C9', move)).toBe(wanted);
  });

  test.each([
    ['above it', rows(2, -3), 'B2:C6'],
    ['over its start', rows(4, -3), 'B4:C6'],
    ['inside it', rows(6, -2), 'B5:C7'],
    ['over its end', rows(9, -4), 'B5:C8'],
    ['all of it', rows(5, -5), undefined],
    ['of its first column', columns(2, -1), 'B5:B9'],
  ])('moves or shrinks with lines deleted %s', (_, move, wanted) => {
    expect(placeAfter('B5:C9', move)).toBe(wanted);
  });

  // Rows are put down before another row. Those of the range may change places; a row moved out no longer counts.
  test.each([
    ['past it', { ...rows(3, 1), to: 11 }, 'B4:C8'],
    ['as a whole', { ...rows(5, 5), to: 1 }, 'B2:C6'],
    ['as a whole, and further down', { ...rows(4, 7), to: 19 }, 'B14:C18'],
    ['inside it', { ...rows(6, 1), to: 8 }, 'B5:C9'],
    ['into it', { ...rows(2, 1), to: 6 }, 'B4:C9'],
    ['out of it', { ...rows(6, 2), to: 19 }, 'B5:C7'],
    ['with its last row', { ...rows(9, 1), to: 1 }, 'B6:C9'],
    ['from its end and below it', { ...rows(9, 2), to: 4 }, 'B7:C10'],
    ['from its end and below it into it', { ...rows(9, 2), to: 5 }, 'B5:C10'],
    ['out of it by one', { ...rows(9, 1), to: 10 }, 'B5:C8'],
    ['from its last place to its first', { ...rows(9, 1), to: 4 }, 'B5:C9'],
    ['from its first place to its last', { ...rows(5, 2), to: 9 }, 'B5:C9'],
    ['to before its last row', { ...rows(2, 1), to: 8 }, 'B4:C9'],
  ])('moves or changes with lines that move %s', (_, move, wanted) => {
    expect(placeAfter('B5:C9', move)).toBe(wanted);
  });

  test('is where it was once a move of lines was undone', () => {
    const there = { ...rows(3, 2), to: 8 };
    expect(withMove([there], { ...rows(7, 2), to: 2 }, false)).toEqual([]);
    expect(withMove([{ ...rows(7, 2), to: 2 }], { ...rows(3, 2), to: 8 }, true)).toEqual([]);
    expect(withMove([there], { ...rows(7, 2), to: 3 }, true)).toHaveLength(2);
  });

  test('is where it was once cells that were cut and pasted over others were put back by undoing', () => {
    const from = parseRange('B5:B6')!;
    const there: CellMove = { across: 'cells', from, row: 8, column: 3 };
    const back: CellMove = { across: 'cells', from: parseRange('D9:D10')!, row: 4, column: 1 };
    expect(withMove([there], back, true)).toEqual([]);
    // What was pasted over does not come back with them.
    expect(withMove([there], back, false)).toEqual([there, back]);
    expect(withMove([there], { ...back, row: 5 }, true)).toHaveLength(2);
  });

  test('does not reach beyond the last row of a sheet', () => {
    expect(placeAfter('B5:B1048576', rows(2, 3))).toBe('B8:B1048576');
    expect(placeAfter('B1048576', rows(2, 3))).toBeUndefined();
  });

  test('is whole again once a deletion of some of it, or of all, was undone', () => {
    for (const gone of [rows(5, -1), rows(5, -5), rows(8, -4)]) {
      expect(withMove(withMove([], gone, false), { ...gone, count: -gone.count }, true)).toEqual([]);
    }
    // New rows in the place of deleted ones are not those.
    expect(withMove([rows(5, -1)], rows(5, 1), false)).toHaveLength(2);
    expect(withMove([rows(5, 2)], rows(5, -2), false)).toEqual([]);
  });
});
