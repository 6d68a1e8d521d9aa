import { likelySolids, unlikePulls } from '../../../formulas/harvest/likely-pull';
import type { SheetData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, unitOf } from '../frame';
import { cautionWord, readAs } from '../likely';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted, styles } from '../styles';

/** The last row of the log, which has room for about a year. */
const last = 400;
export const pullDates = `Pulls!$A$6:$A$${last}`;
/** Date, slurry volume and solids share of the pulls; one without its date is told of, not left out. */
export const usedPulls = `FILTER(Pulls!$A$6:$C$${last},(${pullDates}<>"")+(Pulls!$B$6:$B$${last}<>"")>0)`;

/** 2026-03-02 as a spreadsheet's day number. */
const firstDay = 46_083;
const days = 84;

/** Pail readings of three weeks, repeated; a blank is a day on which nobody pulled. */
const liters = [15, 16, 15, 17, 16, 14, '', 17, 18, 17, 16, 18, 17, 15, 18, 19, 18, 20, 19, 17, ''] as const;
const gallons = [
  4,
  4.25,
  4,
  4.5,
  4.25,
  3.75,
  '',
  4.5,
  4.75,
  4.5,
  4.25,
  4.75,
  4.5,
  4,
  4.75,
  5,
  4.75,
  5.25,
  5,
  4.5,
  '',
] as const;
/** Share of solids in a dried cup, taken once a month. */
const shares = [0.018, 0.021, 0.022, 0.02] as const;
const months = [31, 30, 31, 30] as const;

/** Which month a day falls in, counted from March. */
function monthOf(day: number): number {
  let end = 0;
  return months.findIndex((length) => {
    end += length;
    return day + 1 < end;
  });
}

const ofPull = 'a pull of';
const ofSolids = 'solids share of';

/** What to check in each row: a volume far from those of the two pulls before it, or in the first rows after it. */
function pullCautions(): string {
  const read = (column: string, kind: 'volume' | 'share', from: number): string => {
    const cells = `${column}${6 + from}:${column}${last + from}`;
    return `IFERROR(IF(${cells}="","",${readAs(kind, cells)}),"")`;
  };
  const both = (one: string, other: string): string => `ISNUMBER(${one})*ISNUMBER(${other})`;
  const lesser = (one: string, other: string): string => `IF(${one}<${other},${one},${other})`;
  const greater = (one: string, other: string): string => `IF(${one}>${other},${one},${other})`;
  const beside = (pick: typeof lesser, factor: string): string =>
    `IF(${both('above', 'higher')},${pick('above', 'higher')}${factor},IF(${both('below', 'lower')},${pick('below', 'lower')}${factor},""))`;
  const unit = '" "&SILT.UNIT.LABEL(SiltUnits,"volume")';
  const round = (figure: string): string => `ROUND(${figure},IF(${figure}<10,2,0))`;
  const isUnlike = (figure: string, least: string, most: string): string =>
    `IF(ISNUMBER(${figure})*ISNUMBER(${least}),(${figure}<${least})+(${figure}>${most})>0,FALSE)`;
  const names = [
    ['volume', read('B', 'volume', 0)],
    ['above', read('B', 'volume', -1)],
    ['higher', read('B', 'volume', -2)],
    ['below', read('B', 'volume', 1)],
    ['lower', read('B', 'volume', 2)],
    ['solids', read('C', 'share', 0)],
    ['least', beside(lesser, `/${unlikePulls}`)],
    ['most', beside(greater, `*${unlikePulls}`)],
    [
      'ofVolume',
      `IF(${isUnlike('volume', 'least', 'most')},"${ofPull} "&ROUND(volume,4)&${unit}&" is not likely; the usual range here is "&${round('least')}&" to "&${round('most')}&${unit}&". ","")`,
    ],
    [
      'ofSolids',
      `IF(ISNUMBER(solids)*((solids<${likelySolids.least})+(solids>${likelySolids.most})>0),"a ${ofSolids} "&ROUND(100*solids,4)&" % is not likely; the usual range is ${100 * likelySolids.least} to ${100 * likelySolids.most} %. ","")`,
    ],
  ];
  return `=LET(${names.flat().join(',')},IF(ofVolume&ofSolids="","","${cautionWord}: "&ofVolume&ofSolids&"Check the number and its unit."))`;
}

const checkStyle = { ...styles.note, fontSize: 9 } as const;

/** The daily log: what was pulled, and how much of it is solids. */
export function pullsSheet(profile: ReadyProfile): SheetData {
  const widths = [12, 13, 11, 22, 62];
  const draft = framed({
    name: 'Pulls',
    title: 'Daily pulls',
    step: 'Pull until the water runs clear, read the pail and write down the day; several rows per day are fine. Once a month, dry a weighed cup of slurry until its weight stops falling: dry mass divided by wet mass is the solids share.',
    caution: cautions.solids,
    widths,
  });
  draft
    .put('A4', 'yyyy-mm-dd', 'note')
    .put('B4', unitOf('volume'), 'note')
    .put('C4', 'by mass', 'note')
    .across('A5', ['Date', 'Slurry volume', 'Solids share', 'Remark'], 'heading')
    .put('E5', 'What to check', 'heading')
    .height(5, 32)
    .fill(`E6:E${last}`, checkStyle)
    .put('E6', pullCautions(), checkStyle)
    .alarm(`B6:B${last}`, `=ISNUMBER(SEARCH("${ofPull}",$E6))`)
    .alarm(`C6:C${last}`, `=ISNUMBER(SEARCH("${ofSolids}",$E6))`);
  const pails = profile === 'US' ? gallons : liters;
  const filled: (readonly [number, number, number, string])[] = [];
  for (let day = 0; day < days; day += 1) {
    const pail = pails[day % pails.length] ?? '';
    const month = monthOf(day);
    const remark = day === 0 || monthOf(day - 1) !== month ? 'cup dried' : day === 40 ? 'pads rinsed, ran dark' : '';
    if (pail !== '') filled.push([firstDay + day, pail, shares[month] ?? 0, remark]);
  }
  filled.forEach(([date, pail, share, remark], index) => {
    const row = 6 + index;
    draft
      .put(`A${row}`, date, formatted('input', formats.date))
      .put(`B${row}`, pail, 'input')
      .put(`C${row}`, share, formatted('input', formats.share))
      .put(`D${row}`, remark, 'input');
  });
  const lastFilled = 5 + filled.length;
  draft
    .validate({
      range: `A6:A${last}`,
      type: 'date',
      operator: 'greaterThan',
      formulas: ['36526'],
      errorTitle: 'Date',
      error: 'Give the day as a date, such as 2026-03-02.',
    })
    .validate({
      range: `C6:C${last}`,
      type: 'decimal',
      operator: 'between',
      formulas: ['0', '1'],
      errorTitle: 'Solids share',
      error: 'Give a share from 0 to 1, or a percentage: 2 % is 0.02.',
    });
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 5,
    tabColor: 'E0B400',
    tables: [{ name: 'PullLog', range: `A5:D${lastFilled}` }],
    print: print(profile, `A1:E${lastFilled}`, { landscape: false, titleRows: '1:5' }),
  });
}
