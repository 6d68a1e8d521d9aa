/** The workbench page: the embedded spreadsheet with the add-in's functions, files, and the pane beside the grid. */
import '@univerjs/preset-sheets-core/lib/index.css';
import { showReasonsOnHover } from '../hosts/univer/error-popup';
import { createSpreadsheet } from '../hosts/univer/spreadsheet';
import { univerHost } from '../hosts/univer/univer-host';
import { builtFunctions } from './built-functions';
import { followSelection, helpWhileTyping, showCellLine } from './cell-line';
import { startFiles } from './files';
import { attempt, part } from './page-parts';
import { showSelection } from './side-panel';

async function start(): Promise<void> {
  const darkness = matchMedia('(prefers-color-scheme: dark)');
  const functions = await builtFunctions('site');
  const spreadsheet = createSpreadsheet({ container: part('grid'), functions, dark: darkness.matches });
  darkness.addEventListener('change', () => spreadsheet.setDark(darkness.matches));
  const host = univerHost(spreadsheet, () => darkness.matches);
  await startFiles(spreadsheet);
  showReasonsOnHover(spreadsheet);
  helpWhileTyping(spreadsheet, functions);
  const panel = part('pane');
  const source = { read: host.read, evaluate: spreadsheet.evaluate };
  await followSelection(host, [
    (selection) => showCellLine(spreadsheet, selection),
    (selection) => void showSelection(panel, selection, source),
  ]);
  document.body.dataset.ready = 'true';
  // For the browser tests, which drive the grid through the same doors as the pane.
  Object.assign(window, { workbench: { host, spreadsheet } });
}

void attempt('The workbench cannot start', start);
