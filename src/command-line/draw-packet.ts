import type { SheetData } from '../hosts/workbook-model';
import { DrawMistake, type DrawRequest } from './draw-request';
import { openDrawn, unitsOf } from './draw-workbook';

/** The packet of a workbook's job, from its cells as they were last calculated, as a PDF file or a workbook. */
export async function requestedPacket(
  { given, format }: DrawRequest,
  paper: 'A4' | 'Letter' | undefined,
): Promise<Uint8Array> {
  if (given.workbook === undefined) throw new DrawMistake('--packet: give --workbook FILE.xlsx');
  const workbook = await openDrawn(given.workbook);
  const units = given.units ?? unitsOf(workbook);
  if (units === undefined) throw new DrawMistake('--units: give US or metric; the workbook has no SiltUnits cell');
  const prices = given.prices === undefined ? [] : (await openDrawn(given.prices)).sheets;
  const { functionLibrary } = await import('../functions/function-library');
  // The first sheet of a name counts: those of the job come before those with the prices.
  const sheets = [...workbook.sheets, ...prices].map(cellsOfSheet);
  const request = { sheets, units, functions: functionLibrary, paper };
  if (format === 'xlsx') return (await import('../workbooks/packet/packet-workbook')).packetWorkbook(request);
  return (await import('../workbooks/packet/packet')).packetFile(request);
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
