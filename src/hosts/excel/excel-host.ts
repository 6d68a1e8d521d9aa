import { HostError, type SheetHost } from '../sheet-host';
import { isCalculating, onCellsChanged } from './calculation';
import { listen } from './events';
import { insertSheets } from './insert-sheets';
import { readNames, removeName, setName } from './names';
import { readBlock, readSelection, readUsedBlocks } from './read-cells';
import { run, supports } from './run';
import { addSheet, readSheets, removeSheet } from './sheets';
import { startWithWorkbook } from './startup';
import { excelTheme, onExcelThemeChanged } from './theme';
import { openAsNew, readFile } from './workbook-file';
import { writeCells } from './write-cells';

/** Excel as the task pane sees it: every request is one batch or a few, every failure a HostError. */
export function excelHost(): SheetHost {
  return {
    name: 'Excel',
    // A pane on a Mac or a tablet cannot save a file; the browser can.
    downloads:
      Office.context.platform === Office.PlatformType.PC ||
      Office.context.platform === Office.PlatformType.OfficeOnline,
    selection: () => run(readSelection),
    onSelectionChanged: (listener) =>
      listen((context, heard) => context.workbook.onSelectionChanged.add(heard), listener),
    select: ({ sheet, range }) =>
      run(async (context) => {
        const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
        worksheet.load('name');
        await context.sync();
        if (worksheet.isNullObject) throw new HostError('missing', `There is no sheet called ${sheet} any more.`);
        worksheet.activate();
        worksheet.getRangeByIndexes(range.row, range.column, range.rows, range.columns).select();
        await context.sync();
      }),
    read: (place) => run((context) => readBlock(context, place)),
    readUsed: () => run(readUsedBlocks),
    isCalculating,
    onCellsChanged,
    write: writeCells,
    names: readNames,
    setName: async (name) => {
      await setName(name);
      await startWithWorkbook([name]);
    },
    removeName,
    sheets: readSheets,
    addSheet,
    removeSheet,
    insert: async (workbook, step) => {
      await insertSheets(workbook, step);
      await startWithWorkbook(workbook.names ?? []);
    },
    ...(Office.context.requirements.isSetSupported('CompressedFile', '1.1') ? { file: readFile } : {}),
    ...(supports('1.8') ? { openFile: openAsNew } : {}),
    theme: excelTheme,
    onThemeChanged: onExcelThemeChanged,
    openPage: (address) => {
      const { requirements, ui } = Office.context;
      if (requirements.isSetSupported('OpenBrowserWindowApi', '1.1')) ui.openBrowserWindow(address);
      else window.open(address, '_blank', 'noopener');
    },
  };
}
