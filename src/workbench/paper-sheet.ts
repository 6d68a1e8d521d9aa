/**
 * The sheet in view as a plain table for paper: the grid is a canvas that is empty on it, because nothing draws it again
 * between the size of the window and that of the page.
 */
import { parseRange } from '../hosts/address';
import type { Spreadsheet } from '../hosts/univer/spreadsheet';
import { make, replace } from '../task-pane/dom';
import { part } from './page-parts';

/** A longer sheet is for the spreadsheet's own printing, of the saved file. */
const mostRows = 300;
const mostColumns = 40;

const numeric = /^[-+]?[\d.,]+\s*%?$/;

/** Fills the table each time before the page is printed. */
export function putSheetOnPaper(spreadsheet: Spreadsheet): void {
  const fill = (): void => replace(part('paper-sheet'), ...tableOf(spreadsheet));
  addEventListener('beforeprint', fill);
  matchMedia('print').addEventListener('change', ({ matches }) => {
    if (matches) fill();
  });
}

function tableOf(spreadsheet: Spreadsheet): readonly HTMLElement[] {
  const { facade, sources } = spreadsheet.current();
  const sheet = facade.getActiveSheet();
  const used = sheet.getDataRange();
  // Helper cells stand beside the printed area.
  const area = parseRange(sources.get(sheet.getSheetId())?.print?.area ?? '');
  const columns = Math.min(mostColumns, area === undefined ? used.getWidth() : area.column + area.columns);
  const all = used.getHeight();
  if (all === 0 || columns === 0) return [];
  const shown = sheet.getRange(0, 0, Math.min(all, mostRows), columns).getDisplayValues();
  const filled = shown.map((line) => line.map((text) => text ?? '')).filter((line) => line.some((text) => text !== ''));
  const widest = Math.max(0, ...filled.map((line) => line.reduce((last, text, i) => (text === '' ? last : i + 1), 0)));
  return [
    make('h2', {}, `${part('title').textContent}: ${sheet.getSheetName()}`),
    make('table', {}, make('tbody', {}, ...filled.map((line) => rowOf(line.slice(0, widest), widest)))),
    ...(all > mostRows ? [make('p', {}, `The first ${mostRows} of ${all} rows.`)] : []),
  ];
}

/** Figures, and names at the left, stay on one line beside long texts. */
const isOneLine = (text: string, column: number): boolean => numeric.test(text) || (column === 0 && text.length < 32);
const figureOrName = (text: string): string => (numeric.test(text) ? 'figure' : 'name');

/** Words that stand alone in their row run across it. */
function rowOf(line: readonly string[], widest: number): HTMLElement {
  const [only, ...others] = line.filter((text) => text !== '');
  if (only !== undefined && others.length === 0 && line[0] === only)
    return make('tr', {}, make('td', { colspan: String(widest) }, only));
  return make(
    'tr',
    {},
    ...line.map((text, column) => make('td', isOneLine(text, column) ? { class: figureOrName(text) } : {}, text)),
  );
}
