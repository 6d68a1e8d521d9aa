import type { Coefficient } from './coefficient';

const MICROMETRE = 1e-6;

/** Pipes, pumps and aerators. */
export const physicsCoefficients: readonly Coefficient[] = [
  {
    key: 'pipe roughness',
    topic: 'PIPE',
    kind: 'particle',
    low: 0,
    typical: 1.5 * MICROMETRE,
    high: 7 * MICROMETRE,
    source: 'Drawn tubing and plastic pipe, 5e-6 ft: Moody, Transactions of the ASME 66:671 (1944)',
    known: 'memory',
    meaning: 'roughness of clean plastic pipe; slime and scale make it many times rougher',
  },
  {
    key: 'pipe ends',
    topic: 'PIPE',
    kind: 'number',
    low: 1,
    typical: 1.5,
    high: 2,
    source: 'Crane Technical Paper 410: square entrance 0.5, exit 1.0; inward-projecting entrance 0.78',
    known: 'read',
    meaning: 'K of the entrance to a pipe and the exit from it together',
  },
  {
    key: 'pump efficiency',
    topic: 'PIPE',
    kind: 'share',
    low: 0.2,
    typical: 0.4,
    high: 0.7,
    source: 'common practice, no source; small submersible pumps at the low end',
    known: 'common practice',
    meaning: 'water power over electrical power; read the watts off the plate where you can',
  },
  {
    key: 'alpha',
    topic: 'AIR',
    kind: 'number',
    low: 0.6,
    typical: 0.8,
    high: 0.95,
    source: 'Stenstrom and Gilbert, Water Research 15:643 (1981); fine bubbles at the low end',
    known: 'memory',
    meaning: 'oxygen transfer in farm water over that in clean water',
  },
  {
    key: 'beta',
    topic: 'AIR',
    kind: 'number',
    low: 0.9,
    typical: 0.95,
    high: 0.99,
    source: 'Metcalf and Eddy, Wastewater Engineering: 0.95 to 0.98 for waste water; ASCE/EWRI 2-06',
    known: 'memory',
    meaning: 'oxygen saturation in farm water over that in clean water of the same salinity',
  },
];
