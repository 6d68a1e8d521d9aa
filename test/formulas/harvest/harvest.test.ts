import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { harvestDose, harvestGarden } from '../../../src/formulas/harvest/garden';
import { harvestLog, harvestValue, harvestWait } from '../../../src/formulas/harvest/harvest';
import { harvestGrade, harvestNutrients } from '../../../src/formulas/harvest/nutrients';
import { harvestSlurry, harvestSolids, slurryDry, slurryWater } from '../../../src/formulas/harvest/slurry';
import { wholeRefusal } from '../whole-refusal';

/** Spreadsheet date of a calendar day. */
const serial = (year: number, month: number, day: number): number =>
  (Date.UTC(year, month - 1, day) - Date.UTC(1899, 11, 30)) / 86_400_000;
const POUND = 0.45359237;
const SQUARE_FOOT = 0.09290304;
const share = fc.double({ min: 0.001, max: 0.2, noNaN: true });

describe('nutrients', () => {
  it('turn trout manure of 2.83-2.54-0.10 into 5.820 % P2O5 and 0.1205 % K2O (Naylor et al. 1999, atomic masses)', () => {
    const { nitrogen, phosphate, potash } = harvestNutrients(100, 0.0283, 0.0254, 0.001, 'element');
    expect(nitrogen).toBeCloseTo(2.83, 10);
    expect(phosphate).toBeCloseTo(5.82, 3);
    expect(potash).toBeCloseTo(0.1205, 4);
  });

  it('leave shares of the oxide alone', () => {
    expect(harvestNutrients(100, 0.05, 0.03, 0.01, 'oxide')).toEqual({ nitrogen: 5, phosphate: 3, potash: 1 });
  });

  it('cannot be more than all of the solids', () => {
    expect(() => harvestNutrients(1, 0.5, 0.3, 0, 'element')).toThrow(wholeRefusal);
    expect(() => harvestGrade(0.5, 0.3, 0.21, 'oxide', 0)).toThrow(wholeRefusal);
  });

  it('can be all of the solids, and a rounding more', () => {
    expect(harvestNutrients(10, 0.5, 0.3, 0.2, 'oxide')).toEqual({ nitrogen: 5, phosphate: 3, potash: 2 });
    expect(harvestNutrients(1, 1 + 1e-9, 0, 0, 'oxide').nitrogen).toBe(1 + 1e-9);
    expect(() => harvestNutrients(1, 1 + 3e-9, 0, 0, 'oxide')).toThrow(wholeRefusal);
  });

  it('that are too many are summed up in the message: 0.5 N, 0.3 P2O5 and 0.25 K2O are 1.05 of the solids', () => {
    expect(() => harvestNutrients(1, 0.5, 0.3, 0.25, 'oxide')).toThrow(
      expect.objectContaining({
        argument: 'nitrogen',
        advice: 'nitrogen, P2O5 and K2O together come to {total} of the solids; give shares of dry solids',
        figures: { total: { value: expect.closeTo(1.05, 12), like: 'nitrogen' } },
      }),
    );
  });
});

describe('the grade', () => {
  it('of pure salts is what they are sold as: 13-0-46, 0-52-34, 12-61-0, 46-0-0 (trade grades, from memory)', () => {
    expect(harvestGrade(0.13854, 0, 0.38672, 'element', 0)).toBe('13-0-46');
    expect(harvestGrade(0, 0.2276, 0.28731, 'element', 0)).toBe('0-52-34');
    expect(harvestGrade(0.12177, 0.26927, 0, 'element', 0)).toBe('12-61-0');
    expect(harvestGrade(0.46646, 0, 0, 'element', 0)).toBe('46-0-0');
  });

  it('is cut and never rounded up, but forgives binary fractions', () => {
    expect(harvestGrade(0.0399, 0.0299, 0.0199, 'oxide', 0)).toBe('3-2-1');
    expect(harvestGrade(0.29, 0, 0, 'oxide', 0)).toBe('29-0-0');
    expect(harvestGrade(0.06, 0.04, 0.02, 'oxide', 0.5)).toBe('3-2-1');
    expect(harvestGrade(0.07, 0, 0, 'oxide', 0)).toBe('7-0-0');
  });
});

