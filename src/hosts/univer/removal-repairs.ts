import type { ICommandInfo, IMutationInfo } from '@univerjs/core';
import { RemoveSheetCommand, SetRangeValuesMutation, SheetInterceptorService } from '@univerjs/sheets';
import { SheetRenderController } from '@univerjs/sheets-ui';
import { withInternals } from './engine-internals';

/**
 * Where the removal of a sheet stops halfway: the sheet is gone, but formulas that read it keep their text, and nothing
 * can be undone.
 * - A sheet with formulas that name the sheet itself gets these changed, after it has been removed.
 * - If it was in view, the grid looks for it to draw again what changed.
 */

interface Changes {
  readonly redos: readonly IMutationInfo[];
  readonly undos: readonly IMutationInfo[];
}

interface InterceptorParts {
  /** What other parts of the spreadsheet have to change along with a command. */
  onCommandExecute(command: ICommandInfo): Changes;
}

interface RenderParts {
  readonly _sheetSkeletonManagerService: { getCurrentParam(): object | undefined };
  /** Where cells of the sheet in view are on the screen. */
  _rangeToBounds(ranges: readonly unknown[]): readonly unknown[];
}

let repaired = false;

export function repairRemoval(): void {
  if (repaired) return;
  repaired = true;
  const interceptors = withInternals<InterceptorParts>(SheetInterceptorService);
  const { onCommandExecute: changesWith } = interceptors;
  interceptors.onCommandExecute = function (this: InterceptorParts, command) {
    const changes = changesWith.call(this, command);
    if (command.id !== RemoveSheetCommand.id) return changes;
    const { subUnitId: removed } = command.params as { subUnitId: string };
    const isElsewhere = ({ id, params }: IMutationInfo): boolean =>
      id !== SetRangeValuesMutation.id || (params as { subUnitId?: string }).subUnitId !== removed;
    return { ...changes, redos: changes.redos.filter(isElsewhere), undos: changes.undos.filter(isElsewhere) };
  };
  const render = withInternals<RenderParts>(SheetRenderController);
  const { _rangeToBounds: bounds } = render;
  render._rangeToBounds = function (this: RenderParts, ranges) {
    return this._sheetSkeletonManagerService.getCurrentParam() === undefined ? [] : bounds.call(this, ranges);
  };
}
