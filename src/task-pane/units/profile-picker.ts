import type { Kind } from '../../units/kinds';
import { freshId, make, replace } from '../dom';
import { exceptionsTable } from './exceptions';
import { type ProfileChoice, textOf } from './profile-text';

export interface ProfilePicker {
  readonly element: HTMLElement;
  readonly choice: () => ProfileChoice;
  readonly show: (choice: ProfileChoice) => void;
}

const words = {
  metric: ['Metric', 'mm, L, kg, °C, L/min'],
  US: ['US', 'in, gal, lb, °F, gpm'],
} as const;

/** The two profiles, the exceptions, and the text that they make. */
export function profilePicker(changed: () => void): ProfilePicker {
  let choice: ProfileChoice = { name: 'metric', exceptions: new Map() };
  const group = freshId('profile');
  const radioFor = (name: ProfileChoice['name']): HTMLInputElement => {
    const radio = make('input', { type: 'radio', id: freshId('profile'), name: group, value: name });
    radio.addEventListener('change', () => choose({ name, exceptions: choice.exceptions }));
    return radio;
  };
  const radios = { metric: radioFor('metric'), US: radioFor('US') };
  const options = (['metric', 'US'] as const).map((name) => {
    const [title, example] = words[name];
    return make(
      'div',
      { class: 'check profile-option' },
      radios[name],
      make('label', { for: radios[name].id }, title, make('span', { class: 'meaning' }, ` ${example}`)),
    );
  });
  const text = make('code', {});
  const table = exceptionsTable((kind: Kind, symbol) => {
    const exceptions = new Map(choice.exceptions);
    if (symbol === undefined) exceptions.delete(kind);
    else exceptions.set(kind, symbol);
    choose({ name: choice.name, exceptions });
  });
  const choose = (next: ProfileChoice): void => {
    show(next);
    changed();
  };
  const show = (next: ProfileChoice): void => {
    choice = next;
    radios[next.name].checked = true;
    table.show(next);
    replace(text, textOf(next));
  };
  show(choice);
  const element = make(
    'div',
    {},
    make('fieldset', {}, make('legend', {}, 'Numbers without a unit are in'), ...options),
    table.element,
    make('p', { class: 'faint profile-text' }, 'As text: ', text),
  );
  return { element, choice: () => choice, show };
}
