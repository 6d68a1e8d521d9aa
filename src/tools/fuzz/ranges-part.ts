import { catalogue } from '../../catalogue/all';
import type { CatalogueRow } from '../../catalogue/define';
import { readProfile } from '../../units/profile';
import { argumentValue, callOf, type FuzzCall } from './arguments';
import type { Mood } from './figures';
import type { FuzzLog } from './fuzz-log';
import { judge } from './judge';
import { Random } from './random';

const MOST_CELLS = 100_000;
/** A call may take 200 ms, and the same again for every this many cells. */
const MOST_MS = 200;
const CELLS_IN_THAT_TIME = 5_000;

const metric = readProfile('metric');

/** Functions that accept a range in place of one value and are quick enough per cell. */
function takesRanges({ name, arguments: args, result }: CatalogueRow): boolean {
  if (name.startsWith('PLAN.') || !('scalar' in result || 'row' in result || 'date' in result || 'text' in result))
    return false;
  return Object.values(args).some(broadcasts) && !Object.values(args).some((spec) => 'table' in spec);
}

function broadcasts(spec: CatalogueRow['arguments'][string]): boolean {
  return !('choice' in spec || 'table' in spec || 'cells' in spec);
}

/**
 * Makes that many calls with ranges of one to 100,000 cells in place of one or two arguments; small ones most often.
 */
export function rangeCalls(seed: number, count: number, log: FuzzLog): void {
  const random = new Random(seed);
  const judges = catalogue.filter(takesRanges).map(judge);
  for (let i = 0; i < count; i++) {
    const one = random.pick(judges);
    const { call, cells, text } = rangeCall(random, one.row);
    log.before(text);
    const fault = one.faultOf(call, log.patience * MOST_MS * (1 + cells / CELLS_IN_THAT_TIME));
    if (fault !== undefined) log.fault(text, fault);
  }
}

function rangeCall(random: Random, row: CatalogueRow): { call: FuzzCall; cells: number; text: string } {
  const seedOfCall = random.whole(0, 2 ** 31);
  const own = new Random(seedOfCall);
  const { values } = callOf(own, row);
  const given = [...values];
  const places = Object.values(row.arguments).flatMap((spec, i) =>
    broadcasts(spec) ? [i + (row.units === false ? 0 : 1)] : [],
  );
  const cells = Math.floor(
    own.chance(0.002)
      ? own.magnitude(10_000, MOST_CELLS)
      : own.chance(0.1)
        ? own.magnitude(100, 5_000)
        : own.magnitude(1, 60),
  );
  const wide = own.chance(0.3) ? own.whole(1, Math.max(1, Math.round(Math.sqrt(cells)))) : 1;
  const tall = Math.max(1, Math.floor(cells / wide));
  if (row.units !== false) given[0] = metric.text;
  for (const place of new Set([own.pick(places), own.pick(places)])) {
    const shapes = [
      [tall, wide],
      [tall, wide],
      [1, wide],
      [tall, 1],
    ] as const;
    const [rows, columns] = own.chance(0.95) ? own.pick(shapes) : [wide, tall];
    const [name, spec] = Object.entries(row.arguments)[place - (row.units === false ? 0 : 1)] ?? [];
    if (name === undefined || spec === undefined) continue;
    given[place] = block(own, rows, columns, (mood) => argumentValue(own, metric, name, spec, mood));
  }
  // A column and a row together need as many cells as their product.
  if (cellsAsked(given) > MOST_CELLS) return rangeCall(random, row);
  const text = `${row.name} seed ${seedOfCall}: ${tall} by ${wide}, ${given.map(shapeOf).join('; ')}`;
  return { call: { name: row.name, values: given }, cells: cellsAsked(given), text };
}

function block(random: Random, rows: number, columns: number, value: (mood: Mood) => unknown): unknown[][] {
  const mood = (): Mood => (random.chance(0.95) ? 'plausible' : random.chance(0.8) ? 'extreme' : 'hostile');
  return Array.from({ length: rows }, () =>
    Array.from({ length: columns }, () => {
      const one = random.chance(0.03) ? '' : value(mood());
      return Array.isArray(one) ? '' : one;
    }),
  );
}

/** How many cells the result of the ranges has. */
function cellsAsked(given: readonly unknown[]): number {
  const blocks = given.filter((value): value is unknown[][] => Array.isArray(value) && Array.isArray(value[0]));
  const most = (size: (block: unknown[][]) => number) => Math.max(1, ...blocks.map(size));
  return most((rows) => rows.length) * most((rows) => rows[0]?.length ?? 1);
}

function shapeOf(value: unknown): string {
  if (!Array.isArray(value)) return JSON.stringify(value) ?? '';
  return `${value.length} by ${Array.isArray(value[0]) ? value[0].length : 1}`;
}
