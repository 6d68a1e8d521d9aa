import { LAST_SERIAL } from './date';
import type { Kind } from './kinds';
import { notRead } from './not-read';
import type { Profile } from './profile';
import { LONGEST, lightest } from './unit';
import { Unreadable } from './unreadable';
import { wordGiven } from './wording';

/** Serial numbers of 2000-01-01 to 2099-12-31: what a spreadsheet makes of a fraction typed as `1/2`. */
const FIRST_DATE = 36526;
const LAST_DATE = 73050;

/**
 * Checks an unusual bare number, and returns it in SI or names the error that it looks like: a
 * fraction that became a date, a percentage without its sign, a specific gravity given as a density.
 */
export function judgeBare(profile: Profile, kind: Kind, bare: number, atMost?: number): number {
  const unit = profile.units[kind];
  const si = (bare + unit.shift) * unit.scale;
  if (!Number.isFinite(si)) throw notRead(profile, kind, bare);
  const given = wordGiven(profile, kind, bare);
  if (kind === 'share' && bare > (atMost ?? 1)) throw new Unreadable(shareAdvice(bare, atMost ?? 1));
  if (kind === 'density' && bare > 0 && bare < (lightest[unit.symbol] ?? 0)) {
    throw new Unreadable(
      `${given} is lighter than any grain that sinks or mix that sets; write SG ${bare} if it is a specific gravity`,
    );
  }
  if (kind === 'dimension' || kind === 'run' || kind === 'particle') {
    const isDate = Number.isInteger(bare) && bare >= FIRST_DATE && bare <= LAST_DATE;
    if (isDate || si > (atMost ?? LONGEST)) {
      const length = `${Number(si.toPrecision(4))} m`;
      throw new Unreadable(
        `${given} is ${unit.symbol === 'm' ? '' : `${length}, `}longer than a bare number may be; a fraction becomes a date in a cell, so type 0 1/2, or write the unit if you mean it`,
      );
    }
  }
  if (kind === 'date' && !(bare >= 1 && bare < LAST_SERIAL + 1)) throw notRead(profile, kind, bare);
  return si;
}

/** Above this a share is no percentage that lost its sign. */
const MOST_PERCENT = 1e4;

/** `32 reads as 3200 %, but at most 100 % is allowed; write 32 % or 0.32`. */
function shareAdvice(bare: number, most: number): string {
  const tidy = (value: number) => Number(value.toPrecision(6));
  if (bare > MOST_PERCENT) return `${tidy(bare)} is not allowed; give a share such as 0.32 or 32 %`;
  return `${tidy(bare)} reads as ${tidy(bare * 100)} %, but at most ${tidy(most * 100)} % is allowed; write ${tidy(bare)} % or ${tidy(bare / 100)}`;
}
