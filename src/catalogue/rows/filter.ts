import { filterArea, filterMedia } from '../../formulas/filter-size';
import { coefficient } from '../coefficients/all';
import { define } from '../define';

export const filterRows = [
  define({
    name: 'FILTER.AREA',
    summary: 'Media surface that nitrifies the ammonia of a day’s feed.',
    arguments: {
      feed: { kind: 'daily', atLeast: 0, meaning: 'feed a day' },
      protein: { kind: 'share', meaning: 'protein in the feed' },
      rate: { kind: 'areal rate', above: 0, meaning: 'nitrogen nitrified a day on a unit of surface, as N' },
      reserve: { kind: 'share', atMost: 10, default: 0, meaning: 'share added on top, 0.5 for half as much again' },
    },
    result: { scalar: 'area' },
    compute: ({ feed, protein, rate, reserve }) =>
      filterArea(feed, protein, rate, reserve, coefficient('ammonia factor').typical),
    formula: 'surface = feed × protein × 0.092 × (1 + reserve) / rate',
    notes: [
      'The rate is grams of nitrogen. One published as ammonia is converted: 0.57 g NH3 is 0.469 g N.',
      'Rates fall in cold water: see FILTER.NITRIFY.',
    ],
    sources: ['FAO Fisheries Technical Paper 589 (2014), appendix 4'],
    example: { formula: '=SILT.FILTER.AREA("metric","200 g/d",32%,0.469)', gives: '12.55' },
  }),
  define({
    name: 'FILTER.MEDIA',
    summary: 'Bulk of media that has a given surface.',
    arguments: {
      area: { kind: 'area', atLeast: 0, meaning: 'media surface' },
      surface: { kind: 'surface', above: 0, meaning: 'specific surface of the media' },
    },
    result: { scalar: 'bulk' },
    compute: ({ area, surface }) => filterMedia(area, surface),
    formula: 'bulk = area / specific surface',
    sources: ['FAO Fisheries Technical Paper 589 (2014), appendix 4'],
    example: { formula: '=SILT.FILTER.MEDIA("metric",13.15,300)', gives: '43.8' },
  }),
];
