import { describe, expect, it } from 'vitest';
import { parseRange } from '../../src/hosts/address';
import { type MovesOf, movedReferences } from '../../src/hosts/moved-formula';
import type { LineMove, Move } from '../../src/hosts/moved-lines';
import { movedRules } from '../../src/hosts/moved-rule';

// Rows by their numbers and columns by their letters, moved as Excel moves the references of formulas.
const rows = (first: number, count: number): LineMove => ({ across: 'row', first: first - 1, count });
const columns = (letter: string, count: number): LineMove => ({
  across: 'column',
  first: letter.charCodeAt(0) - 65,
  count,
});
const on =
  (sheet: string, ...moves: Move[]): MovesOf =>
  (name) =>
    name.toLowerCase() === sheet.toLowerCase() ? moves : [];

const cut = (range: string, to: string): Move => {
  const { row, column } = parseRange(to)!;
  return { across: 'cells', from: parseRange(range)!, row, column };
};

describe('the references of a formula', () => {
  it.each([
    ['SUM(B5:B9)', rows(2, 3), 'SUM(B8:B12)'],
    ['SUM($B$5:B$9)', rows(6, 1), 'SUM($B$5:B$10)'],
    ['Log!C7+1', rows(1, 2), 'Log!C9+1'],
    ["'other one'!C7+log!C7", rows(1, 2), "'other one'!C7+log!C9"],
    ['COUNTA(B:C)', columns('A', 1), 'COUNTA(C:D)'],
    ['SUM($4:7)', rows(5, -2), 'SUM($4:5)'],
    ['B5&"B5"&SILT.B5(B5)', rows(5, -1), '#REF!&"B5"&SILT.B5(#REF!)'],
    ['SUM(B9:B5)', rows(7, 1), 'SUM(B10:B5)'],
    ['[1]Log!B5+SiltUnits', rows(1, 1), '[1]Log!B5+SiltUnits'],
    ['=B5#', rows(1, 1), '=B6#'],
    ['XFC1048576', rows(1, 1), '#REF!'],
    ['SUM(B5:B9)+$C$7', cut('B5:C9', 'E2'), 'SUM(E2:E6)+$F$4'],
    ['SUM(B5:B9)+SUM(B:B)', cut('B5:B8', 'E2'), 'SUM(B5:B9)+SUM(B:B)'],
  ])('%s', (formula, move, wanted) => {
    expect(movedReferences(formula, 'Log', on('Log', move))).toBe(wanted);
  });
});

