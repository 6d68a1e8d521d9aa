import type { Coefficient } from './coefficient';
import { CENTIMETRES_PER_SECOND } from './scale';

const davidson = 'Davidson and Summerfelt, Aquacultural Engineering 33:47 (2005), at 0.0031 m3/s per m2 (4.6 gpm/ft2)';

/** How fish solids settle and what settlers take out. */
export const settleCoefficients: readonly Coefficient[] = [
  {
    key: 'swirl capture',
    topic: 'SETTLE',
    kind: 'share',
    low: 0.338,
    typical: 0.371,
    high: 0.404,
    source: davidson,
    known: 'read',
    meaning: 'share of suspended solids that a swirl separator took out; good at that overflow rate and no faster',
  },
  {
    key: 'radial capture',
    topic: 'SETTLE',
    kind: 'share',
    low: 0.763,
    typical: 0.779,
    high: 0.795,
    source: davidson,
    known: 'read',
    meaning: 'share of suspended solids that a radial-flow settler took out; good at that overflow rate and no faster',
  },
  {
    key: 'overflow limit',
    topic: 'SETTLE',
    kind: 'loading',
    low: 40.746 / 86400,
    typical: 0.0031,
    high: 0.0031,
    source: `${davidson}; low end municipal primary settling, 1000 gpd/ft2, Wyoming chapter 11 section 13`,
    known: 'read',
    meaning:
      'fastest overflow rate at which capture by fish-farm settlers was measured; authorities differ: municipal practice is 6.6 times lower and oversizes',
  },
  {
    key: 'median settling',
    topic: 'SETTLE',
    kind: 'settling',
    low: 0.7 * CENTIMETRES_PER_SECOND,
    typical: 1.7 * CENTIMETRES_PER_SECOND,
    high: 9.2 * CENTIMETRES_PER_SECOND,
    source:
      'Wong and Piedrahita, Aquacultural Engineering 21:233 (2000), settleable solids of a trout farm; low end faeces stripped by hand, World Aquaculture Society abstract 165932; high end salmon, Chen et al., Journal of Applied Ichthyology 19:114 (2003)',
    known: 'read',
    meaning:
      'settling velocity that half of the settleable solids exceed; authorities differ 13 times, so time your own: SETTLE.JAR',
  },
  {
    key: 'settling spread',
    topic: 'SETTLE',
    kind: 'number',
    low: 1.5,
    typical: 2.5,
    high: 4,
    source: 'common practice, no source',
    known: 'common practice',
    meaning: 'geometric standard deviation of settling velocity, 1 for all alike; time your own: SETTLE.JAR',
  },
  {
    key: 'settleable share',
    topic: 'SETTLE',
    kind: 'share',
    low: 0.3,
    typical: 0.45,
    high: 0.78,
    source:
      'World Aquaculture Society abstract 165932: particles under 20 µm carry 40 to 70 % of the mass in recirculated water; high end what a radial-flow settler took out, Davidson and Summerfelt (2005)',
    known: 'read',
    meaning: 'share of suspended solids that settles at all; authorities differ more than twice over',
  },
  {
    key: 'slowest inlet',
    topic: 'SETTLE',
    kind: 'velocity',
    low: 0.1,
    typical: 0.15,
    high: 0.3,
    source: 'common practice, no source',
    known: 'common practice',
    meaning: 'slowest water in an inlet pipe that still carries solids along',
  },
  {
    key: 'fastest inlet',
    topic: 'SETTLE',
    kind: 'velocity',
    low: 0.3,
    typical: 0.6,
    high: 1,
    source: 'common practice, no source',
    known: 'common practice',
    meaning: 'fastest water into a settler that does not break solids up',
  },
];
