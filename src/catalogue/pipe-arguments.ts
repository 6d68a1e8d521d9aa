import { type FittingLoss, noFittings } from '../formulas/pipe/fittings';
import type { NominalSize } from '../formulas/pipe/pipe-sizes';
import { readProfile } from '../units/profile';
import { readQuantity } from '../units/quantity';
import { Unreadable } from '../units/unreadable';
import type { ReaderArgument } from './argument';
import { readFittings } from './reading/read-fittings';
import { usualTemperature } from './water-arguments';

const inches = readProfile('US');
const millimeters = readProfile('metric');
const INCH = 0.0254;

const accepts = 'a nominal size such as 2, 2-1/2 or 63 mm';

/** A nominal size is a name, not a length: it is in inches in every profile, unless it says mm. */
export const nominal: ReaderArgument<NominalSize> = {
  meaning: 'nominal size in inches, such as 2 or 2-1/2, or a metric outside diameter, such as 63 mm',
  accepts,
  reader: (value) => {
    const metric = typeof value === 'string' && /mm\s*$/i.test(value);
    const meters = readQuantity(metric ? millimeters : inches, 'dimension', value);
    const size = meters / (metric ? 1e-3 : INCH);
    if (!(size > 0)) throw new Unreadable(`${value} is not allowed; give ${accepts}`);
    return { series: metric ? 'metric' : 'inch', size: Math.round(size * 1e6) / 1e6 };
  },
};

/** A loss coefficient K, or fittings in words. */
export const fittings: ReaderArgument<FittingLoss> = {
  meaning: 'fittings: a K, or words such as 2 elbow, 1 tee',
  accepts: 'a K of 0 or more, or words such as 2 elbow, 1 tee',
  default: noFittings,
  defaultReads: '0',
  reader: (value) => {
    const k = typeof value === 'number' ? value : Number(String(value).trim());
    if (Number.isFinite(k)) {
      if (k >= 0 && k <= 1e6) return { coefficient: k, bores: 0 };
      throw new Unreadable(`${k} is not allowed; give a K from 0 up, or words such as 2 elbow, 1 tee`);
    }
    return readFittings(String(value));
  },
};

export const bore = { kind: 'dimension', above: 0, meaning: 'inside diameter of the pipe: see PIPE.BORE' } as const;
export const flow = { kind: 'flow', atLeast: 0, meaning: 'flow' } as const;
export const length = { kind: 'run', atLeast: 0, atMost: 100_000, meaning: 'length of the pipe' } as const;
export const temperature = usualTemperature;
export const roughness = {
  kind: 'particle',
  atLeast: 0,
  default: 'pipe roughness',
  meaning: 'roughness of the inside wall',
} as const;
