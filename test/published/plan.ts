import type { PublishedRow } from './published-row';

const fao = 'fao-fisheries-technical-paper';
const davidson = 'davidson-summerfelt-aquacultural-engineering';
const practice = 'common-practice-no-source';
const POUND = 0.45359237;

/** Section 8.1 of FAO 589: 200 g of feed a day for leafy crops. */
const smallUnit = [
  ['feed', '200 g/d'],
  ['protein', '32 %'],
  ['crop', 'leafy'],
];
/** Appendix 4 of FAO 589: the same feed on tuff of 300 m2/m3, without reserve. */
const onTuff = [...smallUnit, ['media', 'tuff'], ['filter reserve', 'none']];
const onTuffFeed = 'by 0.57 g of ammonia a day on a square meter, 0.469 g as N';
const ammoniaDiffers =
  'The source makes ammonia nitrogen of 0.0976 of the protein fed; by 0.092 the same feed wants 4.6 % less media.';
/** A filter mat of a forum: 275 m2/m3 that convert 0.2 g/m2/d, and feed of which 4 % becomes ammonia, by our 0.092. */
const matted = [
  ['feed', '110 g/d'],
  ['protein', 0.04 / 0.092],
  ['media', '275 m2/m3'],
  ['nitrification', '0.2 g/m2/d'],
  ['filter reserve', 'none'],
];
const mat = 'arowana-club-forum-media';

const fed = (feed: string, ...rest: readonly (readonly unknown[])[]) => [['feed', feed], ...rest];
/** One drum of a square foot, 4.6 gpm through it. */
const drum = fed('1 kg/d', ['drums', 1], ['drum diameter', '1.1283791671 ft'], ['pump flow', '4.6 gpm']);
const hot = fed(
  '1 kg/d',
  ['pump flow', '100 L/min'],
  ['removal', '100 %'],
  ['temperature', '28 °C'],
  ['pH', 8],
  ['protein', '50 %'],
);

const advocate = 'losordo-delong-flow-rate';
const sprague = 'sprague-progressive-fish-culturist';
const penne = 'summerfelt-penne-recirculating';
/** 4000 kg of fish of 680 g in 50 m3, fed 1.5 % a day of a feed with 40 % protein. */
const growout = [
  ['fish count', 4000 / 0.68],
  ['fish mass', '680 g'],
  ['feeding rate', '1.5 %'],
  ['protein', '40 %'],
  ['tank volume', '50 m3'],
];
/** 100 g of nitrogen and of phosphorus fed a day at a conversion of 1.6. */
const nitrogenFed = fed('1.953125 kg/d', ['protein', '32 %'], ['conversion', 1.6], ['pump flow', '100 L/min']);
const phosphorusFed = fed('10 kg/d', ['feed phosphorus', '1 %'], ['conversion', 1.6], ['pump flow', '100 L/min']);
/** 46 g of ammonia nitrogen a day, all of it nitrified, at 1 g/m3: 46 m3 a day. */
const oneMilligram = fed(
  '1 kg/d',
  ['protein', '50 %'],
  ['pump flow', '46 m3/d'],
  ['removal', '100 %'],
  ['drums', 'none'],
  ['passive denitrification', 'none'],
);
const boyd = 'boyd-queiroz-nitrogen-phosphorus';
/** 1,000 kg of feed with 4.8 % nitrogen and 0.9 % phosphorus gives 526 kg of fish, a quarter of it dry. */
const pond = fed(
  '1000 kg/d',
  ['protein', '30 %'],
  ['feed phosphorus', '0.9 %'],
  ['conversion', 1.9],
  ['fish nitrogen', 0.25 * 0.09],
  ['fish phosphorus', 0.25 * 0.027],
);
const pondOf = (where: string, column: 2 | 3, kg: number, place: string, known: 'read' | 'worked'): PublishedRow => ({
  call: ['PLAN.BALANCE', 'US', pond],
  cell: [where, column],
  expected: (kg * 1000) / 28.349523125,
  tolerance: 1e-3,
  source: boyd,
  place,
  known,
});

const fao183 = 'fao-ac183e-carbon-dioxide';
/**
 * Carbon dioxide of water in balance with air. The table does not say of which air, its text says 0.03 %; in the years of
 * its sources the air held some 330 parts per million, today it holds 420.
 */
const airDioxide = (celsius: number, printed: number): PublishedRow => ({
  call: [
    'PLAN.COMPARE',
    'metric',
    fed('1 mg/d', ['degassing', '100 %'], ['pump flow', '1000 m3/h'], ['temperature', `${celsius} °C`]),
  ],
  cell: ['carbon dioxide in tank', 2],
  expected: (printed * 420) / 330,
  tolerance: 0.035,
  source: fao183,
  place: `table III, ${celsius} °C: ${printed} mg/L, here for air of 420 parts per million in place of 330`,
  known: 'read',
  disagrees: `The table has ${printed} mg/L for the air of its time; today’s air dissolves 27 % more.`,
});

