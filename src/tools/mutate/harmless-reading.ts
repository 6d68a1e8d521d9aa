import { filled, type Harmless, quick } from './harmless-reasons';

/** Changes to units and the adapter that no test can or should notice. */
export const readingHarmless: readonly Harmless[] = [
  {
    place: 'src/functions/adapter.ts:65:75',
    change: '[]',
    reason: 'The object only has its shape early; every value is put in afterwards.',
  },
  { place: 'src/functions/adapter.ts:76', change: 'new Array()', reason: filled },
  { place: 'src/functions/adapter.ts:79', change: 'i <= slots.length', reason: 'Behind the last slot there is none.' },
  { place: 'src/functions/adapter.ts:83', change: 'false', reason: 'Every slot that is counted is there.' },
  { place: 'src/functions/adapter.ts:108', change: '', reason: quick },
  {
    place: 'src/functions/adapter.ts:136',
    change: '{}',
    reason: 'The object only has its shape early; every value is put in afterwards.',
  },
  { place: 'src/functions/adapter.ts:139', change: '', reason: quick },
  {
    place: 'src/functions/adapter.ts:191',
    change: 'ranged.name',
    reason: 'A block that is spread comes from an argument.',
  },
  { place: 'src/functions/adapter.ts:212', change: '[]', reason: 'A computation always gives a row.' },
  { place: 'src/functions/adapter.ts:233', change: 'false', reason: quick },
  { place: 'src/functions/adapter/slots.ts:77', change: 'false', reason: quick },
  { place: 'src/functions/adapter/slots.ts:109', change: 'false', reason: quick },
];
