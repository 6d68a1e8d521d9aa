import { describe, expect, test } from 'vitest';
import { cellName } from '../../../src/hosts/address';
import { lines, look } from './look-in';

const plain = async (...given: Parameters<typeof look>) => lines((await look(...given)).plain);
const apart = async (...given: Parameters<typeof look>) => lines((await look(...given)).apart);
const byHand = async (...given: Parameters<typeof look>) =>
  (await look(...given)).byHand.map(({ spot, why }) => `${cellName(spot.row, spot.column)} ${why}`);

describe('numbers that feed a function', () => {
  test('are converted by the kind of their argument', async () => {
    expect(
      await plain({
        B5: 22.5,
        C5: 4,
        D5: 9.25,
        E5: '=SILT.CONE.PATTERN(SiltUnits,B5,C5,D5)',
        B6: 68,
        C6: '=SILT.WATER.DENSITY(SiltUnits,B6)',
      }),
    ).toEqual(['B5 22.5 in -> 571.5 mm', 'B6 68 °F -> 20 °C', 'C5 4 in -> 101.6 mm', 'D5 9.25 in -> 234.95 mm']);
  });

  test('are found in ranges, on other sheets, through names and whole columns', async () => {
    expect(await plain({ B5: 10, B6: 20, E5: '=SILT.TANK.GIRTH(SiltUnits,B5:B6)' })).toEqual([
      'B5 10 in -> 254 mm',
      'B6 20 in -> 508 mm',
    ]);
    expect(await plain({ B5: 10, E5: "=SILT.TANK.GIRTH(SiltUnits,'Farm'!$B$5)" })).toHaveLength(1);
    expect(
      await plain({ B5: 10, E5: '=SILT.TANK.GIRTH(SiltUnits,girth)' }, { names: { Girth: 'Farm!$B$5' } }),
    ).toHaveLength(1);
    expect(await plain({ B1: 'girth', B2: 10, B3: 20, E5: '=SILT.TANK.GIRTH(SiltUnits,B:B)' })).toHaveLength(2);
  });

  test('are not converted if they are counts, shares, words, formulas or text with a unit', async () => {
    expect(
      await plain({
        B5: '22 1/2 in',
        C5: '=2*2',
        D5: '6\' 4"',
        E5: 3,
        F5: '=SILT.CONE.PATTERN(SiltUnits,B5,C5,D5,E5)',
        B6: 2,
        C6: 0.32,
        G6: '=SILT.LOAD.AMMONIA(SiltUnits,B6,C6)',
      }),
    ).toEqual(['B6 2 lb/d -> 0.9071847 kg/d']);
  });

  test('are converted if they are text without a unit, because that reads as a number', async () => {
    expect(await plain({ B5: '22 1/2', C5: '7', E5: '=SILT.TANK.GIRTH(SiltUnits,B5:C5)' })).toEqual([
      'B5 22 1/2 in -> 571.5 mm',
      'C5 7 in -> 177.8 mm',
    ]);
  });

  test('are converted back exactly', async () => {
    const cells = { B5: 571.5, E5: '=SILT.TANK.GIRTH(SiltUnits,B5)' };
    expect(await plain(cells, { from: 'metric', to: 'US' })).toEqual(['B5 571.5 mm -> 22.5 in']);
    const [found] = (await look(cells, { from: 'metric', to: 'US' })).plain;
    expect(found!.choices[0]!.content).toBe(22.5);
  });

  test('follow exceptions of a profile, and nothing else', async () => {
    const cells = { B5: 10, C5: 20, E5: '=SILT.SETTLE.OVERFLOW(SiltUnits,B5,C5)' };
    expect(await plain(cells, { from: 'US', to: 'US, flow L/min' })).toEqual(['B5 10 gpm -> 37.85412 L/min']);
    expect(await plain(cells, { from: 'US', to: 'us' })).toEqual([]);
  });

  test('are not those of a call whose units are typed in it', async () => {
    expect(await plain({ B5: 10, E5: '=SILT.TANK.GIRTH("US",B5)' })).toEqual([]);
  });

  test('belong to a call that refers to the units cell by address, or to a cell that repeats it', async () => {
    expect(await plain({ B5: 10, E5: "=SILT.TANK.GIRTH('Silt units'!B3,B5)" })).toHaveLength(1);
    expect(await plain({ A1: '=SiltUnits', B5: 10, E5: '=SILT.TANK.GIRTH($A$1,B5)' })).toHaveLength(1);
  });

  test('are found by the kind in an argument of the function', async () => {
    expect(await plain({ B5: 10, E5: '=SILT.UNIT.READ(SiltUnits,"flow",B5)' })).toEqual([
      'B5 10 gpm -> 37.85412 L/min',
    ]);
    expect(await plain({ A5: 'mass', B5: 10, E5: '=SILT.UNIT.READ(SiltUnits,A5,B5)' })).toEqual([
      'B5 10 lb -> 4.535924 kg',
    ]);
  });

  test('are found in a call as files spell it', async () => {
    expect(await plain({ B5: 10, E5: '=_xldudf_SILT_TANK_GIRTH(SiltUnits,B5)' })).toHaveLength(1);
  });
});

