import { parseRange, quoteSheet, splitSheet } from '../../hosts/address';
import { HostError, type SheetHost } from '../../hosts/sheet-host';
import { freeName } from '../sheets/free-name';

const advice =
  'x and y run from the lower-left corner of the blank: bend a thin batten through the outer marks, then through the inner ones, and check the corner-to-corner distances with a tape before cutting.';

const tableRow = 3;
const formattedRows = 60;

function unchanged(rows: number, columns: number): readonly undefined[][] {
  return Array.from({ length: rows }, () => new Array<undefined>(columns).fill(undefined));
}

/** Puts the marking-out table of a pattern row on a new sheet and returns its name. A failure leaves nothing behind. */
export async function insertMarkingOut(
  host: SheetHost,
  pattern: { readonly from: string; readonly name: string; readonly units: string | undefined },
): Promise<string> {
  const { sheet, rest } = splitSheet(pattern.from);
  const source = sheet === undefined ? pattern.from : `${quoteSheet(sheet)}!${absolute(rest)}`;
  const units = pattern.units === undefined ? 'SiltUnits' : `"${pattern.units.replaceAll('"', '""')}"`;
  const name = freeName('Marking out', await host.sheets());
  await host.addSheet(name);
  try {
    const title = pattern.name === '' ? 'Marking-out table' : `Marking-out table: ${pattern.name}`;
    await host.write([
      { sheet: name, row: 0, column: 0, cells: [[title]], bold: true, widths: [30, 15, 15, 15, 15, 15, 20] },
      { sheet: name, row: 1, column: 0, cells: [[advice]] },
      // Where the table will be, before it exists.
      { sheet: name, row: tableRow + 1, column: 1, cells: unchanged(formattedRows, 6), numberFormat: '0.00' },
      {
        sheet: name,
        row: tableRow,
        column: 0,
        cells: [[`=SILT.CONE.MARKS(${units},${source},15,TRUE)`]],
      },
    ]);
  } catch (error) {
    await host.removeSheet(name);
    throw error;
  }
  await host
    .select({ sheet: name, range: { row: tableRow, column: 0, rows: 1, columns: 1 } })
    .catch((error: unknown) => {
      // The table was written nevertheless.
      if (!(error instanceof HostError)) throw error;
    });
  return name;
}

/** Goes back to the pattern and removes the table's sheet. */
export async function removeMarkingOut(host: SheetHost, name: string, from: string): Promise<void> {
  const { sheet, rest } = splitSheet(from);
  const range = parseRange(rest);
  if (sheet !== undefined && range !== undefined) await host.select({ sheet, range });
  await host.removeSheet(name);
}

function absolute(range: string): string {
  return range.replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
}
