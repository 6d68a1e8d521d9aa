import { describe, expect, it } from 'vitest';
import { loadLevel, loadShares } from '../../../src/formulas/balance/waste-balance';

const DAY = 86400;
const still = { flow: 0, volume: 0, decay: 0, out: 0 };

describe('the level of a waste', () => {
  // 328.125 g a day over 172.8 m3 a day, of which 37.1 % is cleared: 328.125 / 64.1088.
  it('is the load divided by the flow cleared', () => {
    expect(loadLevel(0.328125 / DAY, 0.371, { ...still, flow: 0.12 / 60 }) * 1000).toBeCloseTo(328.125 / 64.1088, 9);
    expect(loadLevel(1, 0, { ...still, volume: 4, decay: 0.25 })).toBe(1);
    expect(loadLevel(6, 0.5, { flow: 2, volume: 4, decay: 0.25, out: 1 })).toBe(2);
  });

  it('is refused if nothing removes the waste', () => {
    expect(() => loadLevel(1, 0, { ...still, flow: 1 })).toThrow(/rises without end/);
    expect(() => loadLevel(1, 0.5, { ...still, decay: 1 })).toThrow(/give flow and removal/);
  });
});

describe('what each stage takes', () => {
  const stages = [
    { name: 'drums', removal: 0.371 },
    { name: 'pads', removal: 0.5 },
  ];

  it('is more than its share per pass, because water comes back', () => {
    const rows = loadShares(1, stages, { ...still, flow: 1 });
    expect(rows.map(({ share }) => Number(share.toFixed(4)))).toEqual([0.5412, 0.4588, 1]);
  });

  it('sums to the load, and the level falls from stage to stage', () => {
    const rows = loadShares(3, stages, { flow: 2, volume: 10, decay: 0.1, out: 0.5 });
    expect(rows.map(({ stage }) => stage)).toEqual(['drums', 'pads', 'decay', 'let out', 'total']);
    const parts = rows.slice(0, -1).reduce((sum, { taken }) => sum + taken, 0);
    expect(parts).toBeCloseTo(3, 12);
    const [drums, pads, decay] = rows;
    expect(drums!.level).toBeCloseTo(decay!.level * (1 - 0.371), 12);
    expect(pads!.level).toBeCloseTo(drums!.level / 2, 12);
  });

  it('has a row of decay only where there is water to decay in', () => {
    const stagesOf = (volume: number) => loadShares(1, stages, { flow: 2, volume, decay: 0.1, out: 0 });
    expect(stagesOf(0).map(({ stage }) => stage)).toEqual(['drums', 'pads', 'total']);
    expect(stagesOf(10).map(({ stage }) => stage)).toEqual(['drums', 'pads', 'decay', 'total']);
  });

  it('has shares even of a load of 0', () => {
    expect(loadShares(0, stages, { ...still, flow: 1 })[0]).toMatchObject({ taken: 0, level: 0 });
    expect(loadShares(0, stages, { ...still, flow: 1 })[0]!.share).toBeCloseTo(0.5412, 4);
  });
});
