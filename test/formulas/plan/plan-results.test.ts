import { describe, expect, it } from 'vitest';
import { planResults } from '../../../src/formulas/plan/plan-results';
import { figure, lasting, type Scenario } from '../../../src/formulas/plan/plan-scenario';
import { planTrain, scenarioFeed } from '../../../src/formulas/plan/plan-train';
import { settleCapture } from '../../../src/formulas/settle/settle-capture';
import { DAY, factors, farm, grams, smallFarm } from './plan-farm';

const results = planResults(farm, factors);

describe('a scenario worked by hand', () => {
  it('feeds 25 kg of fish 500 g a day', () => {
    expect(results.biomass).toBeCloseTo(25, 12);
    expect(results.stocking).toBeCloseTo(12.5, 12);
    expect(results.feed * DAY).toBeCloseTo(0.5, 12);
  });

  it('makes 125 g of solids, 20 g of ammonia nitrogen and takes 625 g of oxygen a day', () => {
    expect(results.solids * DAY).toBeCloseTo(0.125, 12);
    expect(results.ammonia * DAY).toBeCloseTo(0.02, 12);
    expect(results.oxygen * DAY).toBeCloseTo(0.625, 12);
    expect(results.carbonDioxide * DAY).toBeCloseTo(0.625 * (44.009 / 31.998), 9);
  });

  it('asks for 40 m3 a day, by ammonia: 20 g at 1 g/m3 with half taken out in a pass', () => {
    expect(results.flowNeeded * DAY).toBeCloseTo(40, 9);
    expect(results.flowSetBy).toBe('ammonia');
  });

  it('turns 2 m3 over in 50 minutes at 40 L/min', () => {
    expect(results.turnover).toBeCloseTo(50 * 60, 9);
  });

  it('catches 40 % of the solids in drums and half of the rest on pads, which last 6.67 days', () => {
    expect(results.solidsCaptured * DAY).toBeCloseTo(0.05, 12);
    expect(results.solidsPassedOn * DAY).toBeCloseTo(0.075, 12);
    expect((results.padChangeInterval as number) / DAY).toBeCloseTo(0.25 / 0.0375, 9);
    expect(results.padsNeeded).toBe(1);
  });

  it('leaves a quarter of the rest to beds of 3 m3, full after 160 days', () => {
    expect((results.bedCleaningInterval as number) / DAY).toBeCloseTo(6 / 0.0375, 9);
  });

  it('wants 40 m2 of media, which is 133 L at 300 m2/m3', () => {
    expect(results.mediaSurface).toBeCloseTo(40, 9);
    expect(results.mediaVolume).toBeCloseTo(40 / 300, 9);
  });

  it('feeds 10 m2 of leafy beds with 250 plants', () => {
    expect(results.bedArea).toBeCloseTo(10, 9);
    expect(results.plants).toBe(250);
  });

  it('gives 2.5 L of slurry a day and 547.5 g of nitrogen per year', () => {
    expect(results.slurryPerDay * 1000).toBeCloseTo(2.5, 9);
    expect(results.nitrogenPerYear).toBeCloseTo(0.05 * 365 * 0.03, 9);
    expect(results.harvestValuePerYear).toBeCloseTo(0.05 * 365 * 0.03 * 2, 9);
  });

  it('has 2 m3 x 3 g/m3 over 1.5 x 625 g a day before fish are in danger', () => {
    expect(results.oxygenTime).toBeCloseTo((6 / (1.5 * 625)) * DAY, 6);
  });

  it('costs 14.60 of power and 30.42 of feed a month', () => {
    expect(results.powerCostPerMonth).toBeCloseTo(14.6, 9);
    expect(results.feedCostPerMonth).toBeCloseTo((0.5 * 2 * 365) / 12, 9);
  });
});

