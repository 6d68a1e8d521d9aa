import type { Drawing } from '../../drawing/drawing-model';
import { make, makeButton, replace } from '../dom';
import { pictureOf, showLarger } from './larger';
import type { Recognized } from './recognition';

export interface ShownDrawing {
  readonly element: HTMLElement;
  /** Shows the first of the drawings that were made of what is recognized, or the one in view of the same cells before. */
  readonly show: (recognized: Recognized, drawings: readonly Drawing[]) => void;
  readonly clear: () => void;
}

/** A drawing that fits the pane, with notes and a choice of the others. `another` is called with the one chosen. */
export function createShownDrawing(another: (recognized: Recognized) => void): ShownDrawing {
  const element = make('div', { class: 'shown-drawing' });
  let at = 0;
  let from: string | undefined;
  const focus = (words: string | null): void =>
    [...element.querySelectorAll('button')].find(({ textContent }) => textContent === words)?.focus();
  const show = (recognized: Recognized, drawings: readonly Drawing[]): void => {
    // Cells may change at any moment, and the drawing with them; the keyboard stays at its button.
    const focused = element.contains(document.activeElement) ? document.activeElement?.textContent : undefined;
    replace(element);
    const count = drawings.length;
    const drawing = drawings[at];
    if (drawing === undefined) return;
    const larger = makeButton('Larger', () => showLarger(drawing, () => focus('Larger')));
    const turn = (by: number) => (): void => {
      at = (at + by + count) % count;
      show(recognized, drawings);
    };
    const steps =
      count === 1
        ? []
        : [
            makeButton('‹', turn(-1), { 'aria-label': 'Previous pattern' }),
            make('span', { class: 'faint' }, `${at + 1} of ${count}`),
            makeButton('›', turn(1), { 'aria-label': 'Next pattern' }),
          ];
    replace(
      element,
      ...choiceOf(recognized, another),
      make('figure', { class: 'drawing' }, pictureOf(drawing), make('figcaption', {}, caption(drawing, recognized))),
      make('div', { class: 'buttons' }, larger, ...steps),
      make(
        'ul',
        { class: 'drawing-notes' },
        ...notesOf(drawing, recognized, count).map((note) => make('li', {}, note)),
      ),
    );
    if (focused !== undefined) focus(focused);
  };
  return {
    element,
    show: (recognized, drawings) => {
      at = recognized.from === from ? Math.min(at, drawings.length - 1) : 0;
      from = recognized.from;
      show(recognized, drawings);
    },
    clear: () => replace(element),
  };
}

function caption({ title }: Drawing, { from }: Recognized): string {
  return from === '' ? title : `${title} (${from})`;
}

function notesOf({ notes }: Drawing, { note }: Recognized, count: number): readonly string[] {
  const together = count === 1 ? [] : [`All ${count} patterns are saved together.`];
  return [...(note === undefined ? [] : [note]), ...together, ...notes];
}

function choiceOf({ others }: Recognized, another: (recognized: Recognized) => void): readonly HTMLElement[] {
  if (others === undefined) return [];
  const choice = make('select', {}, ...others.titles.map((title) => make('option', {}, title)));
  choice.selectedIndex = others.chosen;
  choice.addEventListener('change', () => another(others.recognizeOther(choice.selectedIndex)));
  return [make('label', { class: 'choice' }, make('span', {}, 'Scenario'), choice)];
}
