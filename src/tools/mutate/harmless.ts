import { catalogueHarmless } from './harmless-catalogue';
import { cutHarmless } from './harmless-cut';
import { cutSearchHarmless } from './harmless-cut-search';
import { numericHarmless } from './harmless-numeric';
import { pipeHarmless } from './harmless-pipe';
import { planHarmless } from './harmless-plan';
import { readingHarmless } from './harmless-reading';
import type { Harmless } from './harmless-reasons';
import { stockHarmless } from './harmless-stock';
import { waterHarmless } from './harmless-water';

export const harmless: Harmless = {
  ...cutHarmless,
  ...cutSearchHarmless,
  ...numericHarmless,
  ...waterHarmless,
  ...pipeHarmless,
  ...planHarmless,
  ...readingHarmless,
  ...catalogueHarmless,
  ...stockHarmless,
};
