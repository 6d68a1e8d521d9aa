import { expect, test } from 'vitest';
import { offsetFormula, spreadFormula } from '../../../src/hosts/univer/spread-formula';

test('a rule of cells one by one is computed for all its cells at once', () => {
  expect(spreadFormula('=ISNUMBER(SEARCH("too ",$K6))', 60, 1)).toBe('=ISNUMBER(SEARCH("too ",$K6:$K65))');
  expect(spreadFormula("='A b'!C4<>$B$2", 3, 2)).toBe("='A b'!C4:D6<>$B$2");
  expect(spreadFormula('=$B$2<>$B$3', 60, 4)).toBe('=$B$2<>$B$3');
});

test('a rule that takes cells together is not, and is moved to each cell instead', () => {
  for (const formula of ['=AND(A1>0,B1>0)', '=A1>SUM($A$1:$A$9)', '=A1>Limit', '=COUNTIF(A:A,A1)>1']) {
    expect(spreadFormula(formula, 5, 1), formula).toBeUndefined();
  }
  expect(offsetFormula('=AND(A1>0,B$1>$A$2:B3)', 2, 1)).toBe('=AND(B3>0,C$1>$A$2:C5)');
});
