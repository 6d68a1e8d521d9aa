import { describe, expect, it } from 'vitest';
import { bedsCatchAllSolids, planFarm, planFigures } from '../../../src/formulas/plan/plan-farm';
import { planLimit } from '../../../src/formulas/plan/plan-limit';
import { planResults } from '../../../src/formulas/plan/plan-results';
import type { Scenario } from '../../../src/formulas/plan/plan-scenario';
import { waterOxygen } from '../../../src/formulas/water/water-oxygen';
import { bare, DAY, factors, farm, smallFarm } from './plan-farm';

const rowOf = (scenario: Scenario, stage: string) =>
  planLimit(planFarm(scenario, factors)).rows.find((row) => row.stage === stage)!;
/** Water in the slurry of 500 g of feed, which carries ammonia away, m3 a day for a gram of feed. */
const slurry = ((0.05 / 0.95 / 0.02) * 0.98 * 1e-3) / 500;
/** Capacity in grams of feed a day. */
const carries = (scenario: Scenario, stage: string) => (rowOf(scenario, stage).capacity as number) * DAY * 1000;

describe('what each stage carries, worked by hand', () => {
  it('fish tank: 40 kg of fish at 2 % a day', () => {
    expect(carries(farm, 'fish tank')).toBeCloseTo(800, 9);
    expect(rowOf(farm, 'fish tank').fish).toBe(160);
    expect(rowOf(farm, 'fish tank').shareInUse).toBeCloseTo(0.625, 12);
  });

  it('circulation: 57.6 m3 a day carry 28.8 g of ammonia nitrogen at 1 g/m3, half taken out', () => {
    expect(carries(farm, 'circulation, ammonia')).toBeCloseTo(28.8 / (0.04 - slurry), 9);
  });

  it('circulation: and 20 g/m3 of solids, of which each pass clears 0.95 of one half and 0.75 of the other', () => {
    expect(carries(farm, 'circulation, solids')).toBeCloseTo((57.6 * 20) / 0.25 / (0.5 / 0.95 + 0.5 / 0.75), 6);
  });

  it('circulation: oxygen only where both in and out are given', () => {
    expect(rowOf(farm, 'circulation, oxygen').capacity).toBe('not given');
    expect(carries({ ...farm, oxygenIn: 0.009, oxygenOut: 0.006 }, 'circulation, oxygen')).toBeCloseTo(
      (57.6 * 3) / 1.25,
      9,
    );
  });

  it('drums: 1 m2 at 3 mm/s passes 259.2 m3 a day, which carry 129.6 g of ammonia nitrogen', () => {
    expect(carries(farm, 'settling drums')).toBeCloseTo(129.6 / (0.04 - slurry), 9);
  });

  it('pads: one change a day of 250 g', () => {
    expect(carries(farm, 'pads')).toBeCloseTo(500 * (250 / (62.5 * (0.1 / 0.95 + 0.5 / 0.75))), 9);
  });

  it('biofilter: 60 m2 at 0.5 g nitrify 30 g', () => {
    expect(carries(farm, 'biofilter')).toBeCloseTo(750, 9);
  });

  it('plant beds: 10 m2 at 50 g', () => {
    expect(carries(farm, 'plant beds')).toBeCloseTo(500, 9);
  });
});

describe('the worst water', () => {
  it('is the coldest for nitrification: 10 °C takes the film to 0.5725 by ammonia (Zhu and Chen 2002)', () => {
    expect(carries({ ...farm, coldestWater: 10 }, 'biofilter')).toBeCloseTo(750 * (1 - 0.04275 * 10), 9);
  });

  it('is the hottest for oxygen', () => {
    const at = (t: number) =>
      100 * 24 * 0.9 * 1.024 ** (t - 20) * ((waterOxygen(t, 0, 0) - 0.006) / waterOxygen(20, 0, 0));
    expect(carries(farm, 'air')).toBeCloseTo(at(20) / 1.25, 6);
    expect(carries({ ...farm, hottestWater: 30 }, 'air')).toBeCloseTo(at(30) / 1.25, 6);
    expect(at(30)).toBeLessThan(at(20));
  });

  it('gives air no capacity if the water cannot hold the oxygen wanted', () => {
    const row = rowOf({ ...farm, hottestWater: 38, oxygenAtPowerFailure: 0.007 }, 'air');
    expect([row.capacity, row.fish, row.shareInUse]).toEqual([0, 0, 'over']);
  });

  it('is the hottest and the highest pH for un-ionized ammonia: 0.0654 of it at 28 °C and pH 8 (UF/IFAS FA16)', () => {
    const hot = { ...farm, hottestWater: 28, highestPh: 8 };
    const total = 0.05 / 0.0654;
    expect(carries(hot, 'circulation, un-ionized ammonia') / ((28.8 * total) / 0.04)).toBeCloseTo(1, 2);
    expect(rowOf({ ...farm, ph: undefined, highestPh: undefined }, 'circulation, un-ionized ammonia').capacity).toBe(
      'not given',
    );
  });

  it('is the coldest for circulation too, where the media nitrifies less than the flow brings it: 17.2 g', () => {
    const cold = rowOf({ ...farm, coldestWater: 10 }, 'circulation, ammonia');
    expect((cold.capacity as number) * DAY * 1000).toBeCloseTo((30 * (1 - 0.04275 * 10)) / (0.04 - slurry), 9);
    expect(cold.from.text).toContain('more flow does not help');
  });

  it('does not change what another stage carries', () => {
    const worst = { ...farm, mediaVolume: 0.4, coldestWater: 10, hottestWater: 28, highestPh: 8.5 };
    for (const stage of ['fish tank', 'circulation, ammonia', 'pads', 'plant beds']) {
      expect(carries(worst, stage)).toBeCloseTo(carries(farm, stage), 9);
    }
  });
});

