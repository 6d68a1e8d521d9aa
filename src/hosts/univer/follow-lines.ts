import { ICommandService, type Injector, type IRange, UndoCommand } from '@univerjs/core';
import { InsertColMutation, InsertRowMutation, RemoveColMutation, RemoveRowMutation } from '@univerjs/sheets';
import { type LineMove, withMove } from '../moved-lines';
import type { Lines, Notes } from './notes';

interface LinesParams {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly range: IRange;
}

/** What follows the rows and columns of a workbook. */
interface Followers {
  readonly notes: Notes;
  /** By the id of the sheet. */
  readonly moves: Map<string, readonly LineMove[]>;
}

/** Moves notes with the rows and columns of their cells, and notes the moves. `followers` has those of an open workbook by its id. */
export function followLines(injector: Injector, followers: (workbook: string) => Followers | undefined): void {
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
    const following = followers(unitId);
    if (following === undefined) return;
    const { notes, moves } = following;
    const isRows = id === InsertRowMutation.id || id === RemoveRowMutation.id;
    const [first, last] = isRows ? [range.startRow, range.endRow] : [range.startColumn, range.endColumn];
    const lines: Lines = { sheet: subUnitId, across: isRows ? 'row' : 'column', first, count: last - first + 1 };
    if (isInserted) notes.inserted(lines, isUndo);
    else notes.deleted(lines);
    const { across, count } = lines;
    const move = { across, first, count: isInserted ? count : -count };
    moves.set(subUnitId, withMove(moves.get(subUnitId) ?? [], move, isUndo));
  });
}