describe('slurry', () => {
  it('of 1 % holds 8.34 lb in 100 gal (waterworks rule)', () => {
    expect(slurryDry(100 * 0.003785411784, 0.01) / POUND).toBeCloseTo(8.34, 1);
  });

  it('gives back the solids drawn in it', () => {
    expect(slurryDry(harvestSlurry(3.3, 0.021), 0.021)).toBeCloseTo(3.3, 12);
  });

  it('of 2 % that holds 1 kg of solids is 50 L, 49 L of it water', () => {
    expect(harvestSlurry(1, 0.02)).toBeCloseTo(0.05, 15);
    expect(slurryWater(1, 0.02)).toBeCloseTo(0.049, 15);
  });

  it('is caught from the solids of the feed: half of 0.25 kg per kg of 4 kg is 0.5 kg', () => {
    expect(harvestSolids(4, 0.5, 0.25)).toBeCloseTo(0.5, 15);
  });
});

describe('the garden', () => {
  const need = {
    nitrogenNeed: (2 * POUND) / (1000 * SQUARE_FOOT),
    nitrogen: 0.0283,
    available: 0.5,
    phosphorus: 0.0254,
    phosphateNeed: (1 * POUND) / (1000 * SQUARE_FOOT),
    basis: 'element',
  } as const;

  it('of 14.28 lb of 21-0-0 at 3 lb nitrogen is 1000 square feet (garden column, read)', () => {
    const garden = harvestGarden(14.28 * POUND, {
      ...need,
      nitrogenNeed: need.nitrogenNeed * 1.5,
      nitrogen: 0.21,
      available: 1,
      phosphorus: 0,
    });
    expect(garden.area / SQUARE_FOOT).toBeCloseTo(1000, -1);
    expect(garden.governs).toBe('nitrogen');
  });

  it('exceeds neither need on the larger area, and meets the one that governs', () => {
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.1, max: 1, noNaN: true }), (nitrogen, phosphorus, available) => {
        const garden = harvestGarden(10, { ...need, nitrogen, phosphorus, available, basis: 'oxide' });
        const nitrogenGiven = (10 * nitrogen * available) / garden.area / need.nitrogenNeed;
        const phosphateGiven = (10 * phosphorus) / garden.area / need.phosphateNeed;
        expect(Math.max(nitrogenGiven, phosphateGiven)).toBeCloseTo(1, 10);
        expect(phosphateGiven > nitrogenGiven).toBe(garden.governs === 'phosphate');
      }),
    );
  });

  it('gives back the slurry that it was calculated from as its dose', () => {
    fc.assert(
      fc.property(share, share, (nitrogen, phosphorus) => {
        const all = { ...need, nitrogen, phosphorus, basis: 'oxide' } as const;
        expect(harvestDose(harvestGarden(7, all).area, 0.02, all) / harvestSlurry(7, 0.02)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('refuses a soil that needs nothing, and a dose of solids without nutrients', () => {
    for (const argument of ['nitrogenNeed', 'phosphateNeed'] as const) {
      expect(() => harvestGarden(1, { ...need, [argument]: 0 })).toThrow(
        expect.objectContaining({ argument, advice: 'any amount exceeds a need of 0; give more than 0' }),
      );
      expect(harvestGarden(1, { ...need, [argument]: 1e-9 }).area).toBeGreaterThan(0);
    }
    for (const without of [{ nitrogen: 0 }, { available: 0 }]) {
      expect(() => harvestDose(1, 0.02, { ...need, ...without, phosphorus: 0 })).toThrow(
        expect.objectContaining({ argument: 'nitrogen', advice: expect.stringContaining('feed no garden') }),
      );
    }
  });

  it('is named after nitrogen where both needs give the same area', () => {
    const equal = { ...need, nitrogenNeed: 1, phosphateNeed: 1, nitrogen: 0.25, available: 0.5, phosphorus: 0.125 };
    const garden = harvestGarden(8, { ...equal, basis: 'oxide' });
    expect(garden).toEqual({ areaByNitrogen: 1, areaByPhosphate: 1, area: 1, governs: 'nitrogen' });
  });

  it('takes the smaller dose: 2 kg of solids by nitrogen or 4 kg by phosphate are 100 L of 2 % slurry', () => {
    const both = { ...need, nitrogenNeed: 0.01, nitrogen: 0.1, available: 0.5, basis: 'oxide' } as const;
    expect(harvestDose(10, 0.02, { ...both, phosphateNeed: 0.02, phosphorus: 0.05 })).toBeCloseTo(0.1, 12);
    expect(harvestDose(10, 0.02, { ...both, phosphateNeed: 0.005, phosphorus: 0.05 })).toBeCloseTo(0.05, 12);
  });

  it('takes its dose by the other nutrient where solids lack one, even if the garden needs none of that', () => {
    const both = { ...need, nitrogenNeed: 0.01, phosphateNeed: 0.02, basis: 'oxide' } as const;
    const byPhosphate = { ...both, nitrogen: 0, phosphorus: 0.05 };
    expect(harvestDose(10, 0.02, byPhosphate)).toBeCloseTo(0.2, 12);
    expect(harvestDose(10, 0.02, { ...byPhosphate, nitrogenNeed: 0 })).toBeCloseTo(0.2, 12);
    expect(harvestDose(10, 0.02, { ...byPhosphate, nitrogen: 0.1, available: 0, nitrogenNeed: 0 })).toBeCloseTo(0.2);
    const byNitrogen = { ...both, nitrogen: 0.1, phosphorus: 0 };
    expect(harvestDose(10, 0.02, byNitrogen)).toBeCloseTo(0.1, 12);
    expect(harvestDose(10, 0.02, { ...byNitrogen, phosphateNeed: 0 })).toBeCloseTo(0.1, 12);
  });
});

describe('waiting', () => {
  it('is 120 days where the part eaten touches soil and 90 where not (7 CFR 205.203)', () => {
    expect(harvestWait(serial(2026, 5, 1), true)).toBe(serial(2026, 8, 29));
    expect(harvestWait(serial(2026, 5, 1), false)).toBe(serial(2026, 7, 30));
    expect(harvestWait(serial(2026, 5, 1) + 0.7, false)).toBe(serial(2026, 7, 30));
  });
});

describe('value', () => {
  it('adds up nutrient by nutrient', () => {
    expect(harvestValue(10, 20, 3, 1.2, 0.9, 0.5)).toBeCloseTo(31.5, 12);
  });
});

describe('the log', () => {
  const log = [
    { date: serial(2026, 7, 5), volume: 0.02, solidsShare: 0.02 },
    { date: serial(2026, 5, 10), volume: 0.03, solidsShare: 0.02 },
    { date: serial(2026, 5, 31) + 0.4, volume: 0.01, solidsShare: 0.03 },
    { date: serial(2026, 5, 10), volume: 0.02, solidsShare: 0.01 },
  ];
  const monthRows = () => harvestLog(log, 0.03, 0.02, 0.001, 'oxide');

  it('has a row a month, the empty one too, and a total', () => {
    const rows = monthRows();
    expect(rows.map((row) => row.month)).toEqual(['2026-05', '2026-06', '2026-07', 'total']);
    expect(rows.map((row) => row.dry)).toEqual([1.1, 0, 0.4, 1.5].map((dry) => expect.closeTo(dry, 10)));
  });

  it('counts first and last day in, in the total and month by month', () => {
    const rows = monthRows();
    expect(rows[3]!.aDay * 86400 * 57).toBeCloseTo(1.5, 10);
    expect(rows[0]!.aDay * 86400 * 22).toBeCloseTo(1.1, 10);
    expect(rows[2]!.aDay * 86400 * 5).toBeCloseTo(0.4, 10);
  });

  it('conserves nutrients: months add up to the total', () => {
    const rows = monthRows();
    for (const key of ['dry', 'nitrogen', 'phosphate', 'potash'] as const) {
      expect(rows.slice(0, -1).reduce((sum, row) => sum + row[key], 0)).toBeCloseTo(rows[3]![key], 12);
    }
  });

  it('runs over a new year', () => {
    const dates = [serial(2025, 12, 31), serial(2026, 1, 1)].map((date) => ({ date, volume: 0.01, solidsShare: 0.02 }));
    expect(harvestLog(dates, 0, 0, 0, 'element').map((row) => row.month)).toEqual(['2025-12', '2026-01', 'total']);
  });

  it('cannot span a mistyped century', () => {
    const dates = [serial(2026, 5, 1), serial(2206, 5, 2)].map((date) => ({ date, volume: 0.01, solidsShare: 0.02 }));
    expect(() => harvestLog(dates, 0, 0, 0, 'element')).toThrow(/2026-05 to 2206-05/);
  });

  it('can span 20 years of 366 days, and not a day more', () => {
    const from = serial(2006, 1, 1);
    const upTo = (days: number) =>
      harvestLog(
        [from, from + days].map((date) => ({ date, volume: 0.01, solidsShare: 0.02 })),
        ...([0, 0, 0, 'element'] as const),
      );
    expect(upTo(7320)).toHaveLength(242);
    expect(() => upTo(7321)).toThrow(
      expect.objectContaining({
        argument: 'log',
        advice: 'dates from 2006-01 to 2026-01 are more than 20 years apart; look for a mistyped year',
      }),
    );
  });

  it('cannot be empty', () => {
    expect(() => harvestLog([], 0, 0, 0, 'element')).toThrow(/at least one row/);
  });
});
