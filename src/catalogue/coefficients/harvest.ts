import type { Coefficient } from './coefficient';

/** What dry fish solids hold, and what a garden asks for. */
export const harvestCoefficients: readonly Coefficient[] = [
  {
    key: 'nitrogen share',
    topic: 'HARVEST',
    kind: 'share',
    low: 0.0283,
    typical: 0.0283,
    high: 0.06,
    source:
      'Naylor, Moccia and Durant, North American Journal of Aquaculture 61:21 (1999), trout manure, 12 farms; high end a dried product, SEA2LAND',
    known: 'read',
    meaning: 'nitrogen per dry solids; recirculated solids run 3.7 to 4.7 %, so have your own harvest tested',
  },
  {
    key: 'phosphorus share',
    topic: 'HARVEST',
    kind: 'share',
    low: 0.006,
    typical: 0.0254,
    high: 0.035,
    source:
      'Naylor, Moccia and Durant, North American Journal of Aquaculture 61:21 (1999), trout manure, 12 farms; low end recirculating sludge, Chen, Coffin and Malone (1997), high end a dried product, SEA2LAND',
    known: 'read',
    meaning:
      'phosphorus (P, not P2O5) per dry solids; authorities differ several times, so have your own harvest tested',
  },
  {
    key: 'potassium share',
    topic: 'HARVEST',
    kind: 'share',
    typical: 0.001,
    source: 'Naylor, Moccia and Durant, North American Journal of Aquaculture 61:21 (1999), trout manure, 12 farms',
    known: 'read',
    meaning: 'potassium (K, not K2O) per dry solids; most potassium stays in the water',
  },
];
