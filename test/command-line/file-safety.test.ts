import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { writeWhole } from '../../src/command-line/write-file';

const folder = mkdtempSync(join(tmpdir(), 'files-'));
const input = join(folder, 'in.xlsx');
const old = 'what stood there before';
afterAll(() => rmSync(folder, { recursive: true }));
beforeEach(() => {
  for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true, force: true });
  cpSync('sample-workbooks/metric/water-book.xlsx', input);
});

function recalc(...args: string[]) {
  return spawnSync('node', ['src/command-line/run.cjs', 'recalc', ...args], { encoding: 'utf8' });
}

/** The command refuses in one sentence and leaves the folder as it was. */
function refused(to: string, sentence: RegExp): void {
  const before = readdirSync(folder);
  const { status, stderr, stdout } = recalc(input, to);
  expect([status, stdout]).toEqual([2, '']);
  expect(stderr).toMatch(sentence);
  expect(stderr.trim().split('\n')).toHaveLength(1);
  expect(readdirSync(folder)).toEqual(before);
}

describe('a place that cannot be written to', () => {
  it('may be a folder', () => {
    mkdirSync(join(folder, 'out.xlsx'));
    refused(join(folder, 'out.xlsx'), /out\.xlsx is a folder; give the name of a file$/m);
  });

  it('may be the workbook itself, by its own name or by a link', () => {
    refused(input, /in\.xlsx is the input workbook; give the output another name$/m);
    symlinkSync(input, join(folder, 'link.xlsx'));
    refused(join(folder, 'link.xlsx'), /is the input workbook/);
  });

  it('may be set to read-only', () => {
    const path = join(folder, 'out.xlsx');
    writeFileSync(path, old);
    chmodSync(path, 0o444);
    refused(path, /out\.xlsx is read-only; give another name$/m);
    expect(readFileSync(path, 'utf8')).toBe(old);
  });

  it('may be in a folder that does not exist', () => {
    refused(join(folder, 'none', 'out.xlsx'), /no such folder$/m);
  });

  it('may be on a full disk', () => {
    const path = join(folder, 'out.xlsx');
    writeFileSync(path, old);
    const full = (partial: string): never => {
      writeFileSync(partial, 'half');
      throw Object.assign(new Error('write'), { code: 'ENOSPC' });
    };
    expect(() => writeWhole(path, 'out.xlsx', 'new', full)).toThrow(
      'out.xlsx cannot be written: there is no room left on the disk',
    );
    expect(readFileSync(path, 'utf8')).toBe(old);
    expect(readdirSync(folder).sort()).toEqual(['in.xlsx', 'out.xlsx']);
  });
});

describe('a place that can be written to', () => {
  it('may have spaces and accents in its name, and be behind a link, which stays one', () => {
    const path = join(folder, 'eau été – n° 2.xlsx');
    writeFileSync(path, old);
    const link = join(folder, 'a link.xlsx');
    symlinkSync(path, link);
    expect(recalc(input, link)).toMatchObject({ status: 0, stderr: '' });
    expect(readlinkSync(link)).toBe(path);
    expect(readFileSync(path).subarray(0, 2).toString()).toBe('PK');
  });

  it('holds the old file until the whole new one is there, also when the work is interrupted', () => {
    const path = join(folder, 'out.xlsx');
    writeFileSync(path, old);
    const { status, stderr } = spawnSync('node', ['src/command-line/run.cjs', 'recalc', input, path], {
      encoding: 'utf8',
      env: { ...process.env, SILTSTEAD_SECONDS: '0.05' },
    });
    expect([status, stderr]).toEqual([
      2,
      expect.stringMatching(/took longer than 0\.05 s and was stopped; nothing was written\n$/),
    ]);
    expect(readFileSync(path, 'utf8')).toBe(old);
    expect(readdirSync(folder).sort()).toEqual(['in.xlsx', 'out.xlsx']);
  });
});

describe('a workbook that needs more than there is', () => {
  it('ends with a sentence, not with a trace', () => {
    const { status, stderr } = spawnSync(
      'node',
      ['src/command-line/run.cjs', 'recalc', input, join(folder, 'out.xlsx')],
      {
        encoding: 'utf8',
        env: { ...process.env, SILTSTEAD_MEGABYTES: '20' },
      },
    );
    expect([status, stderr]).toEqual([
      2,
      expect.stringMatching(/needs more than 20 MB of memory and was stopped; nothing was written\n$/),
    ]);
    expect(existsSync(join(folder, 'out.xlsx'))).toBe(false);
  });
});
