import type { Kind } from '../units/kinds';
import { readProfile } from '../units/profile';
import { wordQuantity } from '../units/quantity';

const metric = readProfile('metric');
const us = readProfile('US');

/** A figure in SI as both profiles show it, once where they agree: `5 mm (metric), 0.19685 in (US)`. */
export function inBothUnits(kind: Kind, si: number): string {
  if (si === 0 && kind !== 'temperature') return '0';
  const inMetric = wordQuantity(metric, kind, si);
  const inUs = wordQuantity(us, kind, si);
  return inMetric === inUs ? inMetric : `${inMetric} (metric), ${inUs} (US)`;
}
