import { range } from '../../formulas/numeric/range';
import { ofTopic, practice } from './coefficient';

const POUND_PER_CUBIC_FOOT = 0.45359237 / 0.3048 ** 3;

/** Drums: their weight, how they drain, room for the pail. */
export const tankCoefficients = ofTopic('TANK', [
  {
    key: 'drain coefficient',
    kind: 'number',
    ...range(0.5, 0.6, 0.82),
    source: 'Unwin, Hydraulics, Encyclopaedia Britannica (1911)',
    known: 'read',
    meaning:
      'discharge coefficient of a drain that opens freely: sharp-edged orifice 0.60 to 0.62, short tube 0.82, tube into the drum 0.51 to 0.55',
  },
  {
    key: 'stand clearance',
    kind: 'dimension',
    ...range(0.0254, 0.0508, 0.1016),
    ...practice,
    meaning: 'room above the container, so that it slides in and out under the valve',
  },
  {
    key: 'base density',
    kind: 'density',
    ...range(36.5, 40.5, 50.5, POUND_PER_CUBIC_FOOT),
    source: 'perlite.info, perlite concrete mix data',
    known: 'read',
    meaning:
      'density of wet light base mix as poured, as for perlite concrete: 1:8 36.5, 1:6 40.5, 1:4 50.5 lb/ft3; wet mix is half as heavy again as dry mix',
  },
  {
    key: 'drum mass',
    kind: 'mass',
    ...range(8, 10, 20),
    ...practice,
    meaning: 'mass of an empty drum of about 210 L: plastic about 10 kg, steel about 20 kg; weigh your own',
  },
]);
