import type { Profile } from '../../units/profile';
import { freshId, make } from '../dom';
import { shownFigure } from '../shown-figure';
import { type BoundField, createBoundField } from './bound-field';
import { typedIn, wayInUse } from './entries';
import { type FieldId, fields, type Ways } from './fields';
import type { Job } from './job';
import type { JobCells } from './job-cells';
import type { Step } from './steps';

/** The inputs of one step. */
export interface StepForm {
  readonly element: HTMLElement;
  readonly fields: readonly BoundField[];
  /** The fields that are asked for at the moment: those of the chosen ways. */
  readonly asked: () => readonly BoundField[];
  /** Which of several ways is chosen. */
  readonly way: (ways: Ways) => number;
  readonly show: (cells: JobCells, job: Job, profile: Profile) => void;
  /** Puts the focus into a field, choosing its way. */
  readonly go: (id: FieldId) => void;
}

interface Choice {
  readonly ways: Ways;
  readonly chosen: () => number;
  readonly choose: (at: number) => void;
  readonly element: HTMLElement;
}

export function createStepForm(
  { asks }: Step,
  { changed, wayChanged }: { readonly changed: (field: BoundField) => void; readonly wayChanged: () => void },
): StepForm {
  const all: BoundField[] = [];
  const choices: Choice[] = [];
  const add = (id: FieldId): BoundField => {
    const field = createBoundField(id, changed);
    all.push(field);
    return field;
  };
  const parts = asks.map((asked) => {
    if (typeof asked === 'string') return add(asked).element;
    const choice = createChoice(asked, add, wayChanged);
    choices.push(choice);
    return choice.element;
  });
  let isFirst = true;
  const choiceOf = (id: FieldId): readonly [Choice, number] | undefined => {
    for (const choice of choices) {
      const at = choice.ways.ways.findIndex(({ asks: ids }) => ids.includes(id));
      if (at >= 0) return [choice, at];
    }
    return undefined;
  };
  return {
    element: make('div', { class: 'step-form' }, ...parts),
    fields: all,
    asked: () =>
      all.filter(({ id }) => {
        const [choice, at] = choiceOf(id) ?? [];
        return choice === undefined || choice.chosen() === at;
      }),
    way: (ways) => choices.find((choice) => choice.ways === ways)?.chosen() ?? 0,
    show: (cells, job, profile) => {
      // A way that was chosen here stays, although its cells are still empty.
      if (isFirst) for (const { ways, choose } of choices) choose(wayInUse(cells, ways, job.row));
      isFirst = false;
      for (const field of all) {
        if (cells.has(fields[field.id].sheet)) field.show(shownFigure(typedIn(cells, field.id, job.row)), profile);
      }
    },
    go: (id) => {
      const [choice, at] = choiceOf(id) ?? [];
      if (at !== undefined) choice?.choose(at);
      all.find((field) => field.id === id)?.focus();
    },
  };
}

function createChoice(ways: Ways, add: (id: FieldId) => BoundField, changed: () => void): Choice {
  const name = freshId('way');
  const groups = ways.ways.map(({ asks }) => make('div', {}, ...asks.map((id) => add(id).element)));
  const radios = ways.ways.map(() => make('input', { type: 'radio', name }));
  const chosen = (): number =>
    Math.max(
      0,
      radios.findIndex(({ checked }) => checked),
    );
  const show = (): void => {
    for (const [at, group] of groups.entries()) group.hidden = at !== chosen();
  };
  for (const radio of radios) {
    radio.addEventListener('change', () => {
      show();
      changed();
    });
  }
  const labels = ways.ways.map(({ label }, at) =>
    make('label', { class: 'check' }, ...(radios[at] === undefined ? [] : [radios[at]]), make('span', {}, label)),
  );
  return {
    ways,
    chosen,
    choose: (at) => {
      const radio = radios[at];
      if (radio !== undefined) radio.checked = true;
      show();
    },
    element: make('fieldset', { class: 'ways' }, make('legend', {}, ways.question), ...labels, ...groups),
  };
}
