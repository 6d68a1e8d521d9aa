import { ICommandService, IUndoRedoService } from '@univerjs/core';
import { SetFormulaCalculationResultMutation } from '@univerjs/engine-formula';
import { ScrollToRangeOperation } from '@univerjs/preset-sheets-core';
import { InsertSheetCommand, SetRangeValuesMutation, SheetsSelectionsService } from '@univerjs/sheets';
import type { FWorksheet } from '@univerjs/sheets/facade';
import { overlaps } from '../address';
import { type Block, HostError, type Place, type SheetHost, type Write } from '../sheet-host';
import type { WorkbookData } from '../workbook-model';
import { readNames } from './from-snapshot';
import { toEngineSheet } from './snapshot';
import type { Spreadsheet } from './spreadsheet';
import { usedRange } from './used-range';
import { checkWrite, writeBlock } from './write-cells';

/** Selections up to this size are read as a whole. */
const mostSelected = 10_000;

/** Runs work on the workbook and turns every failure into a HostError. */
async function asHostError<T>(work: () => T | Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (thrown) {
    if (thrown instanceof HostError) throw thrown;
    throw new HostError('failed', thrown instanceof Error ? thrown.message : String(thrown));
  }
}

/** The embedded spreadsheet as the task pane sees it. */
export function univerHost(spreadsheet: Spreadsheet, isDark: () => boolean): SheetHost {
  const { api } = spreadsheet;
  const commands = (): ICommandService => spreadsheet.injector.get(ICommandService);
  const workbook = () => spreadsheet.current().facade;
  const sheetNamed = (name: string): FWorksheet => {
    const sheet = workbook().getSheetByName(name);
    if (sheet === null) throw new HostError('missing', `There is no sheet “${name}” in the workbook.`);
    return sheet;
  };
  const block = (sheet: FWorksheet, range: Place['range']): Block => {
    const { reader } = spreadsheet.current();
    const cells = Array.from({ length: range.rows }, (_, row) =>
      Array.from({ length: range.columns }, (_unused, column) =>
        reader.read(sheet.getSheet(), range.row + row, range.column + column),
      ),
    );
    return {
      sheet: sheet.getSheetName(),
      range,
      values: cells.map((row) => row.map((cell) => cell.value)),
      formulas: cells.map((row) => row.map((cell) => cell.formula)),
      spills: reader.spills(sheet.getSheet()).filter((spill) => overlaps(spill, range)),
    };
  };
  const selected = (): Block => {
    const sheet = workbook().getActiveSheet();
    const range = workbook().getActiveRange()?.getRange();
    if (!range) return block(sheet, { row: 0, column: 0, rows: 1, columns: 1 });
    const { startRow: row, startColumn: column } = range;
    const whole = { row, column, rows: range.endRow - row + 1, columns: range.endColumn - column + 1 };
    if (whole.rows * whole.columns <= mostSelected) return block(sheet, whole);
    // Whole columns or rows: cells beyond the used ones are blank, so they are not read.
    const used = usedRange(spreadsheet.current(), sheet.getSheet()) ?? { row: 0, column: 0, rows: 1, columns: 1 };
    const [rows, columns] = [used.row + used.rows - row, used.column + used.columns - column];
    return block(sheet, { row, column, rows: Math.max(1, rows), columns: Math.max(1, columns) });
  };
  /** All changes inside are one undo step. */
  const asOneStep = async <T>(work: () => T | Promise<T>): Promise<T> => {
    const batch = spreadsheet.injector.get(IUndoRedoService).__tempBatchingUndoRedo(workbook().getId());
    try {
      return await work();
    } finally {
      batch.dispose();
    }
  };
  const addSheet = (name: string, data?: WorkbookData['sheets'][number]): void => {
    if (workbook().getSheetByName(name) !== null) {
      throw new HostError('taken', `There is a sheet “${name}” already; rename it or use another name.`);
    }
    const id = `added-${Date.now()}-${workbook().getNumSheets()}`;
    const sheet = toEngineSheet(data ?? { name, cells: [] }, id);
    commands().syncExecuteCommand(InsertSheetCommand.id, {
      unitId: workbook().getId(),
      index: workbook().getNumSheets(),
      sheet,
    });
    if (workbook().getSheetByName(name) === null) throw new HostError('failed', `The sheet “${name}” was not added.`);
    if (data !== undefined) spreadsheet.current().sources.set(id, data);
  };
  return {
    name: 'the workbench',
    downloads: true,
    selection: () => asHostError(selected),
    onSelectionChanged: async (listener) => {
      const { selectionMoveEnd$, selectionSet$ } = spreadsheet.injector.get(SheetsSelectionsService);
      const moving = [selectionMoveEnd$, selectionSet$].map((moved) => moved.subscribe(listener));
      const opened = spreadsheet.onOpened(listener);
      const sheetChanged = api.addEvent(api.Event.ActiveSheetChanged, listener);
      return () => {
        for (const subscription of moving) subscription.unsubscribe();
        sheetChanged.dispose();
        opened();
      };
    },
    select: (place) =>
      asHostError(() => {
        const sheet = sheetNamed(place.sheet);
        workbook().setActiveSheet(sheet);
        const { row, column, rows, columns } = place.range;
        sheet.getRange(row, column, rows, columns).activate();
        const corner = { startRow: row, endRow: row, startColumn: column, endColumn: column };
        commands().syncExecuteCommand(ScrollToRangeOperation.id, { range: corner });
      }),
    read: (place) => asHostError(() => block(sheetNamed(place.sheet), place.range)),
    readUsed: () =>
      asHostError(() =>
        workbook()
          .getSheets()
          .flatMap((sheet) => {
            const range = usedRange(spreadsheet.current(), sheet.getSheet());
            return range === undefined ? [] : [block(sheet, range)];
          }),
      ),
    settled: () =>
      asHostError(async () => {
        // A cell that is still being typed into is part of what was typed.
        await spreadsheet.current().facade.endEditingAsync(true);
        await spreadsheet.settled();
      }),
    onCellsChanged: async (listener) => {
      const watched: ReadonlySet<string> = new Set([SetRangeValuesMutation.id, SetFormulaCalculationResultMutation.id]);
      const listening = commands().onCommandExecuted((command) => {
        if (watched.has(command.id)) listener();
      });
      const opened = spreadsheet.onOpened(listener);
      return () => {
        listening.dispose();
        opened();
      };
    },
    write: (writes: readonly Write[]) =>
      asHostError(() => {
        const targets = writes.map((write) => ({ write, sheet: sheetNamed(write.sheet) }));
        for (const { write, sheet } of targets) checkWrite(spreadsheet.current(), sheet, write);
        return asOneStep(() => {
          for (const { write, sheet } of targets) {
            writeBlock(commands(), workbook().getId(), sheet, write);
            const { notes } = spreadsheet.current();
            if (write.note !== undefined) notes.set(write.sheet, write.row, write.column, write.note);
          }
        });
      }),
    names: () => asHostError(() => readNames(workbook())),
    setName: (name) =>
      asHostError(() => {
        const before = workbook().getDefinedName(name.name);
        if (before !== null) before.setFormula(name.refersTo);
        else workbook().insertDefinedName(name.name, name.refersTo);
        const after = workbook().getDefinedName(name.name);
        if (after === null) throw new HostError('taken', `The name ${name.name} cannot be set here.`);
        if (name.comment !== undefined) after.setComment(name.comment);
      }),
    removeName: (name) =>
      asHostError(() => {
        if (!workbook().deleteDefinedName(name)) throw new HostError('missing', `There is no name ${name}.`);
      }),
    sheets: () =>
      asHostError(() =>
        workbook()
          .getSheets()
          .map((sheet) => sheet.getSheetName()),
      ),
    addSheet: (name) => asHostError(() => addSheet(name)),
    removeSheet: (name) =>
      asHostError(() => {
        if (!workbook().deleteSheet(sheetNamed(name))) {
          throw new HostError('failed', `The sheet “${name}” cannot be removed; a workbook keeps at least one.`);
        }
      }),
    insert: (data, step) =>
      asHostError(() =>
        asOneStep(async () => {
          const taken = data.sheets.find((sheet) => workbook().getSheetByName(sheet.name) !== null);
          if (taken !== undefined) {
            throw new HostError('taken', `There is a sheet “${taken.name}” already; rename it or use another name.`);
          }
          for (const name of data.names ?? []) {
            if (workbook().getDefinedName(name.name) === null) {
              workbook().insertDefinedName(name.name, name.refersTo);
            }
          }
          for (const [at, sheet] of data.sheets.entries()) {
            await step?.(at / data.sheets.length);
            addSheet(sheet.name, sheet);
          }
          spreadsheet.current().notes.add(data);
        }),
      ),
    theme: () => ({ dark: isDark() }),
    onThemeChanged: (listener) => {
      const query = matchMedia('(prefers-color-scheme: dark)');
      query.addEventListener('change', listener);
      return () => query.removeEventListener('change', listener);
    },
    openPage: (address) => {
      window.open(address, '_blank', 'noopener');
    },
  };
}
