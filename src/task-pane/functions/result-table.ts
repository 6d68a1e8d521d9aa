import type { CellResult } from '../../hosts/workbook-model';
import { make } from '../dom';
import type { CallResult } from './live-result';

/** Longer results are for the sheet. */
const mostRows = 60;

/** A result as the pane shows it: one figure, a list of figures by name, or a table. */
export function resultElement(result: CallResult): HTMLElement {
  if (result.is === 'fault') {
    return make('p', { class: 'result-fault' }, make('strong', {}, result.code), ` ${result.message}`);
  }
  const { heading, rows, unit } = result;
  const [first] = rows;
  if (first !== undefined && rows.length === 1 && first.length === 1) {
    return make('p', { class: 'figure-result' }, content(first[0] ?? '', 10), unit === '' ? '' : ` ${unit}`);
  }
  if (heading !== undefined && heading.length === 1) {
    return make('ul', { class: 'result-lines' }, ...rows.map((row) => make('li', {}, content(row[0] ?? ''))));
  }
  if (heading !== undefined && first !== undefined && rows.length === 1) {
    const lines = heading.map((name, at) =>
      make('tr', {}, make('th', { scope: 'row' }, name), make('td', { class: 'figure' }, content(first[at] ?? ''))),
    );
    return make('table', { class: 'result-row' }, make('tbody', {}, ...lines));
  }
  return table(heading, rows);
}

function table(heading: readonly string[] | undefined, rows: readonly (readonly CellResult[])[]): HTMLElement {
  const shown = rows.slice(0, mostRows);
  const body = shown.map((row) =>
    make(
      'tr',
      {},
      ...row.map((value) => make('td', { class: typeof value === 'number' ? 'figure' : '' }, content(value))),
    ),
  );
  const head = heading?.map((name) => make('th', { scope: 'col' }, name));
  const element = make(
    'div',
    { class: 'scroll', tabindex: '0', role: 'group', 'aria-label': 'Result' },
    make('table', {}, ...(head ? [make('thead', {}, make('tr', {}, ...head))] : []), make('tbody', {}, ...body)),
  );
  if (rows.length <= mostRows) return element;
  return make('div', {}, element, make('p', { class: 'faint' }, `${rows.length} rows; the sheet shows them all.`));
}

function content(value: CellResult, digits = 6): string {
  if (typeof value === 'number') return String(Number(value.toPrecision(digits)));
  if (typeof value === 'object') return `${value.error.code} ${value.error.message}`;
  return typeof value === 'boolean' ? String(value).toUpperCase() : value;
}
