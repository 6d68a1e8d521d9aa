import fc from 'fast-check';
import { expect, it } from 'vitest';
import { RowBounds } from '../../../src/formulas/cut/row-bounds';

it('has the least bound and the first row with it, as a search of all rows finds them', () => {
  const change = fc.record({ row: fc.nat(), x: fc.constantFrom(0, 0.5, 1, 2, 3, Infinity) });
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 40 }), fc.array(change, { maxLength: 120 }), (count, changes) => {
      const bounds = new RowBounds(count);
      const plain = Array.from({ length: count }, () => 0);
      for (const { row, x } of changes) {
        bounds.set(row % count, x);
        plain[row % count] = x;
        const least = Math.min(...plain);
        expect(bounds.least).toBe(least);
        if (least < Infinity) expect(bounds.leastRow).toBe(plain.indexOf(least));
      }
    }),
  );
});
