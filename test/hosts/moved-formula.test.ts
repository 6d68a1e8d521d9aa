import { describe, expect, it } from 'vitest';
import { type MovesOf, movedReferences, movedRule } from '../../src/hosts/moved-formula';
import type { LineMove } from '../../src/hosts/moved-lines';

// Rows by their numbers and columns by their letters, moved as Excel moves the references of formulas.
const rows = (first: number, count: number): LineMove => ({ across: 'row', first: first - 1, count });
const columns = (letter: string, count: number): LineMove => ({
  across: 'column',
  first: letter.charCodeAt(0) - 65,
  count,
});
const on =
  (sheet: string, ...moves: LineMove[]): MovesOf =>
  (name) =>
    name.toLowerCase() === sheet.toLowerCase() ? moves : [];

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
  ])('%s', (formula, move, wanted) => {
    expect(movedReferences(formula, 'Log', on('Log', move))).toBe(wanted);
  });
});

describe('a rule for cells', () => {
  const moved = (range: string, formula: string, moves: MovesOf) => {
    const now = movedRule({ range, formulas: [formula] }, 'Log', moves);
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

  it('follows the cells of another sheet that it reads', () => {
    expect(moved('B4', 'Lists!$A$2:$A$9', on('Lists', rows(2, 1)))).toEqual(['B4', 'Lists!$A$3:$A$10']);
    expect(moved('B4', '"trout,carp"', on('Lists', rows(2, 1)))).toEqual(['B4', '"trout,carp"']);
    // Each cell reads the cell beside it there, which all went down.
    expect(moved('B4:B9', 'Lists!A4=1', on('Lists', rows(2, 3)))).toEqual(['B4:B9', 'Lists!A7=1']);
    expect(moved('B4:B9', 'Lists!A4=1', on('Log', rows(2, 3)))).toEqual(['B7:B12', 'Lists!A4=1']);
  });
});
