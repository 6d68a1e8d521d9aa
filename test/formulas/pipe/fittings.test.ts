import { describe, expect, it } from 'vitest';
import { fittingCoefficient, fittingLosses, noFittings } from '../../../src/formulas/pipe/fittings';

describe('fittingCoefficient', () => {
  it('gives Crane’s K of a 2 in elbow 0.57, tee branch 1.14, ball valve 0.06, gate valve 0.15 (TP-410)', () => {
    const bore = 2.067 * 0.0254;
    for (const [name, k] of [
      ['elbow', 0.57],
      ['tee', 1.14],
      ['ball valve', 0.06],
      ['gate valve', 0.15],
      ['globe valve', 6.5],
    ] as const) {
      const loss = fittingLosses[name] ?? noFittings;
      expect(Math.abs(fittingCoefficient(loss, bore) / k - 1)).toBeLessThan(0.06);
    }
  });
  it('is the same K in every bore for an entrance, which has no length, even where steel is as rough as the bore', () => {
    for (const bore of [0.1, 0.01, 4.572e-5 / 3.7]) {
      expect(fittingCoefficient(fittingLosses.entrance ?? noFittings, bore)).toBe(0.5);
      expect(fittingCoefficient(noFittings, bore)).toBe(0);
    }
  });
});
