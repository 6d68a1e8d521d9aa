import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Headless, openHeadless } from '../../../src/hosts/univer/headless';
import { exampleFunctions } from './example-functions';

describe('formulas evaluated without a workbook', () => {
  let host: Headless;
  beforeAll(async () => {
    host = await openHeadless(exampleFunctions);
  });
  afterAll(() => host.dispose());
  const evaluate = async (formula: string): Promise<unknown> => (await host.evaluate([formula]))[0];

  it('gives numbers, text and truth values in full', async () => {
    expect(await host.evaluate(['=1/3', '="a"&"b"', '=2>1'])).toEqual([1 / 3, 'ab', true]);
  });

  it('knows the built-in functions that sheets use', async () => {
    expect(await evaluate('=SUM(1,2,{3,4})')).toBe(10);
    expect(await evaluate('=LET(a,3,a*2)')).toBe(6);
    expect(await evaluate('=INDEX({1,2;3,4},2,1)')).toBe(3);
    expect(await evaluate('=FILTER({1;2;3},{1;2;3}>1)')).toEqual([[2], [3]]);
  });

  it('gives values to functions as Excel does: rows of cells where a matrix is declared, a plain value where not', async () => {
    expect(await evaluate('=SILT.TEST.SEEN("US",22.5)')).toBe('["US",[[22.5]],null]');
    expect(await evaluate('=SILT.TEST.SEEN("US",{20;22.5},{1,2})')).toBe('["US",[[20],[22.5]],[[1,2]]]');
  });

  it('gives an omitted argument and an empty cell as nothing, never as 0', async () => {
    expect(await evaluate('=SILT.TEST.SEEN("US",,TRUE)')).toBe('["US",null,[[true]]]');
    expect(await evaluate('=SILT.TEST.SEEN("US",A1,A1:A2)')).toBe('["US",[[null]],[[null],[null]]]');
  });

  it('gives rows if a function gives rows, with blank cells as empty text', async () => {
    expect(await evaluate('=SILT.TEST.GRID("US",1)')).toEqual([
      [1, 'two', true],
      ['[[1]]', '', 0.1 + 0.2],
    ]);
  });

  it('takes a spill inside another call as rows', async () => {
    expect(await evaluate('=SILT.TEST.TWICE("US",SILT.TEST.TWICE("US",{1;2}))')).toEqual([[4], [8]]);
    expect(await evaluate('=ROWS(SILT.TEST.MIXED("US"))')).toBe(3);
  });

  it('gives the code and the reason of a refusal, also through functions that pass it on', async () => {
    const refusal = { error: { code: '#VALUE!', message: 'value: [[7]] is not allowed' } };
    expect(await evaluate('=SILT.TEST.REFUSE("US",7)')).toEqual(refusal);
    expect(await evaluate('=LET(a,SILT.TEST.REFUSE("US",7),a)')).toEqual(refusal);
    expect(await evaluate('=SILT.TEST.REFUSE("US",7)*2')).toEqual(refusal);
    expect(await evaluate('=IF(TRUE,SILT.TEST.NONE("US"))')).toEqual({
      error: { code: '#N/A', message: 'no published value' },
    });
    expect(await evaluate('=IFERROR(SILT.TEST.NONE("US"),"none")')).toBe('none');
  });

  it('gives an error argument to the function with its reason', async () => {
    expect(await evaluate('=SILT.TEST.SEEN("US",SILT.TEST.NONE("US"))')).toContain('"code":"#N/A"');
  });

  it('keeps the good rows if one row is bad', async () => {
    expect(await evaluate('=SILT.TEST.MIXED("US")')).toEqual([
      [1, 2],
      [{ error: { code: '#VALUE!', message: 'row 2: bad' } }, ''],
      [5, 6],
    ]);
  });

  it('survives an exception inside a function', async () => {
    expect(await evaluate('=SILT.TEST.BROKEN("US")')).toEqual({
      error: { code: '#VALUE!', message: 'a fault inside SILT.TEST.BROKEN: a slip' },
    });
    expect(await evaluate('=SILT.TEST.NAN("US")')).toMatchObject({ error: { code: '#NUM!' } });
  });

  it('refuses too many arguments', async () => {
    expect(await evaluate('=SILT.TEST.NONE("US",2)')).toEqual({
      error: { code: '#VALUE!', message: 'SILT.TEST.NONE takes 1 arguments; 2 were given' },
    });
  });

  it('says what the errors of the engine mean', async () => {
    expect(await evaluate('=1/0')).toEqual({ error: { code: '#DIV/0!', message: 'a number is divided by zero' } });
    expect(await evaluate('=SILT.CONE.PATTEN("US")')).toMatchObject({
      error: { code: '#NAME?', message: expect.stringContaining('SILT.CONE.PATTEN') },
    });
    expect(await evaluate('=SUM(1,')).toHaveProperty('error.message');
    expect(await evaluate('="a"*2')).toMatchObject({ error: { code: '#VALUE!' } });
  });

  it('keeps formulas apart from each other', async () => {
    const results = await host.evaluate(['=1/0', '=SILT.TEST.MIXED("US")', '=1+1']);
    expect(results[2]).toBe(2);
  });
});
