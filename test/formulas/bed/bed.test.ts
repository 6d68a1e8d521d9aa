import { describe, expect, it } from 'vitest';
import { bedArea, bedDays, bedPlants } from '../../../src/formulas/bed/bed';
import { cropFeed, cropGroups, crops, findCrop } from '../../../src/formulas/bed/crops';
import { findMedia, mediaTable } from '../../../src/formulas/filter/media';
import { screenDays, screenHolding, screenPads } from '../../../src/formulas/filter/screen';

const DAY = 86400;

describe('a plant bed', () => {
  it('of 4 m2 and 100 lettuces takes 200 g of feed a day (FAO 589, section 8.1)', () => {
    const leafy = findCrop('Lettuce')!;
    const area = bedArea(0.2 / DAY, cropFeed(leafy).typical);
    expect(area).toBeCloseTo(4, 12);
    expect(bedPlants(area, leafy.plants.typical)).toBe(100);
  });

  it('of gravel is full when it holds what it can', () => {
    expect(bedDays(0.05 / DAY, 0.5, 2) / DAY).toBeCloseTo(20, 12);
  });
});

describe('the tables of crops and media', () => {
  it('give every crop a group, and every range in order', () => {
    for (const crop of crops) {
      expect(cropGroups.some((group) => group.name === crop.group)).toBe(true);
      expect(crop.plants.low).toBeLessThanOrEqual(crop.plants.typical);
      expect(crop.plants.typical).toBeLessThanOrEqual(crop.plants.high);
    }
    for (const media of mediaTable) {
      expect(media.surface.low).toBeLessThanOrEqual(media.surface.typical);
      expect(media.surface.typical).toBeLessThanOrEqual(media.surface.high);
      expect(media.rateLow).toBeLessThanOrEqual(media.rateHigh);
    }
  });

  it('find a name however it is written, and nothing for another', () => {
    expect(findCrop(' swiss CHARD ')?.name).toBe('Swiss chard');
    expect(findCrop('oak')).toBeUndefined();
    expect(findMedia('Moving Bed')?.surface.typical).toBe(500);
    expect(findMedia('felt')).toBeUndefined();
  });
});

describe('pads', () => {
  it('last as long as calculated, with enough pads', () => {
    const holding = screenHolding(0.4, 0.65, 1);
    expect(holding).toBeCloseTo(0.25, 12);
    const solids = 0.1 / DAY;
    const pads = screenPads(solids, 0.3, holding, 7 * DAY);
    expect(pads).toBe(10);
    expect(screenDays(solids, pads * 0.3, holding)).toBeGreaterThanOrEqual(7 * DAY);
    expect(screenDays(solids, (pads - 1) * 0.3, holding)).toBeLessThan(7 * DAY);
    expect(screenPads(solids, 0.25, 0.4, 7 * DAY)).toBe(7);
  });

  it('cannot hold less than nothing', () => {
    expect(() => screenHolding(0.5, 0.5, 1)).toThrow(/clean pad/);
  });
});
