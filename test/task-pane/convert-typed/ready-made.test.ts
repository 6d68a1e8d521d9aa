import { describe, expect, test } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import { cellName } from '../../../src/hosts/address';
import { makeChanges } from '../../../src/task-pane/convert-typed/convert';
import type { Findings } from '../../../src/task-pane/convert-typed/findings';
import { lookForTyped } from '../../../src/task-pane/convert-typed/look';
import { readProfile } from '../../../src/units/profile';
import { readyMade } from '../../../src/workbooks/sheets/ready-made';
import { MemoryHost } from '../memory-host';
import { noProgress } from './look-in';

type ReadyProfile = 'US' | 'metric';

async function opened(build: (typeof readyMade)[number]['build'], profile: ReadyProfile): Promise<MemoryHost> {
  const host = new MemoryHost({});
  await host.insert(build(profile));
  return host;
}

const look = (host: MemoryHost, from: ReadyProfile, to: ReadyProfile) =>
  lookForTyped(host, functionLibrary, { from: readProfile(from), to: readProfile(to) }, noProgress);

const convertAll = (host: MemoryHost, { plain }: Findings) =>
  makeChanges(
    host,
    plain.map(({ spot, content, choices }) => ({ spot, before: content, after: choices[0]!.content })),
  );

/** Numbers that are typed with their unit in a column beside them, so that no profile changes what they mean. */
const ownUnits = new Set(['Prices']);

/**
 * The samples are written anew in each profile, in round numbers of that profile, never converted. So a number that
 * both hold as the same quantity converts into the other's exactly, and every number that differs is one to convert.
 */
describe.each(readyMade)('the ready-made $id', ({ build }) => {
  test.each([
    ['US', 'metric'],
    ['metric', 'US'],
  ] as const)(
    'from %s to %s, every number that the other sample has otherwise is found, and no other',
    async (from, to) => {
      const found = await look(await opened(build, from), from, to);
      expect(found.apart).toEqual([]);
      expect(found.byHand).toEqual([]);
      const listed = found.plain.map(({ spot }) => `${spot.sheet}!${cellName(spot.row, spot.column)}`).sort();
      const [here, there] = [build(from), build(to)];
      const different = here.sheets.flatMap((sheet, at) => {
        const others = new Map(there.sheets[at]!.cells.map((cell) => [cellName(cell.row, cell.column), cell]));
        return sheet.cells.flatMap((cell) => {
          const name = cellName(cell.row, cell.column);
          const other = others.get(name);
          const isNumber = typeof cell.value === 'number' && typeof other?.value === 'number';
          if (cell.formula !== undefined || !isNumber || ownUnits.has(sheet.name)) return [];
          return cell.value === other.value ? [] : [`${sheet.name}!${name}`];
        });
      });
      const equalByChance = listed.filter((place) => !different.includes(place));
      expect(different.filter((place) => !listed.includes(place))).toEqual([]);
      // Twelve dollars a kilogram and a pound may both be 12: such cells are converted without differing.
      expect(equalByChance.length).toBeLessThanOrEqual(3);
    },
  );

  test('is unchanged after conversion to the other profile and back', async () => {
    const host = await opened(build, 'US');
    const before = await host.readUsed();
    await convertAll(host, await look(host, 'US', 'metric'));
    expect((await look(host, 'metric', 'US')).plain.length).toBeGreaterThan(0);
    await convertAll(host, await look(host, 'metric', 'US'));
    const after = await host.readUsed();
    before.forEach(({ values }, at) => {
      values.forEach((line, down) => {
        line.forEach((value, across) => {
          const now = after[at]!.values[down]![across];
          if (typeof value === 'number') expect(now).toBeCloseTo(value, 9);
          else expect(now).toEqual(value);
        });
      });
    });
  });
});
