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

describe('names and units in the shopping list', () => {
  const price = { item: 'pvc pipe', packSize: 3, packPrice: 9 };

  it('may differ in case and spaces', () => {
    const item = { item: '  PVC   Pipe ', quantity: 4, unit: ' Ft' };
    expect(costLines([item], [{ ...price, unit: 'ft ' }], 0)[0]).toMatchObject({ packs: 2, cost: 18 });
    expect(costLines([{ ...item, item: 'pvcpipe' }], [price], 0)[0]).toMatchObject({ packs: 'no price' });
  });

  it('may be left out on either side, but one that is given once counts for all rows of the item', () => {
    const item = { item: 'pvc pipe', quantity: 4 };
    const feet = { ...item, unit: 'ft' };
    const meters = { ...price, unit: 'm' };
    expect(costLines([item], [meters], 0)[0]).toMatchObject({ packs: 2 });
    expect(costLines([feet], [price], 0)[0]).toMatchObject({ packs: 2 });
    const mixed = expect.objectContaining({
      argument: 'prices',
      advice: 'pvc pipe is in ft and in m; use one unit for both',
    });
    for (const items of [
      [item, feet],
      [feet, item],
      [{ ...item, unit: '' }, feet],
      [{ ...feet, unit: ' ft ' }, item],
    ]) {
      expect(() => costLines(items, [meters], 0)).toThrow(mixed);
      expect(() => costLines(items, [{ ...price, unit: ' m ' }], 0)).toThrow(mixed);
    }
  });

  it('must agree between the rows of an item', () => {
    const rows = [
      { item: 'Pipe', quantity: 4, unit: 'ft' },
      { item: 'pipe', quantity: 1, unit: 'm' },
    ];
    expect(() => costLines(rows, [], 0)).toThrow(
      expect.objectContaining({ argument: 'items', advice: 'pipe is in ft and in m; use one unit for both' }),
    );
  });

  it('name the item that has two prices', () => {
    expect(() => costLines([], [price, { ...price, item: 'PVC pipe' }], 0)).toThrow(
      expect.objectContaining({ argument: 'prices', advice: 'PVC pipe has two prices; keep one' }),
    );
  });

  it('leave one line, the total, of an empty list, and count one item without a price as one', () => {
    expect(costLines([], [price], 0)).toEqual([{ item: 'total', needed: undefined, packs: undefined, cost: 0 }]);
    const [, total] = costLines([{ item: 'seal', quantity: 1 }], [price], 0);
    expect(total).toEqual({
      item: 'total without 1 item that has no price',
      needed: undefined,
      packs: undefined,
      cost: 0,
    });
  });
});

describe('building against buying', () => {
  it('needs a price to buy', () => {
    for (const bought of [0, -1]) {
      expect(() => costCompare(100, bought, 1, 0, 0)).toThrow(
        expect.objectContaining({ argument: 'bought', advice: 'give the price of one bought, more than 0' }),
      );
    }
    expect(costCompare(100, 0.01, 1, 0, 0).saved).toBeCloseTo(-99.99, 9);
  });

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
