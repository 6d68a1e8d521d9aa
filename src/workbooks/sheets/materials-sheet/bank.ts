import type { SheetData } from '../../../hosts/workbook-model';
import type { Kind } from '../../../units/kinds';
import { cautions } from '../cautions';
import { columnWidths, framed, print, unitOf } from '../frame';
import { cautionWord, type Likely, likelyNote, readAs } from '../likely';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted, styles } from '../styles';
import { ownItems, ownRows } from './own-parts';

type Entry = number | string;

/** Name, US value, metric value, kind of the value, likely range, meaning. */
const inputs: readonly (readonly [
  name: string,
  us: Entry,
  metric: Entry,
  kind: Kind | undefined,
  likely: Likely | undefined,
  meaning: string,
])[] = [
  ['drums', 4, 4, undefined, ['1', '100'], 'in the bank, side by side'],
  ['drum diameter', 22.5, 570, 'dimension', ['150 mm', '1500 mm'], 'inside'],
  ['drum height', 33, 850, 'dimension', ['200 mm', '2500 mm'], 'inside'],
  ['cone bottom', 4, 100, 'dimension', ['10 mm', '300 mm'], 'bore of the drain at the cone’s foot'],
  ['cone height', 9.25, 240, 'dimension', ['30 mm', '1500 mm'], '45 degrees or steeper: see the cone cut plan'],
  ['pieces', 1, 1, undefined, ['1', '24'], 'equal pieces that make a cone'],
  ['lap', 0.75, 20, 'dimension', ['0 mm', '100 mm'], 'extra strip for the seam'],
  ['thickness', 0.0625, 1.5, 'dimension', ['0 mm', '10 mm'], 'of the sheet'],
  ['rivet spacing', 1.5, 40, 'dimension', ['5 mm', '300 mm'], 'at most'],
  ['sheet length', 96, 2000, 'dimension', ['300 mm', '12 m'], 'as sold'],
  ['sheet width', 48, 1000, 'dimension', ['200 mm', '3 m'], 'as sold'],
  ['gap', 0.25, 5, 'dimension', ['0 mm', '100 mm'], 'between pieces and from the sheet’s edge'],
  ['base rise', 1, 25, 'dimension', ['0 mm', '500 mm'], 'cone’s foot above the drum floor'],
  ['mix parts', 6, 6, undefined, ['1', '20'], 'of light aggregate to 1 of cement, by volume'],
  ['pipe size', '2', '63 mm', undefined, undefined, 'nominal, as the shop calls it'],
  ['wall seal', 'grommet', 'grommet', undefined, undefined, 'grommet or bulkhead'],
  ['container height', 14.5, 370, 'dimension', ['50 mm', '1200 mm'], 'of the pail under the valve'],
  ['drain drop', 6, 150, 'dimension', ['0 mm', '1000 mm'], 'valve below the stand’s top'],
  ['legs', 4, 4, undefined, ['1', '12'], 'of a stand'],
];

function cellOf(name: string): string {
  return `B${5 + inputs.findIndex(([one]) => one === name)}`;
}

/** A condition: the first size is not less than the second. */
function notLess(one: string, other: string): string {
  return `${readAs('dimension', cellOf(one))}>=${readAs('dimension', cellOf(other))}`;
}

/** Sizes that must be a mistake beside other sizes of the bank. */
const beside: Readonly<Record<string, readonly (readonly [condition: string, words: string])[]>> = {
  'cone bottom': [[notLess('cone bottom', 'drum diameter'), 'the drain is as wide as the drum.']],
  'cone height': [
    [notLess('cone height', 'drum height'), 'the cone is as tall as the drum.'],
    [notLess('cone height', 'drum diameter'), 'the cone is taller than the drum is wide.'],
  ],
};

const last = 4 + inputs.length;
/** Names and values, as PLAN.PARTS takes them. */
export const bankRange = `Bank!$A$5:$B$${last}`;
export const drumCount = 'Bank!$B$5';

