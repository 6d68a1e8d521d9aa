import { numberFormats } from '../../../catalogue/number-formats';
import { compareRows, type ResultKey, resultKeys, scenarioResults } from '../../../catalogue/plan/scenario-results';
import { balancePlaces } from '../../../formulas/plan/plan-balance';
import type { ChartData, SheetData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formatted, styles } from '../styles';
import { chosenScenario, putScenarioChooser, scenarioRange } from './scenarios';

/** The row of a result on the sheet Compare, counted from 1. */
function resultRow(key: ResultKey): number {
  return 5 + resultKeys.indexOf(key);
}

const last = 4 + compareRows.length;

function chart(title: string, place: string, keys: readonly ResultKey[], more: Partial<ChartData>): ChartData {
  return {
    type: 'column',
    title,
    place,
    series: keys.map((key) => {
      const row = resultRow(key);
      return { name: `Compare!$A$${row}`, categories: 'Compare!$C$4:$F$4', values: `Compare!$C$${row}:$F$${row}` };
    }),
    ...more,
  };
}

/** The cell with the unit of a result: the axis of its chart is named by it in every profile. */
function unitCell(key: ResultKey): string {
  return `Compare!$B$${resultRow(key)}`;
}

/** Every result, side by side, with the first limit. */
export function compareSheet(profile: ReadyProfile): SheetData {
  const widths = [26, 10, 20, 20, 20, 20];
  const draft = framed({
    name: 'Compare',
    title: 'The scenarios side by side',
    step: 'No input needed on this sheet. Each figure comes from the function of its stage. Turnover, drums needed and overflow rate are for the flow that runs: the pump’s, or the flow needed if no pump is given. If flow needed is larger, the feed needs more drums; if it is never, no number of drums is enough. Limit says why. This is a plan, not a promise: makers’ sheets, local advice and licensed practice come first.',
    widths,
  });
  draft.fill('A4:F4', 'heading').fill(`A5:B${last}`, 'result').fill(`C5:F${last}`, 'result');
  for (const key of resultKeys) {
    const format = numberFormats[scenarioResults[key].format];
    draft.fill(`C${resultRow(key)}:F${resultRow(key)}`, formatted('result', format));
  }
  draft
    .fill(`A${resultRow('firstLimit')}:F${resultRow('firstLimit')}`, 'total')
    // Drums needed would pass for an answer where no flow, and so no number of drums, is enough.
    .alarm(`C${resultRow('flowNeeded')}:F${resultRow('flowNeeded')}`, `=C$${resultRow('flowNeeded')}="never"`)
    .alarm(`C${resultRow('drumsNeeded')}:F${resultRow('drumsNeeded')}`, `=C$${resultRow('flowNeeded')}="never"`)
    // A scenario takes up to sixty defaults: small print, in a row that is tall enough for them.
    .fill(`A${last}:B${last}`, 'tall')
    .fill(`C${last}:F${last}`, { ...styles.result, wrap: true, vertical: 'top', fontSize: 8 })
    .height(last, 300)
    .put('A4', `=SILT.PLAN.COMPARE(SiltUnits,${scenarioRange})`, 'heading');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    frozenColumns: 2,
    tabColor: '1F7A8C',
    charts: [
      chart(
        'Solids per day: made, and where they go',
        'H4:O18',
        ['solids', 'solidsCaptured', 'solidsToPads', 'solidsToBeds'],
        {
          valueTitle: unitCell('solids'),
          valueFormat: '0.0',
        },
      ),
      chart('Minutes that the fish have when pump and air stop', 'H20:O34', ['oxygenTime'], {
        valueTitle: 'minutes',
        valueFormat: '0',
      }),
      chart('Feed and power cost per month', 'P4:W18', ['feedCostPerMonth', 'powerCostPerMonth'], {
        valueTitle: 'money',
        valueFormat: '#,##0',
      }),
      chart('Plants that the feed supports', 'P20:W34', ['plants'], { valueTitle: 'plants', valueFormat: '#,##0' }),
      chart('Solids and nitrate in the tank at steady state', 'H36:O50', ['solidsInTank', 'nitrateInTank'], {
        valueTitle: unitCell('solidsInTank'),
        valueFormat: '#,##0',
      }),
      chart('Ammonia in the tank, as N', 'P36:W50', ['ammoniaInTank'], {
        valueTitle: unitCell('ammoniaInTank'),
        valueFormat: '0.00',
      }),
    ],
    print: print(profile, `A1:F${last}`, { landscape: false, fitToHeight: 1 }),
  });
}