describe('the first limit', () => {
  it('is the one with the least capacity, with the next beside it', () => {
    const { rows, first, next } = planLimit(planFarm(farm, factors));
    const known = rows.slice(0, -1).filter((row) => typeof row.capacity === 'number');
    const sorted = known.map((row) => row.capacity as number).sort((a, b) => a - b);
    expect([first?.capacity, next?.capacity]).toEqual(sorted.slice(0, 2));
    expect(rows.at(-1)?.stage).toBe('first limit: plant beds');
    expect(rows.at(-1)?.from.text).toBe(`next limit: ${next?.stage}, at {capacity:daily}`);
    expect(planResults(farm, factors).firstLimit).toBe('plant beds');
  });

  it('is just fully used at the feed that it carries', () => {
    const { first } = planLimit(planFarm(farm, factors));
    const feed = first!.capacity as number;
    const row = rowOf({ ...farm, feed }, first!.stage);
    expect(row.shareInUse).toBeCloseTo(1, 12);
  });

  it('does not depend on today’s feed, where every need grows with it', () => {
    for (const stage of [
      'fish tank',
      'air',
      'circulation, ammonia',
      'settling drums',
      'pads',
      'biofilter',
      'plant beds',
    ]) {
      const fed = { ...farm, fishCount: 40 };
      expect(carries(fed, stage) / carries(farm, stage), stage).toBeCloseTo(1, 12);
    }
  });

  it('is not given if no stage is', () => {
    const { rows, first } = planLimit(planFarm({ ...farm, ...bare }, factors));
    expect(first).toBeUndefined();
    expect(rows.at(-1)?.stage).toBe('first limit: not given');
    expect(rows.every((row) => row.capacity === 'not given')).toBe(true);
    expect(rows.find((row) => row.stage === 'biofilter')?.from.text).toBe('not given: media volume');
  });

  it('is the earliest of those that carry the same, and the next the one after it', () => {
    // Water too hot for the oxygen wanted, solids that nothing removes, less carbon dioxide allowed than air brings.
    const nothing = { hottestWater: 38, oxygenAtPowerFailure: 0.007, pads: 'none', bedArea: 'none' } as const;
    const gas = { degassing: 0.5, carbonDioxideLimit: 1e-4 };
    const { first, next, rows } = planLimit(planFarm({ ...farm, ...nothing, ...gas }, factors));
    expect(rows.filter(({ capacity }) => capacity === 0).map(({ stage }) => stage)).toEqual([
      'air',
      'circulation, solids',
      'circulation, carbon dioxide',
      'settling drums',
      'first limit: air',
    ]);
    expect([first?.stage, next?.stage]).toEqual(['air', 'circulation, solids']);
  });

  it('has no next where one stage alone is given', () => {
    const { rows, first, next } = planLimit(planFarm({ ...farm, ...bare, airSupply: farm.airSupply }, factors));
    expect([first?.stage, next]).toEqual(['air', undefined]);
    expect(rows.at(-1)).toMatchObject({ stage: 'first limit: air', from: { text: 'next limit: not given' } });
    const none = planLimit(planFarm({ ...farm, ...bare }, factors)).rows.at(-1);
    expect(none?.from.text).toBe('not given: no stage has the inputs for its capacity');
  });

  it('counts fish by what each eats: the feed typed over their count, or else their mass at the rate', () => {
    // 750 g a day of the biofilter for 100 fish that are fed 250 g.
    expect(rowOf({ ...farm, feed: 0.25 / DAY }, 'biofilter').fish).toBe(300);
    const typed = { ...farm, feed: 0.25 / DAY, fishCount: undefined };
    expect(rowOf(typed, 'biofilter').fish).toBe(150);
    expect(rowOf({ ...typed, fishMass: undefined }, 'biofilter').fish).toBe('not given');
  });

  it('has no count of fish if neither fish nor rate are given', () => {
    const fed = { ...farm, feed: 0.5 / DAY, fishCount: undefined, feedingRate: undefined };
    expect(rowOf(fed, 'biofilter').fish).toBe('not given');
    expect(rowOf({ ...fed, feedingRate: 0.02 }, 'biofilter').fish).toBe(150);
  });
});

