import { PHOSPHATE_PER_PHOSPHORUS, POTASH_PER_POTASSIUM } from '../../formulas/atomic-mass';
import { WAIT_CLEAR, WAIT_TOUCHING } from '../../formulas/harvest';
import { SLURRY_DENSITY } from '../../formulas/slurry';
import type { Coefficient } from './coefficient';
import { DAYS, POUNDS_PER_THOUSAND_SQUARE_FEET } from './scale';

const naylor = 'Naylor, Moccia and Durant, North American Journal of Aquaculture 61:21 (1999), trout manure, 12 farms';
const manureRule = '7 CFR 205.203(c)(1)';

/** What dry fish solids hold, and what a garden asks for. */
export const harvestCoefficients: readonly Coefficient[] = [
  {
    key: 'nitrogen share',
    topic: 'HARVEST',
    kind: 'share',
    low: 0.0283,
    typical: 0.0283,
    high: 0.06,
    source: `${naylor}; high end a dried product, SEA2LAND`,
    known: 'read',
    meaning:
      'nitrogen per dry solids; recirculated solids run 3.7 to 4.7 % (Chen, Coffin and Malone 1997): authorities differ twice over, so have your own harvest tested',
  },
  {
    key: 'phosphorus share',
    topic: 'HARVEST',
    kind: 'share',
    low: 0.006,
    typical: 0.0254,
    high: 0.035,
    source: `${naylor}; low end recirculating sludge, Chen, Coffin and Malone (1997); high end a dried product, SEA2LAND`,
    known: 'read',
    meaning:
      'phosphorus (P, not P2O5) per dry solids; authorities differ several times, so have your own harvest tested',
  },
  {
    key: 'potassium share',
    topic: 'HARVEST',
    kind: 'share',
    typical: 0.001,
    source: naylor,
    known: 'read',
    meaning: 'potassium (K, not K2O) per dry solids; most potassium stays in the water',
  },
  {
    key: 'available nitrogen',
    topic: 'HARVEST',
    kind: 'share',
    low: 0.35,
    typical: 0.5,
    high: 0.8,
    source:
      'Brod et al., Ambio 46 (2017), dried fish sludge 50 to 80 % of mineral nitrogen; low end first-year decay of organic nitrogen, Cornell CSS 412',
    known: 'read',
    meaning: 'share of nitrogen that works in the first season; authorities differ twice over',
  },
  {
    key: 'slurry solids',
    topic: 'HARVEST',
    kind: 'share',
    low: 0.014,
    typical: 0.02,
    high: 0.026,
    source: 'SEA2LAND, raw collected sludge about 2 %; ends Chen, Coffin and Malone (1997)',
    known: 'read',
    meaning:
      'dry solids in slurry as it is drawn off, by mass; thickened 5 to 22 % (van Rijn 2013), so farms differ: dry a cup of your own',
  },
  {
    key: 'slurry density',
    topic: 'HARVEST',
    kind: 'density',
    typical: SLURRY_DENSITY,
    source: 'water, within 1 % up to 5 % solids of 1050 to 1190 kg/m3',
    known: 'computed',
    meaning: 'mass of slurry as it is drawn off',
  },
  {
    key: 'garden need',
    topic: 'HARVEST',
    kind: 'application',
    low: 2 * POUNDS_PER_THOUSAND_SQUARE_FEET,
    typical: 2 * POUNDS_PER_THOUSAND_SQUARE_FEET,
    high: 3 * POUNDS_PER_THOUSAND_SQUARE_FEET,
    source:
      'University of Maryland Extension; Colorado State University CMG GardenNotes 711: 2 lb a 1000 ft2 a year, 3 for heavy feeders',
    known: 'read',
    meaning:
      'nitrogen that a vegetable garden wants a year; crops differ by half, and soil test and local advice come first',
  },
  {
    key: 'phosphate need',
    topic: 'HARVEST',
    kind: 'application',
    low: 0.5 * POUNDS_PER_THOUSAND_SQUARE_FEET,
    typical: 1 * POUNDS_PER_THOUSAND_SQUARE_FEET,
    high: 4 * POUNDS_PER_THOUSAND_SQUARE_FEET,
    source: 'common practice, no source: crops take off about half as much P2O5 as nitrogen',
    known: 'common practice',
    meaning: 'P2O5 that a garden wants a year; only a soil test tells, and many old gardens want none',
  },
  {
    key: 'wait, touching soil',
    topic: 'HARVEST',
    kind: 'days',
    typical: WAIT_TOUCHING * DAYS,
    source: manureRule,
    known: 'read',
    meaning: 'from raw manure worked in to harvest, where the part eaten touches soil',
  },
  {
    key: 'wait, clear of soil',
    topic: 'HARVEST',
    kind: 'days',
    typical: WAIT_CLEAR * DAYS,
    source: manureRule,
    known: 'read',
    meaning: 'from raw manure worked in to harvest, where the part eaten does not touch soil',
  },
  {
    key: 'phosphate per phosphorus',
    topic: 'HARVEST',
    kind: 'number',
    typical: PHOSPHATE_PER_PHOSPHORUS,
    source: 'IUPAC standard atomic weights 2021',
    known: 'computed',
    meaning: 'P2O5 in which one of P is',
  },
  {
    key: 'potash per potassium',
    topic: 'HARVEST',
    kind: 'number',
    typical: POTASH_PER_POTASSIUM,
    source: 'IUPAC standard atomic weights 2021',
    known: 'computed',
    meaning: 'K2O in which one of K is',
  },
];
