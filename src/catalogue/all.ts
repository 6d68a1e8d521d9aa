import type { CatalogueRow } from './define';
import { filterRows } from './rows/filter';
import { harvestRows } from './rows/harvest';
import { loadRows } from './rows/load';
import { referenceRows } from './rows/reference';
import { settleRows } from './rows/settle';
import { tankRows } from './rows/tank';
import { unitRows } from './rows/unit';
import { waterRows } from './rows/water';

/** Every worksheet function, in the order of the day's work. */
export const catalogue: readonly CatalogueRow[] = [
  ...unitRows,
  ...referenceRows,
  ...tankRows,
  ...waterRows,
  ...loadRows,
  ...settleRows,
  ...filterRows,
  ...harvestRows,
];
