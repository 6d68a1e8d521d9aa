import type { WorkbookData } from '../../../hosts/workbook-model';
import { cautions, weightCautions } from '../cautions';
import type { ReadyProfile } from '../sheet-draft';
import { startSheet } from '../start-sheet';
import { unitsNames, unitsSheet } from '../units-sheet';
import { baseMixSheet, standSheet } from './base-and-stand';
import { cutPlanSheet, markingOutSheet } from './cut-plan';
import { drumsSheet } from './drums';
import { patternsSheet } from './patterns';

/** From tape measure to cut plan: drums, patterns, sheets to buy, base mix, stand, ports, marking out. */
export function coneCutPlan(profile: ReadyProfile): WorkbookData {
  return {
    title: 'Cone cut plan',
    subject: 'Cones for settling drums: patterns, cut plan, base mix, stand',
    activeSheet: 'Drums',
    names: unitsNames,
    sheets: [
      startSheet(profile, {
        title: 'Cone cut plan',
        setting:
          'The settling drums of Ottermere Glasshouse, an invented community greenhouse: three used drums, no two alike. Each gets a cone of sheet plastic on a bed of light mix. Type your own numbers over these.',
        lines: [
          'Drums: type one row per drum: its inside diameter or its girth, the drain, the cone’s height, pieces and lap; below, type the sheet stock.',
          'Patterns: choose the drum to check; each row is what to mark and cut. Cut plan: no input needed; read the sheets to buy.',
          'Base mix: type the height of the cone’s foot above the floor and the parts of the mix; read the bags to buy.',
          'Stand and ports: type the pail, how far the valve is below the stand’s top, and the legs; choose the drum for its inlet and outlet.',
          'Marking out: choose the drum and type the degrees between marks. Silt units: US or metric.',
        ],
        cautions: [cautions.drums, cautions.dust, cautions.metals, weightCautions[profile]],
      }),
      drumsSheet(profile),
      patternsSheet(profile),
      cutPlanSheet(profile),
      baseMixSheet(profile),
      standSheet(profile),
      markingOutSheet(profile),
      unitsSheet(profile),
    ],
  };
}
