/** The daily page: the day's pull and the week's water test on a phone, and what to do when. */

import { fishKinds } from '../formulas/water/water-species';
import { make, replace } from '../task-pane/dom';
import { saveFile } from '../task-pane/save-file';
import { today } from '../task-pane/today';
import { readProfile } from '../units/profile';
import { calendarOf, choresOf, nextDue } from './chores';
import { copyEntries, offerButton } from './copies';
import { followDay } from './day';
import { type Entry, entriesOf, fileOf, isSavedTest, merged, type Reading, readings } from './entries';
import { addedSentence, entryText, labels } from './entry-text';
import { type Intervals, startIntervals } from './intervals';
import { readPull, unlikely, withUnit } from './pull';
import { alert, type Offer, plain, type Sentence } from './said';
import { keep, keepSettings, keptEntries, keptSettings, onKeptElsewhere } from './store';
import { judged } from './verdict';

/** Units on the labels, because nobody looks for them elsewhere with wet hands. */
function showUnits(): void {
  const { volume, temperature } = readProfile(settings().units).units;
  for (const place of document.querySelectorAll('.volume-unit')) place.textContent = volume.symbol;
  for (const reading of readings) {
    if (reading === 'ph') continue;
    part(`${reading}-unit`).textContent = reading === 'temperature' ? temperature.symbol : 'mg/L';
  }
}

function part<T extends HTMLElement>(id: string): T {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no #${id}`);
  return element as T;
}
const input = (id: string): HTMLInputElement => part<HTMLInputElement>(id);

let entries = keptEntries();
/** Whether this browser keeps entries; where it does, another window may have added some or deleted some. */
let isKept = true;
const latest = (): readonly Entry[] => (isKept ? keptEntries() : entries);

/** Shows these entries and keeps them. */
function set(next: readonly Entry[]): void {
  entries = next;
  isKept = keep(entries);
  list();
}
let intervals: Intervals | undefined;
const chores = () => (intervals === undefined ? [] : choresOf(intervals.schedule()));

function say(sentences: readonly Sentence[], offer?: Offer): void {
  const lines = sentences.map(([tone, words]) => make('p', { class: tone }, words));
  replace(part('said'), ...lines, ...(offer === undefined ? [] : [offerButton(offer)]));
}

function settings() {
  return {
    units: part<HTMLSelectElement>('units').value,
    species: part<HTMLSelectElement>('species').value,
    start: input('start').value || today(),
  };
}

function add(entry: Entry, ...sentences: readonly Sentence[]): void {
  set(merged(latest(), [entry]));
  say([
    ...sentences,
    isKept
      ? plain('Saved on this device.')
      : alert(
          'This browser saves nothing (a private window, or its storage is full). Save the file below before you leave.',
        ),
  ]);
}

/** A slip of the finger must not stay in the books. */
function deleteButton(entry: Entry): HTMLElement {
  const button = make(
    'button',
    { type: 'button', class: 'small', 'aria-label': `Delete the entry of ${entry.date}` },
    'Delete',
  );
  button.addEventListener('click', () => {
    set(latest().filter(({ id }) => id !== entry.id));
    const putBack = (): void => {
      set(merged(latest(), [entry]));
      say([plain(`The entry of ${entry.date} is there again.`)]);
    };
    say([plain(`The entry of ${entry.date} is deleted.`)], { label: 'Put it back', press: putBack });
    part('said').scrollIntoView({ block: 'nearest' });
  });
  return button;
}

/** More entries than these are not listed. */
const mostShown = 14;

function list(): void {
  const shown = [...entries].reverse().slice(0, mostShown);
  const older = entries.length - shown.length;
  replace(
    part('entries'),
    ...shown.map((entry) => make('li', {}, entryText(entry), ' ', deleteButton(entry))),
    ...(older > 0 ? [make('li', { class: 'quiet' }, `and ${older} older, which are copied and saved too`)] : []),
  );
  const now = today();
  replace(
    part('chores'),
    ...chores()
      .map((chore) => ({ ...chore, due: nextDue(chore, settings().start, now) }))
      .sort((a, b) => (a.due < b.due ? -1 : 1))
      .map(({ name, why, due }) =>
        make('li', {}, make('strong', {}, due === now ? `Today: ${name}` : `${due}: ${name}`), `: ${why}`),
      ),
  );
}

