import { describe, expect, it } from 'vitest';
import type { Bank, BankFactors } from '../../../src/formulas/plan/plan-bank';
import { partsPerDrum, planParts } from '../../../src/formulas/plan/plan-parts';
import { refusalOf } from '../refusal-of';

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

/** Without the sheets, and so without a search. */
const part = (item: string, changed: Partial<Bank> = {}) =>
  partsPerDrum({ ...bank, ...changed }, factors).find((one) => one.item === item);

describe('what each drum of a bank needs', () => {
  /** Slant of a cone from 22.5 to 4 in over 9.25 in of height, in. */
  const slant = Math.hypot(9.25, 9.25);

  it('is 3 kg of mortar to a square meter of cone, whatever the pieces', () => {
    const cones = 4 * Math.PI * (11.25 + 2) * slant * inch ** 2;
    for (const pieces of [1, 2, 3])
      expect(part('bedding mortar', { lap: 0, pieces })?.quantity.si).toBeCloseTo(3 * cones, 9);
  });

  it('is a bead of sealant, 6 mm by 6 mm, round the rim and the drain and along each seam', () => {
    const joints = (pieces: number) => 4 * (Math.PI * (22.5 + 4) + pieces * slant) * inch;
    for (const pieces of [1, 3])
      expect(part('sealant', { pieces })?.quantity.si).toBeCloseTo(joints(pieces) * 0.006 ** 2, 9);
  });

  it('is pipe for two ports and two headers of a drum diameter each, and the drop of the drain', () => {
    expect(part('pipe')!.quantity.si / inch).toBeCloseTo(4 * (2 * 22.5 + 6 + 2 * 22.5), 9);
  });

  it('is a stand: 21 in high on four legs under a square as wide as the drum', () => {
    expect(part('stand posts')!.quantity.si / inch).toBeCloseTo(21 * 16, 9);
    expect(part('stand posts')?.how.text).toContain('legs 16');
    expect(part('stand tops')!.quantity.si / inch ** 2).toBeCloseTo(4 * 22.5 ** 2, 9);
  });

  it('is only what its cone leaves room for: less than 33 in above a rise of 30', () => {
    const refused = (changed: Partial<Bank>) => refusalOf(() => part('pipe', changed));
    const { argument, figures } = refused({ baseRise: 30 * inch });
    expect(argument).toBe('coneHeight');
    expect(figures).toEqual({ limit: { value: expect.closeTo(3 * inch, 12), like: 'dimension' } });
    expect(refused({ baseRise: 40 * inch }).figures?.limit).toEqual({ value: 0, like: 'dimension' });
    expect(refused({ coneHeight: 33 * inch }).argument).toBe('coneHeight');
  });
});

describe('the parts of a settling bank', () => {
  it('take drums, drains and pails by the piece', () => {
    expect(
      ['drums', 'drain fittings', 'drain plugs', 'drain valves', 'flattened seats'].map((item) => quantity(item)),
    ).toEqual(Array(5).fill(4));
    expect(quantity('pail')).toBe(1);
  });

  it('have water to fill each drum twice: to its brim, and with its cone in', () => {
    const cylinder = (height: number) => (Math.PI / 4) * 22.5 ** 2 * height;
    const cone = 6.418 * 231;
    expect(quantity('leak-test water')! / inch ** 3 / (4 * (cylinder(33) + cylinder(33 - 9.25) + cone))).toBeCloseTo(
      1,
      4,
    );
    const raised = quantity('leak-test water', { baseRise: 2 * inch })! / inch ** 3;
    expect(raised / (4 * (cylinder(33) + cylinder(33 - 9.25 - 2) + cone))).toBeCloseTo(1, 4);
  });

  it('have nine rivets along a seam of 13.08 in at 1.5 in, for every seam of every cone', () => {
    expect(quantity('rivets')).toBe(36);
    const inThree = planParts({ ...bank, pieces: 3 }, factors);
    expect(inThree.find(({ item }) => item === 'rivets')).toMatchObject({ quantity: { si: 108 } });
    expect(inThree.find(({ item }) => item === 'rivets')?.how.text).toMatch(/seams 12$/);
    expect(inThree.find(({ item }) => item === 'sheet for cones')?.how.text).toContain('CUT.SHEETS: 12 pieces');
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
