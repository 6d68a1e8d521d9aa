import { describe, expect, it } from 'vitest';
import { coefficients } from '../../src/catalogue/coefficients/all';
import { call, refusal, spill } from './call';
import { CellError } from './cell-error';
import { farm, smallFarm } from './plan-farm';

type Rows = readonly (readonly unknown[])[];

const compare = (scenarios: Rows, units = 'metric') => spill('PLAN.COMPARE', units, scenarios);
const value = (block: unknown[][], name: string, column = 0) => block.find(([first]) => first === name)?.[column + 2];
const bare: Rows = [
  ['fish count', 120, 350],
  ['fish mass', 250, 250],
  ['feeding rate', 0.01, 0.01],
];
const withRow = (...row: readonly unknown[]): Rows => [...bare, row];
/** The message on top of a column. */
const fault = (scenarios: Rows, column: number) => {
  const first = compare(scenarios)[0]![column + 2];
  return first instanceof CellError ? `${first.code} ${first.message}` : '';
};

describe('PLAN.INPUTS', () => {
  const rows = () => spill('PLAN.INPUTS', 'US');

  it('lists the names that a scenario takes, in the order of the day', () => {
    const names =
      'fish count, fish mass, feeding rate, feed, species, protein, temperature, coldest water, hottest water, pH, highest pH, salinity, elevation, alkali, alkali purity, tank volume, system volume, water out, source nitrate, stocking limit, solids share, settleable share, solids decay, feed phosphorus, conversion, fish nitrogen, fish phosphorus, ammonia limit, un-ionized ammonia limit, carbon dioxide limit, solids limit, oxygen in, oxygen out, oxygen at power failure, oxygen floor, peak oxygen factor, removal, degassing, passive denitrification, pump flow, air supply, settler, drum diameter, drums, overflow limit, median settling, settling spread, pads, pad area, pad holding, pad capture, media, media volume, nitrification, filter reserve, bed area, bed capture, plant uptake, crop, bed depth, bed holding, nitrogen share, phosphorus share, potassium share, available nitrogen, slurry solids, garden need, phosphate need, power, power price, feed price, nitrogen price, phosphate price, potash price';
    expect(
      rows()
        .map(([name]) => name)
        .join(', '),
    ).toBe(names);
    expect(farm.map(([name]) => name)).toEqual(names.split(', ').filter((name) => name !== 'feed'));
  });

  it('gives each a default with its source, unless it is equipment or has to be given', () => {
    const without = rows()
      .filter(([, , , standard]) => standard === 'not given')
      .map(([name]) => name);
    for (const stage of ['tank volume', 'pump flow', 'air supply', 'drums', 'pads', 'media volume', 'bed area']) {
      expect(without).toContain(stage);
    }
    for (const [name, , , standard, source] of rows()) {
      if (standard !== 'not given' && standard !== 'required') expect(source, String(name)).not.toBe('');
    }
    const protein = rows().find(([name]) => name === 'protein')!;
    expect(protein[3]).toBe(call('REF.VALUE', 'US', 'protein'));
  });

  it('gives defaults that can be typed back', () => {
    const typed = rows().filter(([, , , standard]) => !/^(?:required|not given|as )/.test(String(standard)));
    const back = typed.map(([name, , , standard]) => [name, standard]);
    const fed = [['feed', 2.5]];
    const results = (block: unknown[][]) => block.slice(0, -1);
    const plain = results(spill('PLAN.COMPARE', 'US', fed));
    const given = results(spill('PLAN.COMPARE', 'US', [...fed, ...back]));
    given.forEach(([name, , figure], i) => {
      const other = plain[i]![2];
      if (typeof figure === 'number' && figure !== 0)
        expect((other as number) / figure, String(name)).toBeCloseTo(1, 9);
      else expect(other, String(name)).toBe(figure);
    });
  });

  it('says how each input is left out', () => {
    const row = (input: string) => rows().find(([name]) => name === input)!;
    const required = 'fish count, fish mass and feeding rate, or feed';
    for (const input of ['fish count', 'fish mass', 'feeding rate', 'feed'])
      expect(row(input).slice(3, 5)).toEqual(['required', required]);
    expect(row('drums').slice(3, 5)).toEqual(['not given', 'equipment: type none if the farm has none']);
    expect(row('power price').slice(3, 5)).toEqual(['not given', '']);
    expect(row('coldest water').slice(3, 5)).toEqual(['as temperature', 'another input']);
    expect(row('species').slice(1, 5)).toEqual(['choice', '', 'not given', '']);
    expect(row('settler').slice(1, 4)).toEqual(['choice or share', '', 'swirl']);
    expect(row('temperature').slice(2, 4)).toEqual(['°F', 68]);
    expect(row('salinity')[3]).toBe(0);
    expect(row('alkali').slice(1, 4)).toEqual(['choice', '', 'sodium bicarbonate']);
  });

  it('names the source of a coefficient, and says where one is only remembered', () => {
    const sourceOf = (key: string) => {
      const { source, known } = coefficients.find((one) => one.key === key)!;
      return known === 'memory' ? `${source} (from memory)` : source;
    };
    const listed = rows().filter(([name]) => coefficients.some(({ key }) => key === name));
    const own = listed.filter(([name, , , , source]) => source === sourceOf(String(name)));
    expect(own.length).toBeGreaterThan(20);
    const isRemembered = ([name]: unknown[]) => coefficients.find(({ key }) => key === name)?.known === 'memory';
    expect([own.some(isRemembered), own.every(isRemembered)]).toEqual([true, false]);
    expect(rows().find(([name]) => name === 'settler')![4]).toBe(sourceOf('swirl capture'));
  });
});

