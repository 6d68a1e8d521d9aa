import { describe, expect, it } from 'vitest';
import { spill } from './call';

type Row = readonly (string | number)[];

/** The farm of 350 fish that the stocking workbook has, with two of its figures as given. */
function farm(more: readonly Row[] = []): readonly Row[] {
  const rows = new Map<string, Row>(
    [
      ['fish count', 350],
      ['fish mass', 225],
      ['feeding rate', 0.015],
      ['species', 'tilapia'],
      ['protein', 0.32],
      ['temperature', 25],
      ['tank volume', 4200],
      ['pump flow', 94],
      ['air supply', 0.36],
      ['drum diameter', 570],
      ['drums', 2],
      ['pads', 4],
      ['pad area', 0.28],
      ['media volume', 680],
      ['bed area', 26],
      ...more,
    ].map((row) => [String(row[0]), row as Row]),
  );
  return [...rows.values()];
}

const range = (more: readonly Row[] = [], units = 'metric') => spill('PLAN.RANGE', units, farm(more)) as Row[];
const drivers = (result: string, more: readonly Row[] = [], units = 'metric') =>
  spill('PLAN.DRIVERS', units, farm(more), result) as Row[];
const rowOf = (rows: readonly Row[], name: string): Row => rows.find(([first]) => first === name) ?? [];
const number = (value: string | number | undefined): number => value as number;

