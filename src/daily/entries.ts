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

/** Both lists in one, each entry once, by date. */
export function merged(one: readonly Entry[], other: readonly Entry[]): readonly Entry[] {
  const byId = new Map([...one, ...other].map((entry) => [entry.id, entry]));
  return [...byId.values()].sort((a, b) => (a.date + a.id < b.date + b.id ? -1 : 1));
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

/** Rows to paste into the harvest book (sheet Pulls, column A) or the water book (sheet Tests, column A). */
export function rowsToPaste(entries: readonly Entry[], kind: Entry['kind']): string {
  return entries
    .filter((entry) => entry.kind === kind)
    .map((entry) =>
      entry.kind === 'pull'
        ? [entry.date, entry.volume, entry.solids]
        : [entry.date, ...readings.map((reading) => entry.values[reading])],
    )
    .map((row) => row.map((text) => cell(text.replace(/[\t\r\n]+/g, ' '))).join('\t'))
    .join('\n');
}