describe('PLAN.COMPARE', () => {
  it('takes rows in any order, names in any case and spacing, and a column a scenario', () => {
    const turned = [...bare]
      .reverse()
      .map(([name, ...rest]) => [`  ${String(name).toUpperCase().replace(' ', '   ')} `, ...rest]);
    expect(compare(turned)).toEqual(compare(bare));
    expect(value(compare(bare), 'feed', 1)).toBeCloseTo(0.875, 12);
  });

  it('keeps a heading row whose first cell is blank, input or scenario', () => {
    for (const title of ['', 'input', 'Scenario', 0, null]) {
      const block = compare([[title, 'few', 350], ...bare]);
      expect(block[0]).toEqual(['result', 'unit', 'few', 350]);
      expect(block.slice(1)).toEqual(compare(bare));
    }
    expect(refusal('PLAN.COMPARE', 'metric', [['farm', 'few', 'many'], ...bare])).toContain(
      'row 1: farm is not an input',
    );
  });

  it('skips blank rows and leaves a blank column blank', () => {
    const gaps = [['', '', ''], ...bare.flatMap((row) => [row, ['', null, 0]])];
    expect(compare(gaps)).toEqual(compare(bare));
    const wide = compare(bare.map((row) => [...row.slice(0, 2), '', row[2]]));
    expect(wide.every((row) => row[3] === '')).toBe(true);
    expect(value(wide, 'feed', 2)).toBeCloseTo(0.875, 12);
  });

  it('names the defaults that it took, and not what was typed', () => {
    const taken = String(value(compare(farm), 'defaults taken')).split(', ');
    expect(taken).toEqual(['']);
    const some = String(value(compare(withRow('protein', 0.4, 0)), 'defaults taken', 1)).split(', ');
    expect(some).toContain('protein');
    expect(some).toContain('coldest water');
    expect(some).not.toContain('drums');
    expect(String(value(compare(withRow('protein', 0.4, 0)), 'defaults taken', 0))).not.toContain('protein');
  });

  it('tells a stage that is absent from one that is not given, and both from 0', () => {
    const drums = (given: unknown) =>
      compare([...bare.map((row) => row.slice(0, 2)), ['drums', given], ['drum diameter', 572], ['pump flow', 100]]);
    for (const nothing of ['', 0, '0', null, '-']) expect(value(drums(nothing), 'overflow rate')).toBe('not given');
    expect(value(drums('None'), 'overflow rate')).toBe('none');
    expect(value(drums('none'), 'solids captured')).toBe(0);
    expect(value(drums(2), 'overflow rate')).toBe(call('SETTLE.OVERFLOW', 'metric', 100, 572, 2));
  });

  it('accepts none for a coefficient that may be missing', () => {
    const surface = (reserve: unknown) =>
      value(compare(withRow('filter reserve', reserve, reserve)), 'media surface') as number;
    expect(surface('') / surface('none')).toBeCloseTo(1.25, 12);
    expect(surface(0)).toBe(surface(''));
  });

  it('figures a farm whose gravel beds catch the solids and nitrify like any other', () => {
    const block = compare(smallFarm);
    expect(block.flat().some((cell) => cell instanceof CellError)).toBe(false);
    expect(value(block, 'drums needed')).toBe('none');
    const solids = value(block, 'solids') as number;
    expect(value(block, 'solids to beds')).toBeLessThan(solids);
    const days = call('BED.DAYS', 'metric', value(block, 'solids to beds'), 9 * 300, 2) as number;
    expect(value(block, 'bed cleaning interval')).toBeCloseTo(days, 9);
    expect(value(block, 'first limit')).not.toBe('not given');
    const stages = spill('PLAN.LIMIT', 'metric', smallFarm).map(([stage]) => stage);
    expect(stages).toContain('gravel beds, nitrification');
    expect(stages).toContain('gravel beds, solids');
  });

  it('takes a share for the settler, a surface for the media, an areal rate for the crop', () => {
    const block = compare([
      ...bare,
      ['settler', 'radial', '77.9 %'],
      ['media', 'tuff', 300],
      ['crop', 'leafy', '50 g/m2/d'],
    ]);
    const rows = ['solids captured', 'media volume', 'bed area'];
    for (const name of rows) {
      expect((value(block, name, 1) as number) / (value(block, name, 0) as number)).toBeCloseTo(350 / 120, 9);
    }
    expect([value(block, 'plants', 0), value(block, 'plants', 1)]).toEqual([150, 'not given']);
  });
});