describe('PLAN.RANGE', () => {
  it('gives a band for each result around the plan of PLAN.COMPARE, and chances that add up to 1', () => {
    const rows = range();
    const compare = spill('PLAN.COMPARE', 'metric', farm()) as Row[];
    for (const [name, unit, low, plan, high] of rows.filter(([first]) => compare.some(([one]) => one === first))) {
      const [, unitThere, there] = rowOf(compare, String(name));
      expect([name, unit, plan]).toEqual([name, unitThere, there]);
      if (typeof low === 'number' && typeof high === 'number') expect([name, low <= high]).toEqual([name, true]);
    }
    const chances = rows.filter(([name]) => String(name).startsWith('chance of first limit: '));
    expect(chances.length).toBeGreaterThan(6);
    expect(chances.reduce((sum, [, , , chance]) => sum + number(chance), 0)).toBeCloseTo(1, 12);
    expect(chances.map(([name]) => String(name).slice(23))).toContain('settling drums');
  });

  it('is the quantile of the one input that a result hangs on', () => {
    // Solids are feed x solids share alone; a triangle from 0.2 to 0.4 with its middle as mode has its tenth at 0.2 + 0.1 √0.2.
    const [, , low, plan, high] = rowOf(range([['solids share', '0.2 to 0.4']]), 'solids');
    const feed = 350 * 0.225 * 0.015;
    expect(Math.abs(number(low) - feed * (0.2 + 0.1 * Math.sqrt(0.2)))).toBeLessThan(0.0005 * feed);
    expect(plan).toBeCloseTo(feed * 0.3, 12);
    expect(Math.abs(number(high) - feed * (0.4 - 0.1 * Math.sqrt(0.2)))).toBeLessThan(0.0005 * feed);
  });

  it('gives the same again, and one more range changes no other input’s draws', () => {
    expect(range()).toEqual(range());
    const before = rowOf(range(), 'ammonia');
    expect(rowOf(range([['solids share', '0.2 to 0.3']]), 'ammonia')).toEqual(before);
  });

  it('does not vary what was typed as one figure, nor limits and choices', () => {
    const fixed = rowOf(range([['solids share', 0.25]]), 'solids');
    expect(new Set(fixed.slice(2)).size).toBe(1);
    const names = drivers('drums needed').map(([name]) => name);
    expect(names).not.toContain('overflow limit');
    expect(names).not.toContain('stocking limit');
    expect(names).not.toContain('protein');
    expect(names).toContain('solids share');
  });

  it('gives the same farm in both unit systems', () => {
    const metric = range();
    const US = spill(
      'PLAN.RANGE',
      'US',
      farm().map(([name, value]) => {
        const unit = { 'fish mass': 'g', temperature: '°C', 'tank volume': 'L', 'pump flow': 'L/min' }[String(name)];
        const more = { 'air supply': 'kg/h', 'drum diameter': 'mm', 'pad area': 'm2', 'media volume': 'L' }[
          String(name)
        ];
        const area = name === 'bed area' ? 'm2' : undefined;
        const symbol = unit ?? more ?? area;
        return [name ?? '', symbol === undefined ? (value ?? '') : `${value} ${symbol}`];
      }),
    ) as Row[];
    for (const name of ['feed', 'solids captured'])
      for (const at of [2, 3, 4])
        expect(number(rowOf(US, name)[at]) / number(rowOf(metric, name)[at])).toBeCloseTo(1 / 0.45359237, 8);
    expect(US.slice(-3).map((row) => row[3])).toEqual(metric.slice(-3).map((row) => row[3]));
  });

  it('counts the draws that a formula refuses in a last row, and has none where none is refused', () => {
    // Below oxygen out lie 2/6 of 4 to 10, and of that triangle with its middle as mode 2 x (2/6)2.
    const rows = range([
      ['oxygen in', '4 to 10'],
      ['oxygen out', 6],
    ]);
    const [name, , , refused] = rows.at(-1) ?? [];
    expect(name).toBe('draws refused');
    expect(Math.abs(number(refused) - 1024 * 2 * (2 / 6) ** 2)).toBeLessThan(1);
    expect(range().at(-1)?.[0]).toMatch(/^chance of first limit: (?!first limit)/);
    expect(range().map(([first]) => first)).not.toContain('draws refused');
  });

  it('tells ranges with the same middle apart', () => {
    const [, , low, , high] = rowOf(range([['solids share', '0.2 to 0.4']]), 'solids');
    const [, , narrowLow, , narrowHigh] = rowOf(range([['solids share', '0.28 to 0.32']]), 'solids');
    expect(number(narrowHigh) - number(narrowLow)).toBeLessThan(0.3 * (number(high) - number(low)));
  });

  it('lets the coldest water follow a range of temperatures, unless it is typed', () => {
    const share = (more: readonly Row[]) => rowOf(drivers('media surface', more), 'temperature')[7];
    expect(share([['temperature', '15 to 25']])).toBeGreaterThan(0.01);
    expect(
      share([
        ['temperature', '15 to 25'],
        ['coldest water', 15],
      ]),
    ).toBe(0);
  });

  it('ranks what never ends above every number', () => {
    // No pads, no beds: fine solids rise unless they decay or leave.
    const rows = range([
      ['pads', 'none'],
      ['bed area', 'none'],
      ['solids decay', 'none'],
    ]);
    expect(rowOf(rows, 'solids in tank').slice(2)).toEqual(['rises', 'rises', 'rises']);
  });
});

