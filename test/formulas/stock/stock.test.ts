import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DAY, MONTH } from '../../../src/formulas/numeric/time';
import { stockFeed, stockGrow, stockGrowTime, stockSample } from '../../../src/formulas/stock/stock';
import { stockSchedule } from '../../../src/formulas/stock/stock-schedule';
import { wholeRefusal } from '../whole-refusal';

const season = {
  count: 1000,
  fishMass: 0.01,
  target: 0.35,
  temperature: 11,
  coefficient: 0.222,
  conversion: 1.1,
  loss: 0,
  step: 7 * DAY,
};

/** Feed of a whole season, kg, as its rows give it. */
function seasonFeed(rows: ReturnType<typeof stockSchedule>): number {
  return rows.reduce((sum, row, place) => sum + row.feedADay * ((rows[place + 1]?.day ?? row.day) - row.day), 0);
}

describe('growth', () => {
  it('takes 10 g to 350 g in 200 days at 11 °C with 0.222 (Aquasearch, read)', () => {
    expect(stockGrow(0.01, 200 * DAY, 11, 0.222)).toBeCloseTo(0.35, 2);
  });

  it('is linear in the cube root: 1 g to 8 g in 100 days at 10 °C with 0.1 (Iwama and Tautz 1981, equation)', () => {
    expect(stockGrow(0.001, 100 * DAY, 10, 0.1)).toBeCloseTo(0.008, 12);
  });

  it('takes the time that its inverse says', () => {
    const mass = fc.double({ min: 1e-3, max: 5, noNaN: true });
    fc.assert(
      fc.property(mass, mass, fc.double({ min: 1, max: 30, noNaN: true }), (from, gain, temperature) => {
        const days = stockGrowTime(from, from + gain, temperature, 0.17);
        expect(stockGrow(from, days, temperature, 0.17) / (from + gain)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('cannot take the x 1000 form or the plain form, and says which is meant', () => {
    expect(() => stockGrow(0.01, DAY, 11, 1.74)).toThrow(/per cent form.*divide it by 10/);
    expect(() => stockGrow(0.01, DAY, 11, 0.00174)).toThrow(/multiply it by 100/);
  });

  it('makes no fish larger than any on record, and none in water that no species grows in', () => {
    expect(() => stockGrow(0.1, 3650 * DAY, 30, 0.4)).toThrow(/on record/);
    expect(() => stockGrow(0.1, 600 * DAY, 28, 0.1, 'tilapia')).toThrow(/tilapia on record/);
    expect(stockGrow(0.1, 600 * DAY, 28, 0.1)).toBeGreaterThan(4.3);
    expect(() => stockGrow(70, DAY, 20, 0.1)).toThrow(/fishMass/);
    expect(() => stockGrow(0.1, DAY, 35, 0.1)).toThrow(/temperature/);
    expect(() => stockGrow(0.1, DAY, 22, 0.1, 'rainbow trout')).toThrow(/temperature/);
    expect(() => stockGrow(0.1, DAY, 12, 0.1, 'tilapia')).toThrow(/temperature/);
    expect(() => stockSchedule({ ...season, target: 61 })).toThrow(/on record/);
    expect(() => stockSchedule({ ...season, temperature: 35 })).toThrow(/temperature/);
  });
});

describe('a season', () => {
  it('stops on the day that the target is reached', () => {
    const rows = stockSchedule(season);
    const last = rows[rows.length - 1]!;
    expect(last.massOfOne).toBe(0.35);
    expect(last.day / DAY).toBeCloseTo(200, 0);
    expect(last.feedADay).toBe(0);
    expect(rows[0]).toMatchObject({ day: 0, massOfOne: 0.01, count: 1000, biomass: 10 });
  });

  it('conserves feed: without losses it adds up to conversion times the biomass gained', () => {
    expect(seasonFeed(stockSchedule(season))).toBeCloseTo(1.1 * 1000 * 0.34, 8);
    expect(seasonFeed(stockSchedule({ ...season, step: 3.3 * DAY }))).toBeCloseTo(374, 8);
  });

  it('conserves fish: none lost without a loss, and the share a month with one', () => {
    expect(stockSchedule(season).every((row) => row.count === 1000)).toBe(true);
    const lossy = stockSchedule({ ...season, loss: 0.1, step: MONTH });
    expect(lossy[1]!.count).toBeCloseTo(900, 9);
    expect(lossy[2]!.count).toBeCloseTo(810, 9);
    for (const row of lossy) expect(row.biomass).toBeCloseTo(row.count * row.massOfOne, 9);
  });

  it('grows and ages down every row whatever the step', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (step, loss) => {
          const rows = stockSchedule({ ...season, step: step * DAY, loss });
          for (let row = 1; row < rows.length; row++) {
            expect(rows[row]!.day).toBeGreaterThan(rows[row - 1]!.day);
            expect(rows[row]!.massOfOne).toBeGreaterThan(rows[row - 1]!.massOfOne);
            expect(rows[row]!.count).toBeLessThanOrEqual(rows[row - 1]!.count);
          }
        },
      ),
      { numRuns: 30 },
    );
  });

  it('is one row when the fish are there already', () => {
    expect(stockSchedule({ ...season, target: 0.01 })).toEqual([
      { day: 0, massOfOne: 0.01, count: 1000, biomass: 10, feedADay: 0 },
    ]);
  });

  it('cannot shrink fish, grow them in ice, or fill more than 10,000 rows', () => {
    expect(() => stockSchedule({ ...season, target: 0.005 })).toThrow(wholeRefusal);
    expect(() => stockSchedule({ ...season, temperature: 0 })).toThrow(/never reach/);
    expect(() => stockSchedule({ ...season, step: 60 })).toThrow(/10,000/);
    expect(stockSchedule({ ...season, step: 0.03 * DAY }).length).toBeLessThanOrEqual(10_000);
  });
});

describe('a sample', () => {
  it('has the certified mean and deviation of NIST data set NumAcc1 (from memory)', () => {
    const sample = stockSample([10000001, 10000003, 10000002].map((gross) => ({ gross, tare: 0, count: 1 })));
    expect(sample.meanMass).toBe(10000002);
    expect(sample.standardError).toBeCloseTo(1 / Math.sqrt(3), 12);
  });

  it('weighs dips by the fish in them', () => {
    const sample = stockSample([
      { gross: 5.3, tare: 4.3, count: 10 },
      { gross: 8.4, tare: 4.4, count: 40 },
    ]);
    expect(sample.fishCounted).toBe(50);
    expect(sample.meanMass).toBeCloseTo(0.1, 12);
    expect(sample.standardError).toBeCloseTo(0, 9);
  });

  it('knows no standard error of a single dip', () => {
    expect(stockSample([{ gross: 2, tare: 1, count: 5 }])).toEqual({
      fishCounted: 5,
      meanMass: 0.2,
      standardError: undefined,
    });
  });

  it('cannot weigh less than nothing', () => {
    expect(() => stockSample([{ gross: 1, tare: 2, count: 5 }])).toThrow(/weighing 1/);
    expect(() => stockSample([])).toThrow(wholeRefusal);
  });
});

describe('feed of a group', () => {
  it('is 192.5 g a day for 100 fish of 35 g at 5.5 %', () => {
    expect(stockFeed(100, 0.035, 0.055) * DAY).toBeCloseTo(0.1925, 12);
  });
});
