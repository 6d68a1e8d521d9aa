import { davidson, wasAbstract } from '../../formulas/citations';
import { range } from '../../formulas/numeric/range';
import { DAY } from '../../formulas/numeric/time';
import { ofTopic, practice } from './coefficient';
import { CENTIMETRES_PER_SECOND } from './scale';

const measured = `${davidson}, at 0.0031 m3/s per m2 (4.6 gpm/ft2)`;

/** 4.6 gpm/ft2 as printed, m/s, which the paper rounds to 0.0031: US gallon and foot are exact. */
const MEASURED_AT = (4.6 * 3.785411784e-3) / 60 / 0.3048 ** 2;

/** How fish solids settle and what settlers remove. */
export const settleCoefficients = ofTopic('SETTLE', [
  {
    key: 'swirl capture',
    kind: 'share',
    ...range(0.338, 0.371, 0.404),
    source: measured,
    known: 'read',
    meaning: 'share of suspended solids that a swirl separator removed; valid up to that overflow rate',
  },
  {
    key: 'radial capture',
    kind: 'share',
    ...range(0.763, 0.779, 0.795),
    source: measured,
    known: 'read',
    meaning: 'share of suspended solids that a radial-flow settler removed; valid up to that overflow rate',
  },
  {
    key: 'overflow limit',
    kind: 'loading',
    ...range(40.746 / DAY, MEASURED_AT, MEASURED_AT),
    source: `${davidson}; low end Wyoming chapter 11 section 13`,
    known: 'read',
    meaning:
      'highest overflow rate at which capture by fish-farm settlers was measured; sources differ: municipal primary settling, 1000 gpd/ft2, is 6.6 times lower and makes drums too large',
  },
  {
    key: 'median settling',
    kind: 'settling',
    ...range(0.7, 1.7, 9.2, CENTIMETRES_PER_SECOND),
    source: `Wong and Piedrahita, Aquacultural Engineering 21:233 (2000); low end ${wasAbstract}; high end Chen et al., Journal of Applied Ichthyology 19:114 (2003)`,
    known: 'read',
    meaning:
      'settling velocity that half of the settleable solids of a trout farm exceed; low end feces stripped by hand, high end salmon: sources differ 13-fold, so time your own: SETTLE.JAR',
  },
  {
    key: 'settling spread',
    kind: 'number',
    ...range(1.5, 2.5, 4),
    ...practice,
    meaning: 'geometric standard deviation of settling velocity, 1 if all are equal; time your own: SETTLE.JAR',
  },
  {
    key: 'settleable share',
    kind: 'share',
    ...range(0.3, 0.45, 0.78),
    source: `${wasAbstract}; high end ${davidson}`,
    known: 'read',
    meaning:
      'share of suspended solids that settles at all; particles under 20 µm are 40 to 70 % of the mass in recirculated water, and the high end is what a radial-flow settler removed: sources differ more than twofold',
  },
  {
    key: 'slowest inlet',
    kind: 'velocity',
    ...range(0.1, 0.15, 0.3),
    ...practice,
    meaning: 'lowest velocity in an inlet pipe that still carries solids along',
  },
  {
    key: 'fastest inlet',
    kind: 'velocity',
    ...range(0.3, 0.6, 1),
    ...practice,
    meaning: 'highest inlet velocity that does not break solids up',
  },
]);
