import { type Injector, LocaleType, LogLevel, Univer, UniverInstanceType, type Workbook } from '@univerjs/core';
import {
  type BaseReferenceObject,
  type BaseValueObject,
  type CalculateFormulaService,
  FORMULA_REF_TO_ARRAY_CACHE,
  ICalculateFormulaService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  IFunctionService,
  UniverFormulaEnginePlugin,
} from '@univerjs/engine-formula';
import { UniverSheetsPlugin } from '@univerjs/sheets';
import { CalculationMode, TriggerCalculationController, UniverSheetsFormulaPlugin } from '@univerjs/sheets-formula';
import type { WorkbookData } from '../workbook-model';
import { repairEngine } from './engine-repairs';
import { executors } from './executor';
import type { HostFunction } from './function-set';
import { toSnapshot } from './snapshot';

export interface EngineParts {
  readonly injector: Injector;
  readonly workbook: Workbook;
}

export interface Engine extends EngineParts {
  readonly dispose: () => void;
}

let workbookCount = 0;

/** Each workbook has a new id, because the engine caches parsed formulas by workbook id for the whole process. */
export function nextWorkbookId(): string {
  workbookCount += 1;
  return `workbook-${workbookCount}`;
}

/** The spreadsheet engine without a page. Nothing is calculated until asked for. */
export function startEngine(functions: readonly HostFunction[], workbook: WorkbookData): Engine {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: executors(functions) });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.NO_CALCULATION });
  const unit = univer.createUnit<ReturnType<typeof toSnapshot>, Workbook>(
    UniverInstanceType.UNIVER_SHEET,
    toSnapshot(workbook, nextWorkbookId()),
  );
  const injector = univer.__getInjector();
  repairEngine(injector.get(IFunctionService));
  // Otherwise it starts calculations a moment after each change and stops the one that is running.
  injector.get(TriggerCalculationController).dispose();
  return { injector, workbook: unit, dispose: () => univer.dispose() };
}

/**
 * Computes one formula as if it were in a free cell of a sheet, without writing it; undefined if the engine cannot
 * read it.
 */
export async function computeFormula(
  engine: EngineParts,
  sheetId: string,
  formula: string,
): Promise<BaseValueObject | undefined> {
  const sheet = engine.workbook.getSheetBySheetId(sheetId);
  if (sheet === null || sheet === undefined) throw new Error(`no sheet ${sheetId}`);
  engine.injector.get(IFormulaCurrentConfigService).loadDataLite();
  const runtime = engine.injector.get(IFormulaRuntimeService);
  runtime.reset();
  const [rows, columns] = [sheet.getRowCount(), sheet.getColumnCount()];
  runtime.setCurrent(0, 0, rows, columns, sheetId, engine.workbook.getUnitId());
  FORMULA_REF_TO_ARRAY_CACHE.clear();
  // The interface declares `calculate` as giving nothing; the service gives the result.
  const service = engine.injector.get(ICalculateFormulaService) as CalculateFormulaService;
  let result: Awaited<ReturnType<CalculateFormulaService['calculate']>>;
  try {
    result = await service.calculate(formula);
  } catch {
    // Its parser throws on some texts that are not formulas.
    return undefined;
  }
  if (result === undefined) return undefined;
  return result.isReferenceObject()
    ? (result as BaseReferenceObject).toArrayValueObject()
    : (result as BaseValueObject);
}
