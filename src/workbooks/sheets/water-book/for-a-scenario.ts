import type { SheetData } from '../../../hosts/workbook-model';
import { columnWidths, framed, print, withUnit } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { testColumn } from './tests';

/** Scenario input, where it comes from, and its formula over the sheet Tests. */
const inputs = [
  [
    'temperature',
    'mean of the tests',
    `=SILT.UNIT.READ(SiltUnits,"temperature",AVERAGE(${testColumn('temperature')}))`,
    'temperature',
  ],
  [
    'coldest water',
    'lowest of the tests',
    `=SILT.UNIT.READ(SiltUnits,"temperature",MIN(${testColumn('temperature')}))`,
    'temperature',
  ],
  [
    'hottest water',
    'highest of the tests',
    `=SILT.UNIT.READ(SiltUnits,"temperature",MAX(${testColumn('temperature')}))`,
    'temperature',
  ],
  ['pH', 'mean of the tests', `=AVERAGE(${testColumn('pH')})`, undefined],
  ['highest pH', 'highest of the tests', `=MAX(${testColumn('pH')})`, undefined],
] as const;

/** The farm's own water from the tests, named as scenario inputs. */
export function forScenarioSheet(profile: ReadyProfile): SheetData {
  const widths = [24, 16, 30, 30];
  const draft = framed({
    name: 'For a scenario',
    title: 'Your own water, for a scenario',
    step: 'No input needed on this sheet. Copy the first two columns into a scenario. Daytime tests miss the coldest and the hottest hours: if you know those, type them instead. For readings of the filter, use the workbook Own figures.',
    widths,
  });
  draft.across('A4', ['input', 'own water', 'where from', 'unit'], 'heading');
  inputs.forEach(([name, from, formula, kind], index) => {
    const row = 5 + index;
    draft
      .put(`A${row}`, name, 'result')
      .put(`B${row}`, formula, formatted('total', formats.one))
      .put(`C${row}`, from, 'note')
      .put(`D${row}`, kind === undefined ? '' : withUnit('in the unit of this book', kind), 'note');
  });
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    print: print(profile, `A1:D${4 + inputs.length}`, { fitToHeight: 1 }),
  });
}
