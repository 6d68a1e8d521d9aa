import { HostError, type SheetHost } from '../../hosts/sheet-host';
import type { CellResult } from '../../hosts/workbook-model';
import { drumSet } from '../../workbooks/sheets/cone-cut-plan/drum-set';
import type { DrumField } from './request';

/** Where the ready-made sheets beside the drums keep what is the same for every drum of the set. */
const places: readonly (readonly [field: DrumField, sheet: string, label: string])[] = [
  ['rise', 'Base mix', 'Cone’s foot above'],
  ['stand', 'Stand and ports', 'Height of the stand'],
  ['container', 'Stand and ports', 'Height of the pail'],
  ['drainDrop', 'Stand and ports', 'Valve below'],
];

const searched = { row: 0, column: 0, rows: 60, columns: 2 };

/**
 * The figures that the other sheets of a set have for each of its drums. Without them the holes of inlet and outlet would
 * be drawn at other heights than the sheet Stand and ports gives.
 */
export async function figuresAround(
  sheet: string,
  host: Pick<SheetHost, 'read'>,
): Promise<Partial<Record<DrumField, CellResult>>> {
  const suffix = drumSet(sheet);
  if (suffix === undefined) return {};
  const names = [...new Set(places.map(([, name]) => name))];
  const read = await Promise.all(names.map(async (name) => [name, await cellsOf(`${name}${suffix}`, host)] as const));
  const cells = new Map(read);
  return Object.fromEntries(
    places.flatMap(([field, name, label]) => {
      const row = cells.get(name)?.find(([first]) => typeof first === 'string' && first.startsWith(label));
      return row?.[1] === undefined ? [] : [[field, row[1]]];
    }),
  );
}

/** No rows if there is no such sheet. */
async function cellsOf(sheet: string, host: Pick<SheetHost, 'read'>): Promise<readonly (readonly CellResult[])[]> {
  try {
    return (await host.read({ sheet, range: searched })).values;
  } catch (error) {
    if (error instanceof HostError) return [];
    throw error;
  }
}
