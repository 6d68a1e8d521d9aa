import type { Profile } from '../units/profile';
import { toProfile } from '../units/quantity';

/** As many decimals as a tape and a scriber can follow. */
const decimals: Readonly<Record<string, number>> = { mm: 1, cm: 2, m: 4, in: 2, ft: 3, yd: 4 };

/** A length of sheet in the profile's unit: tenths of a millimeter, or hundredths of an inch with the nearest 1/32 on a tape. */
export function wordLength(profile: Profile, meters: number): string {
  const { symbol } = profile.units.dimension;
  const value = toProfile(profile, 'dimension', meters);
  const plain = `${Number(value.toFixed(decimals[symbol] ?? 3))} ${symbol}`;
  return symbol === 'in' ? `${plain}${tape(value)}` : plain;
}

/** A length as a tape shows it: in inches only the nearest 1/32. */
export function tapeLength(profile: Profile, meters: number): string {
  const inches = profile.units.dimension.symbol === 'in' ? tape(toProfile(profile, 'dimension', meters)) : '';
  return inches === '' ? wordLength(profile, meters) : `${inches.slice(2, -1)} in`;
}

/** The reading on a tape with 1/32 inch marks, if the decimal does not already show it. */
function tape(inches: number): string {
  const parts = Math.round(inches * 32);
  const whole = Math.trunc(parts / 32);
  let above = parts % 32;
  if (above === 0) return Math.abs(inches - whole) < 0.005 ? '' : ` (${whole})`;
  let below = 32;
  while (above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  return ` (${whole === 0 ? '' : `${whole} `}${above}/${below})`;
}

/** An angle in degrees to a hundredth: 1 mm in 5.7 m. */
export function wordAngle(radians: number): string {
  return `${Number(((radians * 180) / Math.PI).toFixed(2))}°`;
}
