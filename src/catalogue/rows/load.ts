import { loadAmmonia, loadSolids } from '../../formulas/load';
import { define } from '../define';

const timmons = 'Timmons and Ebeling, Recirculating Aquaculture (from memory)';

export const loadRows = [
  define({
    name: 'LOAD.SOLIDS',
    summary: 'Dry suspended solids that a day’s feed makes.',
    arguments: {
      feed: { kind: 'daily', atLeast: 0, meaning: 'feed a day' },
      solidsShare: { kind: 'share', default: 'solids share', meaning: 'dry solids per feed' },
    },
    result: { scalar: 'daily' },
    compute: ({ feed, solidsShare }) => loadSolids(feed, solidsShare),
    formula: 'solids = feed × solids share',
    notes: ['Authorities differ several times over: REF.LIST shows the range. Weigh what your own drums give.'],
    sources: [timmons],
    example: { formula: '=SILT.LOAD.SOLIDS("metric",10)', gives: '2.5' },
  }),
  define({
    name: 'LOAD.AMMONIA',
    summary: 'Total ammonia nitrogen that a day’s feed makes.',
    arguments: {
      feed: { kind: 'daily', atLeast: 0, meaning: 'feed a day' },
      protein: { kind: 'share', meaning: 'protein in the feed' },
      factor: {
        kind: 'number',
        atLeast: 0,
        atMost: 0.16,
        default: 'ammonia factor',
        meaning: 'ammonia nitrogen per protein fed',
      },
    },
    result: { scalar: 'daily' },
    compute: ({ feed, protein, factor }) => loadAmmonia(feed, protein, factor),
    formula: 'ammonia nitrogen = feed × protein × factor',
    notes: ['Protein holds 16 % nitrogen, so a factor above 0.16 is refused.'],
    sources: [timmons],
    example: { formula: '=SILT.LOAD.AMMONIA("metric",1,40%)', gives: '0.0368' },
  }),
];
