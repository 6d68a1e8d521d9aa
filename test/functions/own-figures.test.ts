import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { ownFiguresOracle } from '../oracles/own-figures';
import { call, refusal, spill } from './call';

describe('STOCK.COEFFICIENT', () => {
  it.each(ownFiguresOracle.growth)(
    'is the regression of a reference library: $name',
    ({ rows, coefficient, error }) => {
      const [line] = spill('STOCK.COEFFICIENT', 'metric', rows);
      expect(Number(line?.[0]) / coefficient).toBeCloseTo(1, 8);
      expect(Number(line?.[1]) / error).toBeCloseTo(1, 7);
      expect(line?.[2]).toBe(rows.length);
    },
  );

  it('finds the coefficient by which STOCK.GROW made the weighings, in either unit system', () => {
    const day = (days: number) => call('STOCK.GROW', 'US', '20 g', days, '15 °C', 0.17);
    const rows = [0, 20, 45].map((days) => [46000 + days, day(days), '15 °C']);
    const [line] = spill('STOCK.COEFFICIENT', 'US', rows);
    expect(line?.[0]).toBeCloseTo(0.17, 9);
    expect(line?.[1]).toBeCloseTo(0, 7);
  });

  it('ignores the temperature of the first row, and asks for the others', () => {
    const rows = [
      [46000, 50, ''],
      [46030, 84, 14],
      [46060, 121, 15],
    ];
    const again = rows.map((row, i) => (i === 0 ? [46000, 50, 30] : row));
    expect(spill('STOCK.COEFFICIENT', 'metric', rows)).toEqual(spill('STOCK.COEFFICIENT', 'metric', again));
    const missing = rows.map((row, i) => (i === 1 ? [46030, 84, ''] : row));
    expect(refusal('STOCK.COEFFICIENT', 'metric', missing)).toMatch(/row 2 has no temperature/);
  });

  it.each([
    [
      'two weighings',
      [
        [46000, 50, 14],
        [46030, 84, 14],
      ],
      /at least three/,
    ],
    [
      'dates that go back',
      [
        [46000, 50, 14],
        [46030, 84, 14],
        [46020, 121, 15],
      ],
      /row 3 is not later/,
    ],
    [
      'a date twice',
      [
        [46000, 50, 14],
        [46000, 84, 14],
        [46020, 121, 15],
      ],
      /row 2 is not later/,
    ],
    [
      'fish that did not grow',
      [
        [46000, 50, 14],
        [46030, 50, 14],
        [46060, 50, 15],
      ],
      /did not grow/,
    ],
    [
      'water at 0 °C',
      [
        [46000, 50, '0 °C'],
        [46030, 84, '0 °C'],
        [46060, 121, '0 °C'],
      ],
      /degree-days/,
    ],
    [
      'masses in the wrong unit',
      [
        [46000, 50, 14],
        [46010, 8400, 14],
        [46020, 50000, 15],
      ],
      /no farmed fish/,
    ],
  ])('refuses %s in a sentence', (_, rows, sentence) => {
    expect(refusal('STOCK.COEFFICIENT', 'metric', rows)).toMatch(sentence);
  });
});

describe('STOCK.CONVERSION and LOAD.SHARE', () => {
  it('counts dead fish as growth, and does not divide by nothing', () => {
    expect(call('STOCK.CONVERSION', 'metric', 30, 24, 1)).toBeCloseTo(1.2, 12);
    expect(call('STOCK.CONVERSION', 'US', '30 kg', '24 kg', '1 kg')).toBeCloseTo(1.2, 12);
    expect(refusal('STOCK.CONVERSION', 'metric', 30, -1, 1)).toMatch(/nothing was gained/);
  });

  it('undoes LOAD.SOLIDS for what is captured', () => {
    const solids = Number(call('LOAD.SOLIDS', 'US', 12, 0.22));
    expect(call('LOAD.SHARE', 'US', solids * 0.54, 12, 0.54)).toBeCloseTo(0.22, 12);
    expect(refusal('LOAD.SHARE', 'metric', 31, 30)).toMatch(/the solids would be .* of the feed/);
    expect(refusal('LOAD.SHARE', 'metric', 3, 30, '0 %')).toMatch(/captured/);
  });
});

