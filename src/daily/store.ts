import { type Entry, entriesOf, fileOf } from './entries';

const key = 'siltstead-daily';
const settingsKey = 'siltstead-daily-settings';

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