describe('a bad scenario', () => {
  it('says why on top of its own column and leaves the others whole', () => {
    const bad = [['', '120 fish', '800 fish'], ...bare.slice(0, 2), ['feeding rate', 0.01, 'plenty']];
    const block = compare(bad);
    const error = block[1]![3] as CellError;
    expect(error.message).toMatch(/^scenarios: column 2 \(800 fish\), feeding rate: plenty is not allowed/);
    expect(block.slice(2).every((row) => row[3] === '')).toBe(true);
    expect(block.map((row) => row[2])).toEqual(['120 fish', ...compare(bare).map((row) => row[2])]);
  });

  it.each<readonly [string, Rows, string]>([
    ['text for a number', withRow('protein', '', 'rich'), 'column 2, protein: rich is not allowed'],
    [
      'a per cent without its sign',
      withRow('protein', 0.3, 32),
      'protein: 32 reads as 3200 %, but at most 100 % is allowed; write 32 % or 0.32',
    ],
    ['a figure of the wrong kind', withRow('pump flow', 10, '3 kg'), 'column 2, pump flow: '],
    ['a figure out of bounds', withRow('temperature', 20, 90), 'temperature: 90 °C is not allowed; give a temperature'],
    [
      'no fish',
      [['fish count', 120, 0], ...bare.slice(1)],
      'column 2, fish count: 0 or blank is not allowed; give fish',
    ],
    [
      'fish of which there are none',
      [['fish count', 120, 'none'], ...bare.slice(1)],
      'column 2, fish count: none is not allowed; give fish',
    ],
    ['a part of a drum', withRow('drums', 2, 2.5), 'column 2, drums: 2.5 is not allowed; give a whole number'],
    ['less than nothing', withRow('pads', 2, -1), 'column 2, pads: -1 is not allowed'],
    ['a word not in the list', withRow('species', 'tilapia', 'trout'), 'trout is not allowed; nearest are'],
    [
      'a settler that is none',
      withRow('settler', 'swirl', 'cyclone'),
      'give swirl, radial, mixed or ideal, or a share',
    ],
    [
      'a coldest water that is not',
      [...withRow('coldest water', 10, 25), ['temperature', 20, 20]],
      'coldest water: 25 °C is not allowed; give up to temperature (20 °C)',
    ],
    [
      'a hottest water that is not',
      [...withRow('hottest water', 25, 15), ['temperature', 20, 20]],
      'give up to hottest water (15 °C)',
    ],
    [
      'a hottest water under a temperature that was not given',
      withRow('hottest water', 25, 15),
      'temperature, not given: 20 °C is not allowed; give up to hottest water (15 °C)',
    ],
    [
      'a highest pH that is not',
      [...withRow('pH', 7, 8), ['highest pH', 8, 7]],
      'pH: 8 is not allowed; give up to highest pH (7)',
    ],
    [
      'oxygen that comes in poorer than it leaves',
      [...withRow('oxygen in', 9, 5), ['oxygen out', 6, 6]],
      'oxygen in: 5 mg/L is not allowed; give more than oxygen out (6 mg/L)',
    ],
    [
      'oxygen at power failure under the floor',
      [...withRow('oxygen floor', 3, 7), ['tank volume', 900, 900]],
      'oxygen at power failure: 6 mg/L is not allowed; it is already at or below the floor (7 mg/L)',
    ],
    [
      'more nutrients than solids',
      withRow('nitrogen share', 0.04, 0.99),
      'nitrogen share: 0.99 is not allowed; nitrogen, P2O5 and K2O',
    ],
    ['too much to compute with', withRow('tank volume', 1000, 1e-308), 'too large or too small'],
  ])('%s', (_, scenarios, words) => {
    expect(fault(scenarios, 1)).toContain(words);
    expect(fault(scenarios, 0)).toBe('');
    expect(value(compare(scenarios), 'feed')).toBeCloseTo(0.3, 12);
  });

  it('passes on an error in a cell, in its own column', () => {
    const error = { code: '#DIV/0!', message: '' };
    const block = compare(withRow('protein', 0.4, error));
    expect(block[0]![3]).toMatchObject({ code: '#DIV/0!' });
    expect(value(block, 'feed')).toBeCloseTo(0.3, 12);
    expect(refusal('PLAN.COMPARE', 'metric', [[error, 1, 2], ...bare])).toBe('#DIV/0! ');
  });

  it('is the whole result where it stands alone', () => {
    expect(
      refusal('PLAN.COMPARE', 'metric', [
        ['fish count', 0],
        ['fish mass', 250],
      ]),
    ).toContain('scenarios: column 1, fish count: 0 or blank is not allowed');
  });

  it('says which required row is missing', () => {
    expect(fault(bare.slice(0, 2), 1)).toContain('column 2, feeding rate: its row is missing; give fish count');
  });

  it('refuses a name that is not an input, with the nearest ones, and one that appears twice', () => {
    expect(refusal('PLAN.COMPARE', 'metric', withRow('protien', 1, 1))).toContain(
      'scenarios: row 4: protien is not an input; nearest are protein',
    );
    expect(refusal('PLAN.COMPARE', 'metric', withRow('Fish Count', 1, 1))).toContain(
      'scenarios: row 4, fish count appears twice; delete one row',
    );
    expect(refusal('PLAN.COMPARE', 'metric', withRow('', 1, 1))).toContain('row 4: a name is missing');
    expect(refusal('PLAN.COMPARE', 'metric', withRow('__proto__', 1, 1))).toContain('is not an input');
    expect(refusal('PLAN.COMPARE', 'metric', [['fish count'], ['fish mass']])).toContain('one column is not allowed');
    expect(refusal('PLAN.COMPARE', 'metric', '')).toContain('scenarios: blank is not allowed');
  });

  it('is refused by PLAN.LIMIT and PLAN.CHECK with the same message', () => {
    for (const name of ['PLAN.LIMIT', 'PLAN.CHECK']) {
      expect(refusal(name, 'US', [['fish count', 'x']])).toContain('scenario: fish count: x is not allowed');
      expect(
        refusal(name, 'US', [
          ['feed', '1 lb/d'],
          ['oxygen in', 5],
          ['oxygen out', 6],
          ['pump flow', 9],
        ]),
      ).toContain('scenario: oxygen in: 5 mg/L is not allowed; give more than oxygen out (6 mg/L)');
    }
  });
});

