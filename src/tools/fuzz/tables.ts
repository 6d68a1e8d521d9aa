import { catalogue } from '../../catalogue/all';
import type { Column, TableArgument } from '../../catalogue/argument';
import { adapt } from '../../functions/adapter';
import type { Profile } from '../../units/profile';
import { toProfile } from '../../units/quantity';
import { hostileValue, type Mood, typedFigure } from './figures';
import type { Random } from './random';

/** Words for columns of words and readings, sense and nonsense. */
export const readable: readonly unknown[] = [
  ...[
    0,
    1,
    2,
    3,
    0.5,
    7,
    8.2,
    40,
    200,
    46143,
    true,
    '-',
    'none',
    '20 °C',
    '2 mg/L as N',
    '40 mg/L as NO3',
    '2026-05-01',
  ],
  ...['2 elbow, 1 tee', 'mixed', 'ideal', '1-1/2', '63 mm', 'gal', 'L', 'leafy', 'yes', 'protein', 'rivets'],
];

/** Rows of a table: figures in range, rising or falling as curves and logs do, now and then a strange one. */
export function tableValue(random: Random, profile: Profile, { table }: TableArgument, mood: Mood): unknown {
  if (mood === 'hostile' && random.chance(0.5)) return hostileValue(random);
  const count = random.chance(0.05) ? random.whole(50, 300) : random.whole(1, 12);
  const columns = Object.entries(table).map(([key, column]) => columnValues(random, profile, key, column, count));
  return Array.from({ length: count }, (_, row) =>
    columns.map((values) =>
      mood !== 'plausible' && random.chance(0.1) ? strangeValue(random, values[row], mood) : values[row],
    ),
  );
}

function strangeValue(random: Random, value: unknown, mood: Mood): unknown {
  return mood === 'extreme' && typeof value === 'number'
    ? value * random.pick([0, -1, 1e9, 1e-9])
    : hostileValue(random);
}

function columnValues(random: Random, profile: Profile, key: string, column: Column, count: number): unknown[] {
  const values = Array.from({ length: count }, (): unknown => {
    if ('kind' in column) return typedFigure(random, profile, column, 'plausible');
    return 'text' in column ? `${key} ${random.whole(1, 9)}` : random.pick(readable);
  });
  const order = random.chance(0.8) ? (key === 'head' ? -1 : 1) : 0;
  if (order === 0 || values.some((value) => typeof value !== 'number')) return values;
  return (values as number[]).sort((a, b) => order * (a - b));
}

const patternOf = ((): ((...values: unknown[]) => unknown[][]) => {
  const row = catalogue.find(({ name }) => name === 'CONE.PATTERN');
  if (row === undefined) throw new Error('there is no CONE.PATTERN');
  return adapt(row, (_, message) => new Error(message));
})();

/** Rows as CONE.PATTERN spills them, of cones and cylinders that can be made. */
export function patternRows(random: Random, profile: Profile, count: number): unknown[][] {
  const bare = (si: number) => Number(toProfile(profile, 'dimension', si).toPrecision(5));
  const rows: unknown[][] = [];
  for (let tries = 0; rows.length < count && tries < count * 20; tries++) {
    const top = random.between(0.1, 0.7);
    const bottom = random.pick([0, top, top * random.next()]);
    const height = random.between(0.05, 0.6);
    const lap = random.pick([0, 0, 0.025]);
    try {
      const [row] = patternOf(profile.text, bare(top), bare(bottom), bare(height), random.whole(1, 6), bare(lap));
      if (row !== undefined && !(row[0] instanceof Error)) rows.push(row);
    } catch {
      // Some random sizes cannot be cut; try another set.
    }
  }
  return rows;
}
