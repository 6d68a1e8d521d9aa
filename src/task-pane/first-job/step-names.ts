import { make, makeButton, replaceIfChanged } from '../dom';
import type { StepState } from './step-panel';
import { type StepId, steps } from './steps';
import { openStep } from './where';

/** The names of the steps above the one in view; those that the cells allow are buttons that lead there. */
export function showNames(place: HTMLElement, { cells, job, verdict }: StepState, go: (id: StepId) => void): void {
  const items = steps.map(({ id, title }) => {
    const isHere = id === job.step;
    const isEarly = id === 'measure' || id === 'check';
    const button = makeButton(title, () => go(id), { class: 'quiet', ...(isHere ? { 'aria-current': 'step' } : {}) });
    button.disabled = !isHere && !isEarly && !(verdict.isDone && openStep(cells, job, verdict, id) === id);
    return make('li', {}, button);
  });
  replaceIfChanged(place, ...items);
}
