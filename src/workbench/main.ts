/** The workbench page: the embedded spreadsheet with the add-in's functions, files, and the pane beside the grid. */
import './style-sheets';
import '@univerjs/preset-sheets-core/lib/index.css';
import '../task-pane/task-pane.css';
import '../task-pane/drawings.css';
import './workbench.css';
import './first-look/first-look.css';
import './charts/charts.css';
import { ICommandService } from '@univerjs/core';
import type { FunctionLibrary, FunctionLibraryHolder } from '../functions/function-library';
import type { SheetHost } from '../hosts/sheet-host';
import { ConditionColors } from '../hosts/univer/condition-colors';
import { showReasonsOnHover } from '../hosts/univer/error-popup';
import { loadFunctionWords } from '../hosts/univer/function-words';
import { fitRows } from '../hosts/univer/row-heights';
import { createSpreadsheet, type Spreadsheet } from '../hosts/univer/spreadsheet';
import { univerHost } from '../hosts/univer/univer-host';
import { debounced } from '../task-pane/debounced';
import { mountPane, type Pane } from '../task-pane/pane';
import { builtFunctions } from './built-functions';
import { showCautionLine } from './caution-line';
import { followSelection, helpWhileTyping, showCellLine } from './cell-line';
import { ChartPanel } from './charts/chart-panel';
import { loadFirstFiles, startFiles } from './files';
import { leadToFirstJob } from './first-job';
import { nameGridControls } from './grid-names';
import { keepPlans, loadBuiltPlans } from './kept-plans';
import { afterFrame, attempt, part } from './page-parts';
import { putSheetOnPaper } from './paper-sheet';
import { moveBetweenRegions } from './regions';
import { reloadOnBuild } from './reload-on-build';
import { keepForOffline } from './updates';

async function start(): Promise<void> {
  const darkness = matchMedia('(prefers-color-scheme: dark)');
  const [functions, builtPlans, firstFiles] = await Promise.all([
    builtFunctions('.'),
    loadBuiltPlans(),
    loadFirstFiles(),
    loadSearch(),
  ]);
  const spreadsheet = createSpreadsheet({ container: part('grid'), functions, dark: darkness.matches });
  darkness.addEventListener('change', () => spreadsheet.setDark(darkness.matches));
  const host = univerHost(spreadsheet, () => darkness.matches);
  const functionLibrary = loadedLibrary();
  keepPlans(functionLibrary.keptPlans, builtPlans);
  const unsaved = startFiles(spreadsheet, host, functionLibrary, firstFiles);
  moveBetweenRegions(spreadsheet);
  nameGridControls(part('grid'));
  helpWhileTyping(spreadsheet, functions);
  showReasonsOnHover(spreadsheet);
  putSheetOnPaper(spreadsheet);
  // For the browser tests, which use the grid through the same interface as the pane.
  Object.assign(window, { workbench: { host, spreadsheet } });
  const shown = spreadsheet.shown().then(async () => {
    document.body.dataset.computed = 'true';
    await afterFrame();
    performance.mark('grid computed');
  });
  const pane = shown.then(() => showPane(host, functionLibrary));
  leadToFirstJob(spreadsheet, host, pane);
  await showRest(spreadsheet, host, await pane, darkness);
  document.body.dataset.ready = 'true';
  void attempt('Descriptions of functions', () => loadFunctionWords(spreadsheet));
  if (process.env.NODE_ENV === 'development') reloadOnBuild();
  else keepForOffline(() => unsaved.hasChanges());
}

/** What goes with the numbers in the grid; on a slow computer it comes a second after them. */
async function showRest(spreadsheet: Spreadsheet, host: SheetHost, pane: Pane, darkness: MediaQueryList) {
  await followSelection(host, [(selection) => showCellLine(spreadsheet, selection)]);
  const charts = new ChartPanel(spreadsheet, () => darkness.matches);
  await charts.start(host);
  const conditions = await followConditions(spreadsheet, host);
  await fitRowsToText(spreadsheet, host);
  spreadsheet.onOpened(pane.forget);
  showCautionLine(host, pane.cautions, () => pane.show('checks'));
  Object.assign(window, { workbench: { host, spreadsheet, charts, conditions } });
}

/** Colors of cautions in the grid, some moments after the cells that they depend on. */
async function followConditions(spreadsheet: Spreadsheet, host: SheetHost): Promise<ConditionColors> {
  const conditions = new ConditionColors(spreadsheet);
  const update = debounced(() => void attempt('Colors of cautions', () => conditions.update()), 150);
  await host.onCellsChanged(update);
  spreadsheet.injector.get(ICommandService).onCommandExecuted((command) => {
    if (conditions.follow(command)) update();
  });
  await host.onSelectionChanged(() => void attempt('Colors of cautions', () => conditions.updateIfOther()));
  update();
  return conditions;
}

/** Heights of rows that have none of their own, some moments after their text or the sheet in view has changed. */
async function fitRowsToText(spreadsheet: Spreadsheet, host: SheetHost): Promise<void> {
  const update = debounced(() => void attempt('Heights of rows', async () => fitRows(spreadsheet)), 150);
  await host.onCellsChanged(update);
  await host.onSelectionChanged(update);
  update();
}

/** The reference is beside the page's own folder; copies of everything else that the pane needs are in it. */
function siteFile(path: string): string {
  return new URL(path.startsWith('reference/') ? `../${path}` : path, document.baseURI).href;
}

/** Without it, cut plans would be found only after the cells have asked for them. */
async function loadSearch(): Promise<void> {
  await loadedLibrary().loadCutSearch();
}

/** The functions that the script has left in its library. */
function loadedLibrary(): FunctionLibrary {
  const { siltstead } = globalThis as FunctionLibraryHolder;
  if (siltstead === undefined) throw new Error('functions.js does not hold the function library; build the site again');
  return siltstead;
}

/** The same pane as in Excel, open at the drawings. */
function showPane(host: SheetHost, functionLibrary: FunctionLibrary): Pane {
  const pane = mountPane(part('pane'), { host, functionLibrary, page: siteFile });
  pane.show('drawings');
  return pane;
}

/**
 * Not at once, but when this script has been run as a whole. A browser whose tools are open, or that runs a test, notes
 * the functions that led to each request, and reads each of them again as a whole; this script is one of them as long as
 * it runs, which took it 2 s.
 */
queueMicrotask(() => void attempt('The workbench cannot start', start));
