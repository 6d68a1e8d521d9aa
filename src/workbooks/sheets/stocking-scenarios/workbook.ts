import type { WorkbookData } from '../../workbook-model';
import { cautions } from '../cautions';
import type { ReadyProfile } from '../sheet-draft';
import { startSheet } from '../start-sheet';
import { unitsNames, unitsSheet } from '../units-sheet';
import { howSureSheet } from './how-sure';
import { balanceSheet, compareSheet, limitSheet } from './results';
import { inputsSheet, scenariosSheet } from './scenarios';

/** Farms of several sizes side by side, and the first limit of each. */
export function stockingScenarios(profile: ReadyProfile): WorkbookData {
  return {
    title: 'Stocking scenarios',
    subject: 'Farms side by side: feed, waste, flow, drums, media, beds, harvest, cost',
    activeSheet: 'Scenarios',
    names: unitsNames,
    sheets: [
      startSheet(profile, {
        title: 'Stocking scenarios',
        setting:
          'Ottermere Glasshouse, an invented community greenhouse, asks how many fish it dares to keep: 120, 350 or 800 with settling drums, or a hundred with nothing but gravel beds. All figures are invented.',
        lines: [
          'Scenarios: one column a farm; type over its fish, water, equipment and prices. Blank is not given, none is absent.',
          'Compare: nothing; read the farms side by side, with charts at the right.',
          'Limit and Balance: choose a scenario; read what each stage carries, the first limit and the cautions; then where solids, nitrogen and phosphorus go.',
          'How sure: choose a scenario and a result; read the band of each result and which figure to measure first.',
          'Inputs: nothing; every input there is, with its default and where that comes from. Silt units: US or metric.',
        ],
        cautions: [cautions.water, cautions.electricity, cautions.solids, cautions.weight],
      }),
      scenariosSheet(profile),
      compareSheet(profile),
      limitSheet(profile),
      balanceSheet(profile),
      howSureSheet(profile),
      inputsSheet(profile),
      unitsSheet(profile),
    ],
  };
}
