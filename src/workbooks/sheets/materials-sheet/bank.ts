import type { SheetData } from '../../workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, unitOf } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';

type Entry = number | string;

/** Name, value under US, value under metric, kind of the value, what it means. */
const inputs: readonly (readonly [
  name: string,
  us: Entry,
  metric: Entry,
  kind: string | undefined,
  meaning: string,
])[] = [
  ['drums', 4, 4, undefined, 'in the bank, side by side'],
  ['drum diameter', 22.5, 570, 'dimension', 'inside'],
  ['drum height', 33, 850, 'dimension', 'inside'],
  ['cone bottom', 4, 100, 'dimension', 'bore of the drain that the cone ends at'],
  ['cone height', 9.25, 240, 'dimension', '45 degrees or steeper: see the cone cut plan'],
  ['pieces', 1, 1, undefined, 'that a cone is cut in'],
  ['lap', 0.75, 20, 'dimension', 'strip for the seam'],
  ['thickness', 0.0625, 1.5, 'dimension', 'of the sheet'],
  ['rivet spacing', 1.5, 40, 'dimension', 'at most'],
  ['sheet length', 96, 2000, 'dimension', 'as sold'],
  ['sheet width', 48, 1000, 'dimension', 'as sold'],
  ['gap', 0.25, 5, 'dimension', 'between pieces and from the sheet’s edge'],
  ['base rise', 1, 25, 'dimension', 'cone’s foot above the drum floor'],
  ['mix parts', 6, 6, undefined, 'of light aggregate to 1 of cement, by volume'],
  ['pipe size', '2', '63 mm', undefined, 'nominal, as the shop calls it'],
  ['wall seal', 'grommet', 'grommet', undefined, 'grommet or bulkhead'],
  ['container height', 14.5, 370, 'dimension', 'of the pail under the valve'],
  ['drain drop', 6, 150, 'dimension', 'valve below the stand’s top'],
  ['legs', 4, 4, undefined, 'of a stand'],
];

const last = 4 + inputs.length;
/** Names and values, as PLAN.PARTS takes them. */
export const bankRange = `Bank!$A$5:$B$${last}`;
export const drumCount = 'Bank!$B$5';

/** The bank of settling drums, in names and values. */
export function bankSheet(profile: ReadyProfile): SheetData {
  const widths = [24, 14, 12, 60];
  const draft = framed({
    name: 'Bank',
    title: 'The bank of settling drums',
    step: 'One row an input; the names in the first column have to stay as they are.',
    caution: cautions.drums,
    widths,
  });
  draft.across('A4', ['Input', 'Value', 'Unit', 'Meaning'], 'heading');
  inputs.forEach(([name, us, metric, kind, meaning], index) => {
    const row = 5 + index;
    draft
      .put(`A${row}`, name, 'heading')
      .put(`B${row}`, profile === 'US' ? us : metric, 'input')
      .put(`D${row}`, meaning, 'note');
    if (kind !== undefined) draft.put(`C${row}`, unitOf(kind), 'note');
  });
  const seal = 5 + inputs.findIndex(([name]) => name === 'wall seal');
  draft.choice(`B${seal}`, ['grommet', 'bulkhead'], 'what seals pipe in the drum wall');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: 'E0B400',
    print: print(profile, `A1:D${last}`, { landscape: false }),
  });
}

/** Rows that the bill of materials may have. */
const mostParts = 26;
const lastPart = 4 + mostParts;
export const partRows = `Parts!$A$5:$C$${lastPart}`;
export const partNames = `Parts!$A$5:$A$${lastPart}`;

/** Everything that is bought, with how each quantity was figured. */
export function partsSheet(profile: ReadyProfile): SheetData {
  const widths = [22, 10, 8, 85];
  const draft = framed({
    name: 'Parts',
    title: 'What the bank takes, and how each quantity was figured',
    step: 'Nothing to type. Counts of fittings and runs of pipe are common practice: measure your own before you buy.',
    caution: cautions.metals,
    widths,
  });
  draft
    .fill('A4:D4', 'heading')
    .fill(`A5:D${lastPart}`, 'result')
    .fill(`B5:B${lastPart}`, formatted('result', formats.two))
    .put('A4', `=SILT.PLAN.PARTS(SiltUnits,${bankRange},TRUE)`, 'heading');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    print: print(profile, `A1:D${lastPart}`),
  });
}
