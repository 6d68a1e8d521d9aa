/**
 * Overflow rate of drums side by side, and how many hold it down. Flow in m3/s, lengths in m, rates in m/s.
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

/** Drums side by side, whole, that keep the overflow rate down to a limit: Q / (pi/4 D2 v0), rounded up. Source: Hazen (1904). */
export function settleDrums(flow: number, diameter: number, overflow: number): number {
  return wholeUp(flow / (circleArea(diameter) * overflow));
}