describe('whatever the scenario', () => {
  const settlers: readonly Scenario['settler'][] = ['swirl', 'radial', 'mixed', 'ideal', 0, 0.6, 1];
  const others: readonly Partial<Scenario>[] = [{}, { drums: 'none' }, { pads: 'none' }, { pumpFlow: undefined }];

  it('solids in are solids captured and passed on, and what is passed on goes to pads and beds', () => {
    for (const settler of settlers) {
      for (const other of others) {
        const train = planTrain({ ...farm, settler, ...other }, factors);
        expect(train.captured + train.passedOn).toBeCloseTo(train.solids, 15);
        const onPads = other.pads === 'none' ? 0 : train.onPads;
        expect(onPads + train.onBeds).toBeCloseTo(train.passedOn, 15);
      }
    }
  });

  it('nitrogen harvested is less than the nitrogen fed', () => {
    for (const settler of settlers) {
      const { nitrogenPerYear } = planResults({ ...farm, settler }, factors);
      expect(nitrogenPerYear).toBeLessThan(0.5 * 365 * farm.protein * 0.16);
    }
  });

  it('twice the fish make twice of everything that is a rate, and half the time', () => {
    const twice = planResults({ ...farm, fishCount: 200 }, factors);
    for (const key of ['feed', 'solids', 'ammonia', 'oxygen', 'flowNeeded', 'mediaSurface', 'slurryPerDay'] as const) {
      expect(twice[key] as number).toBeCloseTo(2 * (results[key] as number), 12);
    }
    expect(twice.oxygenTime).toBeCloseTo((results.oxygenTime as number) / 2, 6);
  });
});

describe('a settler that is computed', () => {
  it('runs at the overflow rate of its drums and pump', () => {
    const train = planTrain({ ...farm, settler: 'ideal' }, factors);
    const overflow = 0.04 / 60;
    const share = settleCapture({ overflow, median: 0.017, spread: 2.5, mixing: 'ideal', settleable: 0.5, inLine: 1 });
    expect(train.captured / train.solids).toBeCloseTo(share, 12);
    expect(share).toBeGreaterThan(0.49);
  });

  it('runs at the overflow limit while there is no pump', () => {
    const { captured, solids } = planTrain({ ...farm, settler: 'mixed', pumpFlow: undefined }, factors);
    const limit = { median: 0.017, spread: 2.5, mixing: 1, settleable: 0.5, inLine: 1 } as const;
    expect(captured / solids).toBeCloseTo(settleCapture({ overflow: 0.003, ...limit }), 12);
  });
});

describe('a farm whose gravel beds catch the solids and nitrify', () => {
  const small = planResults(smallFarm, factors);

  it('says none of the stages that are absent, and harvests nothing', () => {
    expect([small.drumsNeeded, small.overflowRate, small.padsNeeded, small.padChangeInterval]).toEqual(
      Array(4).fill('none'),
    );
    expect([small.solidsCaptured, small.slurryPerDay, small.gardenArea]).toEqual([0, 0, 0]);
  });

  it('knows how long until the beds want cleaning: 6 kg held at 125 g a day', () => {
    expect((small.bedCleaningInterval as number) / DAY).toBeCloseTo(48, 9);
  });

  it('asks no more flow of solids than gravel that takes all of them out needs', () => {
    const byeAmmonia = planResults({ ...smallFarm, ammoniaLimit: 1 }, factors);
    expect(byeAmmonia.flowSetBy).toBe('solids');
    expect(byeAmmonia.flowNeeded * DAY).toBeCloseTo(0.125 / 0.02, 9);
  });
});

describe('what is not given', () => {
  it('leaves results that rest on it not given, and the others whole', () => {
    const bare = planResults({ ...farm, tankVolume: undefined, power: undefined, padArea: undefined }, factors);
    expect([bare.stocking, bare.turnover, bare.oxygenTime, bare.powerCostPerMonth, bare.padsNeeded]).toEqual(
      Array(5).fill('not given'),
    );
    expect(bare.feed).toBe(results.feed);
  });

  it('is feed alone: no biomass, but everything that feed makes', () => {
    const fed = { ...farm, fishCount: undefined, fishMass: undefined, feedingRate: undefined, feed: 500 * grams };
    expect(scenarioFeed(fed)).toBe(500 * grams);
    expect(planResults(fed, factors).biomass).toBe('not given');
    expect(planResults(fed, factors).ammonia).toBeCloseTo(results.ammonia, 15);
  });

  it('cannot be both feed and fish', () => {
    expect(() => scenarioFeed({ ...farm, fishCount: undefined })).toThrow('feed');
  });

  it('is told from what is absent and from a time without end', () => {
    expect(figure([1, undefined], (a) => a)).toBe('not given');
    expect(figure([undefined, 'none'], (a) => a)).toBe('none');
    expect(lasting([0], (a) => 1 / a)).toBe('never');
    expect(planResults({ ...farm, settler: 1 }, factors).padChangeInterval).toBe('never');
  });
});
