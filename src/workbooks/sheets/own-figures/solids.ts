import type { SheetData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, unitOf } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { anyGiven } from './any-given';

const last = 40;

/** 2026-03-08 as a spreadsheet's day number. */
const firstWeek = 46_089;

/** Liters of slurry pulled in the week, solids share of a dried cup, kg of feed. */
const weeks: readonly (readonly [number, number, number])[] = [
  [98, 0.0062, 3.9],
  [104, 0.0066, 4.1],
  [101, 0.0058, 4.2],
  [110, 0.0064, 4.3],
  [108, 0.0071, 4.4],
  [112, 0.0063, 4.6],
];

/** Dry solids that the drums give per week, and the share of the feed that they are. */
export function solidsSheet(profile: ReadyProfile): SheetData {
  const us = profile === 'US';
  const widths = [14, 15, 13, 13, 15, 13, 3, 22, 13];
  const draft = framed({
    name: 'Solids',
    title: 'Dry solids from your feed',
    step: 'One row per week: the slurry that you pulled, the solids share of a dried cup, and the feed. Captured is the share of all solids that your drums catch at steady state: LOAD.SHARES gives it.',
    caution: cautions.solids,
    widths,
  });
  draft
    .put('A4', 'week ending', 'note')
    .put('B4', unitOf('volume'), 'note')
    .put('C4', 'by mass', 'note')
    .put('D4', unitOf('mass'), 'note')
    .put('E4', unitOf('mass'), 'note')
    .across('A5', ['Date', 'Slurry pulled', 'Solids in slurry', 'Feed', 'Dry solids', 'Solids share'], 'heading')
    .height(5, 32)
    .fill(`A6:A${last}`, formatted('input', formats.date))
    .fill(`B6:B${last}`, 'input')
    .fill(`C6:C${last}`, formatted('input', '0.00%'))
    .fill(`D6:D${last}`, 'input')
    .fill(`E6:E${last}`, formatted('result', formats.three))
    .fill(`F6:F${last}`, formatted('result', formats.share));
  weeks.forEach(([liters, share, feed], index) => {
    const row = 6 + index;
    draft
      .put(`A${row}`, firstWeek + 7 * index, formatted('input', formats.date))
      .put(`B${row}`, us ? Math.round(liters * 0.264172) : liters, 'input')
      .put(`C${row}`, share, formatted('input', '0.00%'))
      .put(`D${row}`, us ? Math.round(feed * 22.04623) / 10 : feed, 'input');
  });
  const anyBlank = (columns: readonly string[]) =>
    columns.map((column) => `(${column}6:${column}${last}="")`).join('+');
  draft
    .put(
      'E6',
      `=IF(${anyBlank(['B', 'C'])},"",SILT.UNIT.READ(SiltUnits,"volume",B6:B${last})/SILT.HARVEST.SLURRY(SiltUnits,1,C6:C${last}))`,
      formatted('result', formats.three),
      'Slurry pulled, divided by the slurry that holds one unit of dry solids (HARVEST.SLURRY).',
    )
    .put(
      'F6',
      `=IF(${anyBlank(['B', 'C', 'D'])},IF(${anyGiven(['B', 'C', 'D'], last)},"incomplete",""),SILT.LOAD.SHARE(SiltUnits,E6:E${last},D6:D${last},IF(ISBLANK($I$6),0,$I$6)))`,
      formatted('result', formats.share),
    )
    .put('H5', 'Your drums', 'section')
    .put('H6', 'Captured')
    .put(
      'I6',
      0.86,
      formatted('input', '0%'),
      'At steady state, not per pass: see LOAD.SHARES or the stocking workbook.',
    )
    .put('H7', 'Mean solids share', 'total')
    .put('I7', `=AVERAGE(F6:F${last})`, formatted('total', formats.share))
    .put('H8', 'Weeks', 'label')
    .put('I8', `=COUNT(F6:F${last})`, 'result')
    .put('H9', 'Standard error', 'label')
    .put('I9', `=IF(I8<2,"",STDEV(F6:F${last})/SQRT(I8))`, formatted('result', '0.00%'));
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 5,
    tabColor: '8A6D3B',
    print: print(profile, `A1:I${last}`, { landscape: false, fitToHeight: 1, titleRows: '1:5' }),
  });
}

/** What the summary reads. */
export const solidsFigures = { share: 'Solids!I7', error: 'Solids!I9', weeks: 'Solids!I8' } as const;
