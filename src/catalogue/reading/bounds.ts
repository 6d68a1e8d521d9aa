import type { Kind } from '../../units/kinds';
import type { Profile } from '../../units/profile';
import { wordQuantity } from '../../units/quantity';
import type { QuantityArgument, QuantityColumn } from '../argument';

type Bounded = QuantityArgument | QuantityColumn;

/** The noun for a figure of each kind whose own name is not a noun. */
const nouns: Partial<Record<Kind, string>> = {
  dimension: 'a length',
  run: 'a length',
  particle: 'a grain size',
  area: 'an area',
  bulk: 'a bulk volume',
  fish: 'a mass of one fish',
  portion: 'a small mass',
  daily: 'a mass a day',
  transfer: 'a mass an hour',
  stocking: 'a stocking density',
  'air flow': 'an air flow',
  loading: 'an overflow rate',
  settling: 'a settling velocity',
  alkalinity: 'an alkalinity',
  holding: 'a holding',
  'areal rate': 'an areal rate',
  application: 'an application rate',
  surface: 'a specific surface',
  angle: 'an angle',
  minutes: 'a time in minutes',
  hours: 'a time in hours',
  days: 'a time in days',
  months: 'a time in months',
  money: 'an amount of money',
};

/** Shares run from 0 to 1 and counts from 0, unless the row gives bounds. */
export function lowest(spec: Bounded): number | undefined {
  if (spec.atLeast !== undefined) return spec.atLeast;
  return spec.above === undefined && (spec.kind === 'share' || spec.kind === 'count') ? 0 : undefined;
}

export function highest(spec: Bounded): number | undefined {
  if (spec.atMost !== undefined) return spec.atMost;
  return spec.below === undefined && spec.kind === 'share' ? 1 : undefined;
}

/** A test of one figure against its bounds, which are looked up once. */
export function boundsTest(spec: Bounded): (si: number) => boolean {
  const low = lowest(spec) ?? Number.NEGATIVE_INFINITY;
  const high = highest(spec) ?? Number.POSITIVE_INFINITY;
  const above = spec.above ?? Number.NEGATIVE_INFINITY;
  const below = spec.below ?? Number.POSITIVE_INFINITY;
  const whole = spec.whole === true;
  return (si) => si >= low && si <= high && si > above && si < below && (!whole || Number.isInteger(si));
}

/** `a length of more than 0 in`, `a temperature from 0 °C to 40 °C`, `a whole number of at least 1`. */
export function allowed(spec: Bounded, profile: Profile): string {
  const noun = spec.whole ? 'a whole number' : (nouns[spec.kind] ?? `a ${spec.kind}`);
  const format = (si: number): string => wordQuantity(profile, spec.kind, si);
  const low = lowest(spec);
  const high = highest(spec);
  if (low !== undefined && high !== undefined) return `${noun} from ${format(low)} to ${format(high)}`;
  const lower =
    low !== undefined ? `at least ${format(low)}` : spec.above !== undefined ? `more than ${format(spec.above)}` : '';
  const upper =
    high !== undefined ? `at most ${format(high)}` : spec.below !== undefined ? `less than ${format(spec.below)}` : '';
  if (lower && upper) return `${noun} of ${lower} and ${upper}`;
  if (lower || upper) return `${noun} of ${lower || upper}`;
  const unit = profile.units[spec.kind].symbol;
  return unit ? `${noun} in ${unit}` : noun;
}
