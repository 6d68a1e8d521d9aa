import type { Kind } from '../../units/kinds';
import { freshId, make, replace } from '../dom';
import { choosableKinds, kindNotes, type ProfileChoice, unitsToChoose } from './profile-text';

export interface Exceptions {
  readonly element: HTMLElement;
  readonly show: (choice: ProfileChoice) => void;
}

/** Every kind with the units that it can be measured in. */
export function exceptionsTable(changed: (kind: Kind, symbol: string | undefined) => void): Exceptions {
  const summary = make('summary', {}, 'Exceptions by kind');
  const selects = new Map<Kind, HTMLSelectElement>();
  const rows = choosableKinds.map((kind) => {
    const id = freshId('kind');
    const select = make('select', { id });
    selects.set(kind, select);
    const note = kindNotes[kind];
    return make(
      'div',
      { class: 'kind-row' },
      make('label', { for: id }, kind, ...(note ? [make('span', { class: 'meaning' }, ` ${note}`)] : [])),
      select,
    );
  });
  return {
    element: make('details', { class: 'exceptions' }, summary, ...rows),
    show: ({ name, exceptions }) => {
      replace(summary, 'Exceptions by kind', exceptions.size > 0 ? ` (${exceptions.size})` : '');
      for (const [kind, select] of selects) {
        const chosen = exceptions.get(kind);
        const [own = '', ...others] = unitsToChoose(kind, name, chosen);
        replace(select, ...[own, ...others].map((symbol) => make('option', { value: symbol }, symbol)));
        select.value = chosen ?? own;
        select.onchange = () => changed(kind, select.value === own ? undefined : select.value);
      }
    },
  };
}
