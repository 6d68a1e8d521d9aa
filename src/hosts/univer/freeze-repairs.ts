import {
  ICommandService,
  type IFreeze,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from '@univerjs/core';
import { SetFrozenMutation } from '@univerjs/sheets';
import { HeaderFreezeRenderController } from '@univerjs/sheets-ui';
import { movedLines } from '../moved-lines';
import { withInternals } from './engine-internals';
import { type SheetMove, sheetMove } from './line-moves';

/**
 * The grid lets the frozen rows and columns of a sheet follow its lines only if the sheet is in view, and those that are
 * deleted are selected by their headings; and it keeps one of them if all are deleted. Here they follow every move.
 */

interface FreezeParts {
  /** Lets frozen rows and columns follow commands. */
  _interceptorCommands(): void;
}

let repaired = false;

export function repairFreeze(): void {
  if (repaired) return;
  repaired = true;
  withInternals<FreezeParts>(HeaderFreezeRenderController)._interceptorCommands = () => undefined;
}

/** How many lines are frozen after a move. */
function frozenAfter(frozen: number, { move }: SheetMove): number {
  const [start, length] = (frozen > 0 && movedLines(move.across, 0, frozen, [move])) || [0, 0];
  return start + length;
}

/** `isUndo` says whether something is being undone. */
export function followFrozen(injector: Injector, isUndo: () => boolean): void {
  const commands = injector.get(ICommandService);
  /** What was frozen before lines were deleted, which is not known otherwise when that is undone. */
  const before = new Map<string, IFreeze>();
  commands.onCommandExecuted((command) => {
    const moved = sheetMove(command);
    if (moved === undefined) return;
    const { workbook: unitId, sheet: subUnitId, move } = moved;
    const workbook = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
    const sheet = workbook?.getSheetBySheetId(subUnitId);
    if (!sheet) return;
    const { freeze } = sheet.getConfig();
    const isRows = move.across === 'row';
    const frozen = isRows ? freeze.ySplit : freeze.xSplit;
    const after = frozenAfter(frozen, moved);
    const key = (count: number): string => JSON.stringify([unitId, subUnitId, move.across, move.first, count, frozen]);
    const undone = isUndo() ? before.get(key(-move.count)) : undefined;
    if (after === frozen && undone === undefined) return;
    if (move.count < 0)
      before.set(JSON.stringify([unitId, subUnitId, move.across, move.first, move.count, after]), freeze);
    const changed = isRows
      ? { ySplit: after, startRow: after > 0 ? after : -1 }
      : { xSplit: after, startColumn: after > 0 ? after : -1 };
    const now = undone ?? { ...freeze, ...changed };
    commands.syncExecuteCommand(SetFrozenMutation.id, { ...now, unitId, subUnitId, resetScroll: false });
  });
}
