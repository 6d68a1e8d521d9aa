import type { Coefficient } from './coefficient';

/** What a kilogram of feed becomes, and the limits that circulation holds it to. */
export const loadCoefficients: readonly Coefficient[] = [
  {
    key: 'solids share',
    topic: 'LOAD',
    kind: 'share',
    low: 0.04,
    typical: 0.25,
    high: 0.7,
    source:
      'Timmons and Ebeling, Recirculating Aquaculture (0.25, design range to 0.30); low end measured on trout, Clark, Harman and Forster (1985); high end measured on catfish, World Aquaculture Society abstract 165932',
    known: 'memory',
    meaning:
      'dry suspended solids per feed as fed; design convention 0.25 to 0.30, measured 0.04 to 0.09 on trout, 0.3 to 0.4 on salmon, 0.2 to 0.7 on catfish: authorities differ many times over, so weigh your own',
  },
  {
    key: 'ammonia factor',
    topic: 'LOAD',
    kind: 'number',
    typical: 0.092,
    source: 'Timmons and Ebeling, Recirculating Aquaculture: 0.16 x 0.80 x 0.80 x 0.90 = 0.0922 kg N per kg protein',
    known: 'memory',
    meaning: 'total ammonia nitrogen per protein fed',
  },
];
