import { type Injector, LifecycleService, LifecycleStages, LocaleType, LogLevel, Univer } from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import { IFunctionService } from '@univerjs/engine-formula';
import { CalculationMode, UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import englishWords from '@univerjs/preset-sheets-core/locales/en-US';
import type { FWorkbook } from '@univerjs/sheets/facade';
import { defaultTheme } from '@univerjs/themes';
import type { Move } from '../moved-lines';
import type { SheetData, WorkbookData } from '../workbook-model';
import { calculateAtOnce, repairTurnsOfCalculation, whenCalculated } from './calculation-turns';
import { CellReader } from './cell-reader';
import { nextWorkbookId } from './engine';
import { repairEngine } from './engine-repairs';
import { type Evaluated, evaluate } from './evaluate';
import { descriptions, executors } from './executor';
import { finishBackwards } from './finish-backwards';
import { followLines } from './follow-lines';
import { repairFreeze } from './freeze-repairs';
import { asOpened, fromSnapshot } from './from-snapshot';
import type { HostFunction } from './function-set';
import { repairHeights } from './height-repairs';
import { Notes } from './notes';
import { keepNumberFormats, repairPaste } from './paste-repairs';
import { repairRemoval } from './removal-repairs';
import { sheetId, toSnapshot } from './snapshot';
import { repairTab } from './tab-repairs';
import { repairWidths } from './width-repairs';

/** Milliseconds. */
const longestCalculation = 30_000;

export interface OpenWorkbook {
  readonly facade: FWorkbook;
  readonly reader: CellReader;
  /** The opened workbook, for the parts that the spreadsheet does not keep itself. */
  readonly opened: WorkbookData;
  /** The data from which sheets were made, by their id; an added sheet is recorded here. */
  readonly sources: Map<string, SheetData>;
  readonly notes: Notes;
  /** Rows, columns and cells that came, went or moved since the file was opened, by the id of the sheet. */
  readonly moves: Map<string, readonly Move[]>;
}

/** The embedded spreadsheet in a page, with one workbook open at a time. */
export interface Spreadsheet {
  readonly api: FUniver;
  readonly injector: Injector;
  readonly open: (workbook: WorkbookData) => void;
  readonly current: () => OpenWorkbook;
  /** Calculates a formula as if it were on a sheet, after any running calculation. */
  readonly evaluate: (sheet: string, formula: string) => Promise<Evaluated>;
  /** Resolves once the grid draws its cells with the results of their formulas, at the latest in the next frame. */
  readonly shown: () => Promise<void>;
  /** Resolves once what was last changed has been calculated, or has nothing that depends on it. */
  readonly settled: () => Promise<void>;
  /** The workbook as it is now, with the results of formulas. */
  readonly save: () => WorkbookData;
  /** The workbook as it was opened, in the form that `save` would have given then. */
  readonly opened: () => WorkbookData;
  readonly setDark: (dark: boolean) => void;
  /** Calls back when another workbook has been opened. */
  readonly onOpened: (listener: () => void) => () => void;
}

export interface SpreadsheetOptions {
  readonly container: HTMLElement;
  readonly functions: readonly HostFunction[];
  readonly dark: boolean;
}

export function createSpreadsheet({ container, functions, dark }: SpreadsheetOptions): Spreadsheet {
  repairHeights();
  repairFreeze();
  repairPaste();
  repairRemoval();
  repairTab();
  repairWidths();
  repairTurnsOfCalculation();
  const univer = new Univer({
    theme: defaultTheme,
    darkMode: dark,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: englishWords },
    logLevel: LogLevel.ERROR,
  });
  const preset = UniverSheetsCorePreset({
    container,
    header: true,
    toolbar: false,
    formulaBar: true,
    contextMenu: true,
    // Functions use values of this page, so they cannot move to a worker.
    formula: {
      function: executors(functions),
      description: descriptions(functions),
      initialFormulaComputing: CalculationMode.FORCED,
    },
  });
  for (const plugin of preset.plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  const injector = univer.__getInjector();
  const api = FUniver.newAPI(univer);
  finishBackwards(injector);
  const listeners = new Set<() => void>();
  let open: OpenWorkbook | undefined;
  const current = (): OpenWorkbook => {
    if (open === undefined) throw new Error('no workbook is open');
    return open;
  };
  followLines(injector, (id) => (open?.facade.getId() === id ? open : undefined));
  return {
    api,
    injector,
    current,
    open: (workbook) => {
      const isFirst = open === undefined;
      if (open !== undefined) api.disposeUnit(open.facade.getId());
      const facade = api.createWorkbook(toSnapshot(workbook, nextWorkbookId()));
      repairEngine(injector.get(IFunctionService));
      keepNumberFormats(injector);
      open = {
        facade,
        reader: new CellReader(injector, facade.getWorkbook()),
        opened: workbook,
        sources: new Map(workbook.sheets.map((sheet, index) => [sheetId(index), sheet])),
        notes: new Notes(workbook, (name) => facade.getSheetByName(name)?.getSheetId()),
        moves: new Map(workbook.sheets.map((sheet, index) => [sheetId(index), sheet.moves ?? []])),
      };
      const active = workbook.activeSheet === undefined ? null : facade.getSheetByName(workbook.activeSheet);
      if (active !== null) facade.setActiveSheet(active);
      if (isFirst) calculateAtOnce(injector);
      for (const listener of listeners) listener();
    },
    evaluate: async (name, formula) => {
      // A separate formula must not be calculated in the middle of a calculation.
      await whenCalculated(injector, longestCalculation);
      const workbook = current().facade.getWorkbook();
      const sheet = workbook.getSheetBySheetName(name);
      if (!sheet) throw new Error(`there is no sheet ${name}`);
      return evaluate({ injector, workbook }, sheet, formula);
    },
    shown: async () => {
      await injector.get(LifecycleService).onStage(LifecycleStages.Rendered);
      // A calculation that does not end is a matter of its cells, which the grid then shows as they are.
      await whenCalculated(injector, longestCalculation).catch(() => undefined);
    },
    settled: () => whenCalculated(injector, longestCalculation),
    save: () => fromSnapshot(current()),
    opened: () => asOpened(current().opened),
    setDark: (isDark) => api.toggleDarkMode(isDark),
    onOpened: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
