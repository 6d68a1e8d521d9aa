import type { Coefficient } from './coefficient';

const GRAMS_PER_SQUARE_METRE_DAY = 1e-3 / 86400;

/** Screens and biofilters: what pads hold, how fast media nitrifies. */
export const filterCoefficients: readonly Coefficient[] = [
  {
    key: 'nitrification',
    topic: 'FILTER',
    kind: 'areal rate',
    low: 0.2 * GRAMS_PER_SQUARE_METRE_DAY,
    typical: 0.469 * GRAMS_PER_SQUARE_METRE_DAY,
    high: 1.0 * GRAMS_PER_SQUARE_METRE_DAY,
    source:
      'FAO Fisheries Technical Paper 589 (2014), appendix 4: 0.57 g ammonia = 0.469 g N; range of design practice 0.2 to 1.0 at 20 to 30 °C, Crab et al., Aquaculture 270:1 (2007)',
    known: 'memory',
    meaning: 'nitrogen nitrified a day on a square metre of media at 20 °C; authorities differ five times',
  },
];
