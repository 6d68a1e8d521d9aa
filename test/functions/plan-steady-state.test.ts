import { describe, expect, it } from 'vitest';
import { waterOxygen } from '../../src/formulas/water/water-oxygen';
import { call, refusal, spill } from './call';
import { CellError } from './cell-error';

type Row = readonly [name: string, value: string | number];

/** 350 fish of 250 g at 1.5 %, 120 L/min through two swirl drums, no pads, no beds, nothing that decays. */
const farm: readonly Row[] = [
  ['fish count', 350],
  ['fish mass', '250 g'],
  ['feeding rate', '1.5 %'],
  ['pump flow', '120 L/min'],
  ['drums', 2],
  ['pads', 'none'],
  ['bed area', 'none'],
];
const padded: readonly Row[] = [...farm.filter(([name]) => name !== 'pads'), ['pads', 4], ['pad area', '0.3 m2']];
const compared = (units: string, rows: readonly Row[]) =>
  new Map(spill('PLAN.COMPARE', units, rows).map(([name, , value]) => [name as string, value]));
const balanced = (units: string, rows: readonly Row[]) =>
  new Map(spill('PLAN.BALANCE', units, rows).map(([where, ...figures]) => [where as string, figures]));
const KILOGRAM = { metric: 1, US: 0.45359237 } as const;

describe.each(['metric', 'US'] as const)('a farm at steady state under %s', (units) => {
  const kilograms = (value: unknown) => (value as number) * KILOGRAM[units];

  // 0.328125 kg a day, of which 45 % settle. Drums take 0.371 / 0.45 of that a pass; pads half of all that reaches them.
  it('takes in drums and pads what the balance of each part gives: 0.133 and 0.195 kg a day', () => {
    const results = compared(units, padded);
    const pass = 0.371 / 0.45;
    const drums = (0.328125 * 0.45 * pass) / (1 - (1 - pass) / 2);
    expect(kilograms(results.get('solids captured'))).toBeCloseTo(drums, 9);
    expect(kilograms(results.get('solids captured'))).toBeCloseTo(0.133, 3);
    expect(kilograms(results.get('solids to pads'))).toBeCloseTo(0.195, 3);
  });

  it('says that fine solids rise, and that no flow helps, where neither pads nor beds are', () => {
    const results = compared(units, farm);
    expect(kilograms(results.get('solids captured'))).toBeCloseTo(0.328125 * 0.45, 9);
    expect([results.get('solids in tank'), results.get('flow needed'), results.get('flow set by')]).toEqual([
      'rises',
      'never',
      'solids',
    ]);
    const cautions = spill('PLAN.CHECK', units, farm).join(' ');
    expect(cautions).toContain('Nothing removes 55 % of the solids');
    expect(cautions).toContain(`A full drum weighs about ${units === 'US' ? '500 lb' : '230 kg'}: floor`);
  });

  it('has a balance whose solids close, each figure in portions', () => {
    const rows = balanced(units, [...padded, ['tank volume', '4 m3'], ['water out', '100 L'], ['conversion', 1.6]]);
    const [solids] = rows.get('in') as number[];
    const [, , , , ...rest] = [...rows.keys()];
    expect([...rows.keys()].slice(0, 4)).toEqual(['in', 'kept by fish', 'drums', 'pads']);
    expect(rest).toEqual(['beds', 'plants', 'let out', 'air', 'builds up', 'traced', 'not traced']);
    expect(Math.abs((rows.get('not traced') as number[])[0]!) / solids!).toBeLessThan(1e-9);
    const portion = call('UNIT.READ', units, 'portion', '328.125 g');
    expect(solids).toBeCloseTo(portion as number, 9);
  });

  it('leaves what fish keep blank without conversion', () => {
    expect(balanced(units, padded).get('kept by fish')).toEqual([0, '', '']);
  });
});

describe('figures that cannot all be right', () => {
  it('trace 106 % of the nitrogen fed, and PLAN.CHECK names the inputs', () => {
    const rows = balanced('metric', [...padded, ['conversion', 1.5]]);
    const [, fed] = rows.get('in') as number[];
    const [, traced] = rows.get('traced') as number[];
    expect(traced! / fed!).toBeCloseTo((0.32 * 0.092 + 0.25 * 0.0283 + 0.027 / 1.5) / (0.32 * 0.16), 9);
    expect(traced! / fed!).toBeCloseTo(1.06, 2);
    const cautions = spill('PLAN.CHECK', 'metric', [...padded, ['conversion', 1.5]]).join(' ');
    expect(cautions).toMatch(/traces 106\.5 % of the nitrogen fed: protein, .*conversion and fish nitrogen/);
  });
});

describe('limits of the species', () => {
  const trout: readonly Row[] = [...padded, ['species', 'rainbow trout'], ['tank volume', '4 m3']];

  it('are the defaults, and said to be from species', () => {
    const taken = String(compared('metric', trout).get('defaults taken'));
    for (const name of ['oxygen floor', 'ammonia limit', 'un-ionized ammonia limit', 'carbon dioxide limit'])
      expect(taken).toContain(`${name} (from species)`);
    // From 6 to 5 mg/L, not to 3: a third of the time that an unnamed fish has.
    const [named, unnamed] = [trout, trout.filter(([name]) => name !== 'species')].map(
      (rows) => compared('metric', rows).get('oxygen time') as number,
    );
    expect(named! / unnamed!).toBeCloseTo((6 - 5) / (6 - 3), 9);
  });

  it('give way to what is typed', () => {
    const taken = String(compared('metric', [...trout, ['oxygen floor', '4 mg/L']]).get('defaults taken'));
    expect(taken).not.toContain('oxygen floor');
  });

  it('set four times the flow at pH 8.5 and 30 °C that 1 mg/L of total ammonia does', () => {
    const cool = compared('metric', padded);
    const hot = compared('metric', [...padded, ['temperature', '30 °C'], ['pH', 8.5]]);
    expect(hot.get('flow set by')).toBe('un-ionized ammonia');
    const share = call('WATER.AMMONIA', 'metric', 1, 8.5, '30 °C') as number;
    expect((hot.get('flow needed') as number) / (cool.get('flow needed') as number)).toBeCloseTo(share / 0.05, 2);
    expect(share / 0.05).toBeGreaterThan(3.9);
  });
});

