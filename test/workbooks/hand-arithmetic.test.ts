import readXlsxFile from 'read-excel-file/node';
import { describe, expect, it } from 'vitest';

/** A sample as a library reads it that neither writes it nor computes it. */
async function open(path: string) {
  const sheets = await readXlsxFile(`sample-workbooks/${path}`);
  return (sheet: string, address: string): unknown => {
    const [, letter, row] = /^([A-Z])(\d+)$/.exec(address)!;
    const found = sheets.find((one) => one.sheet === sheet);
    if (found === undefined) throw new Error(`no sheet ${sheet}`);
    return found.data[Number(row) - 1]?.[letter!.charCodeAt(0) - 65] ?? null;
  };
}

const near = (value: unknown, expected: number) => expect(value as number).toBeCloseTo(expected, 9);
const LITRES_A_GALLON = 3.785411784;
const KILOGRAMS_A_POUND = 0.45359237;

/** Figures calculated here from the typed inputs by school formulas, not by the add-in. */
describe('figures of the sample workbooks, calculated by hand', () => {
  it('cone cut plan: a diameter from a girth, and the height for 45 degrees', async () => {
    const cell = await open('US/cone-cut-plan.xlsx');
    // Girth over π, less the wall on both sides.
    near(cell('Drums', 'K7'), 72 / Math.PI - 2 * 0.125);
    near(cell('Drums', 'L5'), (22.5 - 4) / 2);
  });

  it('cone cut plan: slant and radii of a cone of thin sheet from similar triangles', async () => {
    const cell = await open('metric/cone-cut-plan.xlsx');
    // `fit`: the outside goes into the bore less a gap all round, the inside of the foot is the drain; with wall angle a,
    // mid-plane top = bore - 2 × gap - t sin a, mid-plane bottom = drain + t sin a. The angle follows by iteration.
    const [bore, gap, drain, height, thickness] = [575, 3, 100, 240, 1.5];
    let angle = Math.PI / 4;
    for (let step = 0; step < 50; step += 1) {
      const run = (bore - 2 * gap - drain) / 2 - thickness * Math.sin(angle);
      angle = Math.atan(height / run);
    }
    const top = bore - 2 * gap - thickness * Math.sin(angle);
    const bottom = drain + thickness * Math.sin(angle);
    const slant = Math.hypot(height, (top - bottom) / 2);
    near(cell('Patterns', 'B5'), (angle * 180) / Math.PI);
    near(cell('Patterns', 'C5'), slant);
    near(cell('Patterns', 'E5'), (slant * top) / (top - bottom));
    near(cell('Patterns', 'F5'), (180 * (top - bottom)) / slant);
  });

  it('cone cut plan: the height of the stand, and water as straight wall and frustum', async () => {
    const cell = await open('US/cone-cut-plan.xlsx');
    near(cell('Stand and ports', 'B22'), 14.5 + 6 + 2);
    const frustum = (Math.PI / 12) * 9.25 * (22.5 ** 2 + 22.5 * 4 + 4 ** 2);
    // A US gallon is 231 cubic inches.
    near(cell('Base mix', 'C5'), ((Math.PI / 4) * 22.5 ** 2 * 20 + frustum) / 231);
  });

  it('materials sheet: whole packs of rivets and cement, the total, and what building saves', async () => {
    const cell = await open('metric/materials-sheet.xlsx');
    const rows = Array.from({ length: 30 }, (_, index) => 18 + index);
    const rowOf = (item: string): number => rows.find((row) => cell('Materials', `A${row}`) === item)!;
    near(cell('Materials', `D${rowOf('rivets')}`), Math.ceil(36 / 50) * 6.5);
    const total = rowOf('total');
    const sum = rows.filter((row) => row < total).reduce((so, row) => so + (cell('Materials', `D${row}`) as number), 0);
    near(cell('Materials', `D${total}`), sum);
    near(cell('Materials', 'D4'), sum);
    expect(rowOf('float switch')).toBeLessThan(total);
    near(cell('Build or buy', 'D10'), 4 * (640 - (sum / 4 + 9 * 18)));
  });

  it('stocking scenarios: feed and slowest turnover of 350 fish', async () => {
    const cell = await open('US/stocking-scenarios.xlsx');
    expect(cell('Compare', 'D4')).toBe('350 fish');
    const rows = Array.from({ length: 60 }, (_, index) => 5 + index);
    const result = (name: string): unknown =>
      cell('Compare', `D${rows.find((row) => cell('Compare', `A${row}`) === name)}`);
    // 350 fish of 8 oz, 16 oz in a pound, fed 1.5 % of their mass a day.
    near(result('feed'), ((350 * 8) / 16) * 0.015);
    near(result('turnover'), 1100 / 25);
    near(result('feed cost per month'), (350 * 8 * 0.015 * 1.1 * 365) / 16 / 12);
  });

  it.each([
    ['US', LITRES_A_GALLON / KILOGRAMS_A_POUND, 16],
    ['metric', 1, 1000],
  ] as const)('harvest book (%s): every month’s total from the daily rows', async (profile, massOfVolume, portions) => {
    const cell = await open(`${profile}/harvest-book.xlsx`);
    const months = new Map<string, number>();
    for (let row = 6; cell('Pulls', `A${row}`) !== null; row += 1) {
      const month = (cell('Pulls', `A${row}`) as Date).toISOString().slice(0, 7);
      const dry = (cell('Pulls', `B${row}`) as number) * massOfVolume * (cell('Pulls', `C${row}`) as number);
      months.set(month, (months.get(month) ?? 0) + dry);
    }
    expect([...months.keys()]).toEqual(['2026-03', '2026-04', '2026-05']);
    [...months].forEach(([month, dry], index) => {
      const row = 5 + index;
      expect(cell('Months', `A${row}`)).toBe(month);
      near(cell('Months', `B${row}`), dry);
      near(cell('Months', `D${row}`), dry * 0.0283 * portions);
    });
    const all = [...months.values()].reduce((sum, dry) => sum + dry, 0);
    near(cell('Months', 'B8'), all);
    // Phosphate to phosphorus by atomic masses, 141.944 / (2 × 30.974) to four figures.
    expect((cell('Months', 'E8') as number) / (all * 0.0254 * portions)).toBeCloseTo(2.2914, 3);
  });

  it('harvest book: ninety and a hundred and twenty days', async () => {
    const cell = await open('US/harvest-book.xlsx');
    const days = (row: number): number =>
      ((cell('Picking', `E${row}`) as Date).getTime() - (cell('Picking', `C${row}`) as Date).getTime()) / 86_400_000;
    // 7 CFR 205.203(c)(1): 90 days before harvest, 120 where the part that is eaten touches the soil.
    expect([5, 6, 7, 8].map((row) => [cell('Picking', `D${row}`), days(row)])).toEqual([
      ['no', 90],
      ['yes', 120],
      ['yes', 120],
      ['no', 90],
    ]);
  });

  it('water book: un-ionized ammonia by Emerson’s equation, and the minutes that oxygen lasts', async () => {
    const cell = await open('metric/water-book.xlsx');
    // Emerson, Russo, Lund and Thurston, J. Fish. Res. Board Can. 32:2379 (1975): pKa = 0.09018 + 2729.92 / T.
    const share = 1 / (1 + 10 ** (0.09018 + 2729.92 / (23.5 + 273.2) - 7.8));
    expect(cell('Tests', 'J11')).toBeCloseTo(2.2 * share, 4);
    expect(cell('Tests', 'I11')).toMatch(/^too much un-ionized/);
    // 1500 L lose 3 mg/L, at one and a half times the mean of 1.25 kg oxygen per kg feed.
    near(cell('Oxygen and alkali', 'B10'), (1500 * 3e-6 * 1440) / (0.4 * 1.25 * 1.5));
  });
});
