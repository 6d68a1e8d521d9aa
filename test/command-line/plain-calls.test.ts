import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { plainResults } from '../../src/command-line/plain-calls';
import type { HostFunction } from '../../src/hosts/univer/function-set';
import { type Headless, openHeadless } from '../../src/hosts/univer/headless';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';

let functions: readonly HostFunction[];
let host: Headless;
beforeAll(async () => {
  functions = await sourceFunctions();
  host = await openHeadless(functions);
});
afterAll(() => host.dispose());

const others = [
  '=SILT.CONE.PATTERN("US",22.5,4,9.25)',
  '=silt.cone.angle("US",22.50,4,925e-2)',
  '=SILT.CONE.ANGLE("US",{22.5;22;"21 1/2"},4,{9.25;9;-1})',
  '=SILT.CONE.PATTERN("US",22.5,30,9.25)',
  '=SILT.CONE.PATTERN("US",,4,9.25)',
  '=SILT.CUT.SHEETS("US",SILT.CONE.PATTERN("US",22.5,4,9.25),96,48,,,TRUE)',
  '=SILT.CONE.MARKS("US",SILT.CONE.PATTERN("US",22.5,40,9.25))',
  '=SILT.HARVEST.SLURRY("metric",1,3%)',
  '=SILT.UNIT.READ("metric","dimension","6\' 4""")',
  '=SILT.UNIT.LABEL("US","flow")',
  '=SILT.UNIT.LABEL(7,"flow")',
  '=SILT.CONE.ANGLE("US",TRUE,4,9.25)',
  '=SILT.CONE.ANGLE("US",22.5,4,9.25,1,2,3,4,5,6,7,8)',
  '=SILT.NO.SUCH("US")',
];

describe('a call with constants alone, computed without the spreadsheet engine', () => {
  it('gives the same result as the engine, word for word', async () => {
    const formulas = [...catalogue.map(({ example }) => example.formula), ...others].map(
      (one) => `=${one.replace(/^=/, '')}`,
    );
    const engine = await host.evaluate(formulas);
    let plain = 0;
    for (const [index, formula] of formulas.entries()) {
      const result = plainResults([formula], functions);
      if (result === undefined) continue;
      plain += 1;
      expect({ formula, result: result[0] }).toEqual({ formula, result: engine[index] });
    }
    expect(plain).toBeGreaterThan(formulas.length * 0.9);
  });

  it.each([
    '=1+1',
    '=SUM(1,2)',
    '=SILT.CONE.ANGLE("US",22.5,4,9.25)*2',
    '=SILT.CONE.ANGLE("US",A1,4,9.25)',
    '=SILT.NO.SUCH(1)',
    '=SILT.CONE.ANGLE("US",5-4,4,9.25)',
    '=SILT.CONE.ANGLE(',
  ])('is not %s', (formula) => {
    expect(plainResults([formula], functions)).toBeUndefined();
  });
});
