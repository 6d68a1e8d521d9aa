import type { CatalogueRow } from './define';
import { filterRows } from './rows/filter';
import { harvestRows } from './rows/harvest';
import { loadRows } from './rows/load';
import { referenceRows } from './rows/reference';
import { unitRows } from './rows/unit';

/** Every worksheet function, in the order of the day's work. */
export const catalogue: readonly CatalogueRow[] = [
  ...unitRows,
  ...referenceRows,
  ...loadRows,
  ...filterRows,
  ...harvestRows,
];
