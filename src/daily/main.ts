/** The daily page: the day's pull and the week's water test on a phone, and what to do when. */

import { fishKinds } from '../formulas/water/water-species';
import { make, replace } from '../task-pane/dom';
import { saveFile } from '../task-pane/save-file';
import { today } from '../task-pane/today';
import { readProfile } from '../units/profile';
import { calendarOf, choresOf, nextDue } from './chores';
import { type Entry, entriesOf, fileOf, merged, type Reading, readings, rowsToPaste } from './entries';
import { type Intervals, startIntervals } from './intervals';
import { readPull } from './pull';
import { alert, plain, type Sentence } from './said';
import { keep, keepSettings, keptEntries, keptSettings } from './store';
import { judged } from './verdict';

const labels: Readonly<Record<Reading, string>> = {
  temperature: 'Temperature',
  ph: 'pH',
  ammonia: 'Ammonia (as N)',
  nitrite: 'Nitrite (as N)',
  nitrate: 'Nitrate (as N)',
  oxygen: 'Oxygen',
  alkalinity: 'Alkalinity (as CaCO3)',
};

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
let intervals: Intervals | undefined;
const chores = () => (intervals === undefined ? [] : choresOf(intervals.schedule()));

function say(...sentences: readonly Sentence[]): void {
  replace(part('said'), ...sentences.map(([tone, words]) => make('p', { class: tone }, words)));
}

function settings() {
  return {
    units: part<HTMLSelectElement>('units').value,
    species: part<HTMLSelectElement>('species').value,
    start: input('start').value || today(),
  };
}

function add(entry: Entry, ...sentences: readonly Sentence[]): void {
  entries = merged(entries, [entry]);
  const isKept = keep(entries);
  say(
    ...sentences,
    isKept
      ? plain('Saved on this device.')
      : alert(
          'This browser saves nothing (a private window, or its storage is full). Save the file below before you leave.',
        ),
  );
  list();
}

/** A slip of the finger must not stay in the books. */
function deleteButton(entry: Entry): HTMLElement {
  const button = make(
    'button',
    { type: 'button', class: 'small', 'aria-label': `Delete the entry of ${entry.date}` },
    'Delete',
  );
  button.addEventListener('click', () => {
    entries = entries.filter(({ id }) => id !== entry.id);
    keep(entries);
    say(plain(`The entry of ${entry.date} is deleted.`));
    list();
  });
  return button;
}

function list(): void {
  const shown = [...entries].reverse().slice(0, 14);
  replace(
    part('entries'),
    ...shown.map((entry) =>
      make(
        'li',
        {},
        entry.kind === 'pull'
          ? `${entry.date}: pulled ${entry.volume}${entry.solids && `, solids ${entry.solids}`}`
          : `${entry.date}: ${readings
              .filter((reading) => entry.values[reading] !== '')
              .map((reading) => `${labels[reading]} ${entry.values[reading]}`)
              .join(', ')}`,
        ' ',
        deleteButton(entry),
      ),
    ),
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

async function copyRows(kind: Entry['kind'], where: string): Promise<void> {
  const rows = rowsToPaste(entries, kind);
  try {
    await navigator.clipboard.writeText(rows);
    say(plain(`Copied. Select ${where} and paste.`));
  } catch {
    part('rows').textContent = rows;
    part('rows').hidden = false;
    say(alert(`Copy the rows below by hand; then select ${where} and paste.`));
  }
}

function start(): void {
  const kept = keptSettings();
  const species = part<HTMLSelectElement>('species');
  for (const kind of fishKinds) species.add(new Option(kind, kind));
  species.value = kept.species ?? 'warm-water';
  part<HTMLSelectElement>('units').value = kept.units ?? 'metric';
  input('start').value = kept.start ?? today();
  for (const id of ['pull-date', 'test-date']) input(id).value = today();
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
    if ('wrong' in read) return say(alert(read.wrong));
    add({ kind: 'pull', id: crypto.randomUUID(), date: input('pull-date').value, ...read });
    input('volume').value = '';
  });
  part('test').addEventListener('submit', (event) => {
    event.preventDefault();
    const values = Object.fromEntries(readings.map((reading) => [reading, input(reading).value.trim()])) as Record<
      Reading,
      string
    >;
    if (readings.every((reading) => values[reading] === '')) return say(alert('Type at least one reading.'));
    const { units, species: fish } = settings();
    const test = judged(units, fish, values);
    if ('unread' in test) {
      say(alert(`Not saved. ${test.unread}`));
      return part('said').scrollIntoView();
    }
    const { wrong, missing } = test;
    const fine =
      missing.length === 0
        ? 'All readings are within their limits.'
        : `What was measured is within its limits. Not measured: ${missing.join(', ')}.`;
    const verdict = wrong.length === 0 ? [plain(fine)] : wrong.map(alert);
    add({ kind: 'test', id: crypto.randomUUID(), date: input('test-date').value, values }, ...verdict);
    part('said').scrollIntoView();
  });
  part('copy-pulls').addEventListener('click', () => void copyRows('pull', 'the first free row of the sheet Pulls'));
  part('copy-tests').addEventListener(
    'click',
    () =>
      void copyRows(
        'test',
        `the first free row of the sheet Tests, in a book with ${readProfile(settings().units).units.temperature.symbol}`,
      ),
  );
  part('save').addEventListener('click', () =>
    saveFile({ name: 'siltstead-daily.json', type: 'application/json', content: fileOf(entries) }),
  );
  input('load').addEventListener('change', async () => {
    const [file] = input('load').files ?? [];
    if (file === undefined) return;
    try {
      const before = entries.length;
      entries = merged(entries, entriesOf(await file.text()));
      keep(entries);
      say(plain(`${entries.length - before} new entries; the others were already here.`));
      list();
    } catch (error) {
      say(alert(error instanceof Error ? error.message : String(error)));
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
    if (sentence !== undefined) say(sentence);
    list();
  });
  list();
}

start();
