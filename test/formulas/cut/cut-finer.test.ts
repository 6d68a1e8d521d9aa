import { expect, it } from 'vitest';
import { finestRows } from '../../../src/formulas/cut/cut-finer';
import { prepareJob } from '../../../src/formulas/cut/cut-job';
import type { Piece } from '../../../src/formulas/cut/piece';

/** One of the two pieces of a cone whose wall is at 45 degrees. */
const piece: Piece = {
  shape: 'sector',
  innerRadius: 0.07,
  outerRadius: 0.35,
  angle: Math.PI * Math.SQRT1_2,
  lap: 0.02,
};

it.each([1e-4, 1e-3, 5e-3, 0.02, 0.1, 0.3, 1])(
  'grows a piece by a gap of %s m on the finest rows in at most two million steps',
  (gap) => {
    const sheet = { length: 2.4 + 2 * gap, width: 1.2 + 2 * gap, gap };
    const job = prepareJob([piece], sheet, finestRows(prepareJob([piece], sheet)));
    const budget = { spent: 0 };
    for (const rows of job.shapeOf(0).families.center) {
      budget.spent = 0;
      job.grown(rows, budget);
      expect(budget.spent).toBeGreaterThan(rows.count);
      expect(budget.spent).toBeLessThan(2e6);
    }
  },
);

it('lays on rows of a thousandth of the sheet or less where the gap is that of a saw', () => {
  for (const gap of [0, 0.003, 0.01])
    expect(finestRows({ width: 1, sheet: { length: 2, width: 1 + 2 * gap, gap } })).toBeGreaterThan(1000);
});
