/** Both sides of each bound on fish, feed and growth, and a figure for every mark of what is refused. */
import { describe, expect, it } from 'vitest';
import { DAY } from '../../../src/formulas/numeric/time';
import {
  refuseGiant,
  refuseOtherForm,
  refuseTemperature,
  stockGrow,
  stockSample,
} from '../../../src/formulas/stock/stock';
import { stockFeedRate } from '../../../src/formulas/stock/stock-feed-rate';
import { stockSchedule } from '../../../src/formulas/stock/stock-schedule';
import { stockSpecies } from '../../../src/formulas/stock/stock-species';
import { fishKinds, fishLimits, growthRange } from '../../../src/formulas/water/water-species';
import { wholeRefusal } from '../whole-refusal';

const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const season = {
  ...{ count: 1000, fishMass: 0.01, target: 0.35, temperature: 11, coefficient: 0.222 },
  ...{ conversion: 1.1, loss: 0, step: 7 * DAY },
};

describe('the growth coefficient', () => {
  it.each([0, 0.01, 0.5])('may be %s', (coefficient) => expect(() => refuseOtherForm(coefficient)).not.toThrow());
  it.each([0.0099, 0.501])('may not be %s', (coefficient) =>
    expect(() => refuseOtherForm(coefficient)).toThrow(wholeRefusal),
  );
});

describe('temperature and size of fish that grow', () => {
  it.each([undefined, ...fishKinds])('%s: within its limits and not beyond', (species) => {
    const { coolest, warmest, largest } = growthRange(species);
    for (const inside of [coolest, warmest]) expect(() => refuseTemperature(inside, species)).not.toThrow();
    for (const beyond of [coolest - 0.01, warmest + 0.01])
      expect(() => refuseTemperature(beyond, species)).toThrow(wholeRefusal);
    expect(() => refuseGiant(largest, 'fishMass', species)).not.toThrow();
    expect(() => refuseGiant(largest * 1.001, 'fishMass', species)).toThrow(wholeRefusal);
  });

  it('are named by what was not given', () => {
    expect(() => refuseTemperature(99)).toThrow(/growth of farmed fish/);
    expect(() => refuseTemperature(99, 'tilapia')).toThrow(/growth of tilapia/);
    expect(() => stockGrow(0.1, DAY, 99, 0.1)).toThrow(wholeRefusal);
  });
});

describe('a weighing', () => {
  it('whose tare equals its gross mass holds no fish', () => {
    expect(() => stockSample([{ gross: 2, tare: 2, count: 3 }])).toThrow(/weighing 1 has a tare/);
    expect(stockSample([{ gross: 2, tare: 1.4, count: 3 }]).meanMass).toBeCloseTo(0.2, 12);
  });
});

describe('charts of feeding rates', () => {
  it('for trout end at 36 and 68 °F, both included', () => {
    expect(stockFeedRate('rainbow trout', 1, celsius(36))).toBeCloseTo(0.004, 12);
    expect(stockFeedRate('rainbow trout', 1, celsius(68))).toBeCloseTo(0.017, 12);
    for (const beyond of [35.99, 68.01]) {
      expect(() => stockFeedRate('rainbow trout', 1, celsius(beyond))).toThrow(wholeRefusal);
    }
  });

  it('say in °C where the trout chart ends: 36 °F is 2.2 °C, 68 °F is 20 °C', () => {
    try {
      stockFeedRate('rainbow trout', 1, 30);
      expect.unreachable();
    } catch (error) {
      const { figures } = error as { figures: Record<string, number> };
      expect(figures.coldest).toBeCloseTo(20 / 9, 9);
      expect(figures.warmest).toBeCloseTo(20, 9);
    }
  });

  it('for tilapia end at 82 and 86 °F, and at 0.02 and 450 g, all included', () => {
    for (const inside of [celsius(82), celsius(86)])
      expect(stockFeedRate('tilapia', 0.45, inside)).toBeCloseTo(0.01, 12);
    expect(stockFeedRate('tilapia', 0.00002, 28)).toBeCloseTo(0.2, 12);
    for (const beyond of [celsius(81.99), celsius(86.01)]) {
      expect(() => stockFeedRate('tilapia', 0.45, beyond)).toThrow(wholeRefusal);
    }
    for (const mass of [0.000019, 0.4501]) expect(() => stockFeedRate('tilapia', mass, 28)).toThrow(wholeRefusal);
  });

  it('for tilapia go from stage to stage: each begins with the rate that the one before ends with', () => {
    const stages = [
      [0.001, 0.15],
      [0.005, 0.1],
      [0.02, 0.07],
      [0.05, 0.04],
      [0.1, 0.035],
      [0.25, 0.015],
    ] as const;
    for (const [mass, rate] of stages) expect(stockFeedRate('tilapia', mass, 28)).toBeCloseTo(rate, 12);
  });
});

describe('a season', () => {
  it('may be over at once: the fish have the target mass now', () => {
    expect(stockSchedule({ ...season, target: 0.01, coefficient: 0 })).toHaveLength(1);
    expect(stockSchedule({ ...season, target: 0.01, temperature: 0 })).toHaveLength(1);
    expect(stockSchedule({ ...season, target: 0.01, temperature: -2 })).toHaveLength(1);
  });

  it.each([
    [{ target: 0.0099 }, 'target'],
    [{ temperature: 0 }, 'temperature'],
    [{ coefficient: 0 }, 'coefficient'],
    [{ step: DAY / 60 }, 'step'],
  ])('%o is refused by its %s', (change, argument) => {
    expect(() => stockSchedule({ ...season, ...change })).toThrow(wholeRefusal);
    expect(() => stockSchedule({ ...season, ...change })).toThrow(new RegExp(`^${argument}`));
  });

  it('has up to 10,000 rows: the step that the refusal names is about the least one', () => {
    try {
      stockSchedule({ ...season, step: 60 });
      expect.unreachable();
    } catch (error) {
      const { value } = (error as { figures: Record<string, { value: number }> }).figures.longer!;
      expect(stockSchedule({ ...season, step: value * 1.0001 })).toHaveLength(10_000);
      expect(() => stockSchedule({ ...season, step: value * 0.9999 })).toThrow(/over 10,000 rows/);
    }
  });
});

describe('the table of species', () => {
  it('has one row for each, or the one that is named, with its limits', () => {
    expect(stockSpecies(undefined).map(({ species }) => species)).toEqual(fishKinds);
    const [row] = stockSpecies('tilapia');
    const { survives, growsBest, ph } = fishLimits('tilapia');
    expect(stockSpecies('tilapia')).toHaveLength(1);
    expect([row!.survivesFrom, row!.survivesTo]).toEqual(survives);
    expect([row!.growsBestFrom, row!.growsBestTo]).toEqual(growsBest);
    expect([row!.phFrom, row!.phTo]).toEqual(ph);
    expect(row!.source).toMatch(/^temperatures: .+; carbon dioxide: .+; the rest: .+/);
  });

  it('has no limits of survival for groups that have none', () => {
    for (const kind of fishKinds.filter((one) => fishLimits(one).survives === undefined)) {
      expect(stockSpecies(kind)[0]).toMatchObject({ survivesFrom: undefined, survivesTo: undefined });
    }
  });
});