describe('tables', () => {
  test('are converted column by column', async () => {
    expect(
      await plain({
        A1: 'date',
        B1: 'slurry',
        C1: 'solids',
        A2: 46143,
        B2: 5,
        C2: 0.02,
        A3: 46150,
        B3: 6,
        C3: 0.03,
        E1: '=SILT.HARVEST.LOG(SiltUnits,A1:C3)',
      }),
    ).toEqual(['B2 5 gal -> 18.92706 L', 'B3 6 gal -> 22.71247 L']);
  });

  test('of typed pattern rows are converted by the ten columns of a pattern', async () => {
    const cells = { A1: 45, B1: 13.08, C1: 2.83, D1: 15.91, E1: 254.6, F1: 31.8, G1: 25.5, H1: 2, I1: 1, J1: 0 };
    expect(await plain({ ...cells, A5: '=SILT.CUT.PLAN(SiltUnits,A1:J1,L1,L2)' })).toEqual([
      'B1 13.08 in -> 332.232 mm',
      'C1 2.83 in -> 71.882 mm',
      'D1 15.91 in -> 404.114 mm',
      'F1 31.8 in -> 807.72 mm',
      'G1 25.5 in -> 647.7 mm',
      'H1 2 ft2 -> 0.1858061 m2',
    ]);
  });

  test('pass through a filter whole', async () => {
    expect(
      await plain({
        A2: 46143,
        B2: 5,
        C2: 0.02,
        D2: 'yes',
        E1: '=SILT.HARVEST.LOG(SiltUnits,FILTER(A2:C2,D2:D2="yes"))',
      }),
    ).toEqual(['B2 5 gal -> 18.92706 L']);
  });
});

