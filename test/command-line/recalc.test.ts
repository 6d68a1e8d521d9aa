import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'recalc-'));
const input = join(folder, 'in.xlsx');
const output = join(folder, 'out.xlsx');
afterAll(() => rmSync(folder, { recursive: true }));
beforeEach(() => {
  rmSync(output, { force: true });
  cpSync('sample-workbooks/US/cone-cut-plan.xlsx', input);
});

function recalc(...args: string[]) {
  return spawnSync('node', ['src/command-line/run.cjs', 'recalc', ...args], { encoding: 'utf8' });
}

describe('recalc on the command line', () => {
  it('runs as the npm script that the manual names, and leaves a file with right results unchanged', () => {
    const { stdout, status } = spawnSync('npm', ['run', '-s', 'recalc', '--', input, output], { encoding: 'utf8' });
    expect([status, stdout]).toEqual([0, expect.stringMatching(/^(\d+) of \1 formulas computed\n$/)]);
    expect(readFileSync(output)).toEqual(readFileSync(input));
  });

  it('lists formulas that keep their value and exits 3', () => {
    const files = unzipSync(readFileSync('test/workbooks/files/drum-store.xlsx'));
    const sheet = 'xl/worksheets/sheet1.xml';
    const xml = strFromU8(files[sheet]!);
    files[sheet] = strToU8(
      xml.replace('</sheetData>', '<row r="900"><c r="A900"><f>NOSUCH.THING(1)</f><v>4</v></c></row></sheetData>'),
    );
    writeFileSync(input, zipSync(files));
    const { stderr, status } = recalc(input, output);
    expect(stderr).toBe(
      "'Drum store'!A900 keeps its old value: =NOSUCH.THING(1): the engine has no function NOSUCH.THING\n",
    );
    expect(status).toBe(3);
    expect(strFromU8(unzipSync(readFileSync(output))[sheet]!)).toContain('<f>NOSUCH.THING(1)</f><v>4</v>');
  });

  it('refuses a damaged file, says why, and leaves nothing behind', () => {
    writeFileSync(input, readFileSync(input).subarray(0, 5000));
    const { stderr, status } = recalc(input, output);
    expect(status).toBe(2);
    expect(stderr).toMatch(/in\.xlsx: .*(zip|missing|cut short)/);
    expect(readdirSync(folder)).toEqual(['in.xlsx']);
  });

  it('says how it is called', () => {
    expect(recalc(input)).toMatchObject({ status: 2, stderr: expect.stringMatching(/^usage: npm run -s recalc/) });
    expect(recalc(join(folder, 'none.xlsx'), output)).toMatchObject({
      status: 2,
      stderr: expect.stringMatching(/no such file/),
    });
  });
});
