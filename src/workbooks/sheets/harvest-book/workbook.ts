import type { WorkbookData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import type { ReadyProfile } from '../sheet-draft';
import { startSheet } from '../start-sheet';
import { unitsNames, unitsSheet } from '../units-sheet';
import { ownShareSheet } from './own-share';
import { pullsSheet } from './pulls';
import { gardenSheet, monthsSheet, pickingSheet } from './worth';

/** What the solids are worth: daily pulls, nutrients by month, garden area, picking dates. */
export function harvestBook(profile: ReadyProfile): WorkbookData {
  return {
    title: 'Harvest book',
    subject: 'Solids pulled, the nutrients in them, and the garden that they feed',
    activeSheet: 'Pulls',
    names: unitsNames,
    sheets: [
      startSheet(profile, {
        title: 'Harvest book',
        setting:
          'Twelve weeks of Ottermere Glasshouse, an invented community greenhouse that pulls solids from its settling drums almost every day. All figures are invented: clear the rows of Pulls and type your own.',
        lines: [
          'Pulls: type one row per pull: the date, the volume in the pail, and the solids share of the last dried cup.',
          'Months: no input needed; read dry solids and nutrients by month, with charts.',
          'Garden: type what your solids hold by test and what the garden needs; read how much garden they feed, the dose, and their value.',
          'Solids share: type the feed over the same days; read what share of it became solids. Picking: type the day you worked solids into each bed, and whether the part that is eaten touches the soil; read when to pick.',
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
