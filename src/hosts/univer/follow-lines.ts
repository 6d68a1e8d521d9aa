import { ICommandService, type Injector, UndoCommand } from '@univerjs/core';
import { CopySheetCommand, type ICopySheetCommandParams, InsertSheetMutation } from '@univerjs/sheets';
import type { FWorkbook } from '@univerjs/sheets/facade';
import { isLineMove, type Move, withMove } from '../moved-lines';
import { copiedParts } from '../moved-parts';
import type { SheetData } from '../workbook-model';
import { followFrozen } from './freeze-repairs';
import { anyMove, cutCells } from './line-moves';
import type { Notes } from './notes';
import { keepSizes } from './size-repairs';

/** What follows the cells of an open workbook. */
interface Followers {
  readonly facade: FWorkbook;
  readonly notes: Notes;
  /** By the id of the sheet. */
  readonly sources: Map<string, SheetData>;
  readonly moves: Map<string, readonly Move[]>;
}

/**
 * Lets what the spreadsheet does not hold itself follow its cells: notes, and the parts of sheets such as rules and
 * charts. `opened` has the open workbook by its id.
 */
export function followLines(injector: Injector, opened: (workbook: string) => Followers | undefined): void {
  const commands = injector.get(ICommandService);
  let isUndo = false;
  followFrozen(injector, () => isUndo);
  keepSizes(injector, () => isUndo);
  /** The sheet that is being copied. */
  let copied: string | undefined;
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id === UndoCommand.id) isUndo = true;
    if (id !== CopySheetCommand.id) return;
    const { unitId, subUnitId } = (params ?? {}) as ICopySheetCommandParams;
    copied =
      subUnitId ??
      opened(unitId ?? '')
        ?.facade.getActiveSheet()
        .getSheetId();
  });
  commands.onCommandExecuted((command) => {
    const { id, params } = command;
    if (id === UndoCommand.id) isUndo = false;
    else if (id === CopySheetCommand.id) copied = undefined;
    else if (id === InsertSheetMutation.id && copied !== undefined) copyParts(opened, copied, params);
    const cut = cutCells(command);
    if (cut !== undefined) opened(cut.workbook)?.notes.movedCells(cut.from, cut.to, isUndo);
    const moved = anyMove(command);
    const open = moved && opened(moved.workbook);
    if (moved === undefined || open === undefined) return;
    if (isLineMove(moved.move)) open.notes.moved(moved.sheet, moved.move, isUndo);
    open.moves.set(moved.sheet, withMove(open.moves.get(moved.sheet) ?? [], moved.move, isUndo));
  });
}

function copyParts(opened: (workbook: string) => Followers | undefined, from: string, params: unknown): void {
  const { unitId, sheet } = params as { unitId: string; sheet: { id: string; name: string } };
  const open = opened(unitId);
  if (open === undefined) return;
  open.notes.copied(from, sheet.id);
  const source = open.sources.get(from);
  if (source === undefined) return;
  // Parts are as they were before rows and columns moved, so the copy has the same moves behind it.
  open.sources.set(sheet.id, copiedParts(source, sheet.name));
  open.moves.set(sheet.id, open.moves.get(from) ?? []);
}
