import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { spill } from '../functions/call';
import type { PublishedRow } from './published-row';

const files = readdirSync(__dirname).filter((name) => /^[a-z-]+\.ts$/.test(name) && name !== 'published-row.ts');
const groups = await Promise.all(
  files.map(async (file) => {
    const module = (await import(join(__dirname, file))) as Record<string, readonly PublishedRow[]>;
    return { file, rows: Object.values(module).flat() };
  }),
);

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
      rows.map((row) => ({ row, title: `${row.call.join(' ')} → ${row.expected} (${row.source}, ${row.place})` })),
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
        expect(row.source.length).toBeGreaterThan(3);
        expect(row.place.length).toBeGreaterThan(1);
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
    expect(silent.map((row) => row.name)).toEqual([]);
  });

  it('count at least two hundred', () => {
    expect(all.length).toBeGreaterThanOrEqual(200);
  });
});
