import { cellName, quoteSheet } from '../../hosts/address';
import { HostError, type Place, type SheetHost } from '../../hosts/sheet-host';
import type { DefinedName, SheetData } from '../../hosts/workbook-model';
import type { Profile } from '../../units/profile';
import { unitsNames, unitsSheet, unitsSheetName } from '../../workbooks/sheets/units-sheet';
import { oneCell, typedInName, type UnitsCell } from '../workbook-units';

/**
 * Puts the units sheet into a workbook that has none, with both names, or only the names if the sheet still exists.
 * Names that referred to something else are redefined, so ask first; a failure leaves the workbook as it was.
 */
export async function putUnitCells(host: SheetHost, profile: Profile): Promise<void> {
  const [before, sheets] = await Promise.all([host.names(), host.sheets()]);
  const isThere = sheets.some((name) => name.toLowerCase() === unitsSheetName.toLowerCase());
  const cells = unitsNames.map(ownCell);
  if (isThere) await refuseForeignSheet(host, cells);
  const old = before.filter(({ name }) => unitsNames.some((one) => one.name.toLowerCase() === name.toLowerCase()));
  const isOld = (name: string): boolean => old.some((one) => one.name.toLowerCase() === name.toLowerCase());
  const done: (() => Promise<void>)[] = [];
  try {
    if (isThere) await host.write(cells.map((place) => ({ ...corner(place), cells: [[profile.text]] })));
    else {
      await host.insert({ sheets: [sheetFor(profile)], names: unitsNames.filter(({ name }) => !isOld(name)) });
      done.push(() => host.removeSheet(unitsSheetName));
    }
    for (const name of unitsNames) {
      if (!isThere && !isOld(name.name)) {
        done.push(() => host.removeName(name.name));
        continue;
      }
      const stood = old.find((one) => one.name.toLowerCase() === name.name.toLowerCase());
      await host.setName(name);
      done.push(() => (stood === undefined ? host.removeName(name.name) : host.setName(stood)));
    }
  } catch (error) {
    for (const undo of done.reverse()) await undo().catch(() => undefined);
    throw error;
  }
}

/** The cell of one of our own names. */
function ownCell({ name, refersTo }: DefinedName): Place {
  const place = oneCell(refersTo);
  if (place === undefined) throw new Error(`${name} refers to ${refersTo}, not to one cell`);
  return place;
}

async function refuseForeignSheet(host: SheetHost, cells: readonly Place[]): Promise<void> {
  const texts = await Promise.all(
    cells.map(async ({ sheet, range }) => (await host.read({ sheet, range: { ...range, column: 0 } })).values[0]?.[0]),
  );
  const ours = sheetLabels();
  if (texts.every((text, at) => text === ours[at])) return;
  throw new HostError(
    'taken',
    `A sheet called ${unitsSheetName} exists already and is not Siltstead’s; rename it, then set the units again.`,
  );
}

/** The labels beside the two cells on our own sheet. */
function sheetLabels(): readonly unknown[] {
  const { cells } = unitsSheet('metric');
  return unitsNames.map((name) => {
    const { row } = ownCell(name).range;
    return cells.find((cell) => cell.row === row && cell.column === 0)?.value;
  });
}

function sheetFor(profile: Profile): SheetData {
  const sheet = unitsSheet(profile.name);
  const places = unitsNames.map((name) => ownCell(name).range);
  return {
    ...sheet,
    cells: sheet.cells.map((cell) =>
      places.some(({ row, column }) => row === cell.row && column === cell.column)
        ? { ...cell, value: profile.text }
        : cell,
    ),
  };
}

function corner({ sheet, range }: Place): { readonly sheet: string; readonly row: number; readonly column: number } {
  return { sheet, row: range.row, column: range.column };
}

/** Gives a workbook that has SiltUnits but no SiltTypedIn the second cell, in the first blank cell below the first. */
export async function putTypedIn(host: SheetHost, units: UnitsCell, profileText: string): Promise<Place> {
  if (units.place === undefined)
    throw new HostError('missing', `SiltUnits refers to ${units.refersTo}, not to one cell.`);
  const { sheet, range } = units.place;
  const below = await host.read({ sheet, range: { ...range, row: range.row + 1, rows: 20 } });
  const blank = below.values.findIndex((line, at) => line[0] === '' && below.formulas[at]?.[0] === undefined);
  if (blank < 0) {
    throw new HostError(
      'occupied',
      `There is no blank cell below SiltUnits for the cell SiltTypedIn; clear one, then try again.`,
    );
  }
  const place = { sheet, range: { ...range, row: range.row + 1 + blank } };
  await host.write([{ ...corner(place), cells: [[profileText]] }]);
  const { row, column } = place.range;
  await host.setName({ name: typedInName, refersTo: `${quoteSheet(sheet)}!${absolute(cellName(row, column))}` });
  return place;
}

function absolute(cell: string): string {
  return cell.replace(/^([A-Z]+)(\d+)$/, '$$$1$$$2');
}