describe('FILTER.TEST', () => {
  it('gives the mean share and its standard error as worked by hand', () => {
    const [line] = spill('FILTER.TEST', 'metric', '100 L/min', [[1], [1.2], [0.8]], [[0.65], [0.8], [0.5]], 20);
    const shares = [0.35, 1 / 3, 0.375];
    const mean = shares.reduce((sum, one) => sum + one) / 3;
    const error = Math.sqrt(shares.reduce((sum, one) => sum + (one - mean) ** 2, 0) / 2 / 3);
    expect(line?.[0]).toBeCloseTo((0.144 * 1.05) / 3, 12);
    expect(line?.[1]).toBeCloseTo(mean, 12);
    expect(line?.[2]).toBeCloseTo((1000 * 0.144 * 1.05) / 3 / 20, 9);
    expect(line?.[3]).toBe(line?.[2]);
    expect(line?.[4]).toBeCloseTo(error, 12);
  });

  it('has no error from one pair, no rate without an area, and none at 20 °C from water that was not studied', () => {
    expect(spill('FILTER.TEST', 'metric', 100, 1, 0.6)[0]?.slice(2)).toEqual(['', '', '']);
    expect(spill('FILTER.TEST', 'metric', 100, 1, 0.6, 20, 10)[0]?.[3]).toBe('');
  });

  it('gives a rate at 20 °C that FILTER.NITRIFY carries back to the one measured', () => {
    for (const celsius of [14, 17, 20, 26]) {
      const [line] = spill('FILTER.TEST', 'US', 30, 1, 0.6, 200, `${celsius} °C`);
      expect(call('FILTER.NITRIFY', 'US', line?.[3], `${celsius} °C`)).toBeCloseTo(Number(line?.[2]), 9);
    }
  });

  it('says how much less than its rate at 20 °C a cautious plan takes', () => {
    const notes = catalogue.find(({ name }) => name === 'FILTER.TEST')?.notes?.join(' ') ?? '';
    const said = [...notes.matchAll(/(\d+) % less if (?:you measured )?at (\d+) °C/g)];
    expect(said).toHaveLength(2);
    for (const [, percent, celsius] of said) {
      const [line] = spill('FILTER.TEST', 'metric', 100, 1, 0.6, 20, Number(celsius));
      const cautious = Number(call('FILTER.NITRIFY', 'metric', line?.[2], 20, Number(celsius)));
      expect(100 * (1 - cautious / Number(line?.[3]))).toBeCloseTo(Number(percent), -0.5);
    }
  });

  it('reads readings as NH3, and leaves out headings and rows blank at both ends', () => {
    const plain = spill('FILTER.TEST', 'metric', 100, [[1], [1.2]], [[0.6], [0.7]]);
    expect(spill('FILTER.TEST', 'metric', 100, [['in'], [1], [''], [1.2]], [['out'], [0.6], [''], [0.7]])).toEqual(
      plain,
    );
    const asAmmonia = spill('FILTER.TEST', 'metric', 100, '1.21589 mg/L as NH3', 0.6);
    expect(asAmmonia[0]?.[1]).toBeCloseTo(0.4, 4);
  });

  it.each([
    ['readings that do not pair', [[1], [1.2]], [[0.6], ['']], /outlet: row 2 is blank/],
    ['an inlet without ammonia', [[0], [1.2]], [[0], [0.4]], /row 1 has no ammonia/],
    ['a filter that removes none', [[1], [1]], [[1], [1]], /removes none/],
    ['words', [['much'], [1]], [['little'], ['x']], /outlet: row 2/],
  ])('refuses %s in a sentence', (_, inlet, outlet, sentence) => {
    expect(refusal('FILTER.TEST', 'metric', 100, inlet, outlet)).toMatch(sentence);
  });
});

describe('AIR.TEST', () => {
  it.each(ownFiguresOracle.air)(
    'is the regression of a reference library: $name',
    ({ rows, saturation, rate, error }) => {
      const [line] = spill('AIR.TEST', 'metric', rows, 1000, 20);
      expect(Number(line?.[0]) / rate).toBeCloseTo(1, 6);
      expect(Number(line?.[2]) / saturation).toBeCloseTo(1, 6);
      expect(Number(line?.[4]) / error).toBeCloseTo(1, 5);
    },
  );

  it('finds the transfer that made the log, corrected to 20 °C and the volume', () => {
    const rows = [0, 4, 8, 12, 18, 25, 35].map((t) => [t, 9.8 - 9 * Math.exp((-6 * t) / 60)]);
    const [line] = spill('AIR.TEST', 'US', rows, '2 m3', '16 °C');
    expect(line?.[0]).toBeCloseTo(6, 8);
    expect(line?.[1]).toBeCloseTo(6 * 1.024 ** 4, 8);
    expect(line?.[2]).toBeCloseTo(9.8, 8);
    expect(Number(line?.[3]) * 0.45359237).toBeCloseTo((6 * 1.024 ** 4 * 9.0924 * 2) / 1000, 4);
    expect(line?.[4]).toBeCloseTo(0, 6);
  });

  const good = [
    [0, 1],
    [2, 3.3],
    [4, 5],
    [6, 6.2],
    [8, 7.1],
    [12, 8],
    [18, 8.7],
  ];
  it.each([
    ['two readings', good.slice(0, 2), /at least four/],
    ['times that go back', [...good.slice(0, 3), [3, 6.2], ...good.slice(4)], /row 4 is not later/],
    ['a constant log', good.map(([t]) => [t, 5]), /does not rise/],
    ['oxygen above any saturation', [...good, [25, 14]], /row 8 holds more oxygen/],
    ['a log that begins late', good.slice(2), /a third and nine tenths/],
    ['a log that ends early', good.slice(0, 4), /a third and nine tenths/],
    ['a straight line', [0, 1, 2, 3, 4, 5].map((t) => [t, 1 + 1.6 * t]), /level off/],
  ])('refuses %s in a sentence', (_, rows, sentence) => {
    expect(refusal('AIR.TEST', 'metric', rows, 1000, 20)).toMatch(sentence);
  });

  it('judges saturation at the height of the farm', () => {
    expect(refusal('AIR.TEST', 'metric', good, 1000, 20, '3000 m')).toMatch(/more oxygen than air can dissolve/);
  });
});
