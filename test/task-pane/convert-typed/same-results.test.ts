import { describe, expect, test } from 'vitest';
import type { CatalogueRow } from '../../../src/catalogue/define';
import { functionLibrary } from '../../../src/functions/function-library';
import { cellName, parseRange } from '../../../src/hosts/address';
import { sourceFunctions } from '../../../src/hosts/univer/source-functions';
import type { CellData, CellResult, WorkbookData } from '../../../src/hosts/workbook-model';
import { lookForTyped } from '../../../src/task-pane/convert-typed/look';
import { changeUnits } from '../../../src/task-pane/units/change-units';
import { readWorkbookUnits } from '../../../src/task-pane/workbook-units';
import { type Kind, kinds } from '../../../src/units/kinds';
import { type Profile, readProfile } from '../../../src/units/profile';
import { calculateWorkbook } from '../../../src/workbooks/calculate';
import { type ReadyProfile, readyMade } from '../../../src/workbooks/sheets/ready-made';
import { MemoryHost } from '../memory-host';
import { noProgress } from './look-in';

/** The workbook after its units and its typed numbers were changed as the pane changes them. */
async function converted(built: WorkbookData, from: ReadyProfile, to: ReadyProfile): Promise<WorkbookData> {
  const host = new MemoryHost({});
  await host.insert(built);
  const change = { from: readProfile(from), to: readProfile(to) };
  const { plain } = await lookForTyped(host, functionLibrary, change, noProgress);
  await changeUnits(host, await readWorkbookUnits(host), {
    units: to,
    typedIn: to,
    conversions: plain.map(({ spot, content, choices }) => ({ spot, before: content, after: choices[0]!.content })),
  });
  const cellAfter = (sheet: string, cell: CellData): CellData => {
    const content = host.at(sheet, cellName(cell.row, cell.column));
    if (cell.formula !== undefined) return { ...cell, formula: String(content) };
    return cell.value === undefined ? cell : { ...cell, value: content };
  };
  return {
    ...built,
    sheets: built.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => cellAfter(sheet.name, cell)),
    })),
  };
}

/** The kind of each column that a function gives; undefined where its figures are of several kinds, as in a shopping list. */
function kindsOf({ name, result }: CatalogueRow): readonly (Kind | undefined)[] {
  if (name === 'COST.LINES') return [];
  if ('scalar' in result) return [result.scalar];
  const columns = 'row' in result ? result.row : 'rows' in result ? result.rows : {};
  return Object.values(columns).map((column) => ('kind' in column ? column.kind : undefined));
}

/** The kind of each result of the SILT calls that are a cell formula by themselves, by sheet and cell. */
function knownKinds({ sheets }: WorkbookData): ReadonlyMap<string, Kind> {
  const found = new Map<string, Kind>();
  for (const { name, cells } of sheets) {
    for (const { row, column, formula, spill } of cells) {
      const called = /^=SILT\.([A-Z0-9.]+)\((?:[^()]|\((?:[^()]|\([^()]*\))*\))*\)$/.exec(formula ?? '')?.[1];
      const contract = functionLibrary.catalogue.find((one) => one.name === called);
      if (contract === undefined) continue;
      const columns = kindsOf(contract);
      const { rows, columns: across } = parseRange(spill ?? cellName(row, column))!;
      for (let down = 0; down < rows; down += 1) {
        for (let right = 0; right < across; right += 1) {
          const kind = columns[columns.length === 1 ? 0 : right];
          if (kind !== undefined) found.set(`${name}!${cellName(row + down, column + right)}`, kind);
        }
      }
    }
  }
  return found;
}

function results({ sheets }: WorkbookData): ReadonlyMap<string, CellResult> {
  return new Map(
    sheets.flatMap(({ name, cells }) => {
      const filled = cells.flatMap(({ spill }) => (spill === undefined ? [] : [parseRange(spill)!]));
      return cells
        .filter(
          ({ row, column, formula }) =>
            formula !== undefined ||
            filled.some(
              (range) =>
                row >= range.row &&
                row < range.row + range.rows &&
                column >= range.column &&
                column < range.column + range.columns,
            ),
        )
        .map(({ row, column, value }) => [`${name}!${cellName(row, column)}`, value ?? ''] as const);
    }),
  );
}

/** Whether two figures are one quantity of a kind, each under its profile. */
function isSame(kind: Kind, [one, from]: [number, Profile], [other, to]: [number, Profile]): boolean {
  const [here, there] = [from.units[kind], to.units[kind]];
  const [a, b] = [(one + here.shift) * here.scale, (other + there.shift) * there.scale];
  // Where a search by trial ends, the last digits differ between units.
  return Math.abs(a - b) <= 1e-8 * Math.max(Math.abs(a), Math.abs(b), 1e-6 * here.scale);
}

/**
 * What the farm comes to does not depend on the units that it is written in: a sample that was written in one profile
 * and converted gives, computed again, every result that it gave before, read in SI by the exact definitions of the
 * units (which are checked against GNU units and mathjs elsewhere).
 */
describe.each(readyMade)('the converted $id', ({ build }) => {
  test.each([
    ['US', 'metric'],
    ['metric', 'US'],
  ] as const)('gives every result again, from %s to %s', async (from, to) => {
    const functions = await sourceFunctions();
    const native = await calculateWorkbook(functions, build(from));
    const after = results(await calculateWorkbook(functions, await converted(build(from), from, to)));
    const known = knownKinds(native);
    const [here, there] = [readProfile(from), readProfile(to)];
    const wrong: string[] = [];
    let checked = 0;
    for (const [place, value] of results(native)) {
      const now = after.get(place) ?? '';
      const kind = known.get(place);
      if (typeof value !== 'number' || typeof now !== 'number') {
        if (typeof value !== typeof now) wrong.push(`${place}: ${JSON.stringify([value, now])}`);
        continue;
      }
      checked += 1;
      const asked = kind === undefined ? kinds : [kind];
      if (!asked.some((one) => isSame(one, [value, here], [now, there]))) {
        wrong.push(`${place}${kind === undefined ? '' : ` (${kind})`}: ${value} was, ${now} is`);
      }
    }
    expect(wrong).toEqual([]);
    expect(checked).toBeGreaterThan(20);
  });
});