export const planPublished: readonly PublishedRow[] = [
  {
    call: ['PLAN.COMPARE', 'metric', growout],
    cell: ['stocking', 2],
    expected: 80,
    tolerance: 1e-9,
    source: advocate,
    place: 'operating parameters: 80 kg/m3 x 50 m3 = 4,000 kg of fish of 680 g',
    known: 'read',
  },
  {
    call: ['PLAN.COMPARE', 'US', growout],
    cell: ['feed', 2],
    expected: 60 / POUND,
    tolerance: 1e-9,
    source: advocate,
    place: 'operating parameters: 4,000 kg x 1.5 % = 60 kg of feed a day',
    known: 'read',
  },
  {
    call: ['PLAN.COMPARE', 'metric', fed('1 kg/d', ['drums', 'none'], ['tank volume', '1 m3'], ['water out', '1 m3'])],
    cell: ['nitrate rise time', 2],
    expected: -Math.log(1 - 0.9),
    tolerance: 1e-9,
    source: sprague,
    place: 'T = -ln(1 - F) V/R, here for nine tenths of the water replaced, a volume a day',
    known: 'read',
  },
  {
    call: ['PLAN.COMPARE', 'US', fed('1 kg/d', ['drums', 'none'], ['tank volume', '4 m3'], ['water out', '1 m3'])],
    cell: ['nitrate rise time', 2],
    expected: -4 * Math.log(1 - 0.9),
    tolerance: 1e-9,
    source: sprague,
    place: 'T = -ln(1 - F) V/R, a quarter of the volume a day',
    known: 'read',
  },
  {
    call: ['PLAN.COMPARE', 'metric', [...oneMilligram, ['temperature', '28 °C'], ['pH', 8]]],
    cell: ['un-ionized ammonia', 2],
    expected: 0.0654,
    tolerance: 0.02,
    source: 'uf-ifas-extension-fa16',
    place: '0.0654 of the ammonia, here 1 mg/L, is un-ionized at 28 °C and pH 8.0',
    known: 'read',
  },
  {
    call: ['PLAN.COMPARE', 'metric', [...oneMilligram, ['alkali', 'calcium carbonate']]],
    cell: ['alkali per day', 2],
    expected: 7.14 * 0.046,
    tolerance: 2e-3,
    source: 'water-planet-nitrification',
    place: '7.14 lb of alkalinity as CaCO3 a lb of ammonia; 7.1 mg a mg of ammonia nitrogen',
    known: 'read',
  },
  {
    call: ['PLAN.BALANCE', 'metric', nitrogenFed],
    cell: ['kept by fish', 2],
    expected: (12 + 44.1) / 2,
    absolute: (44.1 - 12) / 2,
    source: penne,
    place: 'abstract: fish kept 12.0 to 44.1 % of the nitrogen fed, by species and size; the middle, within the range',
    known: 'read',
    disagrees: 'Five groups of fish in one facility differ almost four times.',
  },
  {
    call: ['PLAN.BALANCE', 'metric', phosphorusFed],
    cell: ['kept by fish', 3],
    expected: (14.8 + 53.8) / 2,
    absolute: (53.8 - 14.8) / 2,
    source: penne,
    place: 'abstract: fish kept 14.8 to 53.8 % of the phosphorus fed; the middle, within the range',
    known: 'read',
    disagrees: 'Five groups of fish in one facility differ almost four times.',
  },
  pondOf('in', 2, 48, '1,000 kg of feed x 0.048 = 48 kg of nitrogen', 'read'),
  pondOf('in', 3, 9, '1,000 kg of feed x 0.009 of phosphorus', 'worked'),
  pondOf('kept by fish', 2, 526 * 0.25 * 0.09, '526 kg of fish, 25 % dry with 9 % nitrogen', 'worked'),
  pondOf('kept by fish', 3, 526 * 0.25 * 0.027, '526 kg of fish, 25 % dry with 2.7 % phosphorus', 'worked'),
  airDioxide(10, 0.76),
  airDioxide(15, 0.65),
  airDioxide(20, 0.56),
  airDioxide(25, 0.48),
  airDioxide(30, 0.42),
  {
    call: ['PLAN.COMPARE', 'US', onTuff],
    cell: ['media surface', 2],
    expected: 13.15 / 0.3048 ** 2,
    tolerance: 0.05,
    source: fao,
    place: `appendix 4: 7.4957 g of ammonia a day, 13.15 m2 of media ${onTuffFeed}`,
    known: 'memory',
    disagrees: ammoniaDiffers,
  },
  {
    call: ['PLAN.COMPARE', 'US', onTuff],
    cell: ['media volume', 2],
    expected: 0.0438 / 0.3048 ** 3,
    tolerance: 0.05,
    source: fao,
    place: 'appendix 4: 43.8 L of tuff',
    known: 'memory',
    disagrees: ammoniaDiffers,
  },
  {
    call: ['PLAN.LIMIT', 'US', [...onTuff, ['media volume', '43.8 L']]],
    cell: ['biofilter', 1],
    expected: 0.2 / POUND,
    tolerance: 0.05,
    source: fao,
    place: 'appendix 4, the other way round: 43.8 L of tuff carry 200 g of feed a day',
    known: 'memory',
    disagrees: ammoniaDiffers,
  },
  {
    call: ['PLAN.COMPARE', 'US', matted],
    cell: ['media surface', 2],
    expected: 22 / 0.3048 ** 2,
    tolerance: 1e-6,
    source: mat,
    place: '110 g of feed a day, 4 % of it ammonia: 4.4 g, which 22 m2 convert at 0.2 g/m2/d',
    known: 'read',
  },
  {
    call: ['PLAN.COMPARE', 'US', matted],
    cell: ['media volume', 2],
    expected: 0.08 / 0.3048 ** 3,
    tolerance: 1e-6,
    source: mat,
    place: 'a mat of 80 L and 275 m2/m3 for 110 g of feed a day',
    known: 'read',
  },
  {
    call: ['PLAN.LIMIT', 'US', [...matted, ['media volume', '80 L']]],
    cell: ['biofilter', 1],
    expected: 0.11 / POUND,
    tolerance: 1e-6,
    source: mat,
    place: 'a mat of 80 L carries 110 g of feed a day, 4 % of it ammonia',
    known: 'read',
  },
  {
    call: ['PLAN.COMPARE', 'US', smallUnit],
    cell: ['bed area', 2],
    expected: 4 / 0.3048 ** 2,
    tolerance: 1e-9,
    source: fao,
    place: 'section 8.1: 200 g of feed a day for 4 m2 of leafy crops, at 50 g/m2/d',
    known: 'read',
  },
  {
    call: ['PLAN.COMPARE', 'US', smallUnit],
    cell: ['plants', 2],
    expected: 100,
    tolerance: 1e-12,
    source: fao,
    place: 'section 8.1: 4 m2 at 25 plants are 100',
    known: 'read',
  },
  {
    call: ['PLAN.LIMIT', 'US', [...smallUnit, ['bed area', '4 m2']]],
    cell: ['plant beds', 1],
    expected: 0.2 / POUND,
    tolerance: 1e-9,
    source: fao,
    place: 'section 8.1: 4 m2 of leafy crops take 200 g of feed a day',
    known: 'read',
  },
  {
    call: ['PLAN.LIMIT', 'US', fed('1 lb/d', ['fish count', 1], ['fish mass', '1 kg'], ['tank volume', '1000 L'])],
    cell: ['fish tank', 2],
    expected: 20,
    tolerance: 1e-12,
    source: 'microponics-optimizing-aquaponics',
    place: '20 to 30 kg in 1,000 L are often recommended, for tilapia; the low end',
    known: 'read',
    disagrees:
      'The same page advises 5 to 10 kg for some species; commercial tanks with pure oxygen hold 80 kg and more in 1000 L (Losordo and DeLong 2015).',
  },
  {
    call: ['PLAN.COMPARE', 'metric', drum],
    cell: ['overflow rate', 2],
    expected: 0.0031 * 3600,
    tolerance: 0.01,
    source: davidson,
    place: '0.0031 m3/s per m2, printed beside 4.6 gpm/ft2',
    known: 'read',
  },
  {
    call: ['PLAN.LIMIT', 'US', hot],
    cell: ['circulation, un-ionized ammonia', 1],
    expected: (144 * (0.05 / 0.0654)) / 1000 / (0.5 * 0.092) / POUND,
    tolerance: 0.01,
    source: 'uf-ifas-extension-fa16',
    place: '0.0654 of the ammonia is un-ionized at 28 °C and pH 8.0; above 0.05 mg/L harms',
    known: 'read',
  },
  {
    call: [
      'PLAN.PARTS',
      'US',
      [
        ['drums', 1],
        ['drum diameter', '571.5 mm'],
        ['drum height', 32.8],
        ['cone bottom', 22.48],
        ['cone height', 0.001],
        ['sheet length', 96],
        ['sheet width', 48],
      ],
    ],
    cell: ['leak-test water', 1],
    expected: 2 * 56.46,
    tolerance: 2e-4,
    source: 'trade-page-steel-drum',
    place: '22.5 x 32.8 in inside, 56.46 gal to the brim, filled twice beside next to no cone',
    known: 'read',
  },
  {
    call: ['PLAN.DATES', '2026-05-04'],
    cell: [2, 1],
    expected: 46146 + 1 + 3,
    absolute: 1e-9,
    source: practice,
    place: 'base cured 3 days after the day of the leak test',
    known: 'common practice',
  },
  {
    call: ['PLAN.DATES', '2026-05-04'],
    cell: [3, 1],
    expected: 46146 + 1 + 3 + 3,
    absolute: 1e-9,
    source: practice,
    place: 'mortar cured 3 days after that',
    known: 'common practice',
  },
];