describe('numbers on the way', () => {
  test('keep their kind through cells and functions that only pass them on', async () => {
    expect(await plain({ B5: 10, C5: '=B5', E5: '=SILT.TANK.GIRTH(SiltUnits,C5)' })).toEqual(['B5 10 in -> 254 mm']);
    expect(await plain({ B5: 10, E5: '=IF(ISBLANK(B5),"",SILT.TANK.GIRTH(SiltUnits,IF(B5="","-",B5)))' })).toHaveLength(
      1,
    );
    expect(await plain({ B5: 10, E5: '=LET(g,B5,IF(g>0,SILT.TANK.GIRTH(SiltUnits,g),""))' })).toHaveLength(1);
    expect(await plain({ B5: 10, B6: 11, E5: '=SILT.TANK.GIRTH(SiltUnits,SUM(B5:B6))' })).toHaveLength(2);
    expect(await plain({ B5: 10, B6: 11, E5: '=SILT.TANK.GIRTH(SiltUnits,B5-B6)' })).toHaveLength(2);
  });

  test('are listed separately if arithmetic might be a conversion by hand, or a sum of temperatures', async () => {
    expect(await apart({ B5: 10, E5: '=SILT.TANK.GIRTH(SiltUnits,B5*2)' })).toEqual([
      'B5 10 in -> 254 mm (used in a product in Farm!E5)',
    ]);
    expect(await apart({ B5: 60, B6: 8, E5: '=SILT.WATER.DENSITY(SiltUnits,B5+B6)' })).toHaveLength(2);
    expect(await apart({ B5: 10, E5: '=SILT.TANK.GIRTH(SiltUnits,ROUND(B5,1))' })).toHaveLength(1);
  });

  test('do not run into the results of our own functions', async () => {
    expect(
      await plain({
        B5: 70,
        C5: '=SILT.TANK.GIRTH(SiltUnits,B5)',
        D5: 24,
        E5: '=SILT.TANK.VOLUME(SiltUnits,C5,D5)',
      }),
    ).toEqual(['B5 70 in -> 1778 mm', 'D5 24 in -> 609.6 mm']);
  });

  test('are the cells that a spill was made from, never the spill', async () => {
    const { hostWith } = await import('./look-in');
    const cells = { B5: 10, B6: 11, D5: '=UNIQUE(B5:B6)', D6: 11, F5: '=SILT.TANK.GIRTH(SiltUnits,D5:D6)' };
    const host = hostWith(cells);
    host.spill('Farm', 'D5:D6');
    expect(lines((await look(cells, { host })).plain)).toEqual(['B5 10 in -> 254 mm', 'B6 11 in -> 279.4 mm']);
    const some = hostWith({ ...cells, F5: '=SILT.TANK.GIRTH(SiltUnits,D6)' });
    some.spill('Farm', 'D5:D6');
    const found = await look(cells, { host: some });
    expect(found.plain).toEqual([]);
    expect(lines(found.apart)[0]).toContain('a result of several cells');
  });

  test('may be numbers inside a formula, which is rewritten', async () => {
    const { plain: found } = await look({ E5: '=SILT.CONE.PATTERN(SiltUnits, 22.5, 4, 9.25, 1)' });
    expect(lines(found)).toEqual(['E5 in its formula: 22.5 in, 4 in, 9.25 in -> 571.5 mm, 101.6 mm, 234.95 mm']);
    expect(found[0]!.choices[0]!.content).toBe('=SILT.CONE.PATTERN(SiltUnits, 571.5, 101.6, 234.95, 1)');
    const [array] = (await look({ E5: '=SILT.TANK.GIRTH(SiltUnits,{70;72},-1)' })).plain;
    expect(array!.choices[0]!.content).toBe('=SILT.TANK.GIRTH(SiltUnits,{1778;1828.8},-25.4)');
  });
});

describe('cells with more than one reader', () => {
  test('are listed separately if they have two kinds, with a choice for each that changes', async () => {
    expect(
      await apart({ B5: 10, D5: '=SILT.TANK.GIRTH(SiltUnits,B5)', E5: '=SILT.BED.AREA(SiltUnits,B5,"leafy")' }),
    ).toEqual(['B5 10 -> 254 mm | 4.535924 kg/d (used as dimension and as daily)']);
  });

  test('are listed separately if another formula uses them, near or far', async () => {
    expect(await apart({ B5: 10, D5: '=SILT.TANK.GIRTH(SiltUnits,B5)', E5: '=B5*25.4' })).toEqual([
      'B5 10 in -> 254 mm (also used in Farm!E5)',
    ]);
    expect(await apart({ B5: 10, C5: '=B5', D5: '=SILT.TANK.GIRTH(SiltUnits,C5)', E5: '=C5*25.4' })).toHaveLength(1);
    expect(await apart({ B5: 10, D5: '=SILT.TANK.GIRTH(SiltUnits,B5)', E5: '=SILT.TANK.GIRTH("US",B5)' })).toHaveLength(
      1,
    );
    expect(await apart({ B5: 10, D5: '=SILT.TANK.GIRTH(SiltUnits,B5)', E5: '="girth "&B5' })).toHaveLength(1);
  });

  test('are clear if others only ask whether there is a value', async () => {
    expect(
      await plain({
        B5: 10,
        D5: '=SILT.TANK.GIRTH(SiltUnits,B5)',
        E5: '=COUNT(B5:B20)',
        F5: '=IF(B5="","type a girth","")',
        G5: '=B5>0',
        H5: '=ROWS(B5:B6)',
      }),
    ).toHaveLength(1);
    expect(await apart({ B5: 60, D5: '=SILT.WATER.DENSITY(SiltUnits,B5)', G5: '=B5>0' })).toHaveLength(1);
  });
});

