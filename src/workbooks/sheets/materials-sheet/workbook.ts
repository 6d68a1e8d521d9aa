import type { WorkbookData } from '../../workbook-model';
import { cautions } from '../cautions';
import type { ReadyProfile } from '../sheet-draft';
import { startSheet } from '../start-sheet';
import { unitsNames, unitsSheet } from '../units-sheet';
import { bankSheet, partsSheet } from './bank';
import { buildOrBuySheet, calendarSheet, materialsSheet } from './costs';
import { pricesSheet } from './prices';

/** A bank of settling drums: everything to buy, what it costs, and whether to build it at all. */
export function materialsWorkbook(profile: ReadyProfile): WorkbookData {
  return {
    title: 'Materials sheet',
    subject: 'Bill of materials and cost of a bank of settling drums',
    activeSheet: 'Bank',
    names: unitsNames,
    sheets: [
      startSheet(profile, {
        title: 'Materials sheet',
        setting:
          'A bank of four settling drums for Ottermere Glasshouse, an invented community greenhouse. All prices are invented: type over them with your own, in the money you pay in.',
        lines: [
          'Bank: how many drums, their size, the cone, the sheet stock, the pail and the stand.',
          'Prices: what a pack holds and costs where you buy. Parts: nothing; read how each quantity was figured.',
          'Materials: the share to buy on top; read off packs and cost.',
          'Build or buy: the price of a bought settler, your own hours and what an hour is worth; read off what is saved.',
          'Calendar: the day of the first leak test and the days that cures take. Silt units: US or metric.',
        ],
        cautions: [cautions.drums, cautions.dust, cautions.metals, cautions.weight],
      }),
      bankSheet(profile),
      partsSheet(profile),
      pricesSheet(profile),
      materialsSheet(profile),
      buildOrBuySheet(profile),
      calendarSheet(profile),
      unitsSheet(profile),
    ],
  };
}
