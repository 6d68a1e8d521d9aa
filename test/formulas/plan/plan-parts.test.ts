import { describe, expect, it } from 'vitest';
import type { Bank, BankFactors } from '../../../src/formulas/plan/plan-bank';
import { planParts } from '../../../src/formulas/plan/plan-parts';

const inch = 0.0254;
const bank: Bank = {
  drums: 4,
  drumDiameter: 22.5 * inch,
  drumHeight: 33 * inch,
  coneBottom: 4 * inch,
  coneHeight: 9.25 * inch,
  pieces: 1,
  lap: 0.75 * inch,
  thickness: 0,
  rivetSpacing: 1.5 * inch,
  sheetLength: 96 * inch,
  sheetWidth: 48 * inch,
  gap: 0,
  baseRise: 0,
  mixParts: 6,
  pipeSize: '2 in pipe',
  wallSeal: 'grommet',
  containerHeight: 14 * inch,
  drainDrop: 6 * inch,
  legs: 4,
};
const factors: BankFactors = { mixWaste: 0, bag: 94 * 0.45359237, standClearance: 1 * inch, mortar: 3, bead: 0.006 };
const quantity = (item: string, changed: Partial<Bank> = {}) =>
  planParts({ ...bank, ...changed }, factors).find((part) => part.item === item)?.quantity.si;

describe('the parts of a settling bank', () => {
  it('take drums, drains and pails by the piece', () => {
    expect(
      ['drums', 'drain fittings', 'drain plugs', 'drain valves', 'flattened seats'].map((item) => quantity(item)),
    ).toEqual(Array(5).fill(4));
    expect(quantity('pail')).toBe(1);
  });

  it('have nine rivets along a seam of 13.08 in at 1.5 in, for every seam of every cone', () => {
    expect(quantity('rivets')).toBe(36);
    expect(quantity('rivets', { pieces: 3 })).toBe(108);
    expect(planParts({ ...bank, lap: 0 }, factors).find((part) => part.item === 'rivets')?.how.text).toContain(
      'rivets need a lap',
    );
  });

  it('have base mix for what the drums hold beside 6.418 gal of cone', () => {
    const gallon = 231 * inch ** 3;
    const beside = (Math.PI / 4) * 22.5 ** 2 * 9.25 * inch ** 3 - 6.418 * gallon;
    expect(quantity('base mix aggregate')! / (4 * beside)).toBeCloseTo(1, 3);
    expect(quantity('base mix cement')).toBe(1);
  });

  it('stand as high as pail, valve and room above the pail need: 21 in on 16 legs', () => {
    expect(quantity('stand posts')! / inch).toBeCloseTo(21 * 16, 9);
  });

  it('choose between grommets and bulkheads, two a drum', () => {
    expect([quantity('wall grommets'), quantity('bulkhead fittings')]).toEqual([8, undefined]);
    const bulkhead = { wallSeal: 'bulkhead' } as const;
    expect([quantity('wall grommets', bulkhead), quantity('bulkhead fittings', bulkhead)]).toEqual([undefined, 8]);
  });

  it('grow with the bank in all but the pail and the sheet', () => {
    const eight = new Map(planParts({ ...bank, drums: 8 }, factors).map((part) => [part.item, part.quantity.si]));
    for (const { item, quantity: four } of planParts(bank, factors)) {
      if (['pail', 'sheet for cones', 'base mix cement'].includes(item)) continue;
      expect(eight.get(item)! / four.si, item).toBeCloseTo(2, 9);
    }
  });

  it('say for each part how it was calculated, with a figure for every mark', () => {
    for (const { item, how } of planParts(bank, factors)) {
      expect(how.text.length, item).toBeGreaterThan(6);
      for (const [, mark] of how.text.matchAll(/\{(\w+)[:}]/g)) expect(how.figures, item).toHaveProperty(mark!);
    }
  });

  it('refuse a cone that is taller than its drum', () => {
    expect(() => planParts({ ...bank, coneHeight: 33 * inch }, factors)).toThrow('coneHeight');
    expect(() => planParts({ ...bank, baseRise: 30 * inch }, factors)).toThrow('coneHeight');
  });
});
