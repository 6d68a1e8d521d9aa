/**
 * How one reading of a water test is put: its value, its bounds, a verdict in words and what to do.
 */
import type { Caution } from '../caution';
import type { FishKind } from './water-species';

/** A water test; a reading not taken is undefined. Ammonia, nitrite and nitrate in kg N/m3, whatever the basis shown. */
export interface WaterTest {
  readonly species: FishKind;
  readonly temperature: number | undefined;
  readonly ph: number | undefined;
  readonly ammonia: number | undefined;
  readonly nitrite: number | undefined;
  readonly nitrate: number | undefined;
  readonly oxygen: number | undefined;
  readonly salinity: number;
  /** Height above sea level, m, at which air and water are in balance. */
  readonly elevation: number;
  readonly alkalinity: number | undefined;
  readonly chloride: number | undefined;
  /** Whether values and limits are shown as nitrogen or as the ion. */
  readonly basis: 'N' | 'ion';
}

export type Verdict =
  | 'within limits'
  | 'survives, grows poorly'
  | 'too low'
  | 'too high'
  | 'not measured'
  | 'cannot judge';

export type CheckKind = 'temperature' | 'number' | 'concentration' | 'alkalinity';

/** A figure in SI with its kind, or blank. */
export type CheckCell = { readonly kind: CheckKind; readonly si: number } | '';

export interface CheckRow {
  readonly reading: string;
  readonly value: CheckCell;
  readonly low: CheckCell;
  readonly high: CheckCell;
  readonly verdict: Verdict;
  readonly note: Caution;
}

export interface Advice {
  readonly low?: string;
  readonly high?: string;
  /** Whether an empty cell could have arrived as 0, so that a 0 is said to look the same. */
  readonly zero?: true;
}

const LOCAL = 'Local advice comes first.';
const ZERO = 'An empty cell looks the same as 0: type - for a reading not taken.';

export function cell(kind: CheckKind, si: number | undefined): CheckCell {
  return si === undefined ? '' : { kind, si };
}

/** A reading not taken is never fine. */
export function notMeasured(reading: string, low: CheckCell = '', high: CheckCell = ''): CheckRow {
  return {
    reading,
    value: '',
    low,
    high,
    verdict: 'not measured',
    note: { text: 'Measure it before you trust the rest.' },
  };
}

/** Joins what is to be said about a reading: what to do, where the limit comes from, and that a 0 may be an empty cell. */
export function noteOf(source: string, verdict: Verdict, action: string, zero: boolean): string {
  const off = verdict === 'too low' || verdict === 'too high';
  return [zero ? ZERO : '', action, `Limit: ${source}.`, off ? LOCAL : ''].filter((part) => part !== '').join(' ');
}

/** A reading against a lower and an upper bound, either of which may be absent. */
export function bounded(
  reading: string,
  kind: CheckKind,
  value: number | undefined,
  [low, high]: readonly [number | undefined, number | undefined],
  source: string,
  advice: Advice,
): CheckRow {
  const bounds = { low: cell(kind, low), high: cell(kind, high) };
  if (value === undefined) return notMeasured(reading, bounds.low, bounds.high);
  const verdict: Verdict =
    low !== undefined && value < low ? 'too low' : high !== undefined && value > high ? 'too high' : 'within limits';
  const action = verdict === 'too low' ? (advice.low ?? '') : verdict === 'too high' ? (advice.high ?? '') : '';
  const text = noteOf(source, verdict, action, advice.zero === true && value === 0);
  return { reading, value: cell(kind, value), ...bounds, verdict, note: { text } };
}
