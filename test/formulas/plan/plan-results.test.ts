import { describe, expect, it } from 'vitest';
import { scenarioFeed } from '../../../src/formulas/balance/farm-model';
import { planFarm } from '../../../src/formulas/plan/plan-farm';
import { planResults } from '../../../src/formulas/plan/plan-results';
import { durationOf, figure, type Scenario } from '../../../src/formulas/plan/plan-scenario';
import { settleCapture } from '../../../src/formulas/settle/settle-capture';
import { waterOxygen } from '../../../src/formulas/water/water-oxygen';
import { refusalOf } from '../refusal-of';
import { DAY, factors, farm, grams, smallFarm } from './plan-farm';

const results = () => planResults(farm, factors);

describe('a scenario worked by hand', () => {
  it('feeds 25 kg of fish 500 g a day', () => {
    expect(results().biomass).toBeCloseTo(25, 12);
    expect(results().stocking).toBeCloseTo(12.5, 12);
    expect(results().feed * DAY).toBeCloseTo(0.5, 12);
  });

  it('makes 125 g of solids, 20 g of ammonia nitrogen and takes 625 g of oxygen a day', () => {
    expect(results().solids * DAY).toBeCloseTo(0.125, 12);
    expect(results().ammonia * DAY).toBeCloseTo(0.02, 12);
    expect(results().oxygen * DAY).toBeCloseTo(0.625, 12);
    expect(results().carbonDioxide * DAY).toBeCloseTo(0.625 * (44.009 / 31.998), 9);
  });

  it('needs 40 m3 a day for ammonia, 20 g at 1 g/m3 with half removed in a pass, less what slurry water carries', () => {
    const slurryWater = (52.6315789473684 / 0.02) * 0.98 * 1e-6;
    expect(results().flowNeeded as number).toBeCloseTo((20 - slurryWater) / 0.5 / DAY, 12);
    expect(results().flowSetBy).toBe('ammonia');
  });

  it('turns 2 m3 over in 50 minutes at 40 L/min', () => {
    expect(results().turnover).toBeCloseTo(50 * 60, 9);
  });

  // Half of 125 g settles. Each pass drums take 0.8 of that, pads half of the rest, beds half again: 0.8, 0.1 and
  // 0.05 of
  // 0.95. Of the other half pads take 0.5 and beds 0.25 of 0.75.
  it('catches at steady state far more than 40 % in one pass', () => {
    expect(results().solidsCaptured * DAY).toBeCloseTo((0.0625 * 0.8) / 0.95, 12);
    expect(results().solidsToPads * DAY).toBeCloseTo(0.0625 * (0.1 / 0.95 + 0.5 / 0.75), 12);
    expect(results().solidsToBeds * DAY).toBeCloseTo(0.0625 * (0.05 / 0.95 + 0.25 / 0.75), 12);
    expect(results().solidsCaptured + results().solidsToPads + results().solidsToBeds).toBeCloseTo(
      results().solids,
      15,
    );
    expect((results().padChangeInterval as number) / DAY).toBeCloseTo(0.25 / (results().solidsToPads * DAY), 9);
    expect(results().padsNeeded).toBe(1);
    expect((results().bedCleaningInterval as number) / DAY).toBeCloseTo(6 / (results().solidsToBeds * DAY), 9);
  });

  it('holds what that leaves in the water: 57.6 m3 a day clear 0.95 and 0.75 of each half', () => {
    expect((results().solidsInTank as number) * 1e3).toBeCloseTo(62.5 / 57.6 / 0.95 + 62.5 / 57.6 / 0.75, 9);
    const cleared = 57.6 * 0.5 + (52.6315789473684 / 0.02) * 0.98 * 1e-6;
    expect((results().ammoniaInTank as number) * 1e3).toBeCloseTo(20 / cleared, 9);
  });

  it('needs 40 m2 of media, which is 133 L at 300 m2/m3', () => {
    expect(results().mediaSurface).toBeCloseTo(40, 9);
    expect(results().mediaVolume).toBeCloseTo(40 / 300, 9);
  });

  it('feeds 10 m2 of leafy beds with 250 plants', () => {
    expect(results().bedArea).toBeCloseTo(10, 9);
    expect(results().plants).toBe(250);
  });

  it('gives 2.63 L of slurry a day and 576 g of nitrogen a year', () => {
    const captured = 0.05 / 0.95;
    expect(results().slurryPerDay * 1000).toBeCloseTo(captured / 0.02, 9);
    expect(results().nitrogenPerYear).toBeCloseTo(captured * 365 * 0.03, 9);
    expect(results().harvestValuePerYear).toBeCloseTo(captured * 365 * 0.03 * 2, 9);
  });

  it('has 2 m3 x 3 g/m3 over 1.5 x 625 g a day before fish are in danger', () => {
    expect(results().oxygenTime).toBeCloseTo((6 / (1.5 * 625)) * DAY, 6);
  });

  it('costs 14.60 of power and 30.42 of feed a month', () => {
    expect(results().powerCostPerMonth).toBeCloseTo(14.6, 9);
    expect(results().feedCostPerMonth).toBeCloseTo((0.5 * 2 * 365) / 12, 9);
  });
});

