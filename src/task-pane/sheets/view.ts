import type { SheetHost } from '../../hosts/sheet-host';
import { wordList } from '../../units/text';
import type { ReadyMade, ReadyProfile } from '../../workbooks/sheets/ready-made';
import { make, makeButton, replace } from '../dom';
import { sentenceIn } from '../user-error';
import type { PaneContext, View, ViewPart } from '../view';
import type { Progress } from '../work';
import { insertSheets } from './insert-sheets';
import { type Prepared, prepare } from './prepare';
import { createValuesCopy } from './values-copy';

export const sheetsView: View = { id: 'sheets', label: 'Sheets', build };

const invitation =
  'Ready-made sheets contain an invented farm’s numbers; replace them with your own. They are added after your sheets and do not change them.';

/** Inserts ready-made sheets into the open workbook. */
function build(context: PaneContext): ViewPart {
  const { host, notify, work, units } = context;
  const legend = make('legend', {}, 'Which');
  const list = make('fieldset', {}, legend);
  const profile = createProfileChoice();
  const insert = makeButton('Insert', () => void insertChosen(), { class: 'primary' });
  insert.disabled = true;
  let chosen: ReadyMade | undefined;

  const showProfile = (): void => {
    profile.element.hidden = units.now().units !== undefined;
  };

  const offer = async (): Promise<void> => {
    const ready = await loaded();
    replace(
      list,
      legend,
      ...ready.map((one) =>
        choiceOf(one, () => {
          chosen = one;
          insert.disabled = host === undefined;
        }),
      ),
    );
  };

  const insertChosen = async (): Promise<void> => {
    const ready = chosen;
    if (host === undefined || ready === undefined) return;
    const prepared = await spoken(`Preparing ${ready.title}`, () => readyFor(host, ready));
    if (prepared === undefined) return;
    if (prepared.clashes.size > 0 && !(await keepsBoth(prepared))) {
      notify('note', 'Nothing was inserted.');
      return;
    }
    await spoken(`Inserting ${ready.title}`, async (progress) => {
      await insertSheets(host, prepared.workbook, progress);
      await units.refresh();
      await goThere(host, prepared);
      notify('done', wordDone(ready, prepared));
    });
  };

  /** Runs work and shows the sentence of a failure unchanged. */
  const spoken = <T>(title: string, job: (progress: Progress) => Promise<T>): Promise<T | undefined> =>
    work(title, async (progress) => {
      try {
        return await job(progress);
      } catch (error) {
        const sentence = sentenceIn(error);
        if (sentence === undefined) throw error;
        notify('fault', sentence);
        return undefined;
      }
    });

  const readyFor = async (into: SheetHost, ready: ReadyMade): Promise<Prepared> => {
    const [sheets, names, now] = await Promise.all([into.sheets(), into.names(), units.refresh()]);
    return prepare(ready, profile.chosen(), { sheets, names, units: now }, context.functionLibrary);
  };

  const keepsBoth = async ({ clashes }: Prepared): Promise<boolean> => {
    const keep = `Keep both; name the new ${wordList([...clashes.values()], 'and')}`;
    const answer = await context.ask({
      sentence: `${clashes.size === 1 ? 'A sheet' : 'Sheets'} called ${wordList([...clashes.keys()], 'and')} ${clashes.size === 1 ? 'exists' : 'exist'} already.`,
      answers: [keep, 'Cancel'],
    });
    return answer === keep;
  };

  units.onChanged(showProfile);
  const valuesCopy = createValuesCopy(context);
  const element = make(
    'div',
    { class: 'sheets' },
    make('h2', {}, 'Ready-made sheets'),
    make('p', {}, host === undefined ? 'There is no workbook here to insert sheets into.' : invitation),
    list,
    profile.element,
    make('div', { class: 'buttons' }, insert),
    ...(valuesCopy === undefined ? [] : [valuesCopy]),
  );
  return {
    element,
    shown: () => {
      showProfile();
      if (list.childElementCount === 1) void work('Fetching the ready-made sheets', offer);
    },
  };
}

async function loaded(): Promise<readonly ReadyMade[]> {
  const { readyMade } = await import(/* webpackChunkName: "ready-made-sheets" */ '../../workbooks/sheets/ready-made');
  return readyMade;
}

function choiceOf(ready: ReadyMade, choose: () => void): HTMLElement {
  const input = make('input', { type: 'radio', name: 'ready-made' });
  input.addEventListener('change', choose);
  const { subject, sheets } = ready.build('metric');
  return make(
    'div',
    { class: 'ready-made' },
    make('label', { class: 'check' }, input, make('span', {}, ready.title)),
    make('p', { class: 'hint' }, `${subject === undefined ? '' : `${subject}. `}${sheets.length} sheets.`),
  );
}

function createProfileChoice(): { readonly element: HTMLElement; readonly chosen: () => ReadyProfile } {
  const profiles: readonly ReadyProfile[] = ['metric', 'US'];
  const choice = make('select', {}, ...profiles.map((one) => make('option', {}, one)));
  return {
    element: make('label', { class: 'choice' }, make('span', {}, 'Units'), choice),
    chosen: () => choice.value as ReadyProfile,
  };
}

async function goThere(host: SheetHost, { workbook }: Prepared): Promise<void> {
  const sheet = workbook.activeSheet ?? workbook.sheets[0]?.name;
  if (sheet !== undefined) await host.select({ sheet, range: { row: 0, column: 0, rows: 1, columns: 1 } });
}

function wordDone({ title }: ReadyMade, { workbook, byHand }: Prepared): string {
  const count = workbook.sheets.length;
  const done = `${title}: ${count} sheet${count === 1 ? '' : 's'} inserted.`;
  if (byHand.length === 0) return done;
  return `${done} Look at ${wordList(byHand.slice(0, 5), 'and')}${byHand.length > 5 ? ' and more' : ''}: their numbers could not be converted to this workbook’s units.`;
}
