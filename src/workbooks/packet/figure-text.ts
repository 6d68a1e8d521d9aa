import { wordAngle, wordLength } from '../../drawing/length-text';
import type { CellScalar } from '../../hosts/workbook-model';
import type { Kind } from '../../units/kinds';
import type { Job } from './read-job';

/** A length of the workbook as a tape shows it: in the US profile with a fraction of an inch. */
export function lengthText({ profile, si }: Job, value: CellScalar): string {
  return value === '' ? '' : wordLength(profile, si('dimension', value));
}

export function angleText({ si }: Job, value: CellScalar): string {
  return value === '' ? '' : wordAngle(si('angle', value));
}

/** Any other figure to four places, with its unit. */
export function figureText({ profile }: Job, kind: Kind, value: CellScalar): string {
  if (typeof value !== 'number') return String(value);
  return `${rounded(value)} ${profile.units[kind].symbol}`.trim();
}

export function rounded(value: CellScalar): string {
  if (typeof value !== 'number') return String(value);
  return String(Number.isInteger(value) ? value : Number(value.toPrecision(4)));
}
