import {
  ICommandService,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';
import { InsertColMutation, InsertRowMutation, RemoveColMutation, RemoveRowMutation } from '@univerjs/sheets';
import { sheetMove } from './line-moves';

/**
 * When the deletion of several rows or columns is undone, the grid gives their heights and widths to the first ones of
 * them, where some had the usual one. Here each has its own again.
 */

type Sizes = Record<number, object>;

/** What brings rows or columns with it. */
interface InsertedLines {
  rowInfo?: Sizes;
  colInfo?: Sizes;
}

const inserting: ReadonlySet<string> = new Set([InsertRowMutation.id, InsertColMutation.id]);
const removing: ReadonlySet<string> = new Set([RemoveRowMutation.id, RemoveColMutation.id]);

/** `isUndo` says whether something is being undone. */
export function keepSizes(injector: Injector, isUndo: () => boolean): void {
  /** The sizes of deleted lines, counted from the first of them. */
  const deleted = new Map<string, Sizes>();
  injector.get(ICommandService).beforeCommandExecuted((command) => {
    const moved = inserting.has(command.id) || removing.has(command.id) ? sheetMove(command) : undefined;
    if (moved === undefined) return;
    const { workbook, sheet, move } = moved;
    const { across, first } = move;
    const count = Math.abs(move.count);
    const key = JSON.stringify([workbook, sheet, across, first, count]);
    if (inserting.has(command.id)) {
      const sizes = isUndo() ? deleted.get(key) : undefined;
      if (sizes !== undefined) (command.params as InsertedLines)[across === 'row' ? 'rowInfo' : 'colInfo'] = sizes;
      return;
    }
    const open = injector.get(IUniverInstanceService).getUnit<Workbook>(workbook, UniverInstanceType.UNIVER_SHEET);
    const config = open?.getSheetBySheetId(sheet)?.getConfig();
    if (config === undefined) return;
    const all: Readonly<Record<number, object | undefined>> = across === 'row' ? config.rowData : config.columnData;
    const sizes = Array.from({ length: count }, (_, line): [number, object | undefined] => [line, all[first + line]]);
    deleted.set(
      key,
      Object.fromEntries(sizes.flatMap(([line, size]) => (size === undefined ? [] : [[line, { ...size }]]))),
    );
  });
}
