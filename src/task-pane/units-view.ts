import { make, replace } from './dom';
import { sentenceOf } from './messages';
import { profilePicker } from './units/profile-picker';
import { choiceOf, textOf } from './units/profile-text';
import { UnitsWork } from './units/units-work';
import type { PaneContext, View, ViewPart } from './view';

/** Units: the profile in a cell that everyone sees, and numbers typed in another one. */
export const unitsView: View = { id: 'units', label: 'Units', build };

function build(context: PaneContext): ViewPart {
  const { host } = context;
  let view: UnitsWork | undefined;
  const picker = profilePicker(() => view?.show());
  const status = make('p', {});
  const actions = make('div', { class: 'buttons' });
  const typed = make('div', {});
  const list = make('section', { class: 'typed-list', hidden: true, 'aria-label': 'Typed numbers' });
  if (host === undefined) {
    replace(
      status,
      'Use the text below as the first argument of a formula, such as =SILT.WATER.DENSITY("US", 68); a workbook keeps it in its own cell.',
    );
    return { element: make('div', {}, make('h2', {}, 'Units'), status, picker.element) };
  }
  const shown = new UnitsWork(context, host, { status, actions, typed, list, wanted: () => textOf(picker.choice()) });
  view = shown;
  const follow = (): void => {
    const profile = context.units.now().units?.profile;
    if (profile !== undefined) picker.show(choiceOf(profile));
    shown.closeList();
    shown.show();
  };
  context.units.onChanged(follow);
  follow();
  return {
    element: make('div', {}, make('h2', {}, 'Units of this workbook'), status, typed, picker.element, actions, list),
    forget: () => shown.forget(),
    shown: () => {
      context.units.refresh().catch((error: unknown) => context.notify('fault', sentenceOf(error)));
    },
  };
}
