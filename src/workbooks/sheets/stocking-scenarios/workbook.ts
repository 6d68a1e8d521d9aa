import type { WorkbookData } from '../../../hosts/workbook-model';
import { cautions, weightCautions } from '../cautions';
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
          'Ottermere Glasshouse, an invented community greenhouse, wants to know how many fish it can keep: 120, 350 or 800 with settling drums, or 100 with only gravel beds. All figures are invented.',
        lines: [
          'Scenarios: one column per farm; type over its fish, water, equipment and prices. Empty means not given; none means that the farm does not have it.',
          'Compare: no input needed; read the farms side by side, with charts at the right.',
          'Limit and Balance: choose a scenario; read how many fish each stage carries, the first limit and the cautions, and where solids, nitrogen and phosphorus go.',
          'How sure: choose a scenario and a result; read the band of each result and which figure to measure first.',
          'Inputs: no input needed; read every possible input, its default and the source of the default. Silt units: US or metric.',
        ],
        cautions: [cautions.water, cautions.electricity, cautions.solids, weightCautions[profile]],
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