describe('PLAN.LIMIT', () => {
  it('ends with the first limit, which PLAN.COMPARE names too, and the next', () => {
    const rows = spill('PLAN.LIMIT', 'US', farm, true);
    expect(rows[0]).toEqual(['stage', 'feed a day (lb/d)', 'fish', 'share in use', 'figured from']);
    const known = rows.slice(1, -1).filter((row) => typeof row[1] === 'number');
    known.sort((a, b) => (a[1] as number) - (b[1] as number));
    const last = rows.at(-1)!;
    expect(last[0]).toBe(`first limit: ${known[0]![0]}`);
    expect(last.slice(1, 4)).toEqual(known[0]!.slice(1, 4));
    expect(last[4]).toContain(`next limit: ${known[1]![0]}, at `);
    expect(last[4]).toMatch(/lb\/d$/);
    expect(value(spill('PLAN.COMPARE', 'US', farm), 'first limit')).toBe(known[0]![0]);
  });

  it('reads not given where an input is missing, and says which', () => {
    const row = spill('PLAN.LIMIT', 'US', smallFarm).find(([stage]) => stage === 'air')!;
    expect(row.slice(1)).toEqual(['not given', 'not given', 'not given', 'not given: air supply']);
  });
});

describe('PLAN.CHECK', () => {
  it('words its figures in the units of the profile', () => {
    const lines = (units: string) => spill('PLAN.CHECK', units, farm).map(([line]) => String(line));
    expect(lines('metric').join(' ')).toMatch(/\d °C/);
    expect(lines('US').join(' ')).toMatch(/\d °F/);
    for (const units of ['metric', 'US']) {
      expect(lines(units).length).toBeGreaterThan(5);
      expect(lines(units).filter((line) => /[{}]|undefined|NaN/.test(line))).toEqual([]);
    }
    expect(spill('PLAN.CHECK', 'US', farm, true)[0]).toEqual(['cautions']);
  });
});
