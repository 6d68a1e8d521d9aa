import { type ICellData, ICommandService, type IUnitRange, type Worksheet } from '@univerjs/core';
import {
  IActiveDirtyManagerService,
  IFunctionService,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import type { CellRange } from '../address';
import type { CellScalar, WorkbookData } from '../workbook-model';
import { CellReader, type ReadCell } from './cell-reader';
import { type Engine, startEngine } from './engine';
import { type Evaluated, evaluate } from './evaluate';
import type { HostFunction } from './function-set';
import { toEngineValue } from './snapshot';

export type { ReadCell } from './cell-reader';
export type { Evaluated } from './evaluate';

export interface Headless {
  /**
   * Computes formulas without writing them, each on its own; references without a sheet mean the sheet that is named,
   * or the first.
   */
  readonly evaluate: (formulas: readonly string[], sheet?: string) => Promise<readonly Evaluated[]>;
  /**
   * Writes cells; text that begins with `=` is a formula, the empty string clears. Takes effect at the next
   * recalculation.
   */
  readonly setCells: (sheet: string, row: number, column: number, cells: readonly (readonly CellScalar[])[]) => void;
  /** Computes the formulas that depend on cells written since the last time, or all formulas. */
  readonly recalculate: (from?: 'changes' | 'everything') => Promise<void>;
  readonly read: (sheet: string, range: CellRange) => readonly (readonly ReadCell[])[];
  readonly readCell: (sheet: string, row: number, column: number) => ReadCell;
  readonly sheets: () => readonly string[];
  /** Whether the engine or the add-in has a function of that name. */
  readonly knows: (name: string) => boolean;
  readonly dispose: () => void;
}

const blankWorkbook: WorkbookData = { sheets: [{ name: 'Sheet1', cells: [] }] };

function sheetNamed(engine: Engine, name: string | undefined): Worksheet {
  const sheet = name === undefined ? engine.workbook.getSheets()[0] : engine.workbook.getSheetBySheetName(name);
  if (sheet === null || sheet === undefined) throw new Error(`there is no sheet named ${name}`);
  return sheet;
}

/** Computes the formulas that depend on the ranges, or every formula. */
function calculate(engine: Engine, from: readonly IUnitRange[] | 'everything'): Promise<void> {
  const commands = engine.injector.get(ICommandService);
  return new Promise((resolve) => {
    const listening = commands.onCommandExecuted((command) => {
      if (command.id !== SetFormulaCalculationNotificationMutation.id) return;
      const { functionsExecutedState } = command.params as { functionsExecutedState?: number };
      if (functionsExecutedState === undefined) return;
      listening.dispose();
      // The engine still cleans up after it has reported the end.
      setTimeout(resolve, 0);
    });
    void commands.executeCommand(
      SetFormulaCalculationStartMutation.id,
      from === 'everything' ? { forceCalculation: true } : { dirtyRanges: from },
      { onlyLocal: true },
    );
  });
}

function setCells(
  engine: Engine,
  sheetName: string,
  row: number,
  column: number,
  cells: readonly (readonly CellScalar[])[],
): readonly IUnitRange[] {
  const cellValue: Record<number, Record<number, ICellData>> = {};
  cells.forEach((line, downwards) => {
    const values: Record<number, ICellData> = {};
    line.forEach((entry, across) => {
      const blank = { v: null, f: null, t: null, si: null, p: null, custom: null };
      if (typeof entry === 'string' && entry.startsWith('=')) values[column + across] = { ...blank, f: entry };
      else values[column + across] = entry === '' ? blank : { ...blank, ...toEngineValue(entry) };
    });
    cellValue[row + downwards] = values;
  });
  const params = {
    unitId: engine.workbook.getUnitId(),
    subUnitId: sheetNamed(engine, sheetName).getSheetId(),
    cellValue,
  };
  engine.injector.get(ICommandService).syncExecuteCommand(SetRangeValuesMutation.id, params);
  // The ranges from which the page computes after the same change.
  const changes = engine.injector.get(IActiveDirtyManagerService).get(SetRangeValuesMutation.id);
  return changes?.getDirtyData({ id: SetRangeValuesMutation.id, params }).dirtyRanges ?? [];
}

function read(engine: Engine, sheetName: string, range: CellRange): ReadCell[][] {
  const sheet = sheetNamed(engine, sheetName);
  const reader = new CellReader(engine.injector, engine.workbook);
  return Array.from({ length: range.rows }, (_, downwards) =>
    Array.from({ length: range.columns }, (_, across) =>
      reader.read(sheet, range.row + downwards, range.column + across),
    ),
  );
}

/** Opens a workbook in the spreadsheet engine, without a page. */
export async function openHeadless(
  functions: readonly HostFunction[],
  workbook: WorkbookData = blankWorkbook,
): Promise<Headless> {
  const engine = startEngine(functions, workbook);
  if (workbook !== blankWorkbook) await calculate(engine, 'everything');
  let changed: readonly IUnitRange[] = [];
  return {
    evaluate: async (formulas, sheet) => {
      const results: Evaluated[] = [];
      for (const formula of formulas) results.push(await evaluate(engine, sheetNamed(engine, sheet), formula));
      return results;
    },
    setCells: (sheet, row, column, cells) => {
      changed = [...changed, ...setCells(engine, sheet, row, column, cells)];
    },
    recalculate: async (from = 'changes') => {
      const ranges = changed;
      changed = [];
      await calculate(engine, from === 'everything' ? from : ranges);
    },
    read: (sheet, range) => read(engine, sheet, range),
    readCell: (sheet, row, column) =>
      new CellReader(engine.injector, engine.workbook).read(sheetNamed(engine, sheet), row, column),
    knows: (name) => engine.injector.get(IFunctionService).hasExecutor(name.toUpperCase()),
    sheets: () => engine.workbook.getSheets().map((sheet) => sheet.getName()),
    dispose: engine.dispose,
  };
}
