import type { CellData, CellScalar, WorkbookData } from '../../hosts/workbook-model';
import { readWorkbook, UnreadableWorkbook } from '../../workbooks/read-xlsx';
import { RefusedWorkbook } from '../../workbooks/reading/file-size';
import { DamagedWorkbook } from '../../workbooks/workbook-parts';
import { writeWorkbook } from '../../workbooks/write-xlsx';
import type { FuzzLog } from './fuzz-log';
import { Random } from './random';

const texts: readonly string[] = [
  'Drum 2',
  '',
  ' leading',
  'trailing ',
  'two\nlines',
  '<b>&amp;"\'',
  '=1+1',
  '_x0041_',
  'Ö½∅ 水',
  'a'.repeat(3000),
  '0012',
  '1e5',
  'TRUE',
  '#N/A',
];
const formulas: readonly string[] = [
  '=A1+1',
  '=SUM(A1:A9)',
  '=SILT.CONE.ANGLE("US",22.5,4,9.25)',
  '=IF(A1>0,"a","b")',
  '="x"&B2',
  '=LET(a,1,a+1)',
  "='Other sheet'!A1",
];
const most = 0xff;

/**
 * Writes that many workbooks and reads them back; every second one is damaged first, and must then be read or refused
 * with a message.
 */
export async function files(seed: number, count: number, log: FuzzLog): Promise<void> {
  const random = new Random(seed);
  for (let i = 0; i < count; i++) {
    const workbook = randomWorkbook(random);
    const call = { name: 'a workbook written and read', file: i, seed, workbook };
    log.before(call);
    try {
      const bytes = await writeWorkbook(workbook);
      if (random.chance(0.5)) await readDamaged(damaged(random, bytes));
      else compare(workbook, await readWorkbook(bytes));
    } catch (error) {
      log.fault(call, error instanceof Error ? `${error.name}: ${error.message.slice(0, 200)}` : String(error));
    }
  }
}

function randomWorkbook(random: Random): WorkbookData {
  const names = ['Drums', 'Other sheet', "It's", 'a-b', '水'].slice(0, random.whole(1, 3));
  return { sheets: names.map((name) => ({ name, cells: randomCells(random) })) };
}

function randomCells(random: Random): CellData[] {
  const places = new Map<string, CellData>();
  for (let i = random.whole(0, 40); i > 0; i--) {
    const [row, column] = [random.whole(0, 60), random.whole(0, 30)];
    const value = randomValue(random);
    const formula = random.chance(0.2) ? { formula: random.pick(formulas) } : {};
    places.set(`${row},${column}`, { row, column, ...formula, value });
  }
  return [...places.values()].sort((a, b) => a.row - b.row || a.column - b.column);
}

function randomValue(random: Random): CellScalar {
  const which = random.next();
  if (which < 0.5) return random.pick([0, 1, -1, 1e-300, 1e300, 46143.5, random.magnitude(1e-9, 1e9)]);
  return which < 0.9 ? random.pick(texts) : random.chance(0.5);
}

/** A few bytes changed, the end cut off, or a stretch written twice. */
function damaged(random: Random, bytes: Uint8Array): Uint8Array {
  const copy = Uint8Array.from(bytes);
  const which = random.next();
  if (which < 0.2) return copy.slice(0, random.whole(0, copy.length));
  if (which < 0.4) {
    const start = random.whole(0, copy.length - 1);
    copy.copyWithin(random.whole(0, copy.length - 1), start, start + random.whole(1, 400));
    return copy;
  }
  for (let i = random.whole(1, 8); i > 0; i--) copy[random.whole(0, copy.length - 1)] = random.whole(0, most);
  return copy;
}

async function readDamaged(bytes: Uint8Array): Promise<void> {
  try {
    await readWorkbook(bytes);
  } catch (error) {
    if (error instanceof UnreadableWorkbook || error instanceof RefusedWorkbook || error instanceof DamagedWorkbook)
      return;
    throw error;
  }
}

function compare(written: WorkbookData, read: WorkbookData): void {
  for (const [i, sheet] of written.sheets.entries()) {
    const back = read.sheets[i];
    if (back?.name !== sheet.name) throw new Error(`sheet ${sheet.name} came back as ${back?.name}`);
    const cells = new Map(back.cells.map((cell) => [`${cell.row},${cell.column}`, cell]));
    for (const cell of sheet.cells) {
      const other = cells.get(`${cell.row},${cell.column}`);
      const [was, is] = [
        cell.formula ?? cell.value,
        cell.formula === undefined ? (other?.value ?? '') : other?.formula,
      ];
      if (was !== is) throw new Error(`${JSON.stringify(was)} came back as ${JSON.stringify(is)}`);
    }
  }
}