describe('what cannot be followed', () => {
  test('is not changed but named', async () => {
    expect(await byHand({ E5: '=SILT.TANK.GIRTH(SiltUnits,Drums[girth])' })).toEqual([
      'E5 Drums[girth] is a table or in another workbook',
    ]);
    expect(await byHand({ B5: 10, E5: '=SILT.TANK.GIRTH(SiltUnits&", flow L/min",B5)' })).toEqual([
      'E5 the units of SILT.TANK.GIRTH are calculated from SiltUnits',
    ]);
    expect(await byHand({ E5: '=SILT.TANK.GIRTH(SiltUnits,girth)' }, { names: { girth: '70' } })).toEqual([
      'E5 the name girth does not refer to cells',
    ]);
    expect(await byHand({ B5: 70, E5: '=SILT.TANK.GIRTH(SiltUnits,OFFSET(B4,1,0))' })).toEqual([
      'E5 numbers are used in OFFSET() first',
    ]);
    expect(await byHand({ E5: '=SILT.TANK.GIRTH(SiltUnits,PI()*22.5)' })).toEqual([
      'E5 a number in its formula is used in a product',
    ]);
    expect(await byHand({ E5: '=SILT.CONE.MIX(SiltUnits,50,2*3)' })).toEqual([]);
  });

  test('is a number that the old profile would refuse', async () => {
    const found = await look({ B5: 46023, E5: '=SILT.TANK.GIRTH(SiltUnits,B5)' });
    expect(found.plain).toEqual([]);
    expect(found.byHand[0]!.why).toContain('0 1/2');
  });

  test('does not hang on circles or on chains of thousands of cells', async () => {
    expect(await plain({ B5: '=C5', C5: '=B5', E5: '=SILT.TANK.GIRTH(SiltUnits,B5)' })).toEqual([]);
    const cells: Record<string, string | number> = { A1: 1, E1: '=SILT.TANK.GIRTH(SiltUnits,A6000)' };
    for (let row = 2; row <= 6000; row++) cells[`A${row}`] = `=A${row - 1}`;
    expect(await plain(cells)).toEqual(['A1 1 in -> 25.4 mm']);
  });
});

describe('rows that name their input', () => {
  test('are converted by the name, in every column of scenarios', async () => {
    const cells = {
      A1: 'input',
      B1: 'small',
      C1: 'large',
      A2: 'Fish count',
      B2: 120,
      C2: 800,
      A3: 'fish mass',
      B3: 8,
      C3: 16,
      A4: 'Tank  volume',
      B4: 300,
      C4: 'none',
      A5: 'temperature',
      B5: 68,
      C5: '20 °C',
      A6: 'no such input',
      B6: 5,
      C6: 6,
      E1: '=SILT.PLAN.COMPARE(SiltUnits,A1:C6)',
    };
    expect(await plain(cells)).toEqual([
      'B3 8 oz -> 226.7962 g',
      'B4 300 gal -> 1135.624 L',
      'B5 68 °F -> 20 °C',
      'C3 16 oz -> 453.5924 g',
    ]);
  });

  test('are converted for a settling bank too', async () => {
    expect(
      await plain({ A1: 'drums', B1: 3, A2: 'drum diameter', B2: 22.5, E1: '=SILT.PLAN.PARTS(SiltUnits,A1:B2)' }),
    ).toEqual(['B2 22.5 in -> 571.5 mm']);
  });
});
