import { describe, expect, it } from 'vitest';
import { shuffle } from '../../../src/formulas/numeric/shuffle';

describe('a list shuffled', () => {
  it('changes places from its end, each with one before it or with itself', () => {
    const least = [1, 2, 3, 4];
    shuffle(least, () => 0);
    // Worked by hand: 4 with 1, then 3 with 4, then 2 with 3.
    expect(least).toEqual([2, 3, 4, 1]);
    const most = [1, 2, 3, 4];
    shuffle(most, () => 1 - 2 ** -53);
    expect(most).toEqual([1, 2, 3, 4]);
  });

  it('comes to each of its orders by one run of numbers alone', () => {
    const orders = new Set<string>();
    for (const last of [0, 1, 2, 3])
      for (const middle of [0, 1, 2])
        for (const first of [0, 1]) {
          const picks = [(last + 0.5) / 4, (middle + 0.5) / 3, (first + 0.5) / 2];
          const list = [1, 2, 3, 4];
          shuffle(list, () => picks.shift()!);
          orders.add(list.join());
        }
    expect(orders.size).toBe(24);
  });

  it('of one number or none is as it was', () => {
    for (const list of [[], [7]]) {
      const before = [...list];
      shuffle(list, () => 0.5);
      expect(list).toEqual(before);
    }
  });
});
