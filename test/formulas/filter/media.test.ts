import { describe, expect, it } from 'vitest';
import { findMedia, mediaNames, mediaTable } from '../../../src/formulas/filter/media';

const GRAM_A_DAY = 1e-3 / 86400;

describe('the table of media', () => {
  it('has every range in order', () => {
    for (const { surface, rateLow, rateHigh } of mediaTable) {
      expect(surface.low).toBeLessThanOrEqual(surface.typical);
      expect(surface.typical).toBeLessThanOrEqual(surface.high);
      expect(rateLow).toBeGreaterThan(0);
      expect(rateLow).toBeLessThanOrEqual(rateHigh);
    }
  });

  it('finds a medium however its name is written, and nothing for another', () => {
    expect(findMedia('Moving Bed')?.surface.typical).toBe(500);
    expect(findMedia('  TUFF ')?.name).toBe('tuff');
    expect(findMedia('felt')).toBeUndefined();
    for (const name of mediaNames) expect(findMedia(name)?.name).toBe(name);
  });

  it('has the highest rates of Crab et al., Aquaculture 270:1 (2007), from memory: 0.64, 0.79, 0.60 and 0.24 g/m2/d', () => {
    const rates = ['trickling', 'rotating contactor', 'bead', 'fluidized sand'].map(
      (name) => findMedia(name)!.rateHigh,
    );
    for (const [at, expected] of [0.64, 0.79, 0.6, 0.24].entries())
      expect(rates[at]! / GRAM_A_DAY).toBeCloseTo(expected, 12);
  });

  it('has tuff of 300 m2/m3 (FAO 589, table 4.1, from memory)', () => {
    expect(findMedia('tuff')?.surface.typical).toBe(300);
  });

  it('has gravel nitrify 0.2 to 0.469 g of nitrogen per m2 and day, which is 0.57 of ammonia (FAO 589)', () => {
    const gravel = findMedia('gravel')!;
    expect(gravel.rateLow / GRAM_A_DAY).toBeCloseTo(0.2, 12);
    expect((gravel.rateHigh / GRAM_A_DAY) * (17.031 / 14.007)).toBeCloseTo(0.57, 3);
  });
});