describe('whatever the scenario', () => {
  const settlers: readonly Scenario['settler'][] = ['swirl', 'radial', 'mixed', 'ideal', 0, 0.6, 1];

  it('nitrogen harvested is less than the nitrogen fed', () => {
    for (const settler of settlers) {
      const { nitrogenPerYear } = planResults({ ...farm, settler }, factors);
      expect(nitrogenPerYear).toBeLessThan(0.5 * 365 * farm.protein * 0.16);
    }
  });

  it('twice the fish make twice of everything that is a rate, and half the time', () => {
    const twice = planResults({ ...farm, fishCount: 200 }, factors);
    for (const key of [
      'feed',
      'solids',
      'ammonia',
      'oxygen',
      'solidsInTank',
      'mediaSurface',
      'slurryPerDay',
    ] as const) {
      expect(twice[key] as number).toBeCloseTo(2 * (results()[key] as number), 12);
    }
    expect(twice.oxygenTime).toBeCloseTo((results().oxygenTime as number) / 2, 6);
  });
});

describe('a settler that is computed', () => {
  const limit = { median: 0.017, spread: 2.5, mixing: 1, settleable: 0.5, inLine: 1 } as const;
  /** What the drums take of what reaches them in one pass, by the level before and after. */
  const firstPass = (scenario: Scenario) => {
    const { settler, balance } = planFarm(scenario, factors);
    const { shares, taken } = settler(balance.flow);
    return shares.reduce((sum, share, i) => sum + share * taken[i]!, 0);
  };

  it('runs at the overflow rate of its drums and pump', () => {
    const share = settleCapture({ ...limit, overflow: 0.04 / 60, mixing: 'ideal' });
    expect(firstPass({ ...farm, settler: 'ideal' })).toBeCloseTo(share, 7);
    expect(share).toBeGreaterThan(0.49);
  });

  it('runs at the flow needed while there is no pump, and at the overflow limit while there are no drums', () => {
    const unpumped = { ...farm, settler: 'mixed', pumpFlow: undefined } as const;
    const { flowNeeded } = planResults(unpumped, factors);
    expect(firstPass(unpumped)).toBeCloseTo(settleCapture({ ...limit, overflow: flowNeeded as number }), 7);
    expect(firstPass({ ...unpumped, drums: undefined })).toBeCloseTo(settleCapture({ ...limit, overflow: 0.003 }), 7);
  });
});

