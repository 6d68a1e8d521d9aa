import type { Coefficient } from './coefficient';

/** Pipes, pumps and air. */
export const pipeCoefficients: readonly Coefficient[] = [
  {
    key: 'pipe roughness',
    topic: 'PIPE',
    kind: 'particle',
    low: 1.5e-6,
    typical: 1.5e-6,
    high: 7e-6,
    source: 'Drawn tubing, glass and plastic: Moody (1944); some tables give plastic up to 7 µm',
    known: 'memory',
    meaning: 'inside wall of new plastic pipe; biofilm makes it rougher, so flush and allow for it',
  },
  {
    key: 'pump efficiency',
    topic: 'PIPE',
    kind: 'share',
    low: 0.15,
    typical: 0.35,
    high: 0.6,
    source: 'common practice, no source',
    known: 'common practice',
    meaning: 'from wire to water, of a small pump; its maker’s curve is better',
  },
  {
    key: 'aerator alpha',
    topic: 'AIR',
    kind: 'number',
    low: 0.6,
    typical: 0.9,
    high: 1,
    source: 'Metcalf and Eddy, Wastewater Engineering: 0.4 to 0.8 in sewage, near 1 in clean water',
    known: 'memory',
    meaning: 'transfer in this water over that in clean water',
  },
  {
    key: 'aerator beta',
    topic: 'AIR',
    kind: 'number',
    low: 0.95,
    typical: 0.98,
    high: 1,
    source: 'Metcalf and Eddy, Wastewater Engineering: 0.95 to 0.98',
    known: 'memory',
    meaning: 'saturation in this water over that in clean water of the same salinity',
  },
];
