import { hashAlgorithm } from '@univerjs/core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Headless, openHeadless } from '../../../src/hosts/univer/headless';
import { sourceFunctions } from '../../../src/hosts/univer/source-functions';
import { exampleFunctions } from './example-functions';

describe('a function gets the arguments of a cell formula as Excel would give them', () => {
  let host: Headless;
  beforeAll(async () => {
    host = await openHeadless(exampleFunctions);
  });
  afterAll(() => host.dispose());
  const argumentOf = async (argument: string): Promise<unknown> => {
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
    expect(await argumentOf(argument)).toEqual([[text]]);
  });

  it.each([
    ['22.50', 22.5],
    ['1e300', 1e300],
    ['-0.50', -0.5],
    ['32%', 0.32],
    ['.5', 0.5],
  ])('the number %s is a number', async (argument, number) => {
    expect(await argumentOf(argument)).toEqual([[number]]);
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
    expect(await argumentOf(argument)).toEqual(rows);
  });

  it('leaves the engine’s own date functions able to read dates in quotes', async () => {
    expect(await host.evaluate(['=YEAR("2026-05-01")', '=DAY(DATE(2026,5,1))'])).toEqual([2026, 1]);
  });
});

describe('a cell formula is calculated again in any place', () => {
  const opened: Headless[] = [];
  const open = async (formulas: readonly string[], name = 'S!$A$1'): Promise<Headless> => {
    const cells = [5, 50].map((value, row) => ({ row, column: 0, value }));
    const host = await openHeadless(exampleFunctions, {
      sheets: [
        { name: 'S', cells: [...cells, ...formulas.map((formula, row) => ({ row, column: 1, formula, value: 0 }))] },
      ],
      names: [{ name: 'Bore', refersTo: name }],
    });
    opened.push(host);
    return host;
  };
  const column = (host: Headless, rows: number) =>
    host.read('S', { row: 0, column: 1, rows, columns: 1 }).map(([cell]) => cell!.value);
  afterAll(() => {
    for (const host of opened) host.dispose();
  });

  it('with LET and LAMBDA in a second workbook, and when its text is calculated once more', async () => {
    const formulas = ['=LET(a,A1,b,a*2,a+b)', '=LAMBDA(x,y,x*y)(A1,3)', '=LET(a,2,LET(b,a+1,a*b))', '=LET(a,A2,a)'];
    const first = await open(formulas);
    expect(column(first, 4)).toEqual([15, 15, 6, 50]);
    expect(await first.evaluate([...formulas, ...formulas])).toEqual([15, 15, 6, 50, 15, 15, 6, 50]);
    const second = await open(formulas);
    second.setCells('S', 0, 0, [[7], [70]]);
    await second.recalculate();
    expect(column(second, 4)).toEqual([21, 21, 6, 70]);
  });

  it('with the meaning of a name in its own workbook', async () => {
    const formulas = ['=Bore*2', '=SUM(Bore,1)'];
    expect(column(await open(formulas), 2)).toEqual([10, 6]);
    const second = await open(formulas, 'S!$A$2');
    expect(column(second, 2)).toEqual([100, 51]);
    expect(await second.evaluate(['=Bore*2'])).toEqual([100]);
  });

  it('after it was entered again as it was', async () => {
    const host = await open(['=A1*2', '=B1+A2']);
    host.setCells('S', 0, 0, [[6]]);
    host.setCells('S', 1, 1, [['=B1+A2']]);
    await host.recalculate();
    expect(column(host, 2)).toEqual([12, 62]);
    host.setCells('S', 1, 0, [[70]]);
    await host.recalculate();
    expect(column(host, 2)).toEqual([12, 82]);
    host.setCells('S', 0, 0, [[7]]);
    await host.recalculate();
    expect(column(host, 2)).toEqual([14, 84]);
  });

  it('though a longer one has the same 32-bit hash', async () => {
    const zeros = (count: number): string => ',0'.repeat(count);
    // Found by trial: the engine's own hash gives 64 letters of each the same number.
    const formulas = [`=SUM(2914${zeros(9)},1554${zeros(13)},6660)`, `=SUM(5852${zeros(9)},5243${zeros(13)},6652)`];
    expect(hashAlgorithm(formulas[0]!)).toBe(hashAlgorithm(formulas[1]!));
    expect(column(await open(formulas), 2)).toEqual([11128, 17747]);
  });

  it.each([
    ['A1*{1;2}', [[5], [10]]],
    ['-{1;2}', [[-1], [-2]]],
    ['2-{1,2}', [[1, 0]]],
    ['--{1;2}', [[1], [2]]],
    ['(1+{1;2})*2', [[4], [6]]],
    ['SUM(A1-{1;2})', 7],
    [
      '{1;2}-{1,2}',
      [
        [0, -1],
        [1, 0],
      ],
    ],
  ])('with an array constant behind an operator: %s', async (formula, result) => {
    expect(await (opened[0] ?? (await open([]))).evaluate([`=${formula}`])).toEqual([result]);
  });

  it.each(['A1{1;2}', '2{1}', 'SUM(1){1}', '{1;2}{1}'])('but %s is still not a formula', async (formula) => {
    const [value] = await (opened[0] ?? (await open([]))).evaluate([`=${formula}`]);
    expect(value).toHaveProperty('error');
  });
});

describe('a function that would ask the network', () => {
  it('does not exist, so that a saved result of it stays', async () => {
    const host = await openHeadless(exampleFunctions);
    const [picture] = await host.evaluate(['=IMAGE("https://elsewhere.invalid/a.png")']);
    expect([host.knows('IMAGE'), picture]).toEqual([false, { error: expect.objectContaining({ code: '#NAME?' }) }]);
    host.dispose();
  });
});

describe('an error without a message', () => {
  it('does not keep the message of the error that its cell had before', async () => {
    const book = await openHeadless(await sourceFunctions(), {
      sheets: [
        {
          name: 'S',
          cells: [
            { row: 0, column: 0, value: 0 },
            { row: 0, column: 1, formula: '=SILT.TANK.GIRTH("US",A1-1)' },
          ],
        },
      ],
    });
    const message = (): unknown => book.read('S', { row: 0, column: 1, rows: 1, columns: 1 })[0]?.[0]?.value;
    const type = async (entry: number | string): Promise<void> => {
      book.setCells('S', 0, 0, [[entry]]);
      await book.recalculate();
    };
    await book.recalculate();
    expect(message()).toHaveProperty('error.message', 'girth: -1 in is not allowed; give a length of more than 0 in');
    // The error of the subtraction is passed on as it is.
    await type('wide');
    expect(message()).toHaveProperty('error.message', 'a value is of the wrong kind for what is done with it');
    await type(11);
    await type('wide');
    expect(message()).toHaveProperty('error.message', 'a value is of the wrong kind for what is done with it');
    await type(0);
    expect(message()).toHaveProperty('error.message', 'girth: -1 in is not allowed; give a length of more than 0 in');
    book.dispose();
  });
});
