import type { ICommandService } from '@univerjs/core';
import { SetFormulaCalculationStartMutation } from '@univerjs/engine-formula';
import { TriggerCalculationController } from '@univerjs/sheets-formula';
import { withInternals } from './engine-internals';

/**
 * Where the spreadsheet forgets a change: it stops a running calculation, to begin again with what has changed meanwhile.
 * If that calculation ends before it can be stopped, nothing begins again, and cells keep old results.
 */

interface TriggerParts {
  readonly _commandService: ICommandService;
  /** Whether the calculation that was asked to stop is to be begun again. */
  _restartCalculation: boolean;
  /** What has changed, also since the running calculation began. */
  readonly _executingDirtyData: object;
  /** Forgets what has changed, once a calculation has ended. */
  _resetExecutingDirtyData(): void;
}

let repaired = false;

export function repairRestart(): void {
  if (repaired) return;
  repaired = true;
  const parts = withInternals<TriggerParts>(TriggerCalculationController);
  const forget = parts._resetExecutingDirtyData;
  parts._resetExecutingDirtyData = function (this: TriggerParts): void {
    if (!this._restartCalculation) {
      forget.call(this);
      return;
    }
    this._restartCalculation = false;
    const changes = { ...this._executingDirtyData };
    // Once the end of the calculation has been dealt with.
    queueMicrotask(
      () =>
        void this._commandService.executeCommand(SetFormulaCalculationStartMutation.id, changes, { onlyLocal: true }),
    );
  };
}
