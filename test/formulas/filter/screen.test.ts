import { describe, expect, it } from 'vitest';
import { screenDays, screenHolding, screenPads } from '../../../src/formulas/filter/screen';

const DAY = 86400;

describe('pads', () => {
  it('last as long as calculated, with enough pads', () => {
    const holding = screenHolding(0.4, 0.65, 1);
    expect(holding).toBeCloseTo(0.25, 12);
    const solids = 0.1 / DAY;
    const pads = screenPads(solids, 0.3, holding, 7 * DAY);
    expect(pads).toBe(10);
    expect(screenDays(solids, pads * 0.3, holding)).toBeGreaterThanOrEqual(7 * DAY);
    expect(screenDays(solids, (pads - 1) * 0.3, holding)).toBeLessThan(7 * DAY);
    expect(screenPads(solids, 0.25, 0.4, 7 * DAY)).toBe(7);
  });

  it('hold what they gained in weight over their area: 50 g on 0.2 m2 is 250 g/m2', () => {
    expect(screenHolding(0.4, 0.45, 0.2)).toBeCloseTo(0.25, 12);
  });

  it('cannot hold less than nothing', () => {
    for (const loaded of [0.5, 0.49]) {
      expect(() => screenHolding(0.5, loaded, 1)).toThrow(
        expect.objectContaining({
          argument: 'loaded',
          advice: 'give more than the dry mass of the clean pad ({clean})',
          figures: { clean: 0.5 },
        }),
      );
    }
  });
});
