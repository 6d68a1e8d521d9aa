import { bedArea, bedDays, bedPlants } from '../../formulas/bed/bed';
import { cropFeed, cropGroups, cropNamed, cropNames, findCrop } from '../../formulas/bed/crops';
import { nearest } from '../../units/nearest';
import { readQuantity } from '../../units/quantity';
import { Unreadable } from '../../units/unreadable';
import type { ReaderArgument } from '../argument';
import { define } from '../define';

const groups = cropGroups.map(({ name }) => name);

/** An areal rate, or the name of a crop, whose group has a rate. */
const ratio: ReaderArgument<number> = {
  meaning: 'feed a day per unit of bed, or a crop group: leafy, fruiting, raft, basil',
  accepts: `an areal rate, or one of ${groups.join(', ')}`,
  kind: 'areal rate',
  reader: (value, profile) => {
    if (typeof value === 'string' && !/\d/.test(value)) {
      const crop = findCrop(value);
      if (crop) return cropFeed(crop).typical;
      throw new Unreadable(
        `"${value.slice(0, 40)}" is not a crop group; nearest are ${nearest(value, cropNames).join(', ')}`,
      );
    }
    const rate = readQuantity(profile, 'areal rate', value);
    if (rate > 0) return rate;
    throw new Unreadable(`${value} is not allowed; give an areal rate of more than 0, or one of ${groups.join(', ')}`);
  },
};

export const bedRows = [
  define({
    name: 'BED.AREA',
    summary: 'Plant area that a day’s feed supports.',
    arguments: { feed: { kind: 'daily', atLeast: 0, meaning: 'feed a day' }, ratio },
    result: { scalar: 'area' },
    compute: (given) => bedArea(given.feed, given.ratio),
    formula: 'area = feed / feed per area',
    notes: [
      'Sources differ 2.5-fold: leafy 40 to 50, fruiting 50 to 80, rafts 60 to 100 g/m²/d of feed at about 32 % protein. REF.LIST shows each range. Start small and watch the leaves.',
    ],
    sources: [
      'FAO Fisheries Technical Paper 589 (2014)',
      'Rakocy, Ten Guidelines for Aquaponic Systems, Aquaponics Journal 46 (2007)',
      'Rakocy et al. (2004), University of the Virgin Islands, basil',
    ],
    example: { formula: '=SILT.BED.AREA("metric","1 kg/d","leafy")', gives: '20' },
  }),
  define({
    name: 'BED.PLANTS',
    summary: 'Whole number of plants for an area.',
    arguments: {
      area: { kind: 'area', atLeast: 0, meaning: 'plant area' },
      crop: { choice: cropNames, meaning: 'crop or crop group' },
    },
    result: { scalar: 'count' },
    compute: ({ area, crop }) => bedPlants(area, cropNamed(crop).plants.typical),
    formula: 'plants = area × plants per square meter, rounded down',
    sources: ['FAO Fisheries Technical Paper 589 (2014), section 8 and appendix 1'],
    example: { formula: '=SILT.BED.PLANTS("metric",4,"leafy")', gives: '100' },
  }),
  define({
    name: 'BED.DAYS',
    summary: 'Days until a gravel bed needs cleaning.',
    arguments: {
      solids: { kind: 'daily', above: 0, meaning: 'dry solids that the bed catches a day' },
      gravel: { kind: 'bulk', atLeast: 0, meaning: 'bulk of the gravel' },
      bedHolding: { kind: 'bed holding', above: 0, meaning: 'dry solids that gravel holds' },
    },
    result: { scalar: 'days' },
    compute: ({ solids, gravel, bedHolding }) => bedDays(solids, gravel, bedHolding),
    formula: 'days = gravel × bed holding / solids',
    notes: ['Worms and bacteria eat part of what is caught, so the true time is longer.'],
    sources: ['Mass balance'],
    example: { formula: '=SILT.BED.DAYS("metric","20 g/d",600,2)', gives: '60' },
  }),
];
