import { readProfile } from '../units/profile';
import { readQuantity, toProfile } from '../units/quantity';

/** What somebody writes down on the farm, as it was typed; the books read it in their own units. */
export interface Pull {
  readonly kind: 'pull';
  readonly id: string;
  /** `2026-05-01`. */
  readonly date: string;
  readonly volume: string;
  /** Share of solids, empty where no cup was dried. */
  readonly solids: string;
}

export const readings = ['temperature', 'ph', 'ammonia', 'nitrite', 'nitrate', 'oxygen', 'alkalinity'] as const;
export type Reading = (typeof readings)[number];

export interface WaterTest {
  readonly kind: 'test';
  readonly id: string;
  readonly date: string;
  readonly values: Readonly<Record<Reading, string>>;
}

export type Entry = Pull | WaterTest;

/** Both lists in one, each entry once, by date; those of one day stay in the order in which they were typed. */
export function merged(one: readonly Entry[], other: readonly Entry[]): readonly Entry[] {
  const byId = new Map([...one, ...other].map((entry) => [entry.id, entry]));
  return [...byId.values()].sort((a, b) => Number(a.date > b.date) - Number(a.date < b.date));
}

/** Whether a test of that day with the same readings is already among the entries, as after a second press of the button. */
export function isSavedTest(entries: readonly Entry[], { date, values }: Omit<WaterTest, 'kind' | 'id'>): boolean {
  return entries.some(
    (entry) =>
      entry.kind === 'test' &&
      entry.date === date &&
      readings.every((reading) => entry.values[reading] === values[reading]),
  );
}

/** A file of entries as text. */
export function fileOf(entries: readonly Entry[]): string {
  return JSON.stringify({ siltstead: 'daily', version: 1, entries }, undefined, 1);
}

const isText = (value: unknown): value is string => typeof value === 'string' && value.length < 100;

function isEntry(value: unknown): value is Entry {
  if (typeof value !== 'object' || value === null) return false;
  const entry = value as Readonly<Record<string, unknown>>;
  if (!isText(entry.id) || !isText(entry.date) || !/^\d{4}-\d\d-\d\d$/.test(entry.date)) return false;
  if (entry.kind === 'pull') return isText(entry.volume) && isText(entry.solids);
  const values = (entry.values ?? {}) as Readonly<Record<string, unknown>>;
  return entry.kind === 'test' && readings.every((reading) => isText(values[reading]));
}

/** The entries of a file; throws a sentence where it is no such file. */
export function entriesOf(text: string): readonly Entry[] {
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    file = undefined;
  }
  const entries = typeof file === 'object' && file !== null && 'entries' in file ? file.entries : undefined;
  if (!Array.isArray(entries) || !entries.every(isEntry)) {
    throw new Error('This file was not saved by the daily page; choose one that was.');
  }
  return entries;
}

/** A cell that a spreadsheet takes as typed and never as a formula. */
const cell = (text: string): string => (/^[=+@-]/.test(text) && Number.isNaN(Number(text)) ? `'${text}` : text);

/** A temperature as the plain number that the water book judges, in the units of that book. */
function temperatureIn(units: string, text: string): string {
  const profile = readProfile(units);
  // What has no unit was kept before entries had one, or is no number at all.
  if (!/[a-zK°]/i.test(text)) return text;
  try {
    return String(Number(toProfile(profile, 'temperature', readQuantity(profile, 'temperature', text)).toFixed(2)));
  } catch {
    return text;
  }
}

/** Rows to paste into the harvest book (sheet Pulls, column A) or the water book (sheet Tests, column A) in these units. */
export function rowsToPaste(entries: readonly Entry[], kind: Entry['kind'], units: string): string {
  return entries
    .filter((entry) => entry.kind === kind)
    .map((entry) =>
      entry.kind === 'pull'
        ? [entry.date, entry.volume, entry.solids]
        : [
            entry.date,
            ...readings.map((reading) =>
              reading === 'temperature' ? temperatureIn(units, entry.values[reading]) : entry.values[reading],
            ),
          ],
    )
    .map((row) => row.map((text) => cell(text.replace(/[\t\r\n]+/g, ' '))).join('\t'))
    .join('\n');
}