describe('a rule for cells', () => {
  const moved = (range: string, formula: string, moves: MovesOf) => {
    const [now] = movedRules({ range, formulas: [formula] }, 'Log', moves);
    return now && [now.range, ...now.formulas];
  };

  it.each<[string, string, string, LineMove, string[] | undefined]>([
    ['goes down with its cells', 'D5:D20', '$C5>$B$2', rows(3, 2), ['D7:D22', '$C7>$B$2']],
    ['grows with rows between its cells', 'D5:D20', '$C5>$B$2', rows(9, 2), ['D5:D22', '$C5>$B$2']],
    ['still reads the row above each cell', 'D5:D20', 'D5=D4', rows(5, 1), ['D6:D21', 'D6=D5']],
    [
      'is written for the next cell where its first is deleted',
      'D5:D20',
      '$C5>B$2',
      rows(4, -2),
      ['D4:D18', '$C4>B$2'],
    ],
    ['of a single cell reads the same cells', 'B5', 'LEFT(D5,3)="No"', columns('C', 1), ['B5', 'LEFT(E5,3)="No"']],
    ['loses a block', 'A1 C3:C4', '=A1=$B$1', rows(1, -1), ['C2:C3', '=C2=#REF!']],
    ['is gone with its cells', 'D5:D6', '$C5>1', rows(5, -2), undefined],
  ])('%s', (_, range, formula, move, wanted) => {
    expect(moved(range, formula, on('Log', move))).toEqual(wanted);
  });

  // As Excel has the lists and colors of cells that were cut and pasted.
  it.each<[string, string, string, Move[], string[]]>([
    ['goes with its cell', 'B5', '$A$1:$A$4', [cut('B5', 'D9')], ['D9 $A$1:$A$4']],
    ['goes with the cells around its own', 'B5', 'C5>2', [cut('B5:C6', 'D9')], ['D9 E9>2']],
    ['of a single cell reads the same cells', 'B5', 'C5>2', [cut('B5', 'D9')], ['D9 C5>2']],
    ['reads the cells that were cut from beside it', 'B5:B8', '$C5>2', [cut('C5:C8', 'F5')], ['B5:B8 $F5>2']],
    ['reads the row that each cell is in now', 'D5:D20', '$C5>$B$2', [cut('D6', 'D30')], ['D5 D7:D20 D30 $C5>$B$2']],
    [
      'is another for a cell that reads others',
      'D5:D20',
      'AND(D5>1,C5>1)',
      [cut('D6', 'F9')],
      ['D5 D7:D20 AND(D5>1,C5>1)', 'F9 AND(F9>1,C9>1)'],
    ],
    ['is gone where other cells were pasted', 'D5:E7', '1', [cut('A1', 'D6')], ['D5:E5 E6 D7:E7 1']],
    [
      'is written for each block whose first cell would not be clear',
      'D5:E7',
      'D5>1',
      [cut('D5', 'H1')],
      ['E5 E5>1', 'D6:E7 D6>1', 'H1 H1>1'],
    ],
    ['goes above its other cells', 'D5:D20', '$C5>1', [cut('D6', 'D2')], ['D5 D7:D20 $C5>1', 'D2 $C2>1']],
    ['is gone with its only cell', 'D5', '1', [cut('A1', 'D5')], []],
    ['keeps the cells that are pasted beside themselves', 'D5:D7', '1', [cut('D5:D6', 'D6')], ['D6:D7 1']],
    ['follows rows before and after', 'D5', 'C5>1', [rows(2, 1), cut('D6', 'F9'), rows(7, 2)], ['F11 C6>1']],
  ])('%s when cells are cut and pasted', (_, range, formula, moves, wanted) => {
    const now = movedRules({ range, formulas: [formula] }, 'Log', on('Log', ...moves));
    expect(now.map((rule) => `${rule.range} ${rule.formulas[0]}`)).toEqual(wanted);
  });

  it.each<[string, LineMove, string[]]>([
    ['out of its cells, which keep it', { ...rows(9, 1), to: 30 }, ['D5:D19 D30 $C5>1']],
    ['above its cells', { ...rows(20, 1), to: 1 }, ['D6:D20 $C6>1', 'D2 $C2>1']],
    ['among its cells', { ...rows(20, 1), to: 4 }, ['D5:D20 $C5>1']],
  ])('goes with rows that move %s', (_, move, wanted) => {
    const now = movedRules({ range: 'D5:D20', formulas: ['$C5>1'] }, 'Log', on('Log', move));
    expect(now.map((rule) => `${rule.range} ${rule.formulas[0]}`)).toEqual(wanted);
  });

  it('follows the cells of another sheet that it reads', () => {
    expect(moved('B4', 'Lists!$A$2:$A$9', on('Lists', rows(2, 1)))).toEqual(['B4', 'Lists!$A$3:$A$10']);
    expect(moved('B4', '"trout,carp"', on('Lists', rows(2, 1)))).toEqual(['B4', '"trout,carp"']);
    // Each cell reads the cell beside it there, which all went down.
    expect(moved('B4:B9', 'Lists!A4=1', on('Lists', rows(2, 3)))).toEqual(['B4:B9', 'Lists!A7=1']);
    expect(moved('B4:B9', 'Lists!A4=1', on('Log', rows(2, 3)))).toEqual(['B7:B12', 'Lists!A4=1']);
    expect(moved('B4', 'Lists!$A$2:$A$9', on('Lists', cut('A1:A9', 'C1')))).toEqual(['B4', 'Lists!$C$2:$C$9']);
    // The first row that is left reads what it read before.
    expect(moved('B4 B6:B9', 'Lists!A4=1', on('Log', rows(4, -1)))).toEqual(['B5:B8', 'Lists!A6=1']);
  });
});