describe('a farm whose gravel beds catch the solids and nitrify', () => {
  const small = () => planResults(smallFarm, factors);

  it('says none of the stages that are absent, and harvests nothing', () => {
    expect([small().drumsNeeded, small().overflowRate, small().padsNeeded, small().padChangeInterval]).toEqual(
      Array(4).fill('none'),
    );
    expect([small().solidsCaptured, small().slurryPerDay, small().gardenArea]).toEqual([0, 0, 0]);
  });

  it('knows how long until the beds need cleaning: 6 kg held at 125 g a day', () => {
    expect((small().bedCleaningInterval as number) / DAY).toBeCloseTo(48, 9);
  });

  it('needs the flow for solids of which gravel removes half in a pass', () => {
    const byeAmmonia = planResults({ ...smallFarm, ammoniaLimit: 1 }, factors);
    expect(byeAmmonia.flowSetBy).toBe('solids');
    expect((byeAmmonia.flowNeeded as number) * DAY).toBeCloseTo(0.125 / 0.02 / 0.5, 9);
  });
});

describe('nitrate and the alkali that its making uses', () => {
  // 20 g of ammonia a day, of which flow takes 28.8 and slurry carries away 0.00258 of 28.80258 parts.
  const slurry = (52.6315789473684 / 0.02) * 0.98 * 1e-6;
  const nitrified = (20 * 28.8) / (28.8 + slurry);
  /** 5 g a day for 10 m2 of plants, and a twentieth of the 32 g of nitrogen fed. */
  const taken = { plantUptake: 0.5 * grams, passiveDenitrification: 0.05 } as const;

  it('rises by what is nitrified and not taken, in 2 m3, whatever the source brings', () => {
    const rise = (change: Partial<Scenario>) =>
      (planResults({ ...farm, ...change }, factors).nitrateRisePerDay as number) * 1000;
    expect(rise({})).toBeCloseTo(nitrified / 2, 9);
    expect(rise(taken)).toBeCloseTo((nitrified - 5 - 1.6) / 2, 9);
    // Nothing carries ammonia or nitrate away.
    expect(rise({ drums: 'none' })).toBeCloseTo(10, 9);
    expect(rise({ ...taken, sourceNitrate: 0.005 })).toBeCloseTo((nitrified - 5 - 1.6) / 2, 9);
    // Solids let out leave a little less slurry.
    expect(rise({ waterOut: 0.1 })).toBeCloseTo((20 * 28.8) / (28.9 + slurry) / 2, 5);
  });

  it('has nine tenths of its rise after ln 10 times the days that the water out takes to replace 2 m3', () => {
    const days = (planResults({ ...farm, waterOut: 0.1 }, factors).nitrateRiseTime as number) / DAY;
    expect(days).toBeCloseTo((Math.LN10 * 2) / (0.1 + slurry), 2);
  });

  it('needs half the alkali again back for what is denitrified or eaten, and never less than none', () => {
    const alkali = (change: Partial<Scenario>) => planResults({ ...farm, ...change }, factors).alkaliPerDay;
    expect(alkali(taken) / alkali({})).toBeCloseTo((nitrified - 3.3) / nitrified, 9);
    expect(alkali({ plantUptake: 100 * grams, sourceNitrate: 50, waterOut: 1 })).toBe(0);
  });
});

