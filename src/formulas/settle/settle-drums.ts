/**
 * Overflow rate of drums side by side, and how many keep it within a limit. Flow in m3/s, lengths in m, rates in m/s.
 */

import { wholeUp } from '../numeric/whole';
import { circleArea } from '../tank/tank-shape';

/**
 * Surface overflow rate of drums that share a flow side by side, m/s: Q / (n pi/4 D2).
 *
 * A grain that settles faster than this cannot leave a drum without mixing. Source: Hazen (1904).
 */
export function settleOverflow(flow: number, diameter: number, count: number): number {
  return flow / (count * circleArea(diameter));
}

/** The measured rate is printed as 0.0031 m/s and as 4.6 gpm/ft2, which is 0.8 % more: neither is faster than the other. */
const AS_PRINTED = 1.008;

/** Whether an overflow rate is over a limit by more than the rounding of the figures printed for it. */
export function fasterThan(overflow: number, limit: number): boolean {
  return overflow > limit * AS_PRINTED;
}

/** Drums side by side, whole, that keep the overflow rate down to a limit: Q / (pi/4 D2 v0), rounded up. Source: Hazen (1904). */
export function settleDrums(flow: number, diameter: number, overflow: number): number {
  return wholeUp(flow / (circleArea(diameter) * overflow));
}
