/**
 * Spreadsheet dates: whole days counted so that 1 May 2026 is 46143, good from 1 March 1900.
 */

const ORIGIN = Date.UTC(1899, 11, 30);
const MILLISECONDS = 86_400_000;

/** Months since year 0 for a date serial, so that neighbors differ by 1 across a new year. */
export function monthOf(serial: number): number {
  const date = new Date(ORIGIN + Math.floor(serial) * MILLISECONDS);
  return date.getUTCFullYear() * 12 + date.getUTCMonth();
}

/** Date serial of the first of a month, counted as monthOf counts. */
export function firstOf(month: number): number {
  return (Date.UTC(Math.floor(month / 12), month % 12, 1) - ORIGIN) / MILLISECONDS;
}

/** A month as `2026-05`. */
export function monthLabel(month: number): string {
  return `${Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, '0')}`;
}
