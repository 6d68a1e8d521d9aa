import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filterArea, filterFeed, filterMedia } from '../../../src/formulas/filter/filter-size';
import { harvestSolids } from '../../../src/formulas/harvest/slurry';
import { loadAmmonia, loadCarbonDioxide, loadFlow, loadOxygenFlow, loadSolids } from '../../../src/formulas/load/load';
import { loadFlows, loadTable } from '../../../src/formulas/load/load-flows';
import { wholeRefusal } from '../whole-refusal';

const DAY = 86400;
const share = fc.double({ min: 0.01, max: 1, noNaN: true });
const feed = fc.double({ min: 1e-3, max: 1e3, noNaN: true }).map((kg) => kg / DAY);

describe('what feed becomes', () => {
  it('gives 36.8 g ammonia nitrogen for a kilogram at 40 % protein (Timmons and Ebeling, from memory)', () => {
    expect(loadAmmonia(1, 0.4, 0.092)).toBeCloseTo(0.0368, 10);
  });

  it('conserves solids: caught and passed on add up to those made', () => {
    fc.assert(
      fc.property(feed, share, share, (f, made, caught) => {
        const all = loadSolids(f, made);
        const kept = harvestSolids(f, caught, made);
        expect((kept + all * (1 - caught)) / all).toBeCloseTo(1, 12);
      }),
    );
  });

  it('conserves nitrogen: a pass removes at the limit what the fish add', () => {
    fc.assert(
      fc.property(feed, share, share, (f, protein, removal) => {
        const made = loadAmmonia(f, protein, 0.092);
        const flow = loadFlow(made, 1e-3, removal);
        expect((flow * 1e-3 * removal) / made).toBeCloseTo(1, 12);
        expect(made).toBeLessThanOrEqual(f * protein * 0.16);
      }),
    );
  });

  it('conserves oxygen: the flow brings in just what is taken up', () => {
    fc.assert(
      fc.property(feed, share, (load, rise) => {
        expect((loadOxygenFlow(load, 5e-3 + rise * 5e-3, 5e-3) * rise * 5e-3) / load).toBeCloseTo(1, 10);
      }),
    );
  });

  it('breathes out a molecule of carbon dioxide for each of oxygen: 44 g for 32 g', () => {
    expect(loadCarbonDioxide(0.032)).toBeCloseTo(0.044, 4);
  });

  it('cannot bring oxygen in with water no richer than it leaves', () => {
    expect(() => loadOxygenFlow(1, 5e-3, 5e-3)).toThrow(wholeRefusal);
  });
});

describe('circulation', () => {
  const needs = {
    feed: 1 / DAY,
    protein: 0.32,
    ammoniaLimit: 1e-3,
    removal: 0.35,
    solidsLimit: 20e-3,
    capture: 0.5,
    oxygenIn: undefined,
    oxygenOut: undefined,
    ammoniaFactor: 0.092,
    solidsShare: 0.25,
    oxygenRatio: 0.4,
  };

  it('ends with the largest flow and names the waste that sets it', () => {
    const rows = loadFlows(needs);
    expect(rows.map((row) => row.waste)).toEqual(['ammonia', 'solids', 'largest: ammonia']);
    expect(rows[2]!.flow).toBe(Math.max(rows[0]!.flow, rows[1]!.flow));
  });

  it('uses oxygen only if oxygen in and out are both known', () => {
    expect(loadFlows({ ...needs, oxygenIn: 9e-3 }).length).toBe(3);
    expect(loadFlows({ ...needs, oxygenOut: 5e-3 }).length).toBe(3);
    const rows = loadFlows({ ...needs, oxygenIn: 5.1e-3, oxygenOut: 5e-3 });
    expect(rows[2]!.flow).toBeCloseTo(0.4 / DAY / 1e-4, 12);
    expect(rows[3]!.waste).toBe('largest: oxygen');
  });
});

describe('wastes that ask for the same flow', () => {
  it('are named by the first of them', () => {
    // Every figure is a power of two, so that both flows are exactly 1 m3/s.
    const rows = loadFlows({
      feed: 1,
      protein: 0.5,
      ammoniaFactor: 0.125,
      ammoniaLimit: 0.125,
      removal: 0.5,
      solidsShare: 0.25,
      solidsLimit: 0.5,
      capture: 0.5,
      oxygenIn: undefined,
      oxygenOut: undefined,
      oxygenRatio: 0.5,
    });
    expect(rows.map(({ flow }) => flow)).toEqual([1, 1, 1]);
    expect(rows.at(-1)).toMatchObject({ waste: 'largest: ammonia', limit: 0.125 });
  });
});

describe('the table of wastes', () => {
  it('runs from low to high in every row', () => {
    const range = { low: 0.2, typical: 0.3, high: 0.5 };
    const oxygenSystem = { low: 0.38, typical: 1.25, high: 1.3 };
    const factors = { solidsShare: range, ammoniaFactor: range, oxygenFish: range, oxygenSystem };
    for (const row of loadTable(1, 0.3, factors)) {
      expect(row.low.si).toBeLessThan(row.typical.si);
      expect(row.typical.si).toBeLessThan(row.high.si);
    }
  });

  it('lets the least oxygen of a system rise with the protein that is nitrified: 0.25 + protein x 0.092 x 4.57', () => {
    const factors = {
      solidsShare: { low: 0.2, typical: 0.3, high: 0.5 },
      ammoniaFactor: { low: 0.069, typical: 0.092, high: 0.098 },
      oxygenFish: { low: 0.25, typical: 0.4, high: 0.5 },
      oxygenSystem: { low: 0.38, typical: 1.25, high: 1.25 },
    };
    const least = (protein: number) => loadTable(1, protein, factors)[3]?.low.si;
    expect(least(0.32)).toBeCloseTo(0.3845, 3);
    expect(least(0.45)).toBeCloseTo(0.4392, 3);
  });
});

describe('a biofilter', () => {
  it('carries the feed that it was sized for', () => {
    fc.assert(
      fc.property(feed, share, share, share, (f, protein, rate, reserve) => {
        const media = filterMedia(filterArea(f, protein, rate * 1e-8, reserve, 0.092), 300);
        expect(filterFeed(media, 300, protein, rate * 1e-8, reserve, 0.092) / f).toBeCloseTo(1, 12);
      }),
    );
  });

  it('comes to FAO 589 appendix 4 with that paper’s own ammonia: 7.4957 g at 0.57 g/m2 is 13.15 m2, 43.8 L', () => {
    const area = filterArea(0.2 / DAY, 0.32, 0.57e-3 / DAY, 0, 0.16 * 0.61 * 1.2);
    expect(area).toBeCloseTo(13.15, 2);
    expect(filterMedia(area, 300) * 1000).toBeCloseTo(43.8, 1);
  });
});
