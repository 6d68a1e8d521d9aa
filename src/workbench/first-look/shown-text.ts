import { isError } from './look-plan';

/** A value of the first look as its cell shows it: numbers with the decimals of their format. */
export function shownText(value: unknown, decimals?: number): string {
  if (value === null || value === undefined) return '';
  if (isError(value)) return value.code;
  if (typeof value !== 'number') return String(value);
  return decimals === undefined ? String(Number(value.toPrecision(6))) : value.toFixed(decimals);
}

/** The decimals of an Excel number format. */
export function decimalsOf(format = ''): number | undefined {
  return /\.(0+)/.exec(format)?.[1]?.length;
}
