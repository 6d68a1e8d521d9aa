import { describe, expect, it } from 'vitest';
import { unionizedShare, waterAmmonia, waterLimit } from '../../../src/formulas/water/water-ammonia';

describe('unionizedShare', () => {
  it('gives Emerson’s printed 3.82 % at 20 °C and 5.38 % at 25 °C and pH 8, which take 273.2 K (from memory)', () => {
    expect(unionizedShare(8, 20, 0)).toBeCloseTo(0.0382, 4);
    expect(unionizedShare(8, 25, 0)).toBeCloseTo(0.0538, 4);
  });

  it('is within 2 % of Bower and Bidwell’s (1978) sea water of salinity 34', () => {
    for (const [t, ph, share] of [
      [10, 7.5, 0.00459],
      [10, 8, 0.0144],
      [15, 8, 0.0207],
      [20, 8, 0.0298],
      [25, 8, 0.0428],
      [25, 8.5, 0.124],
    ] as const) {
      expect(Math.abs(unionizedShare(ph, t, 34) / share - 1)).toBeLessThan(0.02);
    }
  });

  it('does not come from the misprinted constant, which gives 3.865 % at 20 °C and pH 8', () => {
    expect(Math.abs(unionizedShare(8, 20, 0) - 0.03865)).toBeGreaterThan(3e-4);
  });

  it('lets salt raise the pK by (0.1552 - 0.0003142 t) I as Khoo et al. (1977) print it, I 0.7015 at salinity 34', () => {
    for (const [t, raised] of [
      [0, 0.10887],
      [40, 0.10006],
    ] as const) {
      const share = (salinity: number) => unionizedShare(8, t, salinity);
      const pk = (salinity: number) => Math.log10(1 / share(salinity) - 1);
      expect(pk(34) - pk(0)).toBeCloseTo(raised, 4);
    }
  });

  it('grows with pH and warmth, shrinks with salt, and stays between 0 and 1', () => {
    let last = 0;
    for (let ph = 0.5; ph <= 14; ph += 0.5) {
      const share = unionizedShare(ph, 20, 0);
      expect(share).toBeGreaterThan(last);
      expect(share).toBeLessThan(1);
      last = share;
    }
    expect(unionizedShare(8, 21, 0)).toBeGreaterThan(unionizedShare(8, 20, 0));
    expect(unionizedShare(8, 20, 10)).toBeLessThan(unionizedShare(8, 20, 0));
    expect(unionizedShare(8, 20, 1e-9)).toBeCloseTo(unionizedShare(8, 20, 0), 11);
  });
});

describe('waterLimit', () => {
  it('is the inverse of waterAmmonia', () => {
    for (const ph of [6, 7, 8, 9]) {
      for (const t of [0, 20, 40]) {
        for (const s of [0, 35]) {
          expect(waterAmmonia(waterLimit(5e-5, ph, t, s), ph, t, s) / 5e-5).toBeCloseTo(1, 13);
        }
      }
    }
  });
});
