import { BooleanNumber, CellValueType, type ICellData, type ICommandService } from '@univerjs/core';
import { SetRangeValuesCommand } from '@univerjs/sheets';
import type { FWorksheet } from '@univerjs/sheets/facade';
import { cellName, contains } from '../address';
import { HostError, type Write } from '../sheet-host';
import type { CellScalar } from '../workbook-model';
import type { CellReader } from './cell-reader';
import { toEngineValue, toPixels } from './snapshot';

/** Refuses a write that would change part of a spill or the hidden part of a merged cell. */
export function checkWrite({ reader }: { readonly reader: CellReader }, sheet: FWorksheet, write: Write): void {
  const spills = reader.spills(sheet.getSheet());
  const merges = sheet.getSheet().getConfig().mergeData ?? [];
  write.cells.forEach((line, downwards) => {
    line.forEach((entry, across) => {
      if (entry === undefined) return;
      const row = write.row + downwards;
      const column = write.column + across;
      const spill = spills.find((range) => contains(range, row, column));
      if (spill !== undefined && (spill.row !== row || spill.column !== column)) {
        throw new HostError(
          'occupied',
          `${cellName(row, column)} is filled by the formula in ${cellName(spill.row, spill.column)}; change it there.`,
        );
      }
      const merged = merges.find(
        (range) =>
          row >= range.startRow && row <= range.endRow && column >= range.startColumn && column <= range.endColumn,
      );
      if (merged !== undefined && (merged.startRow !== row || merged.startColumn !== column)) {
        throw new HostError(
          'occupied',
          `${cellName(row, column)} is inside a merged cell; take the merge apart first.`,
        );
      }
    });
  });
}

function toCell(entry: CellScalar, write: Write): ICellData {
  const blank = { v: null, f: null, t: null, si: null, p: null, custom: null };
  const styles = {
    ...(write.numberFormat === undefined ? {} : { n: { pattern: write.numberFormat } }),
    ...(write.bold === undefined ? {} : { bl: write.bold ? BooleanNumber.TRUE : BooleanNumber.FALSE }),
  };
  const style = Object.keys(styles).length === 0 ? {} : { s: styles };
  if (entry === '') return { ...blank, ...style };
  if (typeof entry === 'string' && entry.startsWith('=')) return { ...blank, ...style, f: entry };
  const value = toEngineValue(entry);
  // Written text stays text, even if it could be read as a number or a date.
  const type = typeof entry === 'string' ? { t: CellValueType.STRING } : {};
  return { ...blank, ...style, ...value, ...type };
}

/** Writes one block through the spreadsheet's own commands, so that it can be undone. */
export function writeBlock(commands: ICommandService, unitId: string, sheet: FWorksheet, write: Write): void {
  const matrix: Record<number, Record<number, ICellData>> = {};
  write.cells.forEach((line, downwards) => {
    const row: Record<number, ICellData> = {};
    line.forEach((entry, across) => {
      if (entry !== undefined) row[write.column + across] = toCell(entry, write);
    });
    if (Object.keys(row).length > 0) matrix[write.row + downwards] = row;
  });
  if (Object.keys(matrix).length > 0) {
    const written = commands.syncExecuteCommand(SetRangeValuesCommand.id, {
      unitId,
      subUnitId: sheet.getSheetId(),
      value: matrix,
    });
    if (!written) throw new HostError('protected', `The sheet “${sheet.getSheetName()}” cannot be written to.`);
  }
  write.widths?.forEach((width, column) => {
    if (width !== undefined) sheet.setColumnWidth(write.column + column, toPixels(width));
  });
}
