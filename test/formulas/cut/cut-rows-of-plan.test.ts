/** The rows of a plan: their order, numbers, places and sums, at a short search. */
import { describe, expect, it } from 'vitest';
import { conePattern, type PatternRow } from '../../../src/formulas/cone/cone-pattern';
import { cutPlan, cutSheets, layPatterns } from '../../../src/formulas/cut/cut-plan';
import { refusalOf } from '../refusal-of';
import { farthestOver, laidOutlines, largestOverlap, leastDistance } from './laid-outlines';

const plain = { pieces: 1, lap: 0, thickness: 0, measured: 'middle', clearance: 0 } as const;
const effort = 0.002;
/** A sleeve of a length and a height, and a cone. */
const sleeve = (girth: number, height: number, pieces = 1): PatternRow =>
  conePattern({ ...plain, top: girth / Math.PI, bottom: girth / Math.PI, height, pieces });
const cone = conePattern({ ...plain, top: 0.3, bottom: 0.1, height: 0.1 });
const half = conePattern({ ...plain, top: 0.4, bottom: 0, height: Math.sqrt(0.12) });
const stock = (sheetLength: number, sheetWidth: number, gap = 0) => ({ sheetLength, sheetWidth, gap });
const copies = <T>(count: number, one: T) => Array.from({ length: count }, () => one);

describe('the rows of a plan', () => {
  it('have each piece of each pattern row once, in their order', () => {
    const { rows } = layPatterns([sleeve(0.4, 0.2, 2), cone, sleeve(0.3, 0.1, 3)], stock(1, 0.5), { effort });
    expect(rows.map(({ pattern, piece }) => `${pattern}.${piece}`)).toEqual(['1.1', '1.2', '2.1', '3.1', '3.2', '3.3']);
  });

  it('number equal pieces from the first sheet on and from left to right, then upwards', () => {
    const { rows } = layPatterns([sleeve(9 * 0.4, 0.24, 9)], stock(1, 0.5), { effort });
    const places = rows.map(({ sheet, x, y }) => sheet * 1e4 + x * 100 + y);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(new Set(places).size).toBe(9);
    const separate = layPatterns(copies(9, sleeve(0.4, 0.24)), stock(1, 0.5), { effort }).rows;
    expect(separate.map(({ sheet, x, y }) => sheet * 1e4 + x * 100 + y)).toEqual(places);
  });

  it('number equal pieces by their places after a search that laid them in another order', () => {
    const places = [stock(3, 0.7), stock(0.9, 0.6), stock(1.1, 0.9, 0.01)].flatMap((one) => {
      const boxes = [...copies(7, sleeve(0.41, 0.13)), ...copies(5, sleeve(0.37, 0.29)), sleeve(0.5, 0.5)];
      const { rows } = layPatterns(boxes, one, { effort: 0.05 });
      return [rows.slice(0, 7), rows.slice(7, 12)];
    });
    for (const alike of places) {
      const sorted = [...alike].sort((a, b) => a.sheet - b.sheet || a.x - b.x || a.y - b.y);
      expect(alike.map(({ sheet, x, y }) => [sheet, x, y])).toEqual(sorted.map(({ sheet, x, y }) => [sheet, x, y]));
    }
  });

  it.each([
    ['one sheet', stock(2.5, 1.2)],
    ['one sheet with a gap', stock(2.5, 1.25, 0.011)],
    ['several sheets with a gap', stock(0.9, 0.85, 0.007)],
  ])('lay every piece on its sheet and clear of the others: %s', (_, size) => {
    const lapped = conePattern({ ...plain, top: 0.5, bottom: 0.12, height: 0.19, pieces: 2, lap: 0.02 });
    const patterns = [
      lapped,
      cone,
      half,
      sleeve(0.6, 0.2, 2),
      ...copies(3, conePattern({ ...plain, top: 0.25, bottom: 0.04, height: 0.2 })),
    ];
    const { rows, sheets } = layPatterns(patterns, size, { effort: 0.02 });
    const laid = laidOutlines(patterns, rows, 0.5);
    const [length, width, gap] = [size.sheetLength, size.sheetWidth, size.gap].map((figure) => figure * 1000);
    expect(farthestOver(laid, length!, width!, gap!)).toBeLessThan(1e-6);
    expect(largestOverlap(laid)).toBeLessThan(0.1);
    if (gap! > 0) expect(leastDistance(laid, gap!)).toBeGreaterThan(gap! - 0.01);
    expect(sheets.areaBought).toBeCloseTo(sheets.sheets * size.sheetLength * size.sheetWidth, 12);
    // The sheet that is used least comes last.
    const ends = Array.from({ length: sheets.sheets }, (_one, i) =>
      Math.max(...laid.filter(({ sheet }) => sheet === i + 1).flatMap(({ outline }) => outline.map(({ x }) => x))),
    );
    expect(Math.min(...ends)).toBeCloseTo(ends.at(-1)!, 2);
    // A chord of half a degree is within 0.005 mm of its arc.
    expect(Math.abs(sheets.lengthUsed * 1000 - ends.at(-1)!)).toBeLessThan(0.006);
  });

  it('leave the most of the last sheet, whichever was filled last', () => {
    const mixed = [...copies(3, sleeve(0.9, 0.45)), ...copies(2, sleeve(0.5, 0.2))];
    const { rows, sheets } = layPatterns(mixed, stock(1, 0.5), { effort });
    const used = Array.from({ length: sheets.sheets }, (_, i) => {
      const on = rows.filter(({ sheet }) => sheet === i + 1);
      return Math.max(
        ...on.map(({ pattern, x, direction }) => {
          const { blankLength, blankWidth } = mixed[pattern - 1]!;
          return x + (direction === 0 ? blankLength : blankWidth);
        }),
      );
    });
    expect(used).toHaveLength(4);
    expect(used.at(-1)).toBe(Math.min(...used));
    expect(sheets.lengthUsed).toBeCloseTo(used.at(-1)!, 12);
  });

  it('place a rectangle by its corner and a sector by its arc center, the gap from the edges', () => {
    const gap = 0.05;
    const [box] = layPatterns([sleeve(0.4, 0.2)], stock(1, 0.5, gap), { effort }).rows;
    expect([box!.x, box!.y]).toEqual([expect.closeTo(gap, 9), expect.closeTo(gap, 9)]);
    expect([0, Math.PI / 2]).toContain(box!.direction);
    // A half disc on the sheet that it just takes: on its flat side, or hanging from it.
    const exact = stock(0.8 + 2 * gap, 0.4 + 2 * gap, gap);
    const [disc] = layPatterns([half], exact, { effort }).rows;
    expect(disc!.x).toBeCloseTo(gap + 0.4, 6);
    const isUp = Math.abs(disc!.direction - Math.PI / 2) < 1e-6;
    expect(disc!.direction).toBeCloseTo(isUp ? Math.PI / 2 : (3 * Math.PI) / 2, 6);
    expect(disc!.y).toBeCloseTo(isUp ? gap : gap + 0.4, 6);
  });

  it('have directions from 0 to less than a whole turn', () => {
    const { rows } = layPatterns(
      [cone, half, ...copies(6, conePattern({ ...plain, top: 0.2, bottom: 0.05, height: 0.1 }))],
      stock(1.5, 1),
      {
        effort,
      },
    );
    for (const { direction } of rows) {
      expect(direction).toBeGreaterThanOrEqual(0);
      expect(direction).toBeLessThan(2 * Math.PI);
    }
  });
});

