import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Headless, openHeadless } from '../../../src/hosts/univer/headless';
import { exampleFunctions } from './example-functions';

describe('what is written in a cell formula reaches a function as Excel would hand it over', () => {
  let host: Headless;
  beforeAll(async () => {
    host = await openHeadless(exampleFunctions);
  });
  afterAll(() => host.dispose());
  const seen = async (argument: string): Promise<unknown> => {
    const [json] = await host.evaluate([`=SILT.TEST.SEEN("US",${argument})`]);
    return JSON.parse(json as string)[1];
  };

  it.each([
    ['"1/2"', '1/2'],
    ['"3-1/4"', '3-1/4'],
    ['"22.50"', '22.50'],
    ['"1,250"', '1,250'],
    ['"32 %"', '32 %'],
    ['"6\' 4"""', '6\' 4"'],
    ['"−5 °C"', '−5 °C'],
    ['"TRUE"', 'TRUE'],
    ['"2026-05-01"', '2026-05-01'],
    ['IF(TRUE,"1/2")', '1/2'],
    ['IFERROR("3/4",1)', '3/4'],
    ['LET(a,"1/2",a)', '1/2'],
  ])('quoted text %s stays text', async (argument, text) => {
    expect(await seen(argument)).toEqual([[text]]);
  });

  it.each([
    ['22.50', 22.5],
    ['1e300', 1e300],
    ['-0.50', -0.5],
    ['32%', 0.32],
    ['.5', 0.5],
  ])('the number %s is a number', async (argument, number) => {
    expect(await seen(argument)).toEqual([[number]]);
  });

  it.each([
    ['{20;22.5}', [[20], [22.5]]],
    ['{22.50,-1e3}', [[22.5, -1000]]],
    [
      '{"1,250 mm","a;b";"x{","}"}',
      [
        ['1,250 mm', 'a;b'],
        ['x{', '}'],
      ],
    ],
    ['{"6\' 4""";"3 1/4"""}', [['6\' 4"'], ['3 1/4"']]],
    [
      '{"",1;"1/2",TRUE}',
      [
        ['', 1],
        ['1/2', true],
      ],
    ],
    ['{1,2;3}', [[1, 2], [3]]],
  ])('the array constant %s keeps its cells', async (argument, rows) => {
    expect(await seen(argument)).toEqual(rows);
  });

  it('leaves the engine’s own date functions able to read dates in quotes', async () => {
    expect(await host.evaluate(['=YEAR("2026-05-01")', '=DAY(DATE(2026,5,1))'])).toEqual([2026, 1]);
  });
});
