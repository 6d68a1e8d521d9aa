import type { ReadyProfile } from '../../workbooks/sheets/sheet-draft';
import { make, makeButton } from '../dom';
import type { Ground } from './start-job';
import { steps } from './steps';

/** What a person sees before the first job is begun. */
export function introOf(ground: Ground, start: (profile: ReadyProfile) => void, lost: boolean): HTMLElement {
  const profiles: readonly ReadyProfile[] = ['US', 'metric'];
  const choice = make(
    'select',
    {},
    ...profiles.map((one) =>
      make(
        'option',
        { value: one },
        one === 'US' ? 'US: inches, gallons, pounds' : 'metric: millimeters, liters, kilograms',
      ),
    ),
  );
  choice.value = ground.asBuilt ?? ground.units.units?.profile?.name ?? usualProfile();
  const chosen = (): ReadyProfile => profiles.find((one) => one === choice.value) ?? 'metric';
  return make(
    'div',
    {},
    ...(lost
      ? [
          make(
            'p',
            { class: 'step-caution' },
            'A first job was begun here, but its sheets have been changed in shape, so the guide cannot find its cells. Undo that, or begin again; nothing that you typed is taken away.',
          ),
        ]
      : []),
    make(
      'p',
      {},
      `Plan a cone for your own drum in ${steps.length} short steps: about five minutes with the drum beside you.`,
    ),
    make('ol', { class: 'step-names' }, ...steps.map(({ title }) => make('li', {}, title))),
    make('p', {}, 'You need the empty drum, a tape measure, and the size of the sheet that you can buy.'),
    make(
      'p',
      { class: 'faint' },
      `What you type goes into the sheets, where you can change everything by hand. Leave it at any step and come back. ${placeSentence(ground)}`,
    ),
    ...(ground.choosesUnits ? [make('label', { class: 'choice' }, make('span', {}, 'Units'), choice)] : []),
    make(
      'div',
      { class: 'buttons' },
      makeButton('Start', () => start(chosen()), { class: 'primary' }),
    ),
  );
}

function placeSentence({ asBuilt, free, sheets, units }: Ground): string {
  const kept = units.units?.profile === undefined ? '' : ` Units: ${units.units.text}.`;
  if (asBuilt !== undefined) return 'Your drum takes the place of the invented ones.';
  if (sheets !== undefined && free !== undefined)
    return `Your drum goes into row ${free} of ${sheets.drums}; the others stay.${kept}`;
  return `The sheets are added after yours, which stay as they are.${kept}`;
}

/** Inches where the browser speaks American English, else millimeters; anyone can choose. */
function usualProfile(): ReadyProfile {
  return navigator.language === 'en-US' ? 'US' : 'metric';
}
