import type { CatalogueRow } from './define';
import { airRows } from './rows/air';
import { bedRows } from './rows/bed';
import { coneRows } from './rows/cone';
import { coneBuildRows } from './rows/cone-build';
import { costRows } from './rows/cost';
import { cutRows } from './rows/cut';
import { filterRows } from './rows/filter';
import { harvestRows } from './rows/harvest';
import { harvestGardenRows } from './rows/harvest-garden';
import { loadRows } from './rows/load';
import { airTestRow, filterTestRow, loadShareRow, stockOwnRows } from './rows/own-figures';
import { pipeRows } from './rows/pipe';
import { planRows } from './rows/plan';
import { planSureRows } from './rows/plan-sure';
import { referenceRows } from './rows/reference';
import { screenRows } from './rows/screen';
import { settleRows } from './rows/settle';
import { settleBankRows } from './rows/settle-bank';
import { stockRows } from './rows/stock';
import { tankRows } from './rows/tank';
import { unitRows } from './rows/unit';
import { waterRows } from './rows/water';

/** Every worksheet function, in the order of the day's work. */
export const catalogue: readonly CatalogueRow[] = [
  ...unitRows,
  ...referenceRows,
  ...coneRows,
  ...coneBuildRows,
  ...cutRows,
  ...tankRows,
  ...waterRows,
  ...stockRows,
  ...stockOwnRows,
  ...loadRows,
  loadShareRow,
  ...settleRows,
  ...settleBankRows,
  ...screenRows,
  ...filterRows,
  filterTestRow,
  ...bedRows,
  ...harvestRows,
  ...harvestGardenRows,
  ...pipeRows,
  ...airRows,
  airTestRow,
  ...costRows,
  ...planRows,
  ...planSureRows,
];
