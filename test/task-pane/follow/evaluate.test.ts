import { describe, expect, test } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import { readFormula } from '../../../src/task-pane/cell-formula/read-formula';
import { scopeOf } from '../../../src/task-pane/cell-formula/scope';
import { evaluate } from '../../../src/task-pane/follow/evaluate';
import { MemoryHost } from '../memory-host';

const host = new MemoryHost(
  {
    Drums: { A1: 'Fern', A2: 'Moss', A3: '', B1: 22.5, B2: 21.75, C1: 4, C2: 4, D1: 9.25, D2: 9 },
    'Silt units': { B4: 'US' },
  },
  { SiltUnits: "'Silt units'!$B$4", Widths: 'Drums!$B$1:$B$2' },
);
host.spill('Drums', 'B1:B2');

async function worked(formula: string) {
  const home = { sheet: 'Drums', row: 9, column: 9, value: '', formula, source: undefined };
  return evaluate(readFormula(formula)!, scopeOf(home), { host, functionLibrary, names: await host.names() });
}

describe('the values of an argument of a cell formula', () => {
  test.each([
    ['=B1', [[22.5]]],
    [
      '=Drums!B1:C2',
      [
        [22.5, 4],
        [21.75, 4],
      ],
    ],
    ['=Widths', [[22.5], [21.75]]],
    ['=B1#', [[22.5], [21.75]]],
    ['=@B1:B2', [[22.5]]],
    [
      '={1,2;3,"x"}',
      [
        [1, 2],
        [3, 'x'],
      ],
    ],
    ['=-B1+B2*2', [[21]]],
    ['=50%', [[0.5]]],
    ['=B1:B2/C1', [[5.625], [5.4375]]],
    ['=A1&" cone"', [['Fern cone']]],
    ['=A3<>""', [[false]]],
    [
      '=FILTER(A1:B3,A1:A3<>"")',
      [
        ['Fern', 22.5],
        ['Moss', 21.75],
      ],
    ],
    ['=INDEX(A1:D2,2,4)', [[9]]],
    ['=INDEX(A1:D2,2,0)', [['Moss', 21.75, 4, 9]]],
    ['=INDEX(B1:B2,MATCH("moss",A1:A2,0))', [[21.75]]],
    ['=IF(A1:A3<>"",B1:B3,"")', [[22.5], [21.75], ['']]],
    ['=LET(which,MATCH("Moss",A1:A2,0),wide,INDEX(B1:B2,which),wide+1)', [[22.75]]],
    [
      '=VSTACK(B1:B2,C1:D1)',
      [
        [22.5, ''],
        [21.75, ''],
        [4, 9.25],
      ],
    ],
    ['=SILT.UNIT.READ(SiltUnits,"dimension","1 ft")', [[12]]],
    ['=_xldudf_SILT_UNIT_READ(SiltUnits,"dimension",B1:B2)', [[22.5], [21.75]]],
  ])('%s', async (formula, expected) => {
    expect(await worked(formula)).toEqual(expected);
  });

  test('the result of one of our functions goes into another as a table', async () => {
    const plan = await worked('=SILT.CUT.SHEETS(SiltUnits,SILT.CONE.PATTERN(SiltUnits,B1:B2,C1:C2,D1:D2),96,48)');
    expect(plan).toHaveLength(1);
    expect(plan[0]![2]).toBeCloseTo(32, 9);
  });
});

describe('what cannot be followed is reported, never guessed', () => {
  test.each([
    ['=OFFSET(A1,1,1)', 'uses OFFSET'],
    ['=B:B', 'reads whole rows or columns, B:B'],
    ['=Nowhere', 'uses the name Nowhere, which is not defined'],
    ['=Prices[Cost]', 'reads Prices[Cost], a table or another workbook'],
    ['=A1+1', 'works with text as a number'],
    ['=FILTER(A1:B3,A1:A3="Sedge")', 'finds no rows to take'],
    ['=SILT.CONE.ANGLE(SiltUnits,4,22.5,9)', 'gives #VALUE!: bottom: 22.5 in is not allowed; '],
  ])('%s', async (formula, why) => {
    await expect(worked(formula)).rejects.toThrow(why);
  });

  test('a name that refers to itself ends the search', async () => {
    const looping = new MemoryHost({ Sheet1: { A1: 1 } }, { Loop: 'Loop+1' });
    const home = { sheet: 'Sheet1', row: 0, column: 0, value: '', formula: '=Loop', source: undefined };
    const around = { host: looping, functionLibrary, names: await looping.names() };
    await expect(evaluate(readFormula('=Loop')!, scopeOf(home), around)).rejects.toThrow('nested too deep');
  });
});
