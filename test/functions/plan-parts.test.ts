import { describe, expect, it } from 'vitest';
import { partsOfDrum } from '../../src/catalogue/plan/plan-parts';
import { readProfile } from '../../src/units/profile';
import { call, refusal, spill } from './call';

const bank: readonly (readonly unknown[])[] = [
  ['drums', 4],
  ['drum diameter', '22.5 in'],
  ['drum height', '33 in'],
  ['cone bottom', '4 in'],
  ['cone height', '9.25 in'],
  ['pieces', 2],
  ['lap', '3/4 in'],
  ['thickness', '0.06 in'],
  ['rivet spacing', '1.5 in'],
  ['sheet length', '96 in'],
  ['sheet width', '48 in'],
  ['base rise', '1 in'],
  ['mix parts', 5],
  ['pipe size', '1-1/2'],
  ['wall seal', 'bulkhead'],
  ['container height', '14 in'],
  ['drain drop', '6 in'],
  ['legs', 3],
];
/** What each drum needs, in the units of a profile, without the search for the sheets. */
const ofDrums = (units: string, cells = bank) =>
  partsOfDrum(cells as Parameters<typeof partsOfDrum>[0], readProfile(units));
const changed = (name: string, value: unknown) => bank.map((row) => (row[0] === name ? [name, value] : row));

describe.each(['metric', 'US', 'US, dimension mm, bulk gal'])('PLAN.PARTS under %s', (units) => {
  const parts = new Map(spill('PLAN.PARTS', units, bank).map(([item, quantity, unit]) => [item, { quantity, unit }]));
  const quantity = (item: string) => parts.get(item)!.quantity as number;
  const pattern = spill('CONE.PATTERN', units, '22.5 in', '4 in', '9.25 in', 2, '3/4 in', '0.06 in');
  const slant = pattern[0]![1];

  it('takes the sheets of CUT.SHEETS', () => {
    const rows = Array.from({ length: 4 }, () => pattern[0]);
    expect(quantity('sheet for cones')).toBe(call('CUT.SHEETS', units, rows, '96 in', '48 in'));
  });

  it('keeps the gap that CUT.SHEETS is given', () => {
    const rows = Array.from({ length: 4 }, () => pattern[0]);
    const wide = new Map(spill('PLAN.PARTS', units, [...bank, ['gap', '5 in']]).map(([item, count]) => [item, count]));
    expect(wide.get('sheet for cones')).toBe(call('CUT.SHEETS', units, rows, '96 in', '48 in', '5 in'));
    expect(wide.get('sheet for cones')).not.toBe(call('CUT.SHEETS', units, rows, '96 in', '48 in'));
  });

  it('takes the rivets of CONE.RIVETS, for two seams of four cones', () => {
    expect(quantity('rivets')).toBe(8 * (call('CONE.RIVETS', units, slant, '1.5 in') as number));
  });

  it('takes the base mix of CONE.BACKFILL and the bags of CONE.MIX', () => {
    const thickness = '0.06 in';
    const behind = call('CONE.BACKFILL', units, '22.5 in', '22.5 in', '4 in', '9.25 in', thickness, 'fit', '1 in');
    const [mix] = spill('CONE.MIX', units, 4 * (behind as number), 5);
    expect(quantity('base mix aggregate') / (mix![0] as number)).toBeCloseTo(1, 12);
    expect(quantity('base mix cement')).toBe(mix![2]);
    expect(parts.get('base mix aggregate')!.unit).toBe(call('UNIT.LABEL', units, 'bulk'));
  });

  it('stands as high as TANK.STAND says, on three legs a drum', () => {
    const height = call('TANK.STAND', units, '14 in', '6 in') as number;
    const run = call('UNIT.LABEL', units, 'run') as string;
    const posts = call('UNIT.CONVERT', 12 * height, call('UNIT.LABEL', units, 'dimension'), run) as number;
    expect(quantity('stand posts') / posts).toBeCloseTo(1, 12);
  });

  it('fills twice for the leak tests as TANK.VOLUME says', () => {
    const before = call('TANK.VOLUME', units, '22.5 in', '33 in') as number;
    const after = call('TANK.VOLUME', units, '22.5 in', '22.75 in', '4 in', '9.25 in') as number;
    expect(quantity('leak-test water') / (4 * (before + after))).toBeCloseTo(1, 12);
  });

  it('is an items table for COST.LINES, which finds each price by name and unit', () => {
    const rows = spill('PLAN.PARTS', units, bank, true);
    const prices = rows.slice(1).map(([item, , unit]) => [item, 1, 2, unit]);
    const lines = spill('COST.LINES', rows, prices);
    expect(lines.at(-1)![0]).toBe('total');
    expect(lines.length).toBe(rows.length);
    expect(lines.map(([item]) => item).slice(0, -1)).toEqual(rows.slice(1).map(([item]) => item));
  });
});