describe('the sums of a plan', () => {
  it('are those of its rows', () => {
    const patterns = [sleeve(0.9, 0.45), sleeve(0.9, 0.45), cone];
    const { rows, sheets } = layPatterns(patterns, stock(1, 0.5), { effort });
    expect(sheets.sheets).toBe(Math.max(...rows.map(({ sheet }) => sheet)));
    expect(sheets.areaUsed).toBeCloseTo(2 * 0.9 * 0.45 + cone.area, 12);
    expect(sheets.areaBought).toBeCloseTo(sheets.sheets * 0.5, 12);
    expect(sheets.shareUsed).toBeCloseTo(sheets.areaUsed / sheets.areaBought, 12);
    const alone = layPatterns([sleeve(0.4, 0.2)], stock(1, 0.5, 0.05), { effort }).sheets;
    expect([0.45, 0.25].some((length) => Math.abs(alone.lengthUsed - length) < 1e-9)).toBe(true);
    expect(layPatterns([cone], stock(1.25, 0.5), { effort }).sheets.areaBought).toBeCloseTo(1.25 * 0.5, 12);
  });

  it('are of one plan, that is kept for the same rows, sheet and search alone', () => {
    const patterns = [cone, sleeve(0.4, 0.2)];
    const plan = layPatterns(patterns, stock(1, 0.5), { effort });
    expect(cutPlan(patterns, stock(1, 0.5), { effort })).toBe(plan.rows);
    expect(cutSheets(patterns, stock(1, 0.5), { effort })).toBe(plan.sheets);
    expect(layPatterns(patterns, stock(1, 0.5), { effort })).toBe(plan);
    expect(layPatterns(patterns, stock(1, 0.5), { effort: 2 * effort })).not.toBe(plan);
    expect(layPatterns(patterns, stock(1, 0.6), { effort })).not.toBe(plan);
    expect(layPatterns([cone], stock(1, 0.5), { effort })).not.toBe(plan);
    // The last digits of one length differ between units, and are no other plan.
    expect(layPatterns([cone, sleeve(0.4 + 1e-16, 0.2)], stock(1 + 2e-16, 0.5), { effort })).toBe(plan);
    // The 32 plans that were used last are kept.
    for (let i = 1; i < 29; i++) layPatterns(patterns, stock(1 + i / 100, 0.5), { effort });
    expect(layPatterns(patterns, stock(1, 0.5), { effort })).toBe(plan);
    for (let i = 1; i < 33; i++) layPatterns(patterns, stock(2 + i / 100, 0.5), { effort });
    const again = layPatterns(patterns, stock(1, 0.5), { effort });
    expect(again).not.toBe(plan);
    expect(again).toEqual(plan);
  });
});

