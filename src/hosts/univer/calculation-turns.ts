import type { Injector } from '@univerjs/core';
import { ICommandService } from '@univerjs/core';
import {
  CalculateFormulaService,
  FORMULA_REF_TO_ARRAY_CACHE,
  type FormulaDataModel,
  FormulaExecutedStateType,
  FormulaExecuteStageType,
  type IFormulaDatasetConfig,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { TriggerCalculationController } from '@univerjs/sheets-formula';
import { type ServiceParts, withInternals } from './engine-internals';

/**
 * Where the spreadsheet forgets a change, so that cells keep old results for good. It stops a running calculation, to
 * begin again with what has changed meanwhile, but
 * - one that ends before it can be stopped is followed by none;
 * - one that has only begun is not stopped: the next one begins in its midst and changes what it computes from;
 * - one that has been stopped reports its end twice, and with the second report the changes of the next are forgotten.
 * Here one calculation runs at a time, reads what has changed when its turn comes, and ends once.
 */

interface TriggerParts {
  readonly _commandService: ICommandService;
  readonly _formulaDataModel: FormulaDataModel;
  /** Commands whose changes have not been looked at. */
  readonly _waitingCommandQueue: readonly unknown[];
  /** How far the running calculation is; the next one begins at once if there is none. */
  _executionInProgressParams: object | null;
  /** Whether the calculation that was asked to stop is to be begun again. */
  _restartCalculation: boolean;
  /** What has changed, also since the running calculation began. */
  readonly _executingDirtyData: object;
  /** Called last before a calculation is begun or stopped. */
  _mergeDirty(before: object, now: object): object;
  /** Forgets what has changed, once a calculation has ended. */
  _resetExecutingDirtyData(): void;
}

/** How many calculations of a spreadsheet run or wait for their turn. */
const atWork = new WeakMap<FormulaDataModel, number>();

function count(model: FormulaDataModel, more: number): void {
  atWork.set(model, (atWork.get(model) ?? 0) + more);
}

function repairTrigger(): void {
  const trigger = withInternals<TriggerParts>(TriggerCalculationController);
  const { _mergeDirty, _resetExecutingDirtyData } = trigger;
  trigger._mergeDirty = function (this: TriggerParts, before, now) {
    if ((atWork.get(this._formulaDataModel) ?? 0) > 0) this._executionInProgressParams ??= {};
    return _mergeDirty.call(this, before, now);
  };
  trigger._resetExecutingDirtyData = function (this: TriggerParts): void {
    if (!this._restartCalculation) {
      _resetExecutingDirtyData.call(this);
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

function repairTurns(): void {
  const service = withInternals<ServiceParts>(CalculateFormulaService);
  service.execute = async function (this: ServiceParts, given: IFormulaDatasetConfig): Promise<void> {
    const { _currentConfigService: config, _runtimeService: runtime } = this;
    const model = config._formulaDataModel;
    const report = (): void => this._executionInProgressListener$.next(runtime.getRuntimeState());
    count(model, 1);
    let ended = false;
    try {
      await this._executeLock.acquire('FORMULA_EXECUTION_LOCK', async () => {
        runtime.setFormulaExecuteStage(FormulaExecuteStageType.START);
        report();
        // The calculation before may have changed what fills cells.
        config.load({
          ...given,
          formulaData: model.getFormulaData(),
          arrayFormulaCellData: model.getArrayFormulaCellData(),
          arrayFormulaRange: model.getArrayFormulaRange(),
        });
        runtime.reset();
        this._isCalculateTreeModel = given.isCalculateTreeModel ?? false;
        const mostCycles = given.maxIteration || 1;
        for (let cycle = 0; cycle < mostCycles; cycle += 1) {
          runtime.setFormulaCycleIndex(cycle);
          await this._executeStep();
          FORMULA_REF_TO_ARRAY_CACHE.clear();
          if (!runtime.isCycleDependency()) break;
        }
        count(model, -1);
        ended = true;
        const results = runtime.getAllRuntimeData();
        // One that was stopped has said so.
        if (results.functionsExecutedState !== FormulaExecutedStateType.STOP_EXECUTION) {
          runtime.setFormulaExecuteStage(FormulaExecuteStageType.CALCULATION_COMPLETED);
          report();
          this._executionCompleteListener$.next(results);
        }
        runtime.reset();
      });
    } finally {
      if (!ended) count(model, -1);
    }
  };
}

/** Resolves once all changes have been calculated; rejects after so many milliseconds. */
export async function whenCalculated(injector: Injector, longest: number): Promise<void> {
  const trigger = injector.get(TriggerCalculationController) as unknown as TriggerParts;
  const commands = injector.get(ICommandService);
  const isBusy = (): boolean =>
    trigger._waitingCommandQueue.length > 0 ||
    trigger._restartCalculation ||
    (atWork.get(trigger._formulaDataModel) ?? 0) > 0;
  // The spreadsheet tells of a change, and of results, in steps that all come before the next task.
  const afterSteps = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
  await afterSteps();
  if (!isBusy()) return;
  await new Promise<void>((resolve, reject) => {
    const tooLong = setTimeout(() => {
      listening.dispose();
      reject(new Error(`the calculation has not ended within ${longest / 1000} s`));
    }, longest);
    const listening = commands.onCommandExecuted(async ({ id, params }) => {
      if (id !== SetFormulaCalculationNotificationMutation.id) return;
      if ((params as { functionsExecutedState?: number }).functionsExecutedState === undefined) return;
      await afterSteps();
      if (isBusy()) return;
      clearTimeout(tooLong);
      listening.dispose();
      resolve();
    });
  });
}

let repaired = false;

export function repairTurnsOfCalculation(): void {
  if (repaired) return;
  repaired = true;
  repairTurns();
  repairTrigger();
}
