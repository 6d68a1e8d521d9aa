import {
  getNumfmtParseValueFilter,
  type ICellData,
  type Injector,
  type IObjectMatrixPrimitiveType,
  type IStyleData,
  IUniverInstanceService,
  type ObjectMatrix,
  STYLE_KEYS,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import { SetRangeValuesMutation, SetRangeValuesUndoMutationFactory } from '@univerjs/sheets';
import { ISheetClipboardService, PREDEFINED_HOOK_NAME_PASTE, SheetClipboardService } from '@univerjs/sheets-ui';
import { withInternals } from './engine-internals';
import { protectionKey } from './snapshot-style';

/**
 * What a pasted cell does not set, such as its font, the grid writes into it as Arial of 11 points, black, and so on, which
 * a saved file would then have for good. Here it is left out, as in the cell that was copied.
 *
 * Text from outside takes the format of the cells away that it is pasted into, the fill of input cells too. Here cells
 * that have a format keep it; others take that of the text, if it has one.
 */

interface Target {
  readonly unitId: string;
  readonly subUnitId: string;
  /** The rows and columns of the cells that are pasted into. */
  readonly pastedRange: { readonly rows: readonly number[]; readonly cols: readonly number[] };
}

interface ClipboardParts {
  readonly _univerInstanceService: IUniverInstanceService;
  /** Pastes cells; from outside they have no source. */
  _pasteUSM(
    data: { readonly cellMatrix: ObjectMatrix<ICellData> | null },
    target: Target,
    pasteType: string,
    source?: object,
  ): boolean;
}

function sheetOf(instances: IUniverInstanceService, { unitId, subUnitId }: Pick<Target, 'unitId' | 'subUnitId'>) {
  const workbook = instances.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
  return workbook?.getSheetBySheetId(subUnitId);
}

/** A style that also says what it does not set, so that nothing else is put in its place. */
function withoutDefaults(style: ICellData['s']): IStyleData {
  const set = typeof style === 'object' && style !== null ? style : {};
  return { ...Object.fromEntries(STYLE_KEYS.map((key) => [key, null])), ...set };
}

const isBlank = (style: ICellData['s']): boolean => !style || Object.keys(style).length === 0;

const hasStyle = (sheet: Worksheet, row: number, column: number): boolean => Boolean(sheet.getCellRaw(row, column)?.s);

let repaired = false;

export function repairPaste(): void {
  if (repaired) return;
  repaired = true;
  // The protection of a cell goes with its style.
  (STYLE_KEYS as unknown as string[]).push(protectionKey);
  const { DEFAULT_PASTE, SPECIAL_PASTE_VALUE } = PREDEFINED_HOOK_NAME_PASTE;
  const clipboard = withInternals<ClipboardParts>(SheetClipboardService);
  const { _pasteUSM: paste } = clipboard;
  clipboard._pasteUSM = function (this: ClipboardParts, data, target, pasteType, source) {
    const sheet = sheetOf(this._univerInstanceService, target);
    let isPlain = true;
    data.cellMatrix?.forValue((row, column, cell) => {
      isPlain &&= isBlank(cell?.s);
      if (cell) data.cellMatrix?.setValue(row, column, { ...cell, s: withoutDefaults(cell.s) });
    });
    if (source !== undefined || pasteType !== DEFAULT_PASTE || !sheet || data.cellMatrix === null)
      return paste.call(this, data, target, pasteType, source);
    const { rows, cols } = target.pastedRange;
    const keeps = isPlain || rows.some((row) => cols.some((column) => hasStyle(sheet, row, column)));
    return paste.call(this, data, target, keeps ? SPECIAL_PASTE_VALUE : pasteType, source);
  };
}

/** Spreadsheets whose clipboard knows how; it is there once a workbook is open. */
const hooked = new WeakSet<Injector>();

/** Cells without a number format take that of the date, or of the share, which is pasted into them, as if it were typed. */
export function keepNumberFormats(injector: Injector): void {
  if (hooked.has(injector)) return;
  hooked.add(injector);
  injector.get(ISheetClipboardService).addClipboardHook({
    id: 'number-formats-of-text-from-outside',
    onPasteCells: (from, { range, unitId, subUnitId }, cells) => {
      const sheet = sheetOf(injector.get(IUniverInstanceService), { unitId, subUnitId });
      if (from !== null || !sheet) return { redos: [], undos: [] };
      const cellValue: IObjectMatrixPrimitiveType<ICellData> = {};
      cells.forValue((row, column, cell) => {
        const [down, across] = [range.rows[row], range.cols[column]];
        const pattern = typeof cell?.v === 'string' ? getNumfmtParseValueFilter(cell.v.trim())?.z : undefined;
        if (down === undefined || across === undefined || !pattern) return;
        if (sheet.getCellStyle(down, across)?.n) return;
        cellValue[down] = { ...cellValue[down], [across]: { s: { n: { pattern: String(pattern) } } } };
      });
      if (Object.keys(cellValue).length === 0) return { redos: [], undos: [] };
      const params = { unitId, subUnitId, cellValue };
      const { id } = SetRangeValuesMutation;
      return {
        redos: [{ id, params }],
        undos: [{ id, params: SetRangeValuesUndoMutationFactory(injector, params) }],
      };
    },
  });
}