/** The meaning of an input, or a caution about what was typed. A bare pipe size is in inches, and no pipe is 63 in wide. */
function noteOf(
  row: number,
  name: string,
  kind: Kind | undefined,
  likely: Likely | undefined,
  meaning: string,
): string {
  if (likely !== undefined) return likelyNote(`B${row}`, kind, likely, meaning, beside[name]);
  if (name !== 'pipe size') return meaning;
  return `=IF(IFERROR(0+B${row}>12,FALSE),"${cautionWord}: "&B${row}&" is read as inches. For a metric size type the unit, such as 63 mm.","${meaning}")`;
}

/** The bank of settling drums, in names and values. */
export function bankSheet(profile: ReadyProfile): SheetData {
  const widths = [24, 14, 12, 60];
  const draft = framed({
    name: 'Bank',
    title: 'The bank of settling drums',
    step: 'One row per input. Do not change the names in the first column.',
    caution: cautions.drums,
    widths,
  });
  draft.across('A4', ['Input', 'Value', 'Unit', 'Meaning'], 'heading');
  inputs.forEach(([name, us, metric, kind, likely, meaning], index) => {
    const row = 5 + index;
    draft
      .put(`A${row}`, name, 'heading')
      .put(`B${row}`, profile === 'US' ? us : metric, 'input')
      .put(`D${row}`, noteOf(row, name, kind, likely, meaning), 'note')
      .alarm(`B${row}`, `=LEFT(D${row},${cautionWord.length})="${cautionWord}"`);
    if (kind !== undefined) draft.put(`C${row}`, unitOf(kind), 'note');
  });
  const seal = 5 + inputs.findIndex(([name]) => name === 'wall seal');
  draft.choice(`B${seal}`, ['grommet', 'bulkhead'], 'What seals the pipe in the drum wall?');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: 'E0B400',
    print: print(profile, `A1:D${last}`, { landscape: false }),
  });
}

/** The bill of materials has room for this many rows. */
const mostParts = 26;
const lastOfBank = 4 + mostParts;
/** The cell of the bill of materials, which is an error if the bank is not right. */
export const bankParts = 'Parts!$A$4';
/** What the bank needs, without the user's own parts. */
export const bankPartNames = `Parts!$A$5:$A$${lastOfBank}`;
export const bankPartUnits = `Parts!$C$5:$C$${lastOfBank}`;
const lastPart = lastOfBank + ownRows;
export const partRows = `Parts!$A$5:$C$${lastPart}`;
export const partNames = `Parts!$A$5:$A$${lastPart}`;
export const partUnits = `Parts!$C$5:$C$${lastPart}`;

/** Everything to buy, with how each quantity was calculated. */
export function partsSheet(profile: ReadyProfile): SheetData {
  const widths = [22, 10, 8, 81];
  const draft = framed({
    name: 'Parts',
    title: 'What the bank needs, and how each quantity was calculated',
    step: 'No input needed on this sheet. Counts of fittings and runs of pipe are common practice: measure your own before you buy.',
    caution: cautions.metals,
    widths,
  });
  draft
    .fill('A4:D4', 'heading')
    .fill(`A5:D${lastPart}`, 'result')
    .fill(`B5:B${lastPart}`, formatted('result', formats.two))
    .fill(`D5:D${lastPart}`, { ...styles.result, fontSize: 9 })
    .put('A4', `=SILT.PLAN.PARTS(SiltUnits,${bankRange},TRUE)`, 'heading')
    .put(`A${lastOfBank + 1}`, `=${ownItems}`, 'result')
    .put(`D${lastOfBank + 1}`, `=IF(A${lastOfBank + 1}:A${lastPart}="","","your own: see Materials")`, 'result');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    print: print(profile, `A1:D${lastPart}`, { fitToHeight: 1 }),
  });
}
