import { describe, expect, it } from 'vitest';
import { refusal, spill } from './call';
import { withShortSearches } from './short-searches';

withShortSearches();

const row = (top: number) => spill('CONE.PATTERN', 'metric', top, 100, 200)[0] ?? [];
const blank = Array.from({ length: 10 }, () => '');
const broken = [{ code: '#N/A', message: 'no height' }, ...blank.slice(1)];
const plan = (...rows: unknown[][]) => spill('CUT.PLAN', 'metric', rows, 2000, 1000, 0);

describe('CUT.PLAN', () => {
  it('skips and counts blank rows, at the top of the table too', () => {
    expect(plan(blank, row(400), blank, row(300)).map(([pattern]) => pattern)).toEqual([2, 4]);
  });

  it('lays the good rows and ends with a row for each of the others, with its number and why', () => {
    const rows = plan(row(400), broken, row(3000), row(300), ['wide', ...row(300).slice(1)]);
    expect(rows.map(([pattern]) => pattern)).toEqual([1, 4, 2, 3, 5]);
    expect(rows.map(([, piece]) => piece)).toEqual([1, 1, '', '', '']);
    expect(rows.slice(2).map(([, , sheet]) => sheet)).toEqual([
      'not laid: no height',
      expect.stringMatching(/^does not fit: row 3 in one piece does not fit on the sheet/),
      expect.stringMatching(/^not laid: patterns: row 5, wall angle: /),
    ]);
    expect(rows.every((line) => line.length === 6)).toBe(true);
  });

  it('is the error itself where no row is left', () => {
    expect(refusal('CUT.PLAN', 'metric', [broken, broken], 2000, 1000)).toContain('no height');
    expect(refusal('CUT.PLAN', 'metric', [row(3000)], 2000, 1000)).toContain('row 1 in one piece');
  });

  it('says under which units a row was not made', () => {
    // A pattern in millimeters, read as inches.
    const rows = spill('CUT.PLAN', 'US', [row(400), spill('CONE.PATTERN', 'US', 12, 4, 6)[0]], 96, 48, 0);
    expect(rows.map(([pattern]) => pattern)).toEqual([2, 1]);
    expect(rows[1]?.[2]).toMatch(/^not laid: row 1 was not made with US, or was changed since/);
  });

  it('takes an effort from 1 to 64', () => {
    expect(spill('CUT.PLAN', 'metric', [row(400)], 2000, 1000, 0, 2)).toHaveLength(1);
    expect(refusal('CUT.PLAN', 'metric', [row(400)], 2000, 1000, 0, 65)).toContain('effort: 65 is not allowed');
  });
});

describe('CUT.SHEETS', () => {
  it('passes an error on, because a count without the row would buy too little', () => {
    expect(refusal('CUT.SHEETS', 'metric', [row(400), broken], 2000, 1000)).toContain('no height');
    expect(refusal('CUT.SHEETS', 'metric', [row(400), row(3000)], 2000, 1000)).toContain('row 2 in one piece');
  });
});
