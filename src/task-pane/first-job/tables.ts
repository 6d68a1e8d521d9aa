import type { CellResult } from '../../hosts/workbook-model';
import { dateOfSerial } from '../../units/date';
import type { Profile } from '../../units/profile';
import { make } from '../dom';
import { rounded } from './facts';
import type { JobCells } from './job-cells';
import type { StepId } from './steps';

/** The lists that a step gives, read from its sheets: what to buy, and when. */
export function tablesOf(step: StepId, cells: JobCells, profile: Profile): readonly HTMLElement[] {
  const length = profile.units.dimension.symbol;
  if (step === 'buy') return [tableOf('To buy', ['item', 'needed', 'packs'], shopping(cells))];
  if (step === 'pour') return [tableOf('When', ['step', 'date'], calendar(cells).slice(0, 4))];
  if (step === 'leak test') {
    return [
      tableOf('When', ['step', 'date'], calendar(cells).slice(4)),
      tableOf('Holes in the wall', ['port', `above the floor (${length})`, `above ground (${length})`], ports(cells)),
    ];
  }
  return [];
}

function shopping(cells: JobCells): readonly (readonly string[])[] {
  const units = new Map(cells.rows('parts', 'A5:C38').map(([item, , unit = '']) => [item, unit]));
  return cells
    .rows('materials', 'A18:D51')
    .filter(([item, needed]) => item !== '' && typeof needed === 'number')
    .map(([item = '', needed = '', packs = '']) => {
      const unit = shown(units.get(item) ?? '');
      return [shown(item), `${shown(needed)}${unit === 'each' ? '' : ` ${unit}`}`, shown(packs)];
    });
}

function calendar(cells: JobCells): readonly (readonly string[])[] {
  return cells
    .rows('calendar', 'A11:B17')
    .filter(([step, date]) => step !== '' && typeof date === 'number')
    .map(([step = '', date = 0]) => [shown(step), dateOfSerial(Number(date))]);
}

function ports(cells: JobCells): readonly (readonly string[])[] {
  return cells
    .rows('stand', 'A27:D28')
    .filter(([, floor]) => typeof floor === 'number')
    .map(([port = '', , floor = '', ground = '']) => [port, floor, ground].map(shown));
}

function shown(value: CellResult): string {
  if (typeof value === 'object') return value.error.code;
  return typeof value === 'number' ? rounded(value) : String(value);
}

function tableOf(caption: string, headings: readonly string[], rows: readonly (readonly string[])[]): HTMLElement {
  if (rows.length === 0) return make('p', { class: 'faint' }, `${caption}: no figures yet.`);
  const isFigure = (text: string): boolean => /^\d/.test(text);
  const cell = (text: string, at: number): HTMLElement =>
    at === 0 ? make('th', { scope: 'row' }, text) : make('td', { class: isFigure(text) ? 'figure' : undefined }, text);
  return make(
    'table',
    { class: 'job-table' },
    make('caption', {}, caption),
    make(
      'thead',
      {},
      make(
        'tr',
        {},
        ...headings.map((word, at) => make('th', { scope: 'col', class: at === 0 ? undefined : 'figure' }, word)),
      ),
    ),
    make('tbody', {}, ...rows.map((row) => make('tr', {}, ...row.map(cell)))),
  );
}
