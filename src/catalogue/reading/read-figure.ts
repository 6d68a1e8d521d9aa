import type { Profile } from '../../units/profile';
import { readQuantity, wordGiven } from '../../units/quantity';
import { Unreadable } from '../../units/unreadable';
import type { CellValue, QuantityArgument, QuantityColumn } from '../argument';
import { allowed, highest, within, zeroIsOut } from './bounds';
import { Complaint } from './complaint';

type Bounded = QuantityArgument | QuantityColumn;

/** Reads one figure into SI and holds it to its bounds; `name` begins every message. */
export function readFigure(name: string, spec: Bounded, value: CellValue, profile: Profile): number {
  let si: number;
  try {
    si =
      spec.kind === 'share'
        ? readQuantity(profile, 'share', value, highest(spec) ?? Number.MAX_VALUE)
        : readQuantity(profile, spec.kind, value);
  } catch (error) {
    if (error instanceof Unreadable) throw new Complaint(`${name}: ${error.message}`);
    throw error;
  }
  if (!within(spec, si)) {
    const given = value === 0 && zeroIsOut(spec) ? '0 or blank' : wordGiven(profile, spec.kind, value);
    throw new Complaint(`${name}: ${given} is not allowed; give ${allowed(spec, profile)}`);
  }
  return si;
}

export function missing(name: string, what: string): Complaint {
  return new Complaint(`${name}: blank is not allowed; give ${what}`);
}
