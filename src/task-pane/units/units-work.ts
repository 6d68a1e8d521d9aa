import type { SheetHost } from '../../hosts/sheet-host';
import { readProfile } from '../../units/profile';
import type { Spot } from '../cell-formula/book';
import type { Findings } from '../convert-typed/findings';
import { lookForTyped } from '../convert-typed/look';
import { make, makeButton, replace } from '../dom';
import { sentenceOf } from '../messages';
import type { PaneContext } from '../view';
import { foreignNames } from '../workbook-units';
import {
  changeUnits,
  isEmpty,
  isTypedOtherwise,
  typedProfile,
  type UnitsChange,
  type UnitsWanted,
  undoUnits,
} from './change-units';
import { conversionList } from './conversion-list';
import { putUnitCells } from './unit-cells';

export interface UnitsPlaces {
  readonly status: HTMLElement;
  readonly actions: HTMLElement;
  readonly typed: HTMLElement;
  readonly list: HTMLElement;
  /** The profile text that is chosen. */
  readonly wanted: () => string;
}

/** The work of the view on the workbook. */
export class UnitsWork {
  private readonly context: PaneContext;
  private readonly host: SheetHost;
  private readonly places: UnitsPlaces;
  private last: UnitsChange | undefined;

  constructor(context: PaneContext, host: SheetHost, places: UnitsPlaces) {
    this.context = context;
    this.host = host;
    this.places = places;
  }

  show(): void {
    const { status, actions, typed, wanted } = this.places;
    const now = this.context.units.now();
    const foreign = foreignNames(now);
    const isSet = now.units?.place !== undefined && foreign.length === 0;
    replace(status, this.statusText(isSet));
    const isChosen = now.units?.profile !== undefined && now.units.text === wanted();
    const button = isSet
      ? makeButton('Change units', () => void this.change(), { class: 'primary', disabled: isChosen })
      : makeButton('Add units to this workbook', () => void this.putUnits(), { class: 'primary' });
    const back = this.last && makeButton('Undo the last change', () => void this.undo());
    replace(actions, button, ...(back ? [back] : []));
    replace(typed, ...(isTypedOtherwise(now) ? this.typedOtherwise() : []));
  }

  /** The changes made and the list of possible changes belong to one workbook. */
  forget(): void {
    this.last = undefined;
    this.closeList();
    this.show();
  }

  closeList(): void {
    this.places.list.hidden = true;
    replace(this.places.list);
  }

  private statusText(isSet: boolean): string {
    const { units } = this.context.units.now();
    const [foreign] = foreignNames(this.context.units.now());
    if (foreign !== undefined)
      return `This workbook uses the name ${foreign.name} for ${foreign.refersTo}, which holds no units.`;
    if (!isSet)
      return 'This workbook has no units yet. They are kept in the cell SiltUnits on the sheet Silt units, where everyone can see them.';
    if (units?.profile === undefined) return `SiltUnits: ${units?.fault}.`;
    return `Functions read and show numbers as ${units.text}, set in the cell SiltUnits.`;
  }

  private typedOtherwise(): readonly HTMLElement[] {
    const { units, typedIn } = this.context.units.now();
    if (units === undefined || typedIn === undefined) return [];
    const keep = async (): Promise<void> => {
      await this.apply('Setting what numbers were typed in', {
        units: units.text,
        typedIn: units.text,
        conversions: [],
      });
    };
    return [
      make('p', {}, `Numbers were typed in ${typedIn.text}.`),
      make(
        'div',
        { class: 'buttons' },
        makeButton('Look for typed numbers', () => void this.findTyped(units.text), { class: 'primary' }),
        makeButton('They are correct', () => void keep()),
      ),
    ];
  }

  private async putUnits(): Promise<void> {
    const { units, work, notify, ask } = this.context;
    const [foreign] = foreignNames(units.now());
    if (foreign !== undefined) {
      const sentence = `The name ${foreign.name} refers to ${foreign.refersTo} in this workbook. Use the name for the units from now on? Formulas that use it would read the units cell.`;
      if ((await ask({ sentence, answers: ['Use it for the units', 'Leave it'] })) !== 'Use it for the units') return;
    }
    const text = this.places.wanted();
    const done = await work('Adding units to the workbook', async () => {
      await putUnitCells(this.host, readProfile(text));
      await units.refresh();
      return true;
    });
    if (done)
      notify('done', `The sheet Silt units was added; use SiltUnits as the first argument of every SILT function.`);
  }

