import { ICommandService, type Injector, type IRange, UndoCommand } from '@univerjs/core';
import { InsertColMutation, InsertRowMutation, RemoveColMutation, RemoveRowMutation } from '@univerjs/sheets';
import type { Lines, Notes } from './notes';

interface LinesParams {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly range: IRange;
}

/** Moves notes with the rows and columns of their cells. `notesOf` gives those of an open workbook by its id. */
export function moveNotes(injector: Injector, notesOf: (workbook: string) => Notes | undefined): void {
  const commands = injector.get(ICommandService);
  let isUndo = false;
  commands.beforeCommandExecuted(({ id }) => {
    if (id === UndoCommand.id) isUndo = true;
  });
  commands.onCommandExecuted(({ id, params }) => {
    if (id === UndoCommand.id) isUndo = false;
    const isInserted = id === InsertRowMutation.id || id === InsertColMutation.id;
    if (!isInserted && id !== RemoveRowMutation.id && id !== RemoveColMutation.id) return;
    const { unitId, subUnitId, range } = params as LinesParams;
    const notes = notesOf(unitId);
    const isRows = id === InsertRowMutation.id || id === RemoveRowMutation.id;
    const [first, last] = isRows ? [range.startRow, range.endRow] : [range.startColumn, range.endColumn];
    const lines: Lines = { sheet: subUnitId, across: isRows ? 'row' : 'column', first, count: last - first + 1 };
    if (isInserted) notes?.inserted(lines, isUndo);
    else notes?.deleted(lines);
  });
}
