import type { Coefficient } from './coefficient';

const POUND_PER_CUBIC_FOOT = 0.45359237 / 0.3048 ** 3;

/** Drums: what they weigh, how they drain, what room the pail needs. */
export const tankCoefficients: readonly Coefficient[] = [
  {
    key: 'drain coefficient',
    topic: 'TANK',
    kind: 'number',
    low: 0.5,
    typical: 0.6,
    high: 0.82,
    source: 'Sharp-edged orifice 0.60 to 0.62, short tube 0.82: hydraulics handbooks',
    known: 'memory',
    meaning: 'discharge coefficient of a drain that opens freely',
  },
  {
    key: 'stand clearance',
    topic: 'TANK',
    kind: 'dimension',
    low: 0.0254,
    typical: 0.0508,
    high: 0.1016,
    source: 'common practice, no source',
    known: 'common practice',
    meaning: 'room above the container so that it slides in and out under the valve',
  },
  {
    key: 'base density',
    topic: 'TANK',
    kind: 'density',
    low: 36.5 * POUND_PER_CUBIC_FOOT,
    typical: 40.5 * POUND_PER_CUBIC_FOOT,
    high: 50.5 * POUND_PER_CUBIC_FOOT,
    source: 'Perlite Institute, perlite concrete as placed: 1:8 36.5, 1:6 40.5, 1:4 50.5 lb/ft3',
    known: 'memory',
    meaning: 'light base mix as poured, wet; the wet mix is half as heavy again as the dry',
  },
  {
    key: 'drum mass',
    topic: 'TANK',
    kind: 'mass',
    low: 8,
    typical: 10,
    high: 20,
    source: 'common practice, no source; plastic drums of about 210 L near 10 kg, steel ones near 20 kg',
    known: 'common practice',
    meaning: 'an empty drum of about 210 L; weigh your own',
  },
];
