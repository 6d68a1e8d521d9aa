import type { Argument } from '../../catalogue/argument';
import { inWords } from '../../catalogue/reading/headings';
import type { FunctionLibrary } from '../../functions/function-library';
import type { Profile } from '../../units/profile';
import { freshId, make, makeSvg, replace } from '../dom';
import { acceptedValues, defaultText, mayBeLeftOut, unitOf, wantsCells } from './field-words';

export interface FormField {
  readonly name: string;
  readonly element: HTMLElement;
  /** Must be filled in. */
  readonly isNeeded: boolean;
  /** May be left out of the call, and is under “more”. */
  readonly isExtra: boolean;
  readonly text: () => string;
  readonly set: (text: string) => void;
  /** Shows units, bounds and default in a profile. */
  readonly show: (profile: Profile) => void;
  /** Ties the field to the message about it, by the id of its element; undefined where nothing is wrong. */
  readonly tieTo: (messageId: string | undefined) => void;
}

export interface FieldParts {
  readonly name: string;
  readonly spec: Argument;
  readonly meaning: string;
  readonly functionLibrary: FunctionLibrary;
  readonly changed: () => void;
  /** Asks for the selected cells; undefined where there is no sheet. */
  readonly pick: (() => Promise<string | undefined>) | undefined;
}

/** One argument of a function as a field: its meaning, the input, and what it accepts. */
export function formField({ name, spec, meaning, functionLibrary, changed, pick }: FieldParts): FormField {
  const [id, hintId] = [freshId('field'), freshId('hint')];
  const isNeeded = !mayBeLeftOut(spec) && !('blank' in spec && spec.blank);
  const control = 'choice' in spec ? choiceControl(id, hintId, spec, isNeeded) : textControl(id, hintId, spec);
  control.addEventListener('input', changed);
  const unit = make('span', { class: 'unit' });
  const hint = make('p', { class: 'hint', id: hintId });
  const label = make('label', { for: id }, inWords(name));
  if (meaning !== '') label.append(make('span', { class: 'meaning' }, ` ${meaning}`));
  const parts: HTMLElement[] = [control, unit];
  const set = (text: string): void => {
    control.value = text;
    changed();
  };
  if (pick !== undefined && !('choice' in spec)) parts.push(pickButton(inWords(name), pick, set));
  return {
    name,
    element: make('div', { class: 'field' }, label, make('div', { class: 'control' }, ...parts), hint),
    isNeeded,
    isExtra: mayBeLeftOut(spec),
    text: () => control.value,
    set,
    tieTo: (messageId) => {
      control.setAttribute('aria-describedby', messageId === undefined ? hintId : `${hintId} ${messageId}`);
      if (messageId === undefined) control.removeAttribute('aria-invalid');
      else control.setAttribute('aria-invalid', 'true');
    },
    show: (profile) => {
      replace(unit, unitOf(spec, profile));
      const otherwise = defaultText(spec, profile, functionLibrary);
      const words = 'choice' in spec ? [] : [acceptedValues(spec, profile)];
      replace(hint, [...words, ...(otherwise === '' ? [] : [`if left out: ${otherwise}`])].join('; '));
    },
  };
}

function textControl(id: string, hintId: string, spec: Argument): HTMLInputElement {
  return make('input', {
    id,
    type: 'text',
    autocomplete: 'off',
    spellcheck: 'false',
    'aria-describedby': hintId,
    placeholder: wantsCells(spec) ? '=B5:K7' : undefined,
  });
}

function choiceControl(
  id: string,
  hintId: string,
  spec: Argument & { readonly choice: readonly string[] },
  isNeeded: boolean,
): HTMLSelectElement {
  const blank = make('option', { value: '' }, isNeeded ? 'choose one' : '');
  const options = spec.choice.map((word) => make('option', { value: word }, word));
  return make('select', { id, 'aria-describedby': hintId }, blank, ...options);
}

function pickButton(
  name: string,
  pick: () => Promise<string | undefined>,
  set: (text: string) => void,
): HTMLButtonElement {
  const words = `Use the selected cells for ${name}`;
  const icon = makeSvg(
    'svg',
    { viewBox: '0 0 16 16', class: 'icon', 'aria-hidden': 'true' },
    makeSvg('path', { d: 'M1.5 1.5h13v13h-13zM1.5 6h13M1.5 10.5h13M6 1.5v13M10.5 1.5v13' }),
    makeSvg('path', { d: 'M6 6h4.5v4.5H6z', class: 'icon-filled' }),
  );
  const button = make('button', { type: 'button', class: 'pick', 'aria-label': words, title: words }, icon);
  button.addEventListener('click', () => {
    void pick().then((text) => {
      if (text !== undefined) set(text);
    });
  });
  return button;
}
