import { describe, expect, it } from 'vitest';
import { costCompare, costLines, costRunning } from '../../../src/formulas/cost/cost';

describe('the shopping list', () => {
  it('takes 45, 60 and 90 bags of 80, 60 and 40 lb concrete for a cubic yard (makers’ tables, read)', () => {
    for (const [cubicFeet, bags] of [
      [0.6, 45],
      [0.45, 60],
      [0.3, 90],
    ] as const) {
      const [line] = costLines(
        [{ item: 'concrete', quantity: 27 }],
        [{ item: 'concrete', packSize: cubicFeet, packPrice: 6 }],
        0,
      );
      expect(line).toEqual({ item: 'concrete', needed: 27, packs: bags, cost: bags * 6 });
    }
  });

  it('adds the allowance before it rounds up to whole packs', () => {
    const lines = costLines(
      [{ item: 'Rivets', quantity: 100 }],
      [{ item: 'rivets ', packSize: 50, packPrice: 4 }],
      0.1,
    );
    expect(lines[0]).toMatchObject({ packs: 3, cost: 12 });
    expect(lines[0]!.needed).toBeCloseTo(110, 10);
    expect(lines[1]).toEqual({ item: 'total', needed: undefined, packs: undefined, cost: 12 });
  });

  it('says which item has no price and counts it in the total', () => {
    const lines = costLines(
      [
        { item: 'sheet', quantity: 2 },
        { item: 'seal', quantity: 3 },
        { item: 'valve', quantity: 3 },
      ],
      [{ item: 'sheet', packSize: 1, packPrice: 40 }],
      0,
    );
    expect(lines[1]).toEqual({ item: 'seal', needed: 3, packs: 'no price', cost: undefined });
    expect(lines[3]).toMatchObject({ item: 'total without 2 items that have no price', cost: 80 });
  });

  it('buys an item that is listed twice once', () => {
    const item = { item: 'pipe', quantity: 4, unit: 'ft' };
    const lines = costLines(
      [item, { ...item, item: 'Pipe' }],
      [{ item: 'pipe', packSize: 10, packPrice: 9, unit: 'FT' }],
      0,
    );
    expect(lines[0]).toEqual({ item: 'pipe', needed: 8, packs: 1, cost: 9 });
  });

  it('cannot compare two units or choose between two prices', () => {
    const item = { item: 'pipe', quantity: 4, unit: 'ft' };
    expect(() => costLines([item], [{ item: 'pipe', packSize: 3, packPrice: 9, unit: 'm' }], 0)).toThrow(/ft and in m/);
    const price = { item: 'pipe', packSize: 3, packPrice: 9 };
    expect(() => costLines([item], [price, { ...price, item: 'PIPE' }], 0)).toThrow(/two prices/);
  });
});

describe('building against buying', () => {
  it('counts own hours', () => {
    expect(costCompare(150, 600, 3, 8 * 3600, 20)).toEqual({
      each: 310,
      all: 930,
      saved: 870,
      shareSaved: expect.closeTo(290 / 600, 12),
    });
    expect(costCompare(500, 400, 2, 0, 0).saved).toBe(-200);
  });
});

describe('running a motor', () => {
  it('of 1200 W for 4.8 hours a day is 2102.4 kWh a year (utility primer, read)', () => {
    expect(costRunning(1200, 4.8 * 3600, 1 / 3.6e6)).toBeCloseTo(2102.4, 8);
  });
});
