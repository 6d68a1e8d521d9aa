/** A farm's balance worked by hand where something is absent, and at its ends: no flow, no water let out, no media. */
import { describe, expect, it } from 'vitest';
import { ammoniaBalance, letOut, nitrateBalance } from '../../../src/formulas/balance/dissolved-balance';
import { farmCarbonDioxide } from '../../../src/formulas/balance/farm-balance';
import { farmModel, settlingRate } from '../../../src/formulas/balance/farm-model';
import { flowNeeds, unionizedAsTotal } from '../../../src/formulas/balance/flow-needed';
import { waterOnItsWay } from '../../../src/formulas/balance/water-on-its-way';
import { planFarm } from '../../../src/formulas/plan/plan-farm';
import type { Scenario } from '../../../src/formulas/plan/plan-scenario';
import { factors, farm, grams, milligrams } from '../plan/plan-farm';
import { refusalOf } from '../refusal-of';

const model = (change: Partial<Scenario>) => farmModel({ ...farm, ...change }, factors);
const flowFor = (waste: string, change: Partial<Scenario>) =>
  flowNeeds(model(change)).find((need) => need.waste === waste)?.flow;

describe('what is left of a waste', () => {
  it('leaves with the water let out; without any it rises, but nothing does not', () => {
    expect(letOut(2, 4)).toEqual({ level: 0.5, out: 2, rising: 0 });
    expect(letOut(2, 0)).toEqual({ level: Number.POSITIVE_INFINITY, out: 0, rising: 2 });
    expect(letOut(0, 0)).toEqual({ level: 0, out: 0, rising: 0 });
  });

  // Of 6 made the level 6 / (2 * 0.5 + 2) = 2 nitrifies 2 * 2 * 0.5 and lets out 2 * 2.
  it('is ammonia that neither media nor bacteria take', () => {
    const needs = { made: 6, flow: 2, removal: 0.5, capacity: Number.POSITIVE_INFINITY, out: 2 };
    expect(ammoniaBalance(needs)).toEqual({ made: 6, nitrified: 2, level: 2, out: 4, rising: 0 });
    expect(ammoniaBalance({ ...needs, capacity: 1 })).toEqual({ made: 6, nitrified: 1, level: 2.5, out: 5, rising: 0 });
    const still = ammoniaBalance({ ...needs, flow: 0, out: 0 });
    expect(still).toEqual({ made: 6, nitrified: 0, level: Number.POSITIVE_INFINITY, out: 0, rising: 6 });
  });

  it('is nitrate after denitrification and then plants, neither of which takes more than is there', () => {
    const needs = { nitrified: 3, source: 2, denitrified: 1, plants: 2, out: 4 };
    expect(nitrateBalance(needs)).toEqual({ source: 2, denitrified: 1, plants: 2, level: 0.5, out: 2, rising: 0 });
    expect(nitrateBalance({ ...needs, plants: 10 })).toMatchObject({ denitrified: 1, plants: 4, out: 0 });
    expect(nitrateBalance({ ...needs, denitrified: 10 })).toMatchObject({ denitrified: 5, plants: 0, out: 0 });
  });

  it('is carbon dioxide of the air alone where nothing breathes, even if no water runs', () => {
    const still = { ...model({ degassing: 0.5 }), oxygen: 0 };
    expect(farmCarbonDioxide(still, 0, 0, 0.5)).toBe(still.airCarbonDioxide);
  });
});

describe('what a scenario makes', () => {
  it('needs feed, or all three figures that feed follows from', () => {
    const advice = 'give feed, or fish count, fish mass and feeding rate';
    for (const left of ['fishCount', 'fishMass', 'feedingRate'] as const) {
      expect(refusalOf(() => model({ [left]: undefined })).advice).toBe(advice);
      expect(model({ [left]: undefined, feed: 0.25 }).feed).toBe(0.25);
    }
  });

  it('settles at the overflow limit where no water runs through the drums', () => {
    expect(settlingRate(farm, 0)).toBe(farm.overflowLimit);
    // A drum of a square meter.
    expect(settlingRate(farm, 0.002)).toBeCloseTo(0.002, 12);
  });

  // 0.5 g/m2/d at 20 °C on the surface of the biofilter or, without one, of 10 m2 of beds 0.3 m deep.
  it.each<[Partial<Scenario>, number]>([
    [{ mediaVolume: 0.2 }, 0.2 * 300],
    [{ mediaVolume: 'none' }, 10 * 0.3 * 300],
    [{ mediaVolume: 'none', bedArea: 'none' }, 0],
    [{ mediaVolume: 'none', bedArea: undefined }, Number.POSITIVE_INFINITY],
    [{ mediaVolume: undefined }, Number.POSITIVE_INFINITY],
    [{ mediaVolume: undefined, bedArea: 'none' }, Number.POSITIVE_INFINITY],
  ])('nitrifies on the surface of its media: %o', (change, surface) => {
    const { capacity } = model(change);
    if (surface < Number.POSITIVE_INFINITY) expect(capacity).toBeCloseTo(surface * 0.5 * grams, 12);
    else expect(capacity).toBe(surface);
  });

  it('denitrifies a share of the nitrogen fed: a tenth of 0.4 x 0.16 of 500 g', () => {
    expect(model({ passiveDenitrification: 0.1 }).denitrified / grams).toBeCloseTo(3.2, 9);
  });

  it('holds the carbon dioxide of air only where it is degassed', () => {
    expect(model({}).airCarbonDioxide).toBe(0);
    // 0.4 to 0.8 mg/L at 20 °C at sea level.
    expect(model({ degassing: 0.5 }).airCarbonDioxide).toBeGreaterThan(0.4 * milligrams);
    expect(model({ degassing: 0.5 }).airCarbonDioxide).toBeLessThan(0.8 * milligrams);
  });
});

