import type { WorkbookData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import type { ReadyProfile } from '../sheet-draft';
import { startSheet } from '../start-sheet';
import { unitsNames, unitsSheet } from '../units-sheet';
import { figuresSheet } from './figures';
import { fishSheet } from './fish';
import { howSheet } from './how-to-measure';
import { airSheet, filterSheet } from './machines';
import { solidsSheet } from './solids';

/** The farm's own coefficients from its own logs, each with its error, ready for a scenario. */
export function ownFigures(profile: ReadyProfile): WorkbookData {
  return {
    title: 'Own figures',
    subject: 'Growth, feed conversion, solids share, filter and aerator of your own farm, each with its error',
    activeSheet: 'Figures',
    names: unitsNames,
    sheets: [
      startSheet(profile, {
        title: 'Own figures',
        setting:
          'One spring of Ottermere Glasshouse, an invented community greenhouse that measures its own tilapia, drums, filter and air pump. All readings are invented: clear them and type your own.',
        lines: [
          'How to measure: no input needed; read what to measure, where, how often and with which tools.',
          'Fish and Solids: type one row each time you weigh fish, and one row per week for feed and slurry.',
          'Filter and Air: type readings before and after the filter; oxygen as it rises again in a tank without fish.',
          'Figures: no input needed; read each figure with its error beside the published range, and copy it into a scenario.',
          'Silt units: US or metric.',
        ],
        cautions: [cautions.water, cautions.solids, cautions.electricity],
      }),
      howSheet(profile),
      fishSheet(profile),
      solidsSheet(profile),
      filterSheet(profile),
      airSheet(profile),
      figuresSheet(profile),
      unitsSheet(profile),
    ],
  };
}
