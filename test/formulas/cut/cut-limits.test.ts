import { describe, expect, it } from 'vitest';
import { conePattern, type PatternRow } from '../../../src/formulas/cone/cone-pattern';
import { cutSheets, layPatterns } from '../../../src/formulas/cut/cut-plan';
import { farthestOver, laidOutlines, largestOverlap } from './laid-outlines';

const plain = { pieces: 1, lap: 0, thickness: 0, measured: 'middle', clearance: 0 } as const;
const inch = 0.0254;
/** A quarter of the usual search, which repeats sheets and keeps pieces apart by the same means. */
const quarter = { effort: 0.25 };
const copies = (count: number, row: PatternRow) => Array.from({ length: count }, () => row);

describe('a job without bounds', () => {
  const cone = conePattern({ ...plain, top: 22.5 * inch, bottom: 4 * inch, height: 9.25 * inch });
  const thin = conePattern({ ...plain, top: 0.1, bottom: 0.1, height: 1e-9 });

  it.each([
    ['a sheet as wide as nothing', cone, 96 * inch, 1e-5 * inch, 0],
    ['a sheet as long as nothing', cone, 1e-12, 48 * inch, 0],
    ['a gap that leaves a thread of sheet', cone, 2, 1, 0.5 - 1e-12],
  ])('ends with a sentence: %s', (_, row, sheetLength, sheetWidth, gap) => {
    expect(() => cutSheets([row], { sheetLength, sheetWidth, gap })).toThrow(
      'row 1 in one piece does not fit on the sheet in any rotation',
    );
  });

  it('lays a thread beside a gap of ten million times its width, and a speck on a square kilometer', () => {
    expect(cutSheets(copies(3, thin), { sheetLength: 2, sheetWidth: 0.2 + 1e-8, gap: 0.1 })).toMatchObject({
      sheets: 1,
    });
    const speck = conePattern({ ...plain, top: 1e-6, bottom: 1e-7, height: 1e-6 });
    expect(cutSheets([speck], { sheetLength: 1000, sheetWidth: 1000, gap: 0 })).toMatchObject({ sheets: 1 });
  });

  // The whole search where it goes as far as to move pieces of a long sheet together, a part of them at a time.
  it.each([
    [2, 1, 0.25],
    [100, 100, 0.25],
    [1000, 1.5, 1],
  ])('lays a thousand unlike pieces on sheets of %d by %d m without an overlap', (sheetLength, sheetWidth, effort) => {
    const rows = Array.from({ length: 1000 }, (_, i) =>
      conePattern({
        ...plain,
        top: 0.2 + ((i * 37) % 1000) / 5000,
        bottom: 0.04 + ((i * 17) % 1000) / 50000,
        height: 0.1 + ((i * 71) % 997) / 8000,
      }),
    );
    const stock = { sheetLength, sheetWidth, gap: 0 };
    const laid = laidOutlines(rows, layPatterns(rows, stock, { effort }).rows, 1);
    expect(laid).toHaveLength(1000);
    expect(farthestOver(laid, sheetLength * 1000, sheetWidth * 1000, 0)).toBeLessThan(1e-6);
    // Forty of them stand for all, as the polygon library is slow.
    expect(largestOverlap(laid.slice(0, 40))).toBeLessThan(0.1);
  });
});

describe('equal pieces on many sheets', () => {
  const stock = { sheetLength: 96 * inch, sheetWidth: 48 * inch, gap: 0 };
  /** A cone at 45 degrees, of which a sheet takes a few. */
  const cone = (top: number) => conePattern({ ...plain, top, bottom: 0.1, height: (top - 0.1) / 2 });

  it.each([
    ['0.48 m', 0.48],
    ['0.4 m', 0.4],
    ['22.5 in', 22.5 * inch],
  ])('never take more than one good sheet repeated: %s', (_, top) => {
    const row = cone(top);
    let most = 1;
    while (cutSheets(copies(most + 1, row), stock, quarter).sheets === 1) most++;
    for (const count of [600, 1000]) {
      expect(cutSheets(copies(count, row), stock, quarter).sheets).toBeLessThanOrEqual(Math.ceil(count / most));
    }
  });

  it('are laid without an overlap', () => {
    const rows = copies(60, cone(0.4));
    expect(largestOverlap(laidOutlines(rows, layPatterns(rows, stock).rows, 0.5))).toBeLessThan(0.1);
  });
});

describe('a row that cannot be laid', () => {
  const small = conePattern({ ...plain, top: 0.3, bottom: 0.1, height: 0.1 });
  const large = conePattern({ ...plain, top: 1.5, bottom: 0.1, height: 0.7 });
  const stock = { sheetLength: 2, sheetWidth: 1, gap: 0 };

  it('leaves the others whole and says why it is not laid', () => {
    const { rows, notLaid } = layPatterns([small, large, { ...small, slant: 1 }, small], stock);
    expect(rows.map(({ pattern }) => pattern)).toEqual([1, 4]);
    expect(notLaid.map(({ pattern, tooLarge }) => [pattern, tooLarge])).toEqual([
      [2, true],
      [3, false],
    ]);
    expect(notLaid[0]?.refusal.message).toContain('row 2 in one piece does not fit on the sheet in any rotation');
    expect(notLaid[1]?.refusal.message).toContain('row 3 was not made with');
  });

  it('is refused if a count without it would buy too little, and if no other row is left', () => {
    expect(() => cutSheets([small, large], stock)).toThrow('row 2 in one piece');
    expect(() => layPatterns([large], stock)).toThrow('row 1 in one piece');
  });

  it('is refused before anything is searched', { timeout: 5000 }, () => {
    // At this effort a search of eight pieces takes more than the time that the test has.
    const pieces = [...copies(8, small), large];
    expect(() => cutSheets(pieces, stock, { effort: 64 })).toThrow('row 9 in one piece');
  });
});
