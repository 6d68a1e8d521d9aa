import { quoteSheet, splitSheet } from '../../hosts/address';
import { HostError, type SheetHost } from '../../hosts/sheet-host';
import { freeName } from '../sheets/free-name';

const advice =
  'x and y run from the lower-left corner of the blank: bend a thin batten through the outer marks, then through the inner ones, and check the corner-to-corner distances with a tape before cutting.';

/** Puts the marking-out table of a pattern row on a sheet of its own; gives the sheet's name. Nothing stays of a failure. */
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
      {
        sheet: name,
        row: 0,
        column: 0,
        cells: [[title.replace(/^=/, '')]],
        bold: true,
        widths: [24, 12, 12, 12, 12, 12, 12],
      },
      { sheet: name, row: 1, column: 0, cells: [[advice]] },
      { sheet: name, row: 3, column: 0, cells: [[`=SILT.CONE.MARKS(${units},${source},15,TRUE)`]] },
    ]);
  } catch (error) {
    await host.removeSheet(name);
    throw error;
  }
  await host.select({ sheet: name, range: { row: 3, column: 0, rows: 1, columns: 1 } }).catch((error: unknown) => {
    // The table is there all the same.
    if (!(error instanceof HostError)) throw error;
  });
  return name;
}

function absolute(range: string): string {
  return range.replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
}