describe('rows that cannot be laid', () => {
  const large = sleeve(3, 0.6);
  const odd = { ...cone, slant: 1 };

  it('are listed by their place, and the others laid', () => {
    const { rows, notLaid } = layPatterns([large, cone, odd, { ...cone, row: 9 }], stock(1, 0.5), { effort });
    expect(rows.map(({ pattern }) => pattern)).toEqual([2, 9]);
    expect(notLaid.map(({ pattern, tooLarge }) => [pattern, tooLarge])).toEqual([
      [1, true],
      [3, false],
    ]);
    // A row of several pieces is named once.
    const inThree = layPatterns([sleeve(3, 0.6, 2), cone], stock(1, 0.5), { effort });
    expect(inThree.notLaid.map(({ pattern }) => pattern)).toEqual([1]);
    // A plan without some rows is not kept, since its reasons are in the words of one call.
    expect(layPatterns([odd, cone], stock(1, 0.5), { effort })).not.toBe(
      layPatterns([odd, cone], stock(1, 0.5), { effort }),
    );
  });

  it('are refused alone, and where a count would be short', () => {
    const said = (call: () => unknown) => refusalOf(call).message;
    expect(said(() => layPatterns([large], stock(1, 0.5), { effort }))).toContain('row 1 in one piece');
    expect(said(() => cutPlan([cone, large], stock(1, 0.5), { effort }))).toContain('row 2 in one piece');
    expect(said(() => cutSheets([odd, cone], stock(1, 0.5), { effort, under: 'US' }))).toContain(
      'row 1 was not made with US',
    );
  });

  // 3 m of girth by 0.4 m on a sheet of a meter: in three just, in two not; with a lap of 0.05 in four.
  it('say in how many pieces they would fit', () => {
    const said = (row: PatternRow) => refusalOf(() => layPatterns([row], stock(1, 0.5), { effort })).message;
    expect(said(sleeve(3, 0.4))).toContain(
      'row 1 in one piece does not fit on the sheet in any rotation; it would fit in 3',
    );
    expect(said(sleeve(3, 0.4, 2))).toContain('row 1 in 2 pieces does not fit');
    expect(said(sleeve(3, 0.4, 2))).toContain('it would fit in 3 pieces');
    const lapped = conePattern({ ...plain, top: 3 / Math.PI, bottom: 3 / Math.PI, height: 0.4, lap: 0.05, pieces: 2 });
    expect(said(lapped)).toContain('it would fit in 4 pieces');
    expect(said(sleeve(3, 0.6))).toContain('it would fit in 6 pieces');
    const withGap = (gap: number) =>
      refusalOf(() => layPatterns([sleeve(3, 0.4)], stock(1, 0.5, gap), { effort })).message;
    expect(withGap(0.04)).toContain('it would fit in 4 pieces');
    expect(withGap(0.06)).toContain('it would fit in 8 pieces');
    expect(said(sleeve(3, 1.2))).toContain('nor would it fit in up to 60');
    // A full cone of 1.2 m of slant: its radius is too long for any sheet of a meter by half.
    const wide = conePattern({ ...plain, top: 1.8, bottom: 0.2, height: 0.4 });
    expect(said(wide)).toMatch(/it would fit in \d+ pieces/);
    const count = Number(/fit in (\d+) pieces/.exec(said(wide))![1]);
    const inPieces = (pieces: number) => conePattern({ ...plain, top: 1.8, bottom: 0.2, height: 0.4, pieces });
    expect(layPatterns([inPieces(count)], stock(1, 0.5), { effort }).rows).toHaveLength(count);
    expect(said(inPieces(count - 1))).toContain(`it would fit in ${count} pieces`);
  });

  it('are all refused where the gap leaves no sheet, or for more than a thousand pieces', () => {
    const gap = refusalOf(() => layPatterns([cone], stock(1, 0.5, 0.25), { effort }));
    expect(gap).toMatchObject({ argument: 'gap', figures: { limit: { value: 0.25, like: 'gap' } } });
    expect(refusalOf(() => layPatterns([cone], stock(0.4, 0.5, 0.2), { effort })).figures).toEqual({
      limit: { value: 0.2, like: 'gap' },
    });
    // Just a thousand are not too many; these are refused for another reason.
    const thousand = refusalOf(() => layPatterns([sleeve(3000, 2, 1000)], stock(1, 0.5), { effort }));
    expect(thousand.message).toContain('row 1 in 1000 pieces does not fit');
    const many = [sleeve(300, 1e-3, 600), sleeve(300, 1e-3, 401)];
    expect(refusalOf(() => layPatterns(many, stock(1, 0.5), { effort })).message).toContain(
      '1001 pieces are too many to lay out at once; give up to 1000',
    );
  });
});
