import type { Injector } from '@univerjs/core';
import { ICommandService } from '@univerjs/core';
import {
  CalculateFormulaService,
  FORMULA_REF_TO_ARRAY_CACHE,
  type FormulaDataModel,
  FormulaExecutedStateType,
  FormulaExecuteStageType,
  type IAllRuntimeData,
  type IFormulaDatasetConfig,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { TriggerCalculationController } from '@univerjs/sheets-formula';
import { type ServiceParts, withInternals } from './engine-internals';
import { rememberAbandoned } from './spill-repairs';

/**
 * Where the spreadsheet forgets a change, so that cells keep old results for good. It stops a running calculation, to
 * begin again with what has changed meanwhile, but
 * - one that ends before it can be stopped is followed by none;
 * - one that has only begun is not stopped: the next one begins in its midst and changes what it computes from;
 * - one that has been stopped reports its end twice, and with the second report the changes of the next are forgotten;
 * - one that ends before a change has been looked at puts its old results over what was typed;
 * - the first one, of all cells, is begun again with the changed cells alone.
 * Here one calculation runs at a time, reads what has changed when its turn comes, and ends once; its results count only
 * if nothing has changed meanwhile.
 */

interface TriggerParts {
  readonly _commandService: ICommandService;
  readonly _formulaDataModel: FormulaDataModel;
  /** Commands whose changes have not been looked at. */
  _waitingCommandQueue: readonly unknown[];
  /** The moment at which it looks at them. */
  readonly _setTimeoutKey: number;
  /** How far the running calculation is; the next one begins at once if there is none. */
  _executionInProgressParams: object | null;
  /** Whether the calculation that was asked to stop is to be begun again. */
  _restartCalculation: boolean;
  /** What has changed, also since the running calculation began. */
  _executingDirtyData: object;
  /** Begins the first calculation of a workbook. */
  _initialExecuteFormula(): void;
  _generateDirty(commands: readonly unknown[]): object;
  /** Called last before a calculation is begun or stopped. */
  _mergeDirty(before: object, now: object): object;
  /** Forgets what has changed, once a calculation has ended. */
  _resetExecutingDirtyData(): void;
}

/** What begins the calculations of a spreadsheet. */
const triggers = new WeakMap<FormulaDataModel, TriggerParts>();

/** How many calculations of a spreadsheet run or wait for their turn. */
const atWork = new WeakMap<FormulaDataModel, number>();

function count(model: FormulaDataModel, more: number): void {
  atWork.set(model, (atWork.get(model) ?? 0) + more);
}

function repairTrigger(): void {
  const trigger = withInternals<TriggerParts>(TriggerCalculationController);
  const { _initialExecuteFormula, _mergeDirty, _resetExecutingDirtyData } = trigger;
  trigger._initialExecuteFormula = function (this: TriggerParts): void {
    triggers.set(this._formulaDataModel, this);
    _initialExecuteFormula.call(this);
  };
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

/** Whether cells have changed since the running calculation began. */
function isOutdated(trigger: TriggerParts | undefined): boolean {
  return trigger !== undefined && (trigger._restartCalculation || trigger._waitingCommandQueue.length > 0);
}

/** Results that are not put into cells. */
function stopped(results: IAllRuntimeData): IAllRuntimeData {
  return { ...results, functionsExecutedState: FormulaExecutedStateType.STOP_EXECUTION };
}

function repairTurns(): void {
  const service = withInternals<ServiceParts>(CalculateFormulaService);
  service.execute = async function (this: ServiceParts, given: IFormulaDatasetConfig): Promise<void> {
    const { _currentConfigService: config, _runtimeService: runtime } = this;
    const model = config._formulaDataModel;
    const report = (): void => this._executionInProgressListener$.next(runtime.getRuntimeState());
    const trigger = triggers.get(model);
    // Kept until a calculation has ended, so that one that is begun again is also one of all cells.
    if (trigger !== undefined && given.forceCalculate)
      trigger._executingDirtyData = { ...trigger._executingDirtyData, forceCalculation: true };
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
        const abandonAgain = rememberAbandoned(model);
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
          const isOld = isOutdated(trigger);
          if (isOld) abandonAgain();
          this._executionCompleteListener$.next(isOld ? stopped(results) : results);
        }
        runtime.reset();
      });
    } finally {
      if (!ended) count(model, -1);
    }
  };
}

/**
 * Begins the first calculation now. The spreadsheet would begin it some moments after it has drawn its cells, then draws,
 * and goes on when it has drawn: on a slow computer a second or two later.
 */
export function calculateAtOnce(injector: Injector): void {
  const commands = injector.get(ICommandService);
  const begin = (trigger: TriggerParts): void => {
    clearTimeout(trigger._setTimeoutKey);
    const dirty = trigger._generateDirty(trigger._waitingCommandQueue);
    trigger._waitingCommandQueue = [];
    trigger._executingDirtyData = trigger._mergeDirty(trigger._executingDirtyData, dirty);
    const changes = { ...trigger._executingDirtyData };
    void commands.executeCommand(SetFormulaCalculationStartMutation.id, changes, { onlyLocal: true });
  };
  const listening = commands.onCommandExecuted(({ id }) => {
    if (id !== SetTriggerFormulaCalculationStartMutation.id) return;
    listening.dispose();
    // Once the trigger, which listens too, has taken note of the command.
    queueMicrotask(() => begin(injector.get(TriggerCalculationController) as unknown as TriggerParts));
  });
  // As it comes into being, it asks for the calculation of all cells.
  injector.get(TriggerCalculationController);
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
