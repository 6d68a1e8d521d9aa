import { WAIT_CLEAR, WAIT_TOUCHING } from '../../formulas/harvest/harvest';
import { SLURRY_DENSITY } from '../../formulas/harvest/slurry';
import { range } from '../../formulas/numeric/range';
import { DAY } from '../../formulas/numeric/time';
import { PHOSPHATE_PER_PHOSPHORUS, POTASH_PER_POTASSIUM } from '../../formulas/water/atomic-mass';
import { ofTopic, practice } from './coefficient';
import { POUNDS_PER_THOUSAND_SQUARE_FEET } from './scale';

const naylor = 'Naylor, Moccia and Durant, North American Journal of Aquaculture 61:21 (1999)';
const chen = 'Chen, Coffin and Malone (1997)';
const manureRule = '7 CFR 205.203(c)(1)';

/** What dry fish solids contain, and what a garden needs. */
export const harvestCoefficients = ofTopic('HARVEST', [
  {
    key: 'nitrogen share',
    kind: 'share',
    ...range(0.0283, 0.0283, 0.06),
    source: `${naylor}; high end SEA2LAND`,
    known: 'read',
    meaning:
      'nitrogen in dry solids of trout manure, 12 farms, high end a dried product; recirculated solids contain 3.7 to 4.7 % (Chen, Coffin and Malone 1997): sources differ twofold, so have your own harvest tested',
  },
  {
    key: 'phosphorus share',
    kind: 'share',
    ...range(0.006, 0.0254, 0.035),
    source: `${naylor}; low end ${chen}; high end SEA2LAND`,
    known: 'read',
    meaning:
      'phosphorus (P, not P2O5) in dry solids of trout manure, 12 farms, low end recirculating sludge, high end a dried product; sources differ several-fold, so have your own harvest tested',
  },
  {
    key: 'potassium share',
    kind: 'share',
    typical: 0.001,
    source: naylor,
    known: 'read',
    meaning: 'potassium (K, not K2O) in dry solids of trout manure, 12 farms; most potassium stays in the water',
  },
  {
    key: 'available nitrogen',
    kind: 'share',
    ...range(0.35, 0.5, 0.8),
    source: 'Brod et al., Ambio 46 (2017); low end Cornell CSS 412',
    known: 'read',
    meaning:
      'share of nitrogen that plants can use in the first season: dried fish sludge worked as well as 50 to 80 % of its nitrogen in mineral form, low end is first-year decay of organic nitrogen; sources differ twofold',
  },
  {
    key: 'slurry solids',
    kind: 'share',
    ...range(0.014, 0.02, 0.026),
    source: `SEA2LAND; ends ${chen}`,
    known: 'read',
    meaning:
      'dry solids in slurry as drawn off, by mass: raw sludge about 2 %, thickened 5 to 22 % (van Rijn 2013); farms differ, so dry a cup of your own',
  },
  {
    key: 'slurry density',
    kind: 'density',
    typical: SLURRY_DENSITY,
    source: 'water, within 1 % up to 5 % solids',
    known: 'computed',
    meaning: 'density of slurry as drawn off; the solids themselves have 1050 to 1190 kg/m3',
  },
  {
    key: 'garden need',
    kind: 'application',
    ...range(2, 2, 3, POUNDS_PER_THOUSAND_SQUARE_FEET),
    source: 'University of Maryland Extension; Colorado State University CMG GardenNotes 711',
    known: 'read',
    meaning:
      'nitrogen that a vegetable garden needs a year: 2 lb per 1000 ft2, 3 for heavy feeders; crops differ by half, and a soil test and local advice come first',
  },
  {
    key: 'phosphate need',
    kind: 'application',
    ...range(0.5, 1, 4, POUNDS_PER_THOUSAND_SQUARE_FEET),
    ...practice,
    meaning:
      'P2O5 that a garden needs a year, because crops remove about half as much of it as of nitrogen; only a soil test tells, and many old gardens need none',
  },
  {
    key: 'wait, touching soil',
    kind: 'days',
    typical: WAIT_TOUCHING * DAY,
    source: manureRule,
    known: 'read',
    meaning: 'days from working raw manure into the soil to harvest, if the part eaten touches soil',
  },
  {
    key: 'wait, clear of soil',
    kind: 'days',
    typical: WAIT_CLEAR * DAY,
    source: manureRule,
    known: 'read',
    meaning: 'days from working raw manure into the soil to harvest, if the part eaten does not touch soil',
  },
  {
    key: 'phosphate per phosphorus',
    kind: 'number',
    typical: PHOSPHATE_PER_PHOSPHORUS,
    source: 'IUPAC standard atomic weights 2021',
    known: 'computed',
    meaning: 'mass of P2O5 that contains a unit mass of P',
  },
  {
    key: 'potash per potassium',
    kind: 'number',
    typical: POTASH_PER_POTASSIUM,
    source: 'IUPAC standard atomic weights 2021',
    known: 'computed',
    meaning: 'mass of K2O that contains a unit mass of K',
  },
]);
