import type { Drawing } from '../../drawing/drawing-model';
import { make, makeButton, replace } from '../dom';
import { pictureOf, showLarger } from './larger';
import type { Recognized } from './recognition';

export interface ShownDrawing {
  readonly element: HTMLElement;
  /** Shows the first of the drawings that were made of what is recognized. */
  readonly show: (recognized: Recognized, drawings: readonly Drawing[]) => void;
  readonly clear: () => void;
}

/** A drawing that fits the pane, with notes and a choice of the others. `another` is called with the one chosen. */
export function createShownDrawing(another: (recognized: Recognized) => void): ShownDrawing {
  const element = make('div', { class: 'shown-drawing' });
  let at = 0;
  const show = (recognized: Recognized, drawings: readonly Drawing[]): void => {
    replace(element);
    const count = drawings.length;
    const drawing = drawings[at];
    if (drawing === undefined) return;
    const larger = makeButton('Larger', () => showLarger(drawing));
    const turn = (by: number) => (): void => {
      at = (at + by + count) % count;
      show(recognized, drawings);
      const pressed = by < 0 ? '.previous' : '.next';
      element.querySelector<HTMLButtonElement>(pressed)?.focus();
    };
    const steps =
      count === 1
        ? []
        : [
            makeButton('‹', turn(-1), { class: 'previous', 'aria-label': 'Previous pattern' }),
            make('span', { class: 'faint' }, `${at + 1} of ${count}`),
            makeButton('›', turn(1), { class: 'next', 'aria-label': 'Next pattern' }),
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
  };
  return {
    element,
    show: (recognized, drawings) => {
      at = 0;
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
