import type { Drawing } from '../../drawing/drawing-model';
import type { Profile } from '../../units/profile';
import { capitalized } from '../../units/text';
import { make, makeButton, replace, replaceIfChanged } from '../dom';
import { pictureOf, showLarger } from '../drawings/larger';
import { sentenceIn } from '../user-error';
import type { BoundField } from './bound-field';
import { type Fact, factsOf } from './facts';
import { type FieldId, fields, heightWays, widthWays } from './fields';
import type { Job } from './job';
import type { JobCells } from './job-cells';
import { pictureFor } from './pictures';
import { createStepForm } from './step-form';
import { type Step, steps } from './steps';
import type { Stop, Verdict } from './stops';
import { tablesOf } from './tables';

/** All that a step shows, as the cells are now. */
export interface StepState {
  readonly cells: JobCells;
  readonly job: Job;
  readonly profile: Profile;
  readonly verdict: Verdict;
  /** What keeps the job from leaving this step. */
  readonly stops: readonly Stop[];
}

export interface StepPanel {
  readonly step: Step;
  readonly element: HTMLElement;
  readonly show: (state: StepState) => void;
  readonly focusHeading: () => void;
  readonly focusStops: () => void;
  readonly go: (id: FieldId) => void;
  readonly fields: readonly BoundField[];
  readonly asked: () => readonly BoundField[];
}

export interface StepEvents {
  readonly changed: (field: BoundField) => void;
  readonly next: () => void;
  /** Leads to a measurement, at whichever step it is asked for. */
  readonly toField: (id: FieldId) => void;
  /** A drawing for what stands below the figures; undefined where there is none. */
  readonly drawn: (drawing: Drawing | undefined) => void;
}

/** One step in view: its picture, its caution, its inputs, what it gives and what stops it. */
export function createStepPanel(
  step: Step,
  profile: Profile,
  events: StepEvents,
  below: readonly HTMLElement[],
): StepPanel {
  const number = steps.indexOf(step) + 1;
  const heading = make('h3', { tabindex: '-1' }, `${number}. ${step.title}`);
  const picture = make('div', {});
  const [facts, stopBox, notes] = [
    make('div', {}),
    make('div', { class: 'stops', role: 'status', tabindex: '-1' }),
    make('div', {}),
  ];
  let last: StepState | undefined;
  const form = createStepForm(step, {
    changed: events.changed,
    wayChanged: () => {
      if (last !== undefined) draw(last);
    },
  });
  let drawnFrom = '';
  const draw = ({ cells, job, profile: current, verdict }: StepState): void => {
    const input = {
      cells,
      job,
      profile: current,
      isDone: verdict.isDone,
      width: form.way(widthWays),
      cone: form.way(heightWays),
    };
    let drawing: Drawing | undefined;
    let fault = 'The picture comes when the sheet has its figures.';
    try {
      drawing = pictureFor(step.id, { ...input, isSmall: true });
    } catch (error) {
      const sentence = sentenceIn(error);
      if (sentence === undefined) throw error;
      fault = sentence;
    }
    const from = JSON.stringify(drawing ?? fault);
    if (from === drawnFrom) return;
    drawnFrom = from;
    const full = drawing && pictureFor(step.id, { ...input, isSmall: false });
    replace(picture, ...(drawing === undefined ? [make('p', { class: 'faint' }, fault)] : [figureOf(drawing, full)]));
    events.drawn(full);
  };
  const element = make(
    'form',
    { class: 'step', novalidate: true },
    heading,
    make('p', {}, step.task),
    picture,
    make('p', { class: 'step-caution' }, make('strong', {}, 'Caution. '), step.caution(profile.name)),
    form.element,
    stopBox,
    facts,
    notes,
    ...below,
  );
  element.addEventListener('submit', (event) => {
    event.preventDefault();
    // Enter in a field first shows what its figure changes in this step; Enter once more goes on.
    const typing = form.fields.find((field) => field.element.contains(document.activeElement));
    if (step.id !== 'measure' && typing?.isBehind()) return;
    events.next();
  });
  return {
    step,
    element,
    fields: form.fields,
    asked: form.asked,
    go: form.go,
    focusHeading: () => heading.focus(),
    focusStops: () => stopBox.focus(),
    show: (state) => {
      last = state;
      form.show(state.cells, state.job, state.profile);
      draw(state);
      replaceIfChanged(stopBox, ...state.stops.map((stop) => stopOf(stop, events)));
      replaceIfChanged(facts, ...factList(factsOf(step, state.cells, state.job, state.profile), step, state));
      replaceIfChanged(notes, ...(step.id === 'check' ? noteList(state.verdict.notes) : []));
    },
  };
}

function figureOf(drawing: Drawing, full: Drawing = drawing): HTMLElement {
  const larger = makeButton('Larger', () => showLarger(full, () => larger.focus()), { class: 'quiet' });
  return make('figure', { class: 'drawing' }, pictureOf(drawing), make('figcaption', {}, drawing.title, ' ', larger));
}

function stopOf({ field, sentence }: Stop, { toField }: StepEvents): HTMLElement {
  return make(
    'div',
    { class: 'stop' },
    make('p', {}, make('strong', {}, 'It stops here. '), sentence),
    makeButton(`Change ${fields[field].label.toLowerCase()}`, () => toField(field)),
  );
}

function factList(facts: readonly Fact[], { id }: Step, { cells, profile }: StepState): readonly HTMLElement[] {
  const rows = facts
    .filter(({ text }) => text !== '')
    .map(({ label, text }) =>
      make('tr', {}, make('th', { scope: 'row' }, label), make('td', { class: 'figure' }, text)),
    );
  const table = make('table', { class: 'job-table' }, make('caption', {}, 'What it gives'), make('tbody', {}, ...rows));
  return [...(rows.length === 0 ? [] : [table]), ...tablesOf(id, cells, profile)];
}

function noteList(notes: readonly string[]): readonly HTMLElement[] {
  return notes.length === 0
    ? []
    : [make('ul', { class: 'drawing-notes' }, ...notes.map((note) => make('li', {}, `${capitalized(note)}.`)))];
}