describe('oxygen at power failure', () => {
  const high: readonly Row[] = [...padded, ['tank volume', '4 m3'], ['temperature', '30 °C'], ['elevation', '2500 m']];

  it('is never above what the hottest water holds at the elevation: 5.5 mg/L at 30 °C and 2500 m', () => {
    const held = waterOxygen(30, 2500, 0) * 1e3;
    expect(held).toBeCloseTo(5.5, 1);
    const time = compared('metric', high).get('oxygen time') as number;
    const low = compared('metric', [...high.slice(0, -1), ['elevation', 0]]).get('oxygen time') as number;
    expect(time / low).toBeCloseTo((held - 3) / (6 - 3), 9);
    const cautions = spill('PLAN.CHECK', 'metric', high).join(' ');
    expect(cautions).toContain(`oxygen falls from ${held.toPrecision(4)} mg/L to 3 mg/L`);
  });

  it('is refused where the water cannot hold the floor, naming the hottest water', () => {
    const [[, , error]] = spill(
      'PLAN.COMPARE',
      'metric',
      [...high, ['oxygen floor', '5.6 mg/L']].map((row) => [...row, row[1]]),
    ) as [unknown[]];
    expect(error).toBeInstanceOf(CellError);
    expect((error as CellError).message).toContain(
      'hottest water: 30 °C is not allowed; at this elevation and salinity it holds only 5.4852',
    );
  });
});

describe('what bad input gets', () => {
  it.each<readonly [title: string, says: string, name: string, values: readonly unknown[]]>([
    ['a stage share above 1', 'removal', 'LOAD.SHARES', ['1 kg/d', 100, [['drums', 1.2]]]],
    ['a share above 1', 'removal', 'LOAD.LEVEL', ['1 kg/d', 100, '120 %']],
    [
      'nothing that takes the waste',
      '#VALUE! nothing removes the waste, so it rises without end; give flow and removal',
      'LOAD.LEVEL',
      ['1 kg/d', 0, 0.5],
    ],
    [
      'a system that is smaller than its tank',
      'tank volume: 4000 L is not allowed; give up to system volume (3000 L)',
      'PLAN.BALANCE',
      [
        [
          ['feed', 1],
          ['tank volume', 4000],
          ['system volume', 3000],
        ],
      ],
    ],
    ['stages that take nothing', 'nothing removes the waste', 'LOAD.SHARES', ['1 kg/d', 100, [['drums', 0]]]],
    [
      'a species without figures',
      'species: unicorn is not allowed',
      'PLAN.BALANCE',
      [
        [
          ['feed', 1],
          ['species', 'unicorn'],
        ],
      ],
    ],
    [
      'a spread that nobody has measured',
      'settling spread: 7 is not allowed; at steady state the slowest solids decide, and nobody has measured those; give up to 6',
      'PLAN.BALANCE',
      [
        [
          ['feed', 1],
          ['settler', 'mixed'],
          ['settling spread', 7],
        ],
      ],
    ],
  ])('%s', (_, says, name, values) => {
    expect(refusal(name, 'metric', ...values)).toContain(says);
  });

  it('lets a measured settler have any spread', () => {
    expect(
      call('PLAN.BALANCE', 'metric', [
        ['feed', 1],
        ['settling spread', 7],
      ]),
    ).toBe('in');
  });
});

describe('LOAD.SHARES', () => {
  it('has rows of decay and water let out where they take anything, and the load as total', () => {
    const rows = spill(
      'LOAD.SHARES',
      'US',
      '1 lb/d',
      '30 gpm',
      [
        ['drums', 0.371],
        ['pads', '50 %'],
      ],
      '1000 gal',
      0.5,
      '50 gal',
      true,
    );
    expect(rows[0]).toEqual(['stage', 'share of the load', 'a day (lb/d)', 'level after it (mg/L)']);
    expect(rows.map(([stage]) => stage)).toEqual(['stage', 'drums', 'pads', 'decay', 'let out', 'total']);
    expect(rows.at(-1)!.slice(1, 3)).toEqual([1, 1]);
    const level = call('LOAD.LEVEL', 'US', '1 lb/d', '30 gpm', 1 - 0.629 * 0.5, '1000 gal', 0.5, '50 gal');
    expect(rows.at(-1)![3]).toBeCloseTo(level as number, 9);
  });

  it('gives the published example: 0.5412 and 0.4588', () => {
    const rows = spill('LOAD.SHARES', 'metric', '328.125 g/d', 120, [
      ['a', 0.371],
      ['b', 0.5],
    ]);
    expect(rows.map(([, share]) => Number((share as number).toFixed(4)))).toEqual([0.5412, 0.4588, 1]);
  });
});
