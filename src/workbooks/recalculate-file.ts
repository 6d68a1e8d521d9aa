import { cellName, parseRange } from '../hosts/address';
import type { HostFunction } from '../hosts/univer/function-set';
import { type Headless, openHeadless } from '../hosts/univer/headless';
import type { CellData, WorkbookData } from '../hosts/workbook-model';
import { beyondEngine, unusable } from './engine-limits';
import { fitted } from './older-array';
import { type FormulaResult, patchSheet } from './patch-sheet';
import { readWorkbook } from './read-xlsx';
import { type ScannedCell, scanSheet } from './sheet-scan';
import { DamagedWorkbook, type SheetPart, sheetParts } from './workbook-parts';
import { readZip, repack, unpack, type ZipEntry } from './zip-container';
import { writeZip } from './zip-writer';

/** A formula that keeps its stored value, because the engine cannot calculate it. */
export interface KeptFormula {
  readonly sheet: string;
  readonly cell: string;
  readonly formula: string;
  readonly why: string;
}

export interface Recalculated {
  readonly bytes: Uint8Array;
  readonly formulas: number;
  readonly kept: readonly KeptFormula[];
}

/** Taking one formula out can only change those that depend on it, so a few rounds settle which can be done. */
const mostRounds = 6;

interface FormulaCell {
  readonly sheet: string;
  readonly scanned: ScannedCell;
  readonly data: CellData;
}

const keyOf = (sheet: string, row: number, column: number): string => `${sheet}\n${row},${column}`;

function decode(bytes: Uint8Array, path: string): string {
  try {
    // The byte order mark stays, so that the part goes back as it came.
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new DamagedWorkbook(`the workbook is damaged: ${path} is not UTF-8 text`);
  }
}

function partText(texts: ReadonlyMap<string, string>, path: string): string {
  const text = texts.get(path);
  if (text === undefined) throw new DamagedWorkbook(`the workbook is damaged: ${path} is missing`);
  return text;
}

function formulaCells(
  parts: readonly SheetPart[],
  texts: ReadonlyMap<string, string>,
  workbook: WorkbookData,
): FormulaCell[] {
  return parts.flatMap(({ name, path }) => {
    const data = new Map(
      workbook.sheets
        .find((sheet) => sheet.name === name)
        ?.cells.map((cell) => [keyOf('', cell.row, cell.column), cell]),
    );
    return scanSheet(partText(texts, path)).rows.flatMap((row) =>
      row.cells.flatMap((scanned): FormulaCell[] => {
        if (scanned.formula === undefined) return [];
        const { row: at, column } = scanned;
        return [{ sheet: name, scanned, data: data.get(keyOf('', at, column)) ?? { row: at, column } }];
      }),
    );
  });
}

/** The workbook with the formulas that are kept as plain values, so that others can be computed from them. */
function withoutKept(workbook: WorkbookData, kept: ReadonlyMap<string, string>): WorkbookData {
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => {
        if (!kept.has(keyOf(sheet.name, cell.row, cell.column))) return cell;
        const { formula: _formula, spill: _spill, ...plain } = cell;
        return plain;
      }),
    })),
  };
}

function resultOf(host: Headless, cell: FormulaCell): { result: FormulaResult; why: string | undefined } {
  const { row, column, formula } = cell.scanned;
  const own = host.readCell(cell.sheet, row, column);
  const spill = own.spill === undefined ? undefined : parseRange(own.spill);
  const rows = spill === undefined ? [[own]] : host.read(cell.sheet, spill);
  const values = rows.map((line) => line.map((read) => read.value));
  const isOlderArray = formula?.type === 'array' && cell.scanned.attributes.cm === undefined;
  return {
    result: { row, column, values: isOlderArray ? fitted(values, formula.ref ?? '') : values },
    why: unusable(cell.scanned, own.value, spill !== undefined && values.flat().length > 1),
  };
}

async function compute(functions: readonly HostFunction[], workbook: WorkbookData, cells: readonly FormulaCell[]) {
  const why = new Map<string, string>();
  for (let round = 0; ; round += 1) {
    const host = await openHeadless(functions, withoutKept(workbook, why));
    try {
      const before = why.size;
      if (round === 0) {
        for (const { sheet, scanned, data } of cells) {
          const reason =
            scanned.formula?.type === 'dataTable' || data.formula === undefined
              ? 'it is a what-if table'
              : beyondEngine(data.formula, host.knows);
          if (reason !== undefined) why.set(keyOf(sheet, scanned.row, scanned.column), reason);
        }
      }
      const results = new Map<string, FormulaResult[]>();
      if (why.size === before)
        for (const cell of cells) {
          const key = keyOf(cell.sheet, cell.scanned.row, cell.scanned.column);
          if (why.has(key)) continue;
          const { result, why: reason } = resultOf(host, cell);
          if (reason !== undefined) why.set(key, reason);
          else results.set(cell.sheet, [...(results.get(cell.sheet) ?? []), result]);
        }
      if (why.size === before || round === mostRounds) return { results, why };
    } finally {
      host.dispose();
    }
  }
}

/**
 * Calculates every formula of an .xlsx file again and writes the results into it. Only cells that hold formulas, and their
 * spills, change; every other part is copied byte for byte, packed as it was. Throws where the file is damaged.
 */
export async function recalculateFile(functions: readonly HostFunction[], bytes: Uint8Array): Promise<Recalculated> {
  // The whole file is checked before anything is unpacked.
  const workbook = await readWorkbook(bytes);
  const entries = readZip(bytes);
  const contents = new Map(entries.map((entry) => [entry.name, unpack(entry)]));
  const texts = new Map<string, string>();
  const textOf = (path: string): string | undefined => {
    const content = contents.get(path);
    if (content === undefined) return undefined;
    if (!texts.has(path)) texts.set(path, decode(content, path));
    return texts.get(path);
  };
  let parts: readonly SheetPart[];
  let cells: FormulaCell[];
  try {
    parts = sheetParts(textOf);
    cells = formulaCells(parts, texts, workbook);
  } catch (thrown) {
    if (thrown instanceof SyntaxError) throw new DamagedWorkbook(`the workbook is damaged: ${thrown.message}`);
    throw thrown;
  }
  const { results, why } = await compute(functions, workbook, cells);
  const patched = (entry: ZipEntry): ZipEntry => {
    const part = parts.find(({ path }) => path === entry.name);
    const found = part === undefined ? undefined : results.get(part.name);
    if (found === undefined) return entry;
    const before = partText(texts, entry.name);
    const after = patchSheet(before, found);
    return after === before ? entry : repack(entry, new TextEncoder().encode(after));
  };
  return {
    bytes: writeZip(entries.map(patched)),
    formulas: cells.length,
    kept: cells.flatMap(({ sheet, scanned, data }): KeptFormula[] => {
      const reason = why.get(keyOf(sheet, scanned.row, scanned.column));
      const formula = data.formula ?? `=${scanned.formula?.text ?? ''}`;
      return reason === undefined ? [] : [{ sheet, cell: cellName(scanned.row, scanned.column), formula, why: reason }];
    }),
  };
}
