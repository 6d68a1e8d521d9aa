import { emptySchedule, longest, type Schedule, usualChores } from './chores';
import { type Entry, entriesOf, fileOf } from './entries';

const key = 'siltstead-daily';
const settingsKey = 'siltstead-daily-settings';
const scheduleKey = 'siltstead-daily-schedule';

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
