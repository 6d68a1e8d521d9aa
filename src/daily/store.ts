import { emptySchedule, longest, type Schedule, usualChores } from './chores';
import { type Entry, entriesOf, fileOf } from './entries';

const key = 'siltstead-daily';
const settingsKey = 'siltstead-daily-settings';
const scheduleKey = 'siltstead-daily-schedule';
const copiedKey = 'siltstead-daily-copied';

export interface Settings {
  readonly units: string;
  readonly species: string;
  readonly start: string;
}

/** What this browser keeps; nothing where it keeps nothing. */
export function keptEntries(): readonly Entry[] {
  try {
    const text = localStorage.getItem(key);
    return text === null ? [] : entriesOf(text);
  } catch {
    return [];
  }
}

/** Keeps the entries here; false where the browser refuses. */
export function keep(entries: readonly Entry[]): boolean {
  try {
    localStorage.setItem(key, fileOf(entries));
    return true;
  } catch {
    return false;
  }
}

/** The ids of entries that were copied for a book before. */
export function keptCopied(): ReadonlySet<string> {
  try {
    const ids: unknown = JSON.parse(localStorage.getItem(copiedKey) ?? '[]');
    return new Set(Array.isArray(ids) ? ids.filter((id) => typeof id === 'string') : []);
  } catch {
    return new Set();
  }
}

export function keepCopied(ids: Iterable<string>): void {
  try {
    localStorage.setItem(copiedKey, JSON.stringify([...ids]));
  } catch {
    // All entries are copied next time.
  }
}

/** Tells when another window of this browser has kept other entries. */
export function onKeptElsewhere(changed: () => void): void {
  addEventListener('storage', (event) => {
    if (event.key === key || event.key === null) changed();
  });
}

export function keptSettings(): Partial<Settings> {
  try {
    return JSON.parse(localStorage.getItem(settingsKey) ?? '{}') as Partial<Settings>;
  } catch {
    return {};
  }
}

export function keepSettings(settings: Settings): void {
  try {
    localStorage.setItem(settingsKey, JSON.stringify(settings));
  } catch {
    // They are chosen anew next time.
  }
}

/** The intervals set here; anything that is not an interval is left out. */
export function keptSchedule(): Schedule {
  try {
    const kept = JSON.parse(localStorage.getItem(scheduleKey) ?? '{}') as Partial<Schedule>;
    const isInterval = (days: unknown) => Number.isInteger(days) && Number(days) >= 1 && Number(days) <= longest;
    const chosen = <T>(from: Readonly<Record<string, T>> | undefined, allowed: (value: T) => boolean) =>
      Object.fromEntries(
        usualChores.flatMap(({ id }) => {
          const value = from?.[id];
          return value !== undefined && allowed(value) ? [[id, value]] : [];
        }),
      );
    return { every: chosen(kept.every, isInterval), notes: chosen(kept.notes, (note) => typeof note === 'string') };
  } catch {
    return emptySchedule;
  }
}

export function keepSchedule(schedule: Schedule): void {
  try {
    localStorage.setItem(scheduleKey, JSON.stringify(schedule));
  } catch {
    // They are set again next time.
  }
}