/** How many fish each stage of one farm carries, and the cautions for the farm. */
export function limitSheet(profile: ReadyProfile): SheetData {
  const widths = [33, 19, 11, 12, 46];
  const draft = framed({
    name: 'Limit',
    title: 'The first limit',
    step: 'Choose a scenario. Each stage is calculated for its worst water. The last row names the stage that reaches its limit first, and the next one.',
    caution: cautions.electricity,
    widths,
  });
  const chosen = chosenScenario('$C$4');
  draft
    .put('A4', 'Scenario (number or name)', 'heading')
    .fill('A6:E6', 'heading')
    .fill('A7:D20', 'tall')
    .fill('E7:E20', { ...styles.tall, wrap: true })
    .fill('B7:B20', formatted('tall', '#,##0.0##'))
    .fill('C7:C20', formatted('tall', '#,##0'))
    .fill('D7:D20', formatted('tall', '0%'))
    .height(6, 32)
    .put('A6', `=SILT.PLAN.LIMIT(SiltUnits,${chosen},TRUE)`, 'heading')
    .put('A22', 'Cautions for this scenario', 'section')
    .sentences(`=SILT.PLAN.CHECK(SiltUnits,${chosen})`, 'G23', 'A23:E23', 20, 46);
  for (let row = 7; row <= 20; row += 1) draft.height(row, 32);
  putScenarioChooser(draft);
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    print: print(profile, 'A1:E42', { landscape: false }),
  });
}

/** The places that PLAN.BALANCE names, from the row under `in`. */
const placeRows = { first: 8, last: 7 + balancePlaces.length } as const;

function placesChart(title: string, place: string, column: 'B' | 'C' | 'D'): ChartData {
  const { first, last: end } = placeRows;
  return {
    type: 'column',
    title,
    place,
    series: [
      {
        name: `Balance!$${column}$6`,
        categories: `Balance!$A$${first}:$A$${end}`,
        values: `Balance!$${column}$${first}:$${column}$${end}`,
      },
    ],
    valueTitle: `Balance!$${column}$6`,
    // Nitrogen and phosphorus are fractions of an ounce.
    valueFormat: column === 'B' ? '#,##0.0' : '#,##0.00',
  };
}

/** Where solids, nitrogen and phosphorus of one farm go. */
export function balanceSheet(profile: ReadyProfile): SheetData {
  const widths = [34, 18, 18, 18];
  const end = placeRows.last + 2;
  const draft = framed({
    name: 'Balance',
    title: 'Where everything goes each day',
    step: 'Choose a scenario. At steady state as much goes out as is made; what nothing removes builds up. Not traced is what no row explains: dissolved phosphorus and, without a feed conversion, what the fish keep.',
    caution: cautions.solids,
    widths,
  });
  draft
    .put('A4', 'Scenario (number or name)', 'heading')
    .fill('A6:D6', 'heading')
    .fill(`A7:D${end}`, 'result')
    .fill(`B7:D${end}`, formatted('result', '#,##0.0##'))
    .fill(`A${end - 1}:D${end}`, formatted('total', '#,##0.0##'))
    .put('A6', `=SILT.PLAN.BALANCE(SiltUnits,${chosenScenario('$C$4')},TRUE)`, 'heading');
  putScenarioChooser(draft);
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    charts: [
      placesChart('Solids per day: where they go', 'F4:M18', 'B'),
      placesChart('Nitrogen per day: where it goes', 'F20:M34', 'C'),
      placesChart('Phosphorus per day: where it goes', 'F36:M50', 'D'),
    ],
    print: print(profile, `A1:D${end}`, { landscape: false, fitToHeight: 1 }),
  });
}