describe('a farm whose gravel beds catch the solids and nitrify', () => {
  it('counts the film on the gravel: 3 m3 of 175 m2/m3 nitrify 262.5 g', () => {
    expect(rowOf(smallFarm, 'biofilter').capacity).toBe('none');
    expect(carries(smallFarm, 'gravel beds, nitrification')).toBeCloseTo(262.5 / 0.04, 6);
  });

  it('counts a cleaning every 30 days: 6 kg held are 200 g of solids a day', () => {
    expect(carries(smallFarm, 'gravel beds, solids')).toBeCloseTo(800, 9);
  });

  it('counts solids on gravel behind drums and pads too, but no nitrification where there is a biofilter', () => {
    const beds = planLimit(planFarm(farm, factors)).rows.filter((row) => row.stage.startsWith('gravel beds'));
    expect(beds.map(({ stage }) => stage)).toEqual(['gravel beds, solids']);
    expect(carries(farm, 'gravel beds, solids')).toBeCloseTo(500 * (200 / (62.5 * (0.05 / 0.95 + 0.25 / 0.75))), 6);
  });

  it('says that nothing removes solids if there are no beds either', () => {
    const row = rowOf({ ...smallFarm, bedArea: 'none' }, 'circulation, solids');
    expect(row.capacity).toBe(0);
    expect(row.from.text).toContain('nothing removes {rising} % of the solids');
    expect(row.from.figures?.rising).toBe(100);
  });
});

describe('a stage that carries no figure says why', () => {
  const reason = (change: Partial<Scenario>, stage: string) => rowOf({ ...farm, ...change }, stage).from.text;

  it('names the parts that are not given, or the one that is absent', () => {
    expect(reason({ drums: undefined, drumDiameter: undefined }, 'settling drums')).toBe(
      'not given: drums, drum diameter',
    );
    expect(reason({ drumDiameter: undefined }, 'settling drums')).toBe('not given: drum diameter');
    expect(reason({ drums: 'none', drumDiameter: undefined }, 'settling drums')).toBe('none: drums');
    expect(reason({ settler: 1 }, 'pads')).toBe('never: no solids reach it');
    expect(reason({ pumpFlow: undefined, degassing: 0.5 }, 'circulation, carbon dioxide')).toBe('not given: pump flow');
    expect(reason({ bedArea: undefined }, 'plant beds')).toBe('not given: bed area');
  });

  it('has no row of solids on gravel without beds', () => {
    const stages = planLimit(planFarm({ ...farm, bedArea: undefined }, factors)).rows.map(({ stage }) => stage);
    expect(stages).not.toContain('gravel beds, solids');
  });

  it('says what solids are held to, and how long gravel should last', () => {
    expect(reason({}, 'circulation, solids')).toContain('pump flow at the solids limit');
    expect(rowOf(farm, 'gravel beds, solids').from.figures?.leastDays).toBe(30 * DAY);
  });
});

describe('what drums carry', () => {
  it('leaves out solids that no flow can hold: the half that does not settle, without pads and beds', () => {
    const none = { ...farm, pads: 'none', bedArea: 'none' } as const;
    // 62.5 g a day in the drums as slurry of 2 %.
    const water = ((0.0625 / 0.02) * 0.98 * 1e-3) / 500;
    expect(carries(none, 'settling drums')).toBeCloseTo(129.6 / (0.04 - water), 9);
  });

  it('counts solids that a flow holds, even where the media are too small for any flow', () => {
    const small = { ...farm, mediaVolume: 0.01, solidsLimit: 1e-3 };
    expect(carries(small, 'settling drums')).toBeCloseTo(259.2 / 0.25 / (0.5 / 0.95 + 0.5 / 0.75), 6);
  });
});

describe('the flow of a farm', () => {
  it('is none where the water let out is enough, and ammonia is named first', () => {
    const { flowNeeded, flowSetBy, flow } = planFarm({ ...farm, waterOut: 1000, pumpFlow: undefined }, factors);
    expect([flowNeeded, flowSetBy, flow]).toEqual([0, 'ammonia', 0]);
  });

  it('has a figure for each number of the scenario, and for nothing else', () => {
    const figures = planFigures(planFarm({ ...farm, drums: 'none', power: undefined }, factors));
    expect(Object.values(figures).every((one) => typeof one === 'number')).toBe(true);
    expect(figures).toMatchObject({ fishCount: 100, protein: 0.4 });
  });

  it('leaves all solids to the beds only without drums and pads', () => {
    expect(bedsCatchAllSolids(smallFarm)).toBe(true);
    expect(bedsCatchAllSolids({ ...smallFarm, drums: 1 })).toBe(false);
    expect(bedsCatchAllSolids({ ...smallFarm, pads: 2 })).toBe(false);
    expect(bedsCatchAllSolids({ ...smallFarm, bedArea: 'none' })).toBe(false);
  });
});
