import { describe, expect, it } from 'vitest';
import { planCheck } from '../../../src/formulas/plan/plan-check';
import type { Scenario } from '../../../src/formulas/plan/plan-scenario';
import { fishLimits } from '../../../src/formulas/water/water-species';
import { DAY, factors, farm } from './plan-farm';

const found = (change: Partial<Scenario>, words: string) =>
  planCheck({ ...farm, ...change }, factors).find(({ text }) => text.includes(words));
const has = (change: Partial<Scenario>, words: string) => found(change, words) !== undefined;
/** The figure of a mark, in the words of its caution. */
function figureOf(change: Partial<Scenario>, words: string, mark: string): number {
  const figure = found(change, words)?.figures?.[mark];
  return typeof figure === 'number' ? figure : Number.NaN;
}

/** 500 g of feed a day make 20 g of ammonia nitrogen and 125 g of solids. */
const closed: Partial<Scenario> = { drums: 'none', waterOut: 0 };
const drumsOnly: Partial<Scenario> = { pads: 'none', bedArea: 'none' };

describe('cautions about what builds up', () => {
  it('solids: the half that does not settle, if there are neither pads nor beds', () => {
    expect(figureOf(drumsOnly, 'of the solids: they are too fine', 'share')).toBeCloseTo(50, 9);
    expect(has({}, 'they are too fine')).toBe(false);
    // A caution of its own has been given, so that the flow is not blamed too.
    expect(has(drumsOnly, 'No flow and no number of drums')).toBe(false);
    const decaying = { ...drumsOnly, solidsDecay: 0.1 / DAY };
    expect(has(decaying, 'they are too fine')).toBe(false);
    expect(
      has(
        decaying,
        'No flow and no number of drums keeps solids within the limit, and drums needed is only for the flow that runs: remove',
      ),
    ).toBe(true);
  });

  it('ammonia: if no water is let out and the media, 150 g a day for a cubic meter, nitrify less than is made', () => {
    const small = { ...closed, mediaVolume: 0.12 };
    expect(figureOf(small, 'Ammonia builds up', 'made') * DAY).toBeCloseTo(0.02, 12);
    expect(figureOf(small, 'Ammonia builds up', 'nitrified') * DAY).toBeCloseTo(0.018, 12);
    expect(has({ ...closed, mediaVolume: 0.133 }, 'Ammonia builds up')).toBe(true);
    expect(has({ ...closed, mediaVolume: 0.134 }, 'Ammonia builds up')).toBe(false);
  });

  it('nitrate: if neither water nor plants take it away', () => {
    expect(has(closed, 'Nitrate rises without end')).toBe(true);
    expect(has({ ...closed, plantUptake: 100 }, 'Nitrate rises without end')).toBe(false);
    expect(has({ waterOut: 0.1 }, 'Nitrate rises without end')).toBe(false);
  });
});

describe('cautions about limits', () => {
  it('no flow: the wastes that none keeps within their limits', () => {
    expect(has({}, 'No flow and no number of drums')).toBe(false);
    expect(
      has(
        { mediaVolume: 0.12 },
        'No flow and no number of drums keeps ammonia within the limit, and drums needed is only for the flow that runs: add media',
      ),
    ).toBe(true);
    const both = { ...drumsOnly, solidsDecay: 0.1 / DAY, mediaVolume: 0.12 };
    expect(has(both, 'keeps ammonia and solids within the limit')).toBe(true);
  });

  it('ammonia: 20 g a day in a flow of 57.6 m3 a day, of which half is nitrified, is 0.69 mg/L', () => {
    const words = 'Total ammonia nitrogen reaches';
    // A little goes with the slurry too.
    expect(has({ ammoniaLimit: 0.7e-3 }, words)).toBe(false);
    expect(has({ ammoniaLimit: 0.68e-3 }, words)).toBe(true);
    expect(figureOf({ ammoniaLimit: 0.68e-3 }, words, 'level')).toBeCloseTo(0.02 / 28.8, 5);
    // What rises without end has a caution of its own.
    expect(has({ ...closed, mediaVolume: 0.12 }, words)).toBe(false);
  });

  it('drums: those needed at the flow that runs are told from those that the feed needs', () => {
    // 1 mg/L of ammonia at half a pass: 20 g a day needs 27.8 L/min, over drums of 1 m2 at 0.0001 m/s 5 of them.
    const slow: Partial<Scenario> = { overflowLimit: 1e-4, pads: 1, media: 1e4, settler: 0.5 };
    const words = 'Drums needed is for the flow that runs';
    const { count, flow, wanted } = found({ ...slow, pumpFlow: 1e-4 }, words)?.figures ?? {};
    expect(flow).toBe(1e-4);
    expect(count).toBe(Math.ceil((wanted as number) / 1e-4));
    expect(has({ ...slow, pumpFlow: wanted as number }, words)).toBe(false);
    expect(has({ ...slow, pumpFlow: undefined }, words)).toBe(false);
    expect(has({ ...slow, pumpFlow: 1e-4, drums: 'none' }, words)).toBe(false);
  });

  it('nitrate: 20 g a day in the water that is let out, with 2.6 L of slurry', () => {
    const { nitrate: limit } = fishLimits('tilapia');
    const out = 0.02 / limit - 0.0026;
    expect(has({ waterOut: 1.01 * out }, 'Nitrate as N reaches')).toBe(false);
    // Ammonia at 0.7 g/m3 goes with it, 0.8 % of the nitrogen.
    const ratio = figureOf({ waterOut: 0.98 * out }, 'Nitrate as N reaches', 'nitrate') / limit;
    expect(ratio / (0.992 / 0.98)).toBeCloseTo(1, 2);
    expect(figureOf({ waterOut: 0.98 * out }, 'Nitrate as N reaches', 'limit')).toBe(limit);
    expect(figureOf({ species: undefined }, 'Nitrate as N reaches', 'limit')).toBe(fishLimits('warm-water').nitrate);
  });
});

describe('cautions about figures that cannot all be right', () => {
  it('nitrogen: of 32 g fed 20 g dissolve and 3.75 g lie in solids, so that fish can keep 8.25 g', () => {
    // 27 g of nitrogen for each kilogram gained.
    const conversion = (0.5 * 27) / 8.25;
    expect(has({ conversion: conversion * 1.001 }, 'of the nitrogen fed')).toBe(false);
    const over = figureOf({ conversion: conversion / 1.1 }, 'of the nitrogen fed', 'over');
    expect(over).toBeCloseTo(100 * (1 + (0.1 * 8.25) / 32), 6);
    expect(has({}, 'of the nitrogen fed')).toBe(false);
  });

  it('phosphorus: of 5 g fed 2.5 g lie in solids, so that fish can keep 2.5 g', () => {
    const conversion = (0.5 * 4.5) / 2.5;
    expect(has({ conversion: conversion * 1.001 }, 'of the phosphorus fed')).toBe(false);
    const over = figureOf({ conversion: conversion / 1.1 }, 'of the phosphorus fed', 'over');
    expect(over).toBeCloseTo(100 * (1 + (0.1 * 2.5) / 5), 6);
  });
});