describe('the flow needed', () => {
  it('is none where the water let out alone keeps a waste within its limit', () => {
    // 20 g of ammonia and 125 g of solids a day, in a thousand cubic meters.
    const much = { waterOut: 1000 };
    expect(flowFor('ammonia', much)).toBe(0);
    expect(flowFor('solids', much)).toBe(0);
  });

  it('is for carbon dioxide only where it is degassed: what is made, over what a pass removes of the limit', () => {
    expect(flowFor('carbon dioxide', {})).toBeUndefined();
    const scenario = { degassing: 0.5 };
    const { oxygen, airCarbonDioxide } = model(scenario);
    // Bicarbonate: 44/32 of the oxygen.
    const made = (oxygen * 44.0095) / 31.998;
    const flow = made / (0.5 * (20 * milligrams - airCarbonDioxide));
    expect(flowFor('carbon dioxide', scenario)! / flow).toBeCloseTo(1, 4);
  });

  it('is for oxygen only where both of its levels are given', () => {
    expect(flowFor('oxygen', { oxygenIn: 8 * milligrams })).toBeUndefined();
    expect(flowFor('oxygen', { oxygenOut: 6 * milligrams })).toBeUndefined();
    // 1.25 x 500 g a day from 8 to 6 g/m3.
    const flow = flowFor('oxygen', { oxygenIn: 8 * milligrams, oxygenOut: 6 * milligrams })!;
    expect(flow * 86400).toBeCloseTo(312.5, 9);
  });

  it('is not set by un-ionized ammonia where no pH is given', () => {
    expect(unionizedAsTotal(model({ highestPh: undefined }))).toBe(Number.POSITIVE_INFINITY);
    expect(flowFor('un-ionized ammonia', { highestPh: undefined })).toBeUndefined();
  });
});

describe('the water between the stages', () => {
  const whole = planFarm({ ...farm, plantUptake: 0.05 * grams, waterOut: 0.1, pumpFlow: 5e-4 }, factors);
  const { flow, solids, ammonia, nitrate } = whole.balance;

  it('loses in each stage what the stage takes, over the flow', () => {
    const { tank, drums, pads, biofilter, beds } = waterOnItsWay(whole.balance)!;
    expect(tank).toEqual({ solids: solids.level, ammonia: ammonia.level, nitrate: nitrate.level });
    expect((tank.solids - drums.solids) * flow).toBeCloseTo(solids.drums, 15);
    expect((drums.solids - pads.solids) * flow).toBeCloseTo(solids.pads, 15);
    expect((biofilter.solids - beds.solids) * flow).toBeCloseTo(solids.beds, 15);
    expect(biofilter.solids).toBe(pads.solids);
    expect((pads.ammonia - biofilter.ammonia) * flow).toBeCloseTo(ammonia.nitrified, 15);
    expect((biofilter.nitrate - pads.nitrate) * flow).toBeCloseTo(ammonia.nitrified, 15);
    expect(beds.ammonia).toBe(biofilter.ammonia);
    expect((biofilter.nitrate - beds.nitrate) * flow).toBeCloseTo(nitrate.plants, 15);
    for (const part of [solids.drums, solids.pads, solids.beds, ammonia.nitrified, nitrate.plants])
      expect(part).toBeGreaterThan(1e-9);
  });

  it('never holds less than nothing', () => {
    // The stages take a grain more than there is, as a sum may by rounding.
    const spent = { level: 1, made: 1, out: 0, rising: 0 };
    const after = waterOnItsWay({
      ...whole.balance,
      flow: 1,
      solids: { ...solids, level: 1, drums: 0.5, pads: 0.5 + 1e-12, beds: 0 },
      ammonia: { ...spent, nitrified: 1 + 1e-12 },
      nitrate: { ...spent, source: 0, denitrified: 0, plants: 3 },
    })!;
    expect(after.pads.solids).toBe(0);
    expect(after.biofilter.ammonia).toBe(0);
    expect(after.beds.nitrate).toBe(0);
  });

  it('is not there where no water runs', () => {
    expect(waterOnItsWay({ ...whole.balance, flow: 0 })).toBeUndefined();
  });
});