describe('PLAN.DRIVERS', () => {
  it('explains the whole variance of a result and no more, whatever chance adds', () => {
    // The shares of first order of a variance add up to 1 with what is joint: Saltelli et al. (2008).
    const typed: Row[] = [['solids share', '0.1 to 0.4']];
    for (const result of [
      'solids captured',
      'solids in tank',
      'pad change interval',
      'oxygen time',
      'nitrate in tank',
    ]) {
      const rows = drivers(result, typed);
      const shares = rows.map((row) => number(row.at(-1)));
      expect(
        shares.reduce((sum, share) => sum + share, 0),
        result,
      ).toBeCloseTo(1, 9);
      expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
    }
  });

  it('ranks what to measure first, with what no single input explains at the end', () => {
    const rows = drivers('solids captured');
    expect(rows[0]?.[0]).toBe('solids share');
    const shares = rows.slice(0, -1).map((row) => number(row[7]));
    expect(shares).toEqual([...shares].sort((one, other) => other - one));
    expect(shares.every((share) => share >= 0)).toBe(true);
    expect(rows.at(-1)?.[0]).toBe('together');
    const [, , low, plan, high, atLow, atHigh] = rows[0] ?? [];
    expect([low, plan, high]).toEqual([0.04, 0.25, 0.7]);
    const captured = number(rowOf(spill('PLAN.COMPARE', 'metric', farm()) as Row[], 'solids captured')[2]);
    expect(number(atLow)).toBeLessThan(captured);
    expect(number(atHigh)).toBeGreaterThan(captured);
  });

  it('have their figures in the units of their kind, and only words at the end', () => {
    const rows = drivers('media surface', [['nitrification', '0.3 to 0.6']]);
    expect(rowOf(rows, 'nitrification').slice(1, 5)).toEqual(['g/m2/d', 0.3, expect.closeTo(0.45, 12), 0.6]);
    expect(rows.at(-1)?.slice(0, 7)).toEqual(['together', '', '', '', '', '', '']);
  });

  it('leave out a range that is one figure', () => {
    const names = drivers('solids', [['solids share', '0.25 to 0.25']]).map(([name]) => name);
    expect(names).not.toContain('solids share');
    expect(names).toContain('alkali purity');
  });

  it('gives a share of 0 to what changes nothing', () => {
    const rows = drivers('ammonia');
    expect(rowOf(rows, 'pad holding')[7]).toBe(0);
    expect(rows[0]?.[0]).toBe('ammonia factor');
    expect(number(rows[0]?.[7])).toBeGreaterThan(0.95);
  });

  it('names the nearest result for one that there is not', () => {
    expect(() => spill('PLAN.DRIVERS', 'metric', farm(), 'flow neded')).toThrow(/flow needed/);
  });

  it('makes the band of a farm narrower by its own figures', () => {
    const width = (rows: readonly Row[], name: string): number => {
      const [, , low, , high] = rowOf(rows, name);
      return number(high) - number(low);
    };
    const own: readonly Row[] = [
      ['solids share', '0.27 ± 0.03'],
      ['removal', '0.4 ± 0.04'],
    ];
    expect(width(range(own), 'solids captured')).toBeLessThan(0.25 * width(range(), 'solids captured'));
    expect(width(range(own), 'flow needed')).toBeLessThan(0.5 * width(range(), 'flow needed'));
  });
});

describe('ranges in a scenario', () => {
  const told =
    (name: string, value: string): (() => unknown) =>
    () =>
      spill('PLAN.COMPARE', 'US', [
        ['feed', 1],
        [name, value],
      ]);

  it.each([
    ['solids share', '-0.1 to 0.3', /in -0\.1 to 0\.3, -0\.1 is not allowed; give a share of more than 0/],
    ['solids share', '0.4 to 0.2', /0\.4 to 0\.2 has its ends reversed; write 0\.2 to 0\.4/],
    ['solids share', '25 ± 5', /write 20 % or 0\.2/],
    ['solids share', '0.3 ± -1', /half-width below 0/],
    ['solids share', '1 to 2 gpm', /gpm/],
    ['drums', '2 to 4', /give one whole number/],
    ['pump flow', '0 to 4', /in 0 to 4, 0 is not allowed/],
    ['settler', 'swirl to 0.4', /swirl is a word/],
    ['species', 'trout to carp', /not allowed/],
  ])('%s %s is refused in a sentence', (name, value, words) => {
    expect(told(name, value)).toThrow(words);
  });

  it('are taken at their middle, and the defaults say so', () => {
    const rows = spill('PLAN.COMPARE', 'US', [
      ['fish count', 350],
      ['fish mass', '8 to 12 oz'],
      ['feeding rate', '1 % to 2 %'],
      ['solids share', '0.05 to 0.45'],
    ]) as Row[];
    expect(rowOf(rows, 'feed')[2]).toBeCloseTo(((350 * 10) / 16) * 0.015, 12);
    // Ends nine times apart: the geometric middle.
    expect(number(rowOf(rows, 'solids')[2]) / number(rowOf(rows, 'feed')[2])).toBeCloseTo(0.15, 12);
    expect(rowOf(rows, 'defaults taken')[2]).toMatch(
      /fish mass \(middle of 8 to 12 oz\), .*solids share \(middle of 0\.05 to 0\.45\)$/,
    );
  });
});
