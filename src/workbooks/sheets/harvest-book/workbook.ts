import type { WorkbookData } from '../../workbook-model';
import { cautions } from '../cautions';
import type { ReadyProfile } from '../sheet-draft';
import { startSheet } from '../start-sheet';
import { unitsNames, unitsSheet } from '../units-sheet';
import { ownShareSheet } from './own-share';
import { pullsSheet } from './pulls';
import { gardenSheet, monthsSheet, pickingSheet } from './worth';

/** What the farm gives back: daily pulls, nutrients by month, garden area, picking dates. */
export function harvestBook(profile: ReadyProfile): WorkbookData {
  return {
    title: 'Harvest book',
    subject: 'Solids drawn off, the nutrients in them, and the garden that they feed',
    activeSheet: 'Pulls',
    names: unitsNames,
    sheets: [
      startSheet(profile, {
        title: 'Harvest book',
        setting:
          'Twelve weeks of Ottermere Glasshouse, an invented community greenhouse that draws off its settling drums every day but Sunday, or nearly. All figures are invented: clear the rows of Pulls and begin with your own.',
        lines: [
          'Pulls: one row a pull: the date, what the pail held, the share of solids from the last dried cup.',
          'Months: nothing; read dry solids and nutrients by month, with charts.',
          'Garden: what your solids hold by test, what the garden wants; read off how much garden they feed, a dose, and their worth.',
          'Solids share: the feed over the same days; read what share of it your solids are. Picking: one row a bed: the day solids were worked in, and whether what is eaten touches the soil; read off when to pick.',
          'Silt units: US or metric.',
        ],
        cautions: [cautions.solids, cautions.electricity],
      }),
      pullsSheet(profile),
      monthsSheet(profile),
      gardenSheet(profile),
      pickingSheet(profile),
      ownShareSheet(profile),
      unitsSheet(profile),
    ],
  };
}
