import { describe, expect, it } from 'vitest';
import { bedArea, bedDays, bedPlants } from '../../../src/formulas/bed/bed';
import { cropFeed, cropGroups, cropNamed, cropNames, crops, findCrop } from '../../../src/formulas/bed/crops';

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

describe('the table of crops', () => {
  it('gives every crop a group, and every range in order', () => {
    for (const crop of crops) {
      expect(cropGroups.some((group) => group.name === crop.group)).toBe(true);
      expect(crop.plants.low).toBeLessThanOrEqual(crop.plants.typical);
      expect(crop.plants.typical).toBeLessThanOrEqual(crop.plants.high);
    }
  });

  it('finds a name however it is written, and nothing for another', () => {
    expect(findCrop(' swiss CHARD ')?.name).toBe('Swiss chard');
    expect(findCrop('TOMATO')?.plants).toMatchObject({ low: 3, typical: 4, high: 5 });
    expect(findCrop('oak')).toBeUndefined();
    for (const name of cropNames) expect(cropNamed(name).name).toBe(name);
  });

  it('names each group and crop once', () => {
    expect(new Set(cropNames).size).toBe(crops.length);
    expect(new Set(cropGroups.map(({ name }) => name)).size).toBe(cropGroups.length);
  });

  it('refuses a crop that it does not have, by name', () => {
    expect(() => cropNamed('oak')).toThrow(
      expect.objectContaining({ argument: 'crop', advice: 'oak is not a crop of the table' }),
    );
  });

  it('feeds a crop as its group: leafy 40 to 50 g/m2/day, fruiting 50 to 80 (FAO 589, section 8.1)', () => {
    const grams = (name: string) => {
      const { low, high } = cropFeed(cropNamed(name));
      return [Math.round(low * 1e3 * DAY), Math.round(high * 1e3 * DAY)];
    };
    expect(grams('parsley')).toEqual([40, 50]);
    expect(grams('pepper')).toEqual([50, 80]);
    expect(grams('raft')).toEqual([60, 100]);
    expect(() => cropFeed({ ...cropNamed('pepper'), group: 'tree' })).toThrow('pepper is in no group of crops');
  });
});
