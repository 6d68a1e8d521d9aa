import type { ChartData, SheetData } from '../../workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { scenarioHeadings, scenarioRange, scenarioTitles } from './scenarios';

/** The results in the order of PLAN.COMPARE, from row 5, and how their figures are shown. */
const shown = {
  biomass: formats.one,
  stocking: formats.three,
  feed: formats.three,
  solids: formats.three,
  ammonia: '#,##0.0000',
  oxygen: formats.three,
  'carbon dioxide': formats.three,
  'flow needed': formats.one,
  'flow asked for by': formats.one,
  turnover: formats.one,
  'drums needed': formats.whole,
  'overflow rate': formats.two,
  'solids captured': formats.three,
  'solids passed on': formats.three,
  'pads needed': formats.whole,
  'days between pad changes': formats.one,
  'media surface': formats.whole,
  'media volume': formats.one,
  'alkali a day': formats.three,
  'bed area': formats.one,
  plants: formats.whole,
  'days between bed cleanings': formats.whole,
  'slurry a day': formats.two,
  'nitrogen a year': formats.two,
  'phosphate a year': formats.two,
  'potash a year': formats.three,
  'garden area': formats.whole,
  'oxygen time': formats.one,
  'power cost a month': formats.money,
  'feed cost a month': formats.money,
  'harvest value a year': formats.money,
  'gives out first': 'General',
  'defaults taken': 'General',
} as const;
type ResultName = keyof typeof shown;
const results = Object.keys(shown) as readonly ResultName[];

/** The row of a result on the sheet Compare, counted from 1. */
function resultRow(name: ResultName): number {
  return 5 + results.indexOf(name);
}

const last = 4 + results.length;

function chart(title: string, place: string, names: readonly ResultName[], more: Partial<ChartData>): ChartData {
  return {
    type: 'column',
    title,
    place,
    series: names.map((name) => {
      const row = resultRow(name);
      return { name: `Compare!$A$${row}`, categories: 'Compare!$C$4:$F$4', values: `Compare!$C$${row}:$F$${row}` };
    }),
    ...more,
  };
}

/** Every result, side by side, with what gives out first. */
export function compareSheet(profile: ReadyProfile): SheetData {
  const widths = [28, 12, 18, 18, 18, 18];
  const draft = framed({
    name: 'Compare',
    title: 'The scenarios side by side',
    step: 'Nothing to type. Each figure is the one that the stage’s own function gives. A plan, not a promise: makers’ sheets, local advice and licensed practice come first.',
    widths,
  });
  draft.fill('A4:F4', 'heading').fill(`A5:B${last}`, 'result').fill(`C5:F${last}`, 'result');
  for (const name of results) draft.fill(`C${resultRow(name)}:F${resultRow(name)}`, formatted('result', shown[name]));
  draft
    .fill(`A${resultRow('gives out first')}:F${resultRow('gives out first')}`, 'total')
    .put('A4', `=SILT.PLAN.COMPARE(SiltUnits,${scenarioRange})`, 'heading');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    frozenColumns: 2,
    tabColor: '1F7A8C',
    charts: [
      chart('Feed and solids a day', 'H4:O18', ['feed', 'solids', 'solids captured'], {
        valueTitle: 'a day, in the unit of column B',
        valueFormat: '0.0',
      }),
      chart('Minutes that the fish have when pump and air stop', 'H20:O34', ['oxygen time'], {
        valueTitle: 'minutes',
        valueFormat: '0',
      }),
      chart('Feed and power a month', 'P4:W18', ['feed cost a month', 'power cost a month'], {
        valueTitle: 'money',
        valueFormat: '#,##0',
      }),
      chart('Plants that the feed carries', 'P20:W34', ['plants'], { valueTitle: 'plants', valueFormat: '#,##0' }),
    ],
    print: print(profile, `A1:F${last}`, { landscape: false, fitToHeight: 1 }),
  });
}

/** What each stage of one farm carries, and what is to be said against it. */
export function limitSheet(profile: ReadyProfile): SheetData {
  const widths = [40, 18, 14, 14, 70];
  const draft = framed({
    name: 'Limit',
    title: 'Which stage gives out first',
    step: 'Choose a scenario. Each stage is figured at its worst water; the last row names the stage that gives out first, and the next.',
    caution: cautions.electricity,
    widths,
  });
  const chosen = `FILTER(${scenarioRange},(${scenarioHeadings}="input")+(${scenarioHeadings}=$B$4))`;
  draft
    .put('A4', 'Scenario', 'heading')
    .put('B4', '350 fish', 'input')
    .choiceFrom('B4', scenarioTitles, 'a column of Scenarios')
    .fill('A6:E6', 'heading')
    .fill('A7:E18', 'result')
    .fill('B7:B18', formatted('result', '#,##0.0##'))
    .fill('C7:C18', formatted('result', '#,##0'))
    .fill('D7:D18', formatted('result', '0%'))
    .put('A6', `=SILT.PLAN.LIMIT(SiltUnits,${chosen},TRUE)`, 'heading')
    .put('A20', 'Cautions for this scenario', 'section')
    .put('A21', `=SILT.PLAN.CHECK(SiltUnits,${chosen})`, 'label');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    print: print(profile, 'A1:E45', { fitToHeight: 1 }),
  });
}
