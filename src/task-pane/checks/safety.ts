import { cautions } from '../../workbooks/sheets/cautions';

/** Work that can hurt people, in the order of the day, with its cautions. */
export const safety: readonly { readonly task: string; readonly caution: string }[] = [
  { task: 'Drums', caution: cautions.drums },
  { task: 'Dust and lime', caution: cautions.dust },
  { task: 'Metals and sealants', caution: cautions.metals },
  { task: 'Weight', caution: cautions.weight },
  { task: 'Electricity', caution: cautions.electricity },
  { task: 'Solids', caution: cautions.solids },
  { task: 'Water', caution: cautions.water },
];
