import temml from 'temml';
import { buildingFormulas } from './building';
import { treatmentFormulas } from './treatment';
import { waterFormulas } from './water';

export const texFormulas: Readonly<Record<string, string>> = {
  ...buildingFormulas,
  ...waterFormulas,
  ...treatmentFormulas,
};

/** These rows describe a method in words; a formula would say no more. */
export const methodsInWords: readonly string[] = [
  'CONE.MARKS',
  'CUT.PLAN',
  'CUT.SHEETS',
  'WATER.DENSITY',
  'WATER.VISCOSITY',
  'WATER.LIMIT',
  'WATER.AFTER',
  'WATER.STEPS',
  'STOCK.FEEDRATE',
  'LOAD.TABLE',
  'SETTLE.GRAIN',
  'HARVEST.DOSE',
  'PIPE.BORE',
  'PIPE.GRAVITY',
  'PLAN.COMPARE',
  'PLAN.LIMIT',
  'PLAN.BALANCE',
  'PLAN.PARTS',
  'PLAN.DATES',
  'PLAN.RANGE',
  'PLAN.DRIVERS',
];

/** The formula of a function as MathML; undefined for a method in words. */
export function typesetFormula(name: string): string | undefined {
  const tex = texFormulas[name];
  if (tex === undefined) return undefined;
  const upright = tex.replace(/"([^"]+)"/g, '\\text{$1}');
  const markup = temml.renderToString(upright, { displayMode: true, throwOnError: true });
  // The pages' policy allows no style in the markup; the site's own style sheet has what is needed.
  return markup.replace(/ (style|class)="[^"]*"/g, '');
}