function start(): void {
  const kept = keptSettings();
  const species = part<HTMLSelectElement>('species');
  for (const kind of fishKinds) species.add(new Option(kind, kind));
  species.value = kept.species ?? 'warm-water';
  part<HTMLSelectElement>('units').value = kept.units ?? 'metric';
  input('start').value = kept.start ?? today();
  let isTestSaved = false;
  part('readings').addEventListener('input', () => {
    isTestSaved = false;
  });
  followDay([input('pull-date'), input('test-date')], () => {
    // The readings of another day are no readings of today.
    if (isTestSaved) for (const reading of readings) input(reading).value = '';
    list();
  });
  onKeptElsewhere(() => {
    entries = keptEntries();
    list();
  });
  replace(
    part('readings'),
    ...readings.map((reading) =>
      make(
        'label',
        {},
        `${labels[reading]} `,
        make('span', { id: `${reading}-unit`, class: 'quiet' }),
        make('input', { id: reading, inputmode: 'decimal', autocomplete: 'off' }),
      ),
    ),
  );
  for (const id of ['units', 'species', 'start']) {
    part(id).addEventListener('change', () => {
      keepSettings(settings());
      showUnits();
      list();
    });
  }
  showUnits();
  part('pull').addEventListener('submit', (event) => {
    event.preventDefault();
    const read = readPull(settings().units, input('volume').value.trim(), input('solids').value.trim());
    if ('wrong' in read) return say([alert(read.wrong)]);
    const cautions = unlikely(settings().units, read, latest()).map(alert);
    add({ kind: 'pull', id: crypto.randomUUID(), date: input('pull-date').value, ...read }, ...cautions);
    // The share of solids is of this pull; left here, it would be saved with the next one too.
    for (const id of ['volume', 'solids']) input(id).value = '';
  });
  part('test').addEventListener('submit', (event) => {
    event.preventDefault();
    const values = Object.fromEntries(readings.map((reading) => [reading, input(reading).value.trim()])) as Record<
      Reading,
      string
    >;
    if (readings.every((reading) => values[reading] === '')) return say([alert('Type at least one reading.')]);
    const { units, species: fish } = settings();
    const test = judged(units, fish, values);
    if ('unread' in test) {
      say([alert(`Not saved. ${test.unread}`)]);
      return part('said').scrollIntoView();
    }
    const { wrong, missing } = test;
    const fine =
      missing.length === 0
        ? 'All readings are within their limits.'
        : `What was measured is within its limits. Not measured: ${missing.join(', ')}.`;
    const verdict = wrong.length === 0 ? [plain(fine)] : wrong.map(alert);
    const date = input('test-date').value;
    const kept = { ...values, temperature: withUnit(units, 'temperature', values.temperature) };
    if (isSavedTest(latest(), { date, values: kept })) say([...verdict, plain('This test was saved before.')]);
    else add({ kind: 'test', id: crypto.randomUUID(), date, values: kept }, ...verdict);
    isTestSaved = true;
    part('said').scrollIntoView();
  });
  for (const kind of ['pull', 'test'] as const) {
    part(`copy-${kind}s`).addEventListener('click', () => void copyEntries(latest(), kind, settings().units, say));
  }
  part('save').addEventListener('click', () =>
    saveFile({ name: 'siltstead-daily.json', type: 'application/json', content: fileOf(latest()) }),
  );
  input('load').addEventListener('change', async () => {
    const [file] = input('load').files ?? [];
    if (file === undefined) return;
    try {
      const added = entriesOf(await file.text());
      const before = latest();
      set(merged(before, added));
      say([plain(addedSentence(added.length, entries.length - before.length))]);
    } catch (error) {
      say([alert(error instanceof Error ? error.message : String(error))]);
    }
    input('load').value = '';
  });
  part('calendar').addEventListener('click', async () => {
    saveFile({
      name: 'siltstead-chores.ics',
      type: 'text/calendar',
      content: await calendarOf(chores(), settings().start),
    });
  });
  const parts = {
    rows: part<HTMLTextAreaElement>('plan-rows'),
    plans: part<HTMLSelectElement>('plans'),
    every: part('every'),
  };
  intervals = startIntervals(parts, (sentence) => {
    if (sentence !== undefined) say([sentence]);
    list();
  });
  list();
}

start();
