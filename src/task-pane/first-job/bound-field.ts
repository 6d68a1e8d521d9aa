import type { Profile } from '../../units/profile';
import { freshId, make, replace } from '../dom';
import { type FieldId, fields } from './fields';

/** An input of the guide, tied to a cell. */
export interface BoundField {
  readonly id: FieldId;
  readonly element: HTMLElement;
  readonly text: () => string;
  /** Whether something was typed that is not in the cell yet. */
  readonly isBehind: () => boolean;
  /** Shows what its cell holds, unless something was typed that is not in the cell yet. */
  readonly show: (text: string, profile: Profile) => void;
  /** Takes a text as what its cell holds now. */
  readonly taken: (text: string) => void;
  /** Says what is wrong with it; blank for nothing. */
  readonly complain: (sentence: string) => void;
  readonly focus: () => void;
}

export function createBoundField(id: FieldId, changed: (field: BoundField) => void): BoundField {
  const { label, hint, letter, choices, isNeeded, kind } = fields[id];
  const inputId = freshId('job');
  const [hintId, faultId] = [`${inputId}-hint`, `${inputId}-fault`];
  const shared = {
    id: inputId,
    'aria-describedby': `${hintId} ${faultId}`,
    ...(isNeeded ? { 'aria-required': 'true' } : {}),
  };
  const control =
    choices === undefined
      ? make('input', { ...shared, type: 'text', autocomplete: 'off', spellcheck: 'false' })
      : make('select', shared, ...choices.map((word) => make('option', { value: word }, word)));
  const unit = make('span', { class: 'unit' });
  const fault = make('p', { class: 'field-fault', id: faultId });
  const sign = letter === undefined ? [] : [make('span', { class: 'letter' }, letter), ' '];
  let last = '';
  const field: BoundField = {
    id,
    element: make(
      'div',
      { class: 'field' },
      make('label', { for: inputId }, ...sign, label),
      make('div', { class: 'control' }, control, unit),
      make('p', { class: 'hint', id: hintId }, hint ?? ''),
      fault,
    ),
    text: () => control.value,
    isBehind: () => control.value !== last,
    show: (text, profile) => {
      replace(unit, kind === undefined ? '' : profile.units[kind].symbol);
      // Also once the focus has left: the cell is written a moment later.
      if (!field.isBehind() && control.getAttribute('aria-invalid') !== 'true') control.value = text;
      last = text;
    },
    taken: (text) => {
      last = text;
    },
    complain: (sentence) => {
      replace(fault, sentence);
      if (sentence === '') control.removeAttribute('aria-invalid');
      else control.setAttribute('aria-invalid', 'true');
    },
    focus: () => control.focus(),
  };
  control.addEventListener('change', () => {
    // What was refused before is gone once the field shows again what its cell holds.
    if (!field.isBehind()) field.complain('');
    changed(field);
  });
  return field;
}