describe('results at their ends', () => {
  it('count the pads that would be needed where none are given, as if they were there', () => {
    const holding = { ...farm, padHolding: 0.02 };
    // 48.24 g a day on pads of 10 g.
    expect(planResults(holding, factors).padsNeeded).toBe(5);
    expect(planResults({ ...holding, pads: undefined }, factors).padsNeeded).toBe(5);
    expect(planResults({ ...holding, pads: 'none' }, factors).padsNeeded).toBe('none');
  });

  it('need one drum of a square meter for 40 L a minute, and no beds where there are none', () => {
    expect(results().drumsNeeded).toBe(1);
    const { bedArea, plants } = planResults({ ...farm, bedArea: 'none' }, factors);
    expect([bedArea, plants]).toEqual(['none', 'none']);
  });

  it('fertilize a garden until its nitrogen or its phosphate is enough, whichever comes first', () => {
    const year = (0.05 / 0.95) * 365;
    const byNitrogen = (year * 0.03 * 0.5) / 0.01;
    const byPhosphate = (year * 0.02 * 141.944) / 61.948 / 0.005;
    expect(results().gardenArea).toBeCloseTo(Math.max(byNitrogen, byPhosphate), 2);
    const poor = planResults({ ...farm, phosphorusShare: 0.002 }, factors).gardenArea;
    expect(poor).toBeCloseTo(byNitrogen, 2);
  });

  it('change pads the less often the more there are', () => {
    const { padChangeInterval: two } = planResults({ ...farm, pads: 2 }, factors);
    const { padChangeInterval: four } = planResults({ ...farm, pads: 4 }, factors);
    expect((four as number) / (two as number)).toBeCloseTo(2, 12);
  });

  it('take a nutrient without a price for worthless, and no price at all for not given', () => {
    const value = (prices: Partial<Scenario>) =>
      planResults({ ...farm, nitrogenPrice: undefined, ...prices }, factors).harvestValuePerYear;
    const year = (0.05 / 0.95) * 365;
    // P2O5 and K2O by their molar masses.
    const phosphate = (year * 0.02 * 141.944) / 61.948;
    const potash = (year * 0.001 * 94.196) / 78.196;
    expect(value({})).toBe('not given');
    expect(value({ phosphatePrice: 3 })).toBeCloseTo(3 * phosphate, 4);
    expect(value({ potashPrice: 4 })).toBeCloseTo(4 * potash, 4);
    expect(value({ nitrogenPrice: 2, phosphatePrice: 3, potashPrice: 4 })).toBeCloseTo(
      2 * year * 0.03 + 3 * phosphate + 4 * potash,
      4,
    );
  });

  it('refuse the oxygen typed before the water that cannot hold it', () => {
    const floor = farm.oxygenFloor;
    const refused = (change: Partial<Scenario>) =>
      refusalOf(() => planResults({ ...farm, ...change }, factors)).argument;
    expect(refused({ oxygenAtPowerFailure: floor })).not.toBe('hottestWater');
    expect(refused({ oxygenAtPowerFailure: 0.01, oxygenFloor: waterOxygen(farm.hottestWater, 0, 0) })).toBe(
      'hottestWater',
    );
  });
});

describe('what is not given', () => {
  it('leaves results that depend on it not given, and gives the others', () => {
    const bare = planResults({ ...farm, tankVolume: undefined, power: undefined, padArea: undefined }, factors);
    expect([bare.stocking, bare.turnover, bare.oxygenTime, bare.powerCostPerMonth, bare.padsNeeded]).toEqual(
      Array(5).fill('not given'),
    );
    expect(bare.feed).toBe(results().feed);
  });

  it('is feed alone: no biomass, but everything that feed makes', () => {
    const fed = { ...farm, fishCount: undefined, fishMass: undefined, feedingRate: undefined, feed: 500 * grams };
    expect(scenarioFeed(fed)).toBe(500 * grams);
    expect(planResults(fed, factors).biomass).toBe('not given');
    expect(planResults(fed, factors).ammonia).toBeCloseTo(results().ammonia, 15);
  });

  it('cannot be both feed and fish', () => {
    expect(() => scenarioFeed({ ...farm, fishCount: undefined })).toThrow('feed');
  });

  it('differs from an absent stage and from an endless time', () => {
    expect(figure([1, undefined], (a) => a)).toBe('not given');
    expect(figure([undefined, 'none'], (a) => a)).toBe('none');
    expect(durationOf([0], (a) => 1 / a)).toBe('never');
    expect(planResults({ ...farm, settler: 1 }, factors).padChangeInterval).toBe('never');
  });
});
