import { describe, expect, it } from 'vitest';
import { fishKinds, growthRange, isColdWater } from '../../../src/formulas/water/water-species';

describe('growthRange', () => {
  it('of a species runs from what it survives to where it grows best', () => {
    expect(growthRange('tilapia')).toEqual({ coolest: 14, warmest: 30, largest: 4.3 });
  });

  it('of a group runs over the temperatures that it is kept within', () => {
    expect(growthRange('warm-water')).toEqual({ coolest: 22, warmest: 32, largest: 60 });
  });

  it('of any fish runs from freezing to the warmest and the largest of them all', () => {
    expect(growthRange()).toEqual({ coolest: 0, warmest: 33, largest: 60 });
    for (const kind of fishKinds) {
      const { warmest, largest } = growthRange(kind);
      expect(warmest).toBeLessThanOrEqual(33);
      expect(largest).toBeLessThanOrEqual(60);
    }
  });
});

describe('isColdWater', () => {
  it('is true of trout and of cold-water fish only, whose un-ionized limit is half as high', () => {
    expect(fishKinds.filter(isColdWater)).toEqual(['cold-water', 'rainbow trout']);
  });
});
