import type { SheetData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, unitOf, withUnit } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { anyGiven } from './any-given';

const last = 40;

/** 2026-04-06 as a spreadsheet's day number. */
const firstTest = 46_118;

/** Days since the first test, ammonia nitrogen before and after the filter, mg/L. */
const pairs: readonly (readonly [number, number, number])[] = [
  [0, 1.1, 0.72],
  [3, 1.3, 0.86],
  [7, 0.9, 0.55],
  [10, 1.2, 0.81],
  [14, 1.0, 0.66],
  [17, 1.15, 0.74],
];

/** Pairs of readings, and how much the filter removes. */
export function filterSheet(profile: ReadyProfile): SheetData {
  const us = profile === 'US';
  const widths = [14, 15, 15, 3, 32, 14, 14, 14, 14];
  const draft = framed({
    name: 'Filter',
    title: 'What your filter removes',
    step: 'One row per test: total ammonia nitrogen before and after the filter, within one minute. Type the flow and the temperature during the tests.',
    caution: cautions.water,
    widths,
  });
  draft
    .put('A4', 'yyyy-mm-dd', 'note')
    .put('B4', unitOf('concentration'), 'note')
    .put('C4', unitOf('concentration'), 'note')
    .across('A5', ['Date', 'Ammonia N before filter', 'Ammonia N after filter'], 'heading')
    .height(5, 48)
    .fill(`A6:A${last}`, formatted('input', formats.date))
    .fill(`B6:C${last}`, 'input');
  pairs.forEach(([day, inlet, outlet], index) => {
    draft
      .put(`A${6 + index}`, firstTest + day, formatted('input', formats.date))
      .put(`B${6 + index}`, inlet, 'input')
      .put(`C${6 + index}`, outlet, 'input');
  });
  draft
    .fill('E5:I5', 'heading')
    .fill('E6', formatted('total', formats.four))
    .fill('F6', formatted('total', formats.share))
    .fill('G6:H6', formatted('total', formats.three))
    .fill('I6', formatted('total', '0.00%'))
    .put('E5', `=SILT.FILTER.TEST(SiltUnits,F10,B6:B${last},C6:C${last},F11,IF(ISBLANK(F12),0,F12),TRUE)`, 'heading')
    .put('E9', 'Your filter', 'section')
    .put('E10', withUnit('Flow through the filter', 'flow'))
    .put('F10', us ? 9 : 35, 'input')
    .put('E11', withUnit('Surface of the media', 'area'))
    .put('F11', us ? 520 : 49, 'input')
    .put('E12', withUnit('Water temperature', 'temperature'))
    .put('F12', us ? 80 : 26.5, 'input')
    .put('E13', 'Pairs')
    .put('F13', `=SUM((B6:B${last}<>"")*1)`, 'result', 'Readings with a unit count too.');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 5,
    tabColor: '6B8E23',
    print: print(profile, `A1:I${last}`, { landscape: false, fitToHeight: 1, titleRows: '1:5' }),
  });
}

export const filterFigures = {
  share: 'Filter!F6',
  rate: 'Filter!H6',
  error: 'Filter!I6',
  pairs: 'Filter!F13',
} as const;

/** Minutes since the aerator started, oxygen in mg/L. */
const rise: readonly (readonly [number, number])[] = [
  [0, 0.6],
  [3, 1.8],
  [6, 2.75],
  [10, 3.9],
  [15, 5.0],
  [20, 5.75],
  [28, 6.65],
  [38, 7.3],
  [50, 7.65],
  [70, 7.95],
];

/** Oxygen as it rises again, and how much the aerator supplies. */
export function airSheet(profile: ReadyProfile): SheetData {
  const us = profile === 'US';
  const widths = [14, 14, 3, 26, 15, 15, 15, 17];
  const draft = framed({
    name: 'Air',
    title: 'What your aerator supplies',
    step: 'Use a tank without fish and remove its oxygen first. One row per reading: minutes since the aerator started, and oxygen. Read from below a third of saturation to above nine tenths.',
    caution: cautions.electricity,
    widths,
  });
  draft
    .put('B4', unitOf('concentration'), 'note')
    .across('A5', ['Minutes', 'Oxygen'], 'heading')
    .fill(`A6:B${last}`, 'input');
  rise.forEach((line, index) => {
    draft.across(`A${6 + index}`, line, 'input');
  });
  draft
    .fill('D5:H5', 'heading')
    .height(5, 48)
    .fill('D6:F6', formatted('total', formats.two))
    .fill('G6', formatted('total', '0.00000'))
    .fill('H6', formatted('total', formats.three))
    .put(
      'D5',
      `=SILT.AIR.TEST(SiltUnits,FILTER(A6:B${last},${anyGiven(['A', 'B'], last)}),E10,E11,E12,0,TRUE)`,
      'heading',
    )
    .put('D9', 'The test', 'section')
    .put('D10', withUnit('Water in the tank', 'volume'))
    .put('E10', us ? 265 : 1000, 'input')
    .put('D11', withUnit('Temperature', 'temperature'))
    .put('E11', us ? 79 : 26, 'input')
    .put('D12', withUnit('Height above sea level', 'run'))
    .put('E12', us ? 260 : 80, 'input')
    .put('D13', 'Readings')
    .put('E13', `=SUM((B6:B${last}<>"")*1)`, 'result', 'Readings with a unit count too.');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 5,
    tabColor: 'E0B400',
    charts: [
      {
        type: 'scatter',
        title: 'Oxygen as it rises again',
        place: 'D15:H32',
        series: [
          { name: 'Air!$B$5', categories: `Air!$A$6:$A$${5 + rise.length}`, values: `Air!$B$6:$B$${5 + rise.length}` },
        ],
        categoryTitle: 'minutes',
        valueTitle: 'mg/L',
        valueFormat: '0.0',
      },
    ],
    print: print(profile, `A1:H${last}`, { landscape: false, fitToHeight: 1, titleRows: '1:5' }),
  });
}

export const airFigures = { transfer: 'Air!D6', standard: 'Air!G6', error: 'Air!H6', readings: 'Air!E13' } as const;
