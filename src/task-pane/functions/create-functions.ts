import type { CatalogueRow } from '../../catalogue/define';
import { freshId, make, makeButton, replace } from '../dom';
import { createFinder, type Finder } from '../finder';
import type { AllTexts } from '../function-texts';
import { sentenceOf } from '../messages';
import { familyOf, stageTitles } from '../stages';
import type { PaneContext, ViewPart } from '../view';
import { type FunctionForm, functionForm } from './function-form';
import { reEnterFormulas } from './re-enter';

const mostFound = 12;

/** Functions: found by words or by stage, each with its form. */
export function createFunctions(context: PaneContext): ViewPart {
  let texts: AllTexts = new Map();
  let find: Finder = createFinder(context.functionLibrary.catalogue, texts);
  let form: FunctionForm | undefined;
  let isFront = false;
  /** The forms that were opened, with what was typed into them, for whoever comes back to one. */
  const forms = new Map<string, FunctionForm>();

  const id = freshId('sought');
  const sought = make('input', {
    id,
    type: 'search',
    autocomplete: 'off',
    placeholder: 'how many drums',
    'aria-describedby': `${id}-count`,
  });
  const count = make('p', { class: 'sr-only', id: `${id}-count`, role: 'status' });
  const list = make('div', { class: 'function-list' });
  const open = (row: CatalogueRow): void => {
    form?.hidden();
    const opened = forms.get(row.name) ?? functionForm(row, texts.get(row.name), context);
    // Without its texts, a form is made anew once they have come.
    if (texts.has(row.name)) forms.set(row.name, opened);
    form = opened;
    const back = makeButton('‹ All functions', () => close(row), { class: 'quiet back' });
    replace(formPlace, back, opened.element);
    finderPlace.hidden = true;
    formPlace.hidden = false;
    if (isFront) opened.shown();
    opened.heading.focus();
  };
  const close = (row: CatalogueRow): void => {
    form?.hidden();
    form = undefined;
    replace(formPlace);
    formPlace.hidden = true;
    finderPlace.hidden = false;
    const item = list.querySelector<HTMLElement>(`[data-function="${row.name}"]`);
    const isVisible = item !== null && item.offsetParent !== null;
    (isVisible ? item : sought).focus();
  };
  const item = (row: CatalogueRow): HTMLElement => {
    const button = makeButton('', () => open(row), { class: 'function-item', 'data-function': row.name });
    button.append(
      make('span', { class: 'function-name' }, row.name),
      make('span', { class: 'function-summary' }, texts.get(row.name)?.summary ?? ''),
    );
    return make('li', {}, button);
  };
  const byStage = stages(context.functionLibrary.catalogue);
  const show = (): void => {
    const found = find(sought.value).slice(0, mostFound);
    if (sought.value.trim() === '') {
      replace(count, '');
      replace(list, ...byStage.map(([title, rows]) => stage(title, rows.map(item))));
    } else if (found.length > 0) {
      replace(count, found.length === 1 ? '1 function found' : `${found.length} functions found`);
      replace(list, make('ul', { class: 'plain-list' }, ...found.map(item)));
    } else {
      replace(count, 'no functions found');
      replace(
        list,
        make('p', { class: 'faint' }, 'No function matches these words; try others, or clear them to see every stage.'),
      );
    }
  };
  sought.addEventListener('input', show);

  const finderPlace = make(
    'div',
    {},
    make(
      'div',
      { class: 'field' },
      make('label', { for: id }, 'What do you want to know?'),
      make('div', { class: 'control' }, sought),
    ),
    count,
    list,
    ...reEnterPart(context),
  );
  const formPlace = make('div', { hidden: true });
  show();
  context.texts().then(
    (arrived) => {
      texts = arrived;
      find = createFinder(context.functionLibrary.catalogue, texts);
      if (form === undefined) show();
    },
    (error: unknown) => context.notify('fault', sentenceOf(error)),
  );
  return {
    element: make('div', {}, finderPlace, formPlace),
    shown: () => {
      isFront = true;
      form?.shown();
    },
    hidden: () => {
      isFront = false;
      form?.hidden();
    },
    // What was typed may name cells of the workbook that was open.
    forget: () => forms.clear(),
  };
}

function stages(catalogue: readonly CatalogueRow[]): readonly (readonly [string, readonly CatalogueRow[]])[] {
  return Object.entries(stageTitles)
    .map(([family, title]) => [title, catalogue.filter(({ name }) => familyOf(name) === family)] as const)
    .filter(([, rows]) => rows.length > 0);
}

function stage(title: string, items: readonly HTMLElement[]): HTMLElement {
  return make('details', { class: 'stage' }, make('summary', {}, title), make('ul', { class: 'plain-list' }, ...items));
}

function reEnterPart({ host, work, notify }: PaneContext): readonly HTMLElement[] {
  if (host === undefined) return [];
  const press = (): void => {
    void work('Re-entering SILT formulas', () => reEnterFormulas(host)).then((count) => {
      if (count === undefined) return;
      if (count === 0) notify('note', 'No SILT formula of this workbook shows #NAME?.');
      else notify('done', `${count} cell ${count === 1 ? 'formula was' : 'formulas were'} entered again.`);
    });
  };
  return [
    make(
      'details',
      { class: 'stage' },
      make('summary', {}, 'Cells show #NAME?'),
      make(
        'p',
        {},
        `A workbook that was opened without Siltstead keeps #NAME? in its cells until their formulas are entered again.`,
      ),
      makeButton('Re-enter SILT formulas', press),
    ),
  ];
}
