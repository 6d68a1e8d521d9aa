import { describe, expect, it } from 'vitest';
import { filterArea, filterFeed, filterMedia } from '../../../src/formulas/filter/filter-size';

const DAY = 86400;

describe('the size of a filter', () => {
  // 1 kg of feed a day with 0.32 protein and 0.1 kg N per kg protein is 32 g N; at 0.4 g/m2/day that is 80 m2.
  const area = (reserve: number) => filterArea(1 / DAY, 0.32, 0.4e-3 / DAY, reserve, 0.1);

  it('for 32 g of nitrogen a day at 0.4 g/m2 is 80 m2, and half as much again with a reserve of a half', () => {
    expect(area(0)).toBeCloseTo(80, 9);
    expect(area(0.5)).toBeCloseTo(120, 9);
  });

  it('is 0.4 m3 of media with 200 m2/m3', () => {
    expect(filterMedia(80, 200)).toBeCloseTo(0.4, 12);
  });

  it('carries the feed that it was made for', () => {
    for (const reserve of [0, 0.3, 1]) {
      expect(filterFeed(filterMedia(area(reserve), 250), 250, 0.32, 0.4e-3 / DAY, reserve, 0.1) * DAY).toBeCloseTo(
        1,
        12,
      );
    }
  });
});
