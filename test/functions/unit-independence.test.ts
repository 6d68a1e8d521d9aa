import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import type { Kind } from '../../src/units/kinds';
import { kindRows } from '../../src/units/kinds';
import { readProfile } from '../../src/units/profile';
import { readQuantity } from '../../src/units/quantity';
import { alsoRead } from '../../src/units/wording';
import type { PublishedRow } from '../published/published-row';
import { spill } from './call';

/** Every call of the published figures, whose arguments are known to make sense. */
const folder = join(__dirname, '../published');
const files = readdirSync(folder).filter((name) => /^[a-z-]+\.ts$/.test(name) && name !== 'published-row.ts');
const calls = (
  await Promise.all(
    files.map(async (file) => {
      const module = (await import(join(folder, file))) as Record<string, readonly PublishedRow[]>;
      return Object.values(module)
        .flat()
        .map((row) => row.call);
    }),
  )
).flat();

/** The number in another unit that reads as the same SI figure, found by the unit's own scale and shift. */
function inUnit(kind: Kind, si: number, unit: string): number {
  const profile = readProfile('metric');
  const at = (bare: number) => readQuantity(profile, kind, `${bare} ${unit}`);
  const shift = at(0);
  return (si - shift) / (at(1) - shift);
}

function kindOf(name: string, place: number): Kind | undefined {
  const row = catalogue.find((one) => one.name === name)!;
  if (row.units === false || place === 0) return undefined;
  const spec = Object.values(row.arguments)[place - 1];
  return spec !== undefined && 'kind' in spec && !('reader' in spec) ? spec.kind : undefined;
}

let compared = 0;

describe('the same quantity in any of its units gives the same result', () => {
  for (const row of catalogue) {
    const mine = calls.filter(([name]) => name === row.name);
    const places = Object.keys(row.arguments)
      .map((_, i) => i + 1)
      .filter((place) => kindRows[kindOf(row.name, place) ?? 'number'].metric !== '');
    if (mine.length === 0 || places.length === 0) continue;
    it(`SILT.${row.name}`, () => {
      for (const [name, ...values] of mine) {
        const profile = readProfile(values[0]);
        const expected = spill(name, ...values);
        for (const place of places) {
          const kind = kindOf(name, place)!;
          const value = values[place];
          if (typeof value !== 'number') continue;
          const si = readQuantity(profile, kind, value, Number.MAX_VALUE);
          for (const unit of alsoRead(profile, kind)) {
            const typed = `${inUnit(kind, si, unit)} ${unit}`;
            const result = spill(name, ...values.map((one, i) => (i === place ? typed : one)));
            result.flat().forEach((cell, i) => {
              const meant = expected.flat()[i];
              if (typeof cell !== 'number' || typeof meant !== 'number') return;
              const off = Math.abs(cell - meant) / Math.max(Math.abs(meant), 1e-9);
              expect(off, `${name}(${values.join(', ')}) with ${typed}: ${cell} for ${meant}`).toBeLessThan(1e-12);
              compared++;
            });
          }
        }
      }
    });
  }

  it('has been asked of many figures', () => {
    expect(compared).toBeGreaterThan(500);
  });
});
