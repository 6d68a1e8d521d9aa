import type { Profile } from '../../units/profile';
import { readQuantity, wordGiven } from '../../units/quantity';
import type { CellValue, QuantityArgument, QuantityColumn } from '../argument';
import { ArgumentError, asArgumentError } from './argument-error';
import { allowed, boundsTest, highest, lowest } from './bounds';

type Bounded = QuantityArgument | QuantityColumn;

export type FigureReader = (value: CellValue, profile: Profile) => number;

/** Reads one figure into SI and checks its bounds; `name` begins every message. */
export function figureReader(name: string, spec: Bounded): FigureReader {
  const isAllowed = boundsTest(spec);
  const { kind } = spec;
  const most = plausible(spec);
  return (value, profile) => {
    let si: number;
    try {
      si = readQuantity(profile, kind, value, most);
    } catch (error) {
      throw asArgumentError(name, error);
    }
    if (isAllowed(si)) return si;
    const bound = boundBeside(spec, si);
    if (bound !== undefined) return bound;
    // Some hosts pass an empty cell as 0, so the user may have typed nothing.
    const given = value === 0 ? '0 or blank' : wordGiven(profile, kind, value);
    throw new ArgumentError(`${name}: ${given} is not allowed; give ${allowed(spec, profile)}`);
  };
}

/** The bound that a figure misses only by the rounding of its unit, such as 0 °C from 31.99999999999999 °F. */
function boundBeside(spec: Bounded, si: number): number | undefined {
  return [lowest(spec), highest(spec)].find(
    (bound) => bound !== undefined && Math.abs(si - bound) <= (spec.kind === 'temperature' ? 1e-9 : 1e-12 * bound),
  );
}

/** The largest value of a bare number before it looks like a slip; a bound above the usual length replaces it. */
function plausible(spec: Bounded): number | undefined {
  const high = highest(spec);
  if (spec.kind === 'share') return high ?? Number.MAX_VALUE;
  return spec.kind === 'run' && high !== undefined && high > 100 ? high : undefined;
}

export function missing(name: string, what: string): ArgumentError {
  return new ArgumentError(`${name}: blank is not allowed; give ${what}`);
}
