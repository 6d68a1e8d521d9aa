import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Workbook } from '@cj-tech-master/excelts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { calcOutput } from '../../src/command-line/calc-output';
import { readRequest } from '../../src/command-line/calc-request';

const folder = mkdtempSync(join(tmpdir(), 'calc-'));
const file = join(folder, 'drums.xlsx');

function calc(...args: string[]): { stdout: string; stderr: string; status: number | null } {
  return spawnSync('node', ['src/command-line/run.cjs', 'calc', ...args], { encoding: 'utf8' });
}

beforeAll(async () => {
  const workbook = new Workbook();
  const drums = workbook.addWorksheet('Drums');
  drums.addRows([
    ['drum', 'mm'],
    ['one', 572],
    ['two', '3/4'],
  ]);
  drums.getCell('C2').value = { formula: 'B2*2', result: 0 };
  drums.getCell('E2').value = {
    formula: '_xlfn._xlws.FILTER(B2:B2,B2:B2>0)',
    result: 1,
    shareType: 'array',
    ref: 'E2:E3',
    isDynamicArray: true,
  };
  drums.getCell('E3').value = 2;
  workbook.addWorksheet('Silt units').getCell('B2').value = 'US';
  workbook.definedNames.add("'Silt units'!$B$2", 'SiltUnits');
  writeFileSync(file, await workbook.xlsx.writeBuffer());
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('calc on the command line', () => {
  it('runs as the npm script that the manual names', () => {
    const { stdout, status } = spawnSync('npm', ['run', '-s', 'calc', '--', '=1+1'], { encoding: 'utf8' });
    expect([stdout, status]).toEqual(['2\n', 0]);
  });

  it('prints values in full, quantities as the add-in reads them, and rows tab-separated, one a line; exits 0', () => {
    const done = calc('=1/3', '=SILT.UNIT.READ("metric","dimension","3 1/4 in")', '={1,"a";TRUE,-2.50}');
    // 3 1/4 in of 25.4 mm exactly (international inch, 1959).
    const stdout = '0.3333333333333333\n82.55\n1\ta\nTRUE\t-2.5\n';
    expect(done).toMatchObject({ stdout, stderr: '', status: 0 });
  });

  it('prints code and reason of an error to the error stream and exits 1, other formulas unharmed', () => {
    const { stdout, stderr, status } = calc('=1/0', '=1+1');
    expect(stdout).toBe('2\n');
    expect(stderr).toMatch(/^#DIV\/0! a number is divided by zero/);
    expect(status).toBe(1);
  });

  it('prints one JSON array in order, errors with code and reason', () => {
    const refused = '=SILT.UNIT.READ("US","dimension","1 gal")';
    // An array constant is taken as a range, one result per cell.
    const both = '=SILT.UNIT.READ("metric","dimension",{"1 in";"2 in"})';
    const { stdout, status } = calc('--json', refused, '={1,2}', '"a"', both);
    expect(JSON.parse(stdout)).toEqual([
      { formula: refused, error: { code: '#VALUE!', message: expect.stringMatching(/volume/) } },
      { formula: '={1,2}', value: [[1, 2]] },
      { formula: '"a"', value: 'a' },
      { formula: both, value: [[25.4], [50.8]] },
    ]);
    expect(status).toBe(1);
  });

  it('makes sheets and names of a workbook available, recalculated', () => {
    const { stdout, stderr } = calc(
      '--workbook',
      file,
      '=Drums!B2+1',
      '=SiltUnits',
      '=Drums!C2',
      '=B3&""',
      '=Drums!E2',
    );
    expect(stderr).toBe('');
    expect(stdout).toBe('573\nUS\n1144\n3/4\n572\n');
  });

  it('refuses a missing or damaged workbook and a wrong option with exit 2', () => {
    expect(calc('--workbook', join(folder, 'none.xlsx'), '=1')).toMatchObject({ status: 2, stdout: '' });
    const damaged = join(folder, 'damaged.xlsx');
    writeFileSync(damaged, 'not a zip file');
    const { status, stderr } = calc('--workbook', damaged, '=1');
    expect(status).toBe(2);
    expect(stderr).toContain('not a readable .xlsx workbook');
    expect(calc('--jsn', '=1').stderr).toContain('--jsn is not an option');
  });
});

describe('the request', () => {
  it('reads anything that is not an option as a formula, also a negative number', () => {
    expect(readRequest(['-5', '1+1', '--json'])).toEqual({ formulas: ['-5', '1+1'], json: true, workbook: undefined });
    expect(readRequest(['--', '--1'])).toMatchObject({ formulas: ['--1'] });
  });

  it('needs a formula, and a file after --workbook', () => {
    expect(readRequest([])).toBe('give at least one formula');
    expect(readRequest(['--workbook'])).toBe('--workbook needs a file');
  });
});

describe('the output', () => {
  const bad = { error: { code: '#VALUE!', message: 'top: blank' } };

  it('keeps good rows beside an error in one of them, and says which row', () => {
    const output = calcOutput(
      ['=A'],
      [
        [
          [1, 2],
          [bad, ''],
          [3, 4],
        ],
      ],
      false,
    );
    expect(output).toEqual({ stdout: '1\t2\n#VALUE!\t\n3\t4\n', stderr: '#VALUE! row 2: top: blank\n', exitCode: 1 });
    expect(JSON.parse(calcOutput(['=A'], [[[bad, '']]], true).stdout)).toEqual([{ formula: '=A', value: [[bad, '']] }]);
  });

  it('keeps text with tabs or line ends on its line', () => {
    expect(calcOutput(['=A'], ['a\tb\nc'], false).stdout).toBe('a b c\n');
  });
});
