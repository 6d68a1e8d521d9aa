import type { WorkbookData } from '../../hosts/workbook-model';
import { coneCutPlan } from './cone-cut-plan/workbook';
import { harvestBook } from './harvest-book/workbook';
import { materialsWorkbook } from './materials-sheet/workbook';
import { ownFigures } from './own-figures/workbook';
import type { ReadyProfile } from './sheet-draft';
import { stockingScenarios } from './stocking-scenarios/workbook';
import { waterBook } from './water-book/workbook';

export type { ReadyProfile } from './sheet-draft';

export interface ReadyMade {
  /** The file's name without its ending. */
  readonly id: string;
  readonly title: string;
  /** Builds the workbook for a profile: formulas without results, which the program that opens it calculates. */
  readonly build: (profile: ReadyProfile) => WorkbookData;
}

/** Every ready-made workbook, in the order of the work. */
export const readyMade: readonly ReadyMade[] = [
  { id: 'cone-cut-plan', title: 'Cone cut plan', build: coneCutPlan },
  { id: 'materials-sheet', title: 'Materials sheet', build: materialsWorkbook },
  { id: 'stocking-scenarios', title: 'Stocking scenarios', build: stockingScenarios },
  { id: 'harvest-book', title: 'Harvest book', build: harvestBook },
  { id: 'water-book', title: 'Water book', build: waterBook },
  { id: 'own-figures', title: 'Own figures', build: ownFigures },
];

export const readyProfiles: readonly ReadyProfile[] = ['US', 'metric'];
