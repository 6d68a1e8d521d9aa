import { median } from './bench-browser';

/** The limits that a figure should keep. */
export interface Wanted {
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly below?: number;
}

/** What a table says of a figure that is not as wanted. */
export const missed = 'MISSED';

/** A row of a table of times: median, slowest, and whether the median is as wanted. */
export function timesRow(what: string, times: readonly number[], wanted: Wanted): readonly string[] {
  const middle = median(times);
  return [what, figure(middle), figure(Math.max(...times)), verdictText(middle, wanted, 'ms')];
}

/** A count or a time as a table shows it: three digits at least, thousands parted. */
export function figure(value: number): string {
  const digits = value >= 100 ? 0 : value >= 10 ? 1 : 2;
  return value.toLocaleString('en-US', { minimumFractionDigits: digits, maximumFractionDigits: digits });
}

export function isMet(value: number, { atLeast = -Infinity, atMost = Infinity, below = Infinity }: Wanted): boolean {
  return value >= atLeast && value <= atMost && value < below;
}

/** `under 20 ms: met`, `at least 1,000,000: MISSED`. */
export function verdictText(value: number, wanted: Wanted, unit = ''): string {
  const bound = wanted.atLeast ?? wanted.atMost ?? wanted.below;
  if (bound === undefined) return '';
  const word = wanted.atLeast !== undefined ? 'at least' : wanted.atMost !== undefined ? 'at most' : 'under';
  const number = bound.toLocaleString('en-US');
  return `${word} ${number}${unit && ` ${unit}`}: ${isMet(value, wanted) ? 'met' : missed}`;
}
