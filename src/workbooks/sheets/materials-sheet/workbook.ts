import type { WorkbookData } from '../../../hosts/workbook-model';
import { cautions, weightCautions } from '../cautions';
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
          'A bank of four settling drums for Ottermere Glasshouse, an invented community greenhouse. All prices are invented: type your own over them, in your currency.',
        lines: [
          'Bank: type how many drums, their size, the cone, the sheet stock, the pail and the stand.',
          'Prices: type what a pack holds and costs at your shop. Parts: no input needed; read how each quantity was calculated.',
          'Materials: type the extra share to buy and your own parts; read packs and cost.',
          'Build or buy: type the price of a bought settler, your own hours and their value; read what you save.',
          'Calendar: type the day of the first leak test and the days for each cure; read when each step can start. Silt units: US or metric.',
        ],
        cautions: [cautions.drums, cautions.dust, cautions.metals, weightCautions[profile]],
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
