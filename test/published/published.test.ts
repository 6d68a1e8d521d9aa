import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { computedBy } from '../../src/manual/evidence/computed-by';
import { references } from '../../src/manual/evidence/references';
import { spill } from '../functions/call';
import type { PublishedRow } from './published-row';

const files = readdirSync(__dirname).filter((name) => /^[a-z-]+\.ts$/.test(name) && name !== 'published-row.ts');
const groups = await Promise.all(
  files.map(async (file) => {
    const module = (await import(join(__dirname, file))) as Record<string, readonly PublishedRow[]>;
    return { file, rows: Object.values(module).flat() };
  }),
);

const figureScript = readFileSync('test/oracles/published-figures.py', 'utf8');

function off(row: PublishedRow, value: unknown): number {
  if (typeof row.expected !== 'number' || typeof value !== 'number') return value === row.expected ? 0 : Infinity;
  const difference = Math.abs(value - row.expected);
  if (row.absolute !== undefined) return difference / row.absolute;
  return difference / Math.abs(row.expected) / (row.tolerance ?? 1e-12);
}

/** The tolerance as a share of the figure, however it is given; a figure of 0 may be off by 0.2 of its own unit. */
function leeway({ expected, tolerance = 0, absolute }: PublishedRow): number {
  if (absolute === undefined || typeof expected !== 'number') return tolerance;
  return absolute / (expected === 0 ? 1 : Math.abs(expected));
}

for (const { file, rows } of groups) {
  describe(`published figures in ${file}`, () => {
    it.each(
      rows.map((row) => ({
        row,
        title: `${row.call.join(' ')} → ${row.expected} (${references[row.source]}, ${row.place})`,
      })),
    )('$title', ({ row }) => {
      const [name, ...values] = row.call;
      const [line, column] = row.cell ?? [0, 0];
      const spilled = spill(name, ...values);
      const found = typeof line === 'number' ? spilled[line] : spilled.find(([first]) => first === line);
      const value = found?.[column];
      expect(off(row, value), `gave ${value}, published ${row.expected}`).toBeLessThanOrEqual(1);
    });

    it('gives each figure a source, a place in it, and how it is known', () => {
      for (const row of rows) {
        expect(references[row.source]?.length, row.source).toBeGreaterThan(3);
        expect(row.place.trim().length, `${row.call[0]}: where in ${row.source}?`).toBeGreaterThan(1);
        if (row.known !== 'computed') continue;
        const script = computedBy[row.source];
        expect(script, `${row.source} says computed and names no script`).toBeDefined();
        if (script?.includes('published-figures')) expect(figureScript).toContain(`"${row.source}"`);
        expect(row.disagrees !== undefined || leeway(row) < 0.2, `${row.source}, ${row.place}`).toBe(true);
      }
    });
  });
}

describe('the published figures together', () => {
  const all = groups.flatMap(({ rows }) => rows);

  it('check every function, or its row says why nothing published can', () => {
    const checked = new Set(all.map((row) => row.call[0]));
    const silent = catalogue.filter((row) => !checked.has(row.name) && row.unpublished === undefined);
    const advice = 'add a check row to test/published, or say in the row’s `unpublished` why there can be none';
    expect(
      silent.map((row) => row.name),
      advice,
    ).toEqual([]);
  });

  it('count at least two hundred', () => {
    expect(all.length).toBeGreaterThanOrEqual(200);
  });

  it.each([
    ['the loop', /^(LOAD\.(FLOW|FLOWS|LEVEL|SHARES)|PLAN\.(COMPARE|LIMIT|BALANCE))$/],
    ['the limits of species', /^STOCK\.SPECIES$/],
    ['the carbonate system', /^WATER\.(CARBONDIOXIDE|AFTER|STEPS|DOSE)$/],
  ])('hold %s to figures that were read, not remembered', (_, functions) => {
    const read = all.filter(({ known, call }) => known === 'read' && functions.test(call[0]));
    expect(read.length).toBeGreaterThanOrEqual(15);
    expect(new Set(read.map(({ source }) => source)).size).toBeGreaterThanOrEqual(3);
  });

  it('name sources of the list, each of which has a figure', () => {
    const named = new Set<string>(all.map((row) => row.source));
    expect(Object.keys(references).filter((key) => !named.has(key))).toEqual([]);
  });

  it('have scripts that are there', () => {
    for (const script of Object.values(computedBy)) expect(existsSync(script), script).toBe(true);
  });

  it('are counted on the reference page as they are here; `npx vitest run test/published -u` counts again', async () => {
    const bySource: Record<string, Record<string, number>> = {};
    const byFunction: Record<string, number> = {};
    for (const { source, known, call } of all) {
      bySource[source] ??= {};
      bySource[source][known] = (bySource[source][known] ?? 0) + 1;
      byFunction[call[0]] = (byFunction[call[0]] ?? 0) + 1;
    }
    const sorted = <V>(record: Record<string, V>) =>
      Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)));
    const counts = {
      bySource: sorted(Object.fromEntries(Object.entries(bySource).map(([key, one]) => [key, sorted(one)]))),
      byFunction: sorted(byFunction),
    };
    await expect(`${JSON.stringify(counts, undefined, 2)}\n`).toMatchFileSnapshot(
      '../../src/manual/evidence/counts.json',
    );
  });
});
