import type { CatalogueRow } from '../../catalogue/define';
import { inWords } from '../../catalogue/reading/headings';
import type { Block } from '../../hosts/sheet-host';
import { wordList } from '../../units/text';
import { debounced } from '../debounced';
import { freshId, make, makeButton, replace } from '../dom';
import type { FunctionTexts } from '../function-texts';
import { sentenceOf } from '../messages';
import type { PaneContext } from '../view';
import { type Field, fieldText, readField } from './field-text';
import { type FormField, formField } from './form-field';
import { insertCall } from './insert-call';
import { type CallResult, computeResult, type Given, profileOf } from './live-result';
import { resultElement } from './result-table';
import { unitsChoice } from './units-choice';

export interface FunctionForm {
  readonly element: HTMLElement;
  readonly heading: HTMLElement;
  readonly shown: () => void;
  readonly hidden: () => void;
}

/** The form of one function: its arguments as fields, the result while they are typed, and a button that inserts it. */
export function functionForm(row: CatalogueRow, texts: FunctionTexts | undefined, context: PaneContext): FunctionForm {
  const { functionLibrary, host, units } = context;
  let selection: Block | undefined;
  let last: CallResult | undefined;
  let asked = 0;
  const resultId = freshId('result');
  const place = make('div', { class: 'result', id: resultId, role: 'status', 'aria-live': 'polite' });

  const choice = unitsChoice(units, () => update());
  const pick = async (): Promise<string | undefined> => {
    try {
      return host === undefined ? undefined : fieldText(await host.selection());
    } catch (error) {
      context.notify('fault', sentenceOf(error));
      return undefined;
    }
  };
  const fields = Object.entries(row.arguments).map(([name, spec]) =>
    formField({
      name,
      spec,
      meaning: texts?.meanings.get(name) ?? '',
      functionLibrary,
      changed: () => later(),
      pick: host && pick,
    }),
  );
  const readFields = (): readonly Field[] => fields.map((field) => readField(field.text(), selection?.sheet));

  const update = (): void => {
    choice.show();
    const profile = profileOf(choice.profileText());
    if (profile !== undefined) for (const field of fields) field.show(profile);
    asked += 1;
    const mine = asked;
    const show = (next: CallResult | undefined, ...children: readonly (Node | string)[]): void => {
      if (mine !== asked) return;
      last = next;
      replace(place, ...children);
      const about = next?.is === 'fault' ? next.message : fault;
      for (const { name, tieTo } of fields) tieTo(isAbout(about, name) ? resultId : undefined);
    };
    const read = readFields();
    const fault = faultIn(fields, read);
    const missing = fields.filter((field, at) => field.isNeeded && read[at]?.is === 'blank');
    if (fault !== undefined) show(undefined, make('p', { class: 'result-fault' }, fault));
    else if (missing.length > 0) show(undefined, make('p', { class: 'faint' }, invitation(missing)));
    else {
      valuesOf(read, context).then(
        (values) => {
          const next = computeResult(functionLibrary, row, choice.profileText(), values);
          show(next, resultElement(next));
        },
        (error: unknown) => show(undefined, make('p', { class: 'result-fault' }, sentenceOf(error))),
      );
    }
  };
  const later = debounced(update, 60);

  const headings = make('input', { type: 'checkbox', id: freshId('headings') });
  const insertButton = makeButton('Insert', () => void insert(), { class: 'primary' });
  const insert = async (): Promise<void> => {
    const read = readFields();
    await insertCall(context, row, {
      fields: read,
      fault: faultIn(fields, read),
      unitsText: row.units === false ? undefined : choice.argument(),
      headings: headings.checked,
      result: last,
    });
  };
  const heading = make('h2', { tabindex: '-1' }, `SILT.${row.name}`);
  const element = make(
    'div',
    { class: 'function-form' },
    heading,
    make('p', {}, texts?.summary ?? ''),
    ...(row.units === false ? [] : [choice.element]),
    ...fieldGroups(fields),
    make('h3', {}, 'Result'),
    place,
    ...(host === undefined
      ? []
      : [
          ...(functionLibrary.takesHeadings(row)
            ? [make('div', { class: 'check' }, headings, make('label', { for: headings.id }, 'heading row on top'))]
            : []),
          make('div', { class: 'buttons' }, insertButton),
        ]),
    make('p', {}, referenceLink(row, context)),
  );

  let stops: (() => void)[] = [];
  return {
    element,
    heading,
    shown: () => {
      update();
      const stopSelection = context.onSelection((selected) => {
        selection = selected;
        const { row: at, column } = selected.range;
        replace(
          insertButton,
          `Insert at ${fieldText({ sheet: selected.sheet, range: { row: at, column, rows: 1, columns: 1 } }).slice(1)}`,
        );
      });
      const stopUnits = units.onChanged(update);
      const changes = host?.onCellsChanged(() => {
        if (readFields().some((field) => field.is === 'cells')) later();
      });
      changes?.catch(() => undefined);
      stops = [stopSelection, stopUnits, () => void changes?.then((stop) => stop()).catch(() => undefined)];
    },
    hidden: () => {
      for (const stop of stops) stop();
      stops = [];
    },
  };
}

/** The first field that cannot be read, and why: `top: =1+1 is not a range of cells`. */
function faultIn(fields: readonly FormField[], read: readonly Field[]): string | undefined {
  for (const [at, field] of read.entries()) if (field.is === 'fault') return `${fields[at]?.name}: ${field.why}`;
  return undefined;
}

/** Whether a message begins with the name of an argument. */
function isAbout(message: string | undefined, name: string): boolean {
  return message?.startsWith(`${name}:`) === true;
}

/** Fields of the call are open, the others folded. */
function fieldGroups(fields: readonly FormField[]): readonly HTMLElement[] {
  const needed = fields.filter(({ isExtra }) => !isExtra);
  const others = fields.filter(({ isExtra }) => isExtra);
  if (others.length === 0) return needed.map(({ element }) => element);
  const details = make(
    'details',
    { open: needed.length === 0 },
    make('summary', {}, others.length === 1 ? '1 optional argument' : `${others.length} optional arguments`),
    ...others.map(({ element }) => element),
  );
  return [...needed.map(({ element }) => element), details];
}

function invitation(missing: readonly FormField[]): string {
  const list = wordList(
    missing.map(({ name }) => inWords(name)),
    'and',
  );
  return `Fill in ${list} to see the result; you can also type text such as 3 1/4 in or 20 °C.`;
}

/** The value of each field: cells are read from the sheet. */
async function valuesOf(fields: readonly Field[], { host }: PaneContext): Promise<readonly Given[]> {
  const values: Given[] = [];
  for (const field of fields) {
    if (field.is === 'value') values.push(field.value);
    else if (field.is === 'cells' && host !== undefined) values.push((await host.read(field.place)).values);
    else values.push('');
  }
  return values;
}

function referenceLink(row: CatalogueRow, { host, page }: PaneContext): HTMLElement {
  const address = page(`reference/${row.name.toLowerCase()}.html`);
  const link = make('a', { href: address, target: '_blank', rel: 'noopener' }, 'Formula, range and sources');
  link.addEventListener('click', (event) => {
    if (host === undefined) return;
    event.preventDefault();
    host.openPage(address);
  });
  return link;
}