  /** Asks about typed numbers first where there are any, else changes at once. */
  private async change(): Promise<void> {
    const now = this.context.units.now();
    const typed = typedProfile(now);
    const text = this.places.wanted();
    if (typed === undefined || now.units?.profile === undefined) {
      await this.apply('Changing the units', { units: text, conversions: [] });
    } else await this.findTyped(text);
  }

  private async findTyped(text: string): Promise<void> {
    const { work, functionLibrary, units } = this.context;
    const from = typedProfile(units.now());
    if (from === undefined) return;
    const findings = await work('Looking for typed numbers', (progress) =>
      lookForTyped(this.host, functionLibrary, { from, to: readProfile(text) }, progress),
    );
    if (findings === undefined) return;
    if (isEmpty(findings)) await this.apply('Changing the units', { units: text, typedIn: text, conversions: [] });
    else this.showList(findings, from.text, text);
  }

  private showList(findings: Findings, from: string, text: string): void {
    const { list } = this.places;
    const isNew = this.context.units.now().units?.text !== text;
    const convert = makeButton(
      '',
      () => {
        void this.apply('Converting typed numbers', { units: text, typedIn: text, conversions: found.ticked() });
      },
      { class: 'primary' },
    );
    const count = (): void => {
      const ticked = found.ticked().length;
      replace(convert, isNew ? `Change units and convert ${ticked}` : `Convert ${ticked}`);
    };
    const only = (): void => void this.apply('Changing the units', { units: text, conversions: [] });
    const found = conversionList(findings, (spot) => this.select(spot), count);
    count();
    const heading = make('h2', { tabindex: '-1' }, 'Typed numbers');
    replace(
      list,
      heading,
      make(
        'p',
        {},
        `These were typed in ${from} and would be read as ${text}. The ticked ones are converted in one step.`,
      ),
      found.element,
      make(
        'div',
        { class: 'buttons' },
        convert,
        ...(isNew ? [makeButton('Change units only', only)] : []),
        makeButton('Cancel', () => {
          this.closeList();
          this.show();
        }),
      ),
    );
    list.hidden = false;
    heading.focus();
  }

  private select({ sheet, row, column }: Spot): void {
    this.host
      .select({ sheet, range: { row, column, rows: 1, columns: 1 } })
      .catch((error: unknown) => this.context.notify('fault', sentenceOf(error)));
  }

  private async apply(title: string, wanted: UnitsWanted): Promise<void> {
    const { work, units, notify } = this.context;
    const changes = await work(title, async (progress) => {
      progress.finishing();
      const made = await changeUnits(this.host, units.now(), wanted);
      this.last = made;
      await units.refresh();
      return made;
    });
    if (changes === undefined) return;
    this.closeList();
    this.show();
    notify('done', doneSentence(wanted), { label: 'Undo', press: () => void this.undo() });
  }

  private async undo(): Promise<void> {
    const { work, units, notify, functionLibrary } = this.context;
    const { last } = this;
    if (last === undefined) return;
    const since = await work('Undoing the change', async (progress) => {
      const count = await undoUnits(this.host, functionLibrary, last, progress);
      this.last = undefined;
      await units.refresh();
      return count;
    });
    if (since === undefined) return;
    this.show();
    notify('done', undoneSentence(since));
  }
}

function undoneSentence(since: number): string {
  if (since === 0) return 'Units and numbers are as they were before.';
  const cells = since === 1 ? 'The cell typed since then was' : `The ${since} cells typed since then were`;
  return `Units and numbers are as they were before. ${cells} converted too.`;
}

function doneSentence({ units, conversions: { length } }: UnitsWanted): string {
  if (length === 0) return `Numbers are read as ${units} now.`;
  return `Numbers are read as ${units} now, and ${length === 1 ? 'one cell was' : `${length} cells were`} converted.`;
}
