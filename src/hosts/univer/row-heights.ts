import { BooleanNumber, ICommandService, type IRange, type Workbook, WrapStrategy } from '@univerjs/core';
import { IRenderManagerService, type SpreadsheetSkeleton } from '@univerjs/engine-render';
import { SetWorksheetRowAutoHeightMutation } from '@univerjs/sheets';
import type { FWorksheet } from '@univerjs/sheets/facade';
import { SheetSkeletonManagerService } from '@univerjs/sheets-ui';
import type { Spreadsheet } from './spreadsheet';

interface SkeletonParts {
  _skipAutoHeightForMergedCells: boolean;
}

/** Points; larger letters may need a higher row than the usual one. */
const usualSize = 13;
/** Rows beyond these keep the usual height, so that a long list does not block the page. */
const mostRows = 2000;

/** Rows whose height is not set, with text that may need more than the usual one. */
function rowsToFit(workbook: Workbook, sheet: FWorksheet): number[] {
  const { rowData, cellData } = sheet.getSheet().getConfig();
  const styles = workbook.getStyles();
  const rows = Object.keys(cellData).map(Number);
  return rows
    .filter((row) => {
      if (rowData[row]?.ia === BooleanNumber.FALSE) return false;
      return Object.values(cellData[row] ?? {}).some((cell) => {
        const style = cell?.s ? styles.getStyleByCell(cell) : undefined;
        return style?.tb === WrapStrategy.WRAP || (style?.fs ?? 0) > usualSize;
      });
    })
    .slice(0, mostRows);
}

/** The heights that cells need which are merged along their row; neither the grid nor Excel looks at merged ones. */
function mergedHeights(skeleton: SpreadsheetSkeleton, sheet: FWorksheet): ReadonlyMap<number, number> {
  const heights = new Map<number, number>();
  const parts = skeleton as unknown as SkeletonParts;
  const skips = parts._skipAutoHeightForMergedCells;
  parts._skipAutoHeightForMergedCells = false;
  for (const { startRow, endRow, startColumn } of sheet.getSheet().getConfig().mergeData) {
    const height = startRow === endRow ? skeleton.calculateAutoHeightForCell(startRow, startColumn) : undefined;
    if (height) heights.set(startRow, Math.max(height, heights.get(startRow) ?? 0));
  }
  parts._skipAutoHeightForMergedCells = skips;
  return heights;
}

/**
 * Rows without a height of their own, as in files of many programs, get the height of their text, as Excel shows them.
 * The grid itself measures rows only as somebody types. The heights exist only on the screen.
 */
export function fitRows(spreadsheet: Spreadsheet): void {
  const { facade } = spreadsheet.current();
  const sheet = facade.getActiveSheet();
  const [unitId, subUnitId] = [facade.getId(), sheet.getSheetId()];
  const render = spreadsheet.injector.get(IRenderManagerService).getRenderById(unitId);
  const skeleton = render?.with(SheetSkeletonManagerService).ensureSkeleton(subUnitId);
  if (!skeleton) return;
  const endColumn = sheet.getSheet().getColumnCount() - 1;
  const rows = rowsToFit(facade.getWorkbook(), sheet);
  const ranges = rows.map((row): IRange => ({ startRow: row, endRow: row, startColumn: 0, endColumn }));
  const own = new Map(skeleton.calculateAutoHeightInRange(ranges).map(({ row, autoHeight }) => [row, autoHeight ?? 0]));
  const merged = mergedHeights(skeleton, sheet);
  const { defaultRowHeight } = sheet.getSheet().getConfig();
  const changed = rows
    .map((row) => ({ row, autoHeight: Math.max(defaultRowHeight, own.get(row) ?? 0, merged.get(row) ?? 0) }))
    .filter(({ row, autoHeight }) => autoHeight !== sheet.getRowHeight(row));
  if (changed.length === 0) return;
  const params = { unitId, subUnitId, rowsAutoHeightInfo: changed };
  spreadsheet.injector.get(ICommandService).syncExecuteCommand(SetWorksheetRowAutoHeightMutation.id, params);
}
