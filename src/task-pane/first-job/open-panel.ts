import type { Drawing } from '../../drawing/drawing-model';
import type { Profile } from '../../units/profile';
import { make, makeButton } from '../dom';
import { createSavePanel } from '../drawings/save-panel';
import type { GuideContext } from './context';
import { finishButtons } from './finish';
import { createStepPanel, type StepEvents, type StepPanel } from './step-panel';
import { type StepId, stepOf, steps } from './steps';

interface Events extends Omit<StepEvents, 'drawn'> {
  readonly goTo: (step: StepId) => void;
  readonly another: () => void;
  readonly showCells: () => void;
}

/** A step with the buttons that lead on and back; patterns and cut plans can be saved from it. */
export function openPanel(context: GuideContext, id: StepId, profile: Profile, events: Events): StepPanel {
  const saving = createSavePanel(context.notify, context.work);
  saving.element.hidden = true;
  const canSave = (id === 'pattern' || id === 'cut') && context.host.downloads;
  const drawn = (drawing: Drawing | undefined): void => {
    saving.element.hidden = !canSave || drawing === undefined;
    if (drawing !== undefined) saving.offer([drawing]);
  };
  const below = canSave ? [saving.element] : [];
  return createStepPanel(stepOf(id), profile, { ...events, drawn }, [...below, buttonsOf(context, id, events)]);
}

function buttonsOf(context: GuideContext, id: StepId, { goTo, another, showCells }: Events): HTMLElement {
  const at = steps.findIndex((step) => step.id === id);
  const [before, after] = [steps[at - 1], steps[at + 1]];
  const next =
    after === undefined
      ? finishButtons(context, another)
      : [make('button', { type: 'submit', class: 'primary' }, `Next: ${after.title}`)];
  const back = before === undefined ? [] : [makeButton('Back', () => goTo(before.id))];
  return make('div', { class: 'buttons' }, ...next, ...back, makeButton('Show the cells', showCells));
}
