import { freshId, make, replace } from '../dom';
import type { UnitsWatch } from '../units-watch';

export interface UnitsChoice {
  readonly element: HTMLElement;
  /** Shows what the workbook says now. */
  readonly show: () => void;
  /** The profile to compute with. */
  readonly profileText: () => string;
  /** The units as the first argument of a cell formula. */
  readonly argument: () => string;
}

let chosen = 'metric';

/** The units of a form: those of the workbook, or where it has none, chosen here. */
export function unitsChoice(units: UnitsWatch, changed: () => void): UnitsChoice {
  const id = freshId('units');
  const select = make('select', { id });
  for (const word of ['metric', 'US']) select.append(make('option', { value: word, selected: word === chosen }, word));
  select.addEventListener('change', () => {
    chosen = select.value;
    changed();
  });
  const ofWorkbook = (): string | undefined => {
    const cell = units.now().units;
    return cell?.profile === undefined ? undefined : cell.text;
  };
  const element = make('div', { class: 'field units-choice' });
  const show = (): void => {
    const text = ofWorkbook();
    if (text === undefined) {
      replace(element, make('label', { for: id }, 'units'), make('div', { class: 'control' }, select));
    } else replace(element, make('p', { class: 'hint' }, `Units of the workbook: ${text}`));
  };
  show();
  return {
    element,
    show,
    profileText: () => ofWorkbook() ?? chosen,
    argument: () => (ofWorkbook() === undefined ? `"${chosen}"` : 'SiltUnits'),
  };
}