describe('the list of parts', () => {
  it('has everything that is bought', () => {
    const items = spill('PLAN.PARTS', 'US', bank).map(([item]) => item);
    expect(items).toEqual([
      'drums',
      'sheet for cones',
      'rivets',
      'base mix aggregate',
      'base mix cement',
      'bedding mortar',
      'sealant',
      'drain fittings',
      'flattened seats',
      'drain plugs',
      'drain valves',
      'bulkhead fittings',
      'pipe',
      'elbows',
      'unions',
      'stand posts',
      'stand tops',
      'pail',
      'leak-test water',
    ]);
  });

  it('has plain figures, units and reasons', () => {
    for (const [item, quantity, unit, how] of spill('PLAN.PARTS', 'metric', bank)) {
      expect(typeof quantity, String(item)).toBe('number');
      expect(unit, String(item)).not.toBe('');
      expect(String(how), String(item)).not.toMatch(/[{}]|undefined|NaN/);
    }
  });

  it('says which input is at fault', () => {
    const says = (name: string, value: unknown) => refusal('PLAN.PARTS', 'US', changed(name, value));
    expect(says('drums', 0)).toContain('bank: drums: 0 or blank is not allowed; give a whole number from 1 to 100');
    expect(says('drums', 'none')).toContain('bank: drums: none is not allowed; give a whole number from 1 to 100');
    expect(says('drum height', '8 in')).toContain(
      'bank: cone height: 9.25 in is not allowed; together with the base rise it leaves no room for water',
    );
    expect(says('cone bottom', '30 in')).toContain(
      'bank: cone bottom: 30 in is not allowed; give a length from 0 up to top (22.5 in)',
    );
    expect(says('sheet length', '10 in')).toContain('bank: pieces: 2 is not allowed; row 1 in 2 pieces');
    expect(says('wall seal', 'glue')).toContain('bank: wall seal: glue is not allowed; give grommet or bulkhead');
    expect(says('pipe size', '2 kg')).toContain('bank: pipe size: ');
    expect(refusal('PLAN.PARTS', 'US', bank.slice(1))).toContain('bank: drums: its row is missing');
    expect(refusal('PLAN.PARTS', 'US', [...bank, ['drum', 4]])).toContain(
      'bank: row 19: drum is not an input; nearest are drums',
    );
  });
});

describe('the parts of each drum', () => {
  it('are those of the whole list but for sheets, rivets and base mix', () => {
    const whole = spill('PLAN.PARTS', 'US', bank).map(([item]) => item);
    const own = ofDrums('US').map(({ item }) => item);
    const shared = ['drums', 'sheet for cones', 'rivets', 'base mix aggregate', 'base mix cement', 'leak-test water'];
    expect(own).toEqual(whole.filter((item) => !shared.includes(String(item))));
    expect(() => ofDrums('US', changed('cone height', '33 in'))).toThrow(/^bank: cone height: /);
  });
});
