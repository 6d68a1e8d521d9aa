import { type LineMove, type Move, movedLines, movedRange } from '../../hosts/moved-lines';
import { movedText } from '../../hosts/moved-parts';
import type { CellData, SheetData } from '../../hosts/workbook-model';

function movedSizes(
  sizes: Readonly<Record<number, number>> | undefined,
  across: LineMove['across'],
  moves: readonly Move[],
): Record<number, number> {
  return Object.fromEntries(
    Object.entries(sizes ?? {}).flatMap(([line, size]) => {
      const [now] = movedLines(across, Number(line), 1, moves) ?? [];
      return now === undefined ? [] : [[now, size]];
    }),
  );
}

function movedHidden(
  lines: readonly number[] | undefined,
  across: LineMove['across'],
  moves: readonly Move[],
): number[] {
  return (lines ?? []).flatMap((line) => movedLines(across, line, 1, moves)?.[0] ?? []);
}

function movedCell(cell: CellData, moves: readonly Move[]): CellData[] {
  const now = movedRange({ ...cell, rows: 1, columns: 1 }, moves);
  if (now === undefined) return [];
  const { spill, ...rest } = cell;
  const filled = spill === undefined ? undefined : movedText(spill, moves);
  return [{ ...rest, row: now.row, column: now.column, ...(filled === undefined ? {} : { spill: filled }) }];
}

/** A sheet as it was opened, with cells, sizes and merges where they are after its rows and columns moved. */
export function movedBefore(sheet: SheetData, moves: readonly Move[]): SheetData {
  if (moves.length === 0) return sheet;
  return {
    ...sheet,
    cells: sheet.cells.flatMap((cell) => movedCell(cell, moves)),
    columnWidths: movedSizes(sheet.columnWidths, 'column', moves),
    rowHeights: movedSizes(sheet.rowHeights, 'row', moves),
    hiddenRows: movedHidden(sheet.hiddenRows, 'row', moves),
    hiddenColumns: movedHidden(sheet.hiddenColumns, 'column', moves),
    merges: (sheet.merges ?? []).flatMap((merge) => movedText(merge, moves) ?? []),
  };
}
