import type { SheetData } from '../hosts/workbook-model';
import { DrawMistake, type DrawRequest } from './draw-request';
import { openDrawn, unitsOf } from './draw-workbook';

/** The packet of a workbook's job, from its cells as they were last calculated. */
export async function requestedPacket({ given }: DrawRequest, paper: 'A4' | 'Letter' | undefined): Promise<Uint8Array> {
  if (given.workbook === undefined) throw new DrawMistake('--packet: give --workbook FILE.xlsx');
  const workbook = await openDrawn(given.workbook);
  const units = given.units ?? unitsOf(workbook);
  if (units === undefined) throw new DrawMistake('--units: give US or metric; the workbook has no SiltUnits cell');
  const { packetFile } = await import('../workbooks/packet/packet');
  const { functionLibrary } = await import('../functions/function-library');
  return packetFile({ sheets: workbook.sheets.map(cellsOfSheet), units, functions: functionLibrary, paper });
}

function cellsOfSheet({ name, cells }: SheetData) {
  const rows: (typeof cells)[number]['value'][][] = [];
  for (const { row, column, value } of cells) {
    const line = rows[row] ?? [];
    rows[row] = line;
    line[column] = value;
  }
  return { name, rows: Array.from(rows, (line) => Array.from(line ?? [], (value) => value ?? '')) };
}
