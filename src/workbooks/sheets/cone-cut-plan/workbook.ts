import type { WorkbookData } from '../../workbook-model';
import { cautions } from '../cautions';
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
          'The settling drums of Ottermere Glasshouse, an invented community greenhouse: three used drums, no two alike, each to get a cone of sheet plastic bedded in light mix. Type over its numbers with your own.',
        lines: [
          'Drums: one row a drum, its inside diameter or its girth with a tape, the drain, the cone’s height, pieces and lap; below them the sheet stock.',
          'Patterns: nothing but the drum to check; each row is what to mark and cut. Cut plan: nothing; read off the sheets to buy.',
          'Base mix: how far the cone’s foot stands above the floor, and how the mix is made; read off the bags.',
          'Stand and ports: the pail, how far the valve hangs down, the legs, and the drum whose inlet and outlet you want.',
          'Marking out: the drum and the degrees between marks. Silt units: US or metric.',
        ],
        cautions: [cautions.drums, cautions.dust, cautions.metals, cautions.weight],
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
