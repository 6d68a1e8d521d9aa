import type { ChartData, SheetData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, unitOf, withUnit } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { usedPulls } from './pulls';

const shares = { nitrogen: 'Garden!$B$5', phosphorus: 'Garden!$B$6', potassium: 'Garden!$B$7' } as const;
const lastMonth = 24;
const totalRow = `MATCH("total",Months!$A$5:$A$${lastMonth},0)`;
/** The total of a column of Months. */
export const totalOf = (column: string): string =>
  `IF(ISERROR(Months!$A$4),Months!$A$4,INDEX(Months!$${column}$5:$${column}$${lastMonth},${totalRow}))`;
/** The charts show this many months: those of the sample rows. */
const charted = 3;

function chart(title: string, place: string, columns: readonly string[], valueTitle: string): ChartData {
  return {
    type: 'column',
    title,
    place,
    series: columns.map((column) => ({
      name: `Months!$${column}$4`,
      categories: `Months!$A$5:$A$${4 + charted}`,
      values: `Months!$${column}$5:$${column}$${4 + charted}`,
    })),
    valueTitle,
    valueFormat: '#,##0.0',
  };
}

/** The log by month, with a total. */
export function monthsSheet(profile: ReadyProfile): SheetData {
  const widths = [14, 14, 14, 14, 14, 14];
  const draft = framed({
    name: 'Months',
    title: 'Solids and nutrients, month by month',
    step: 'No input needed on this sheet. Figures per day count every day from the first to the last in Pulls. Nutrients in solids differ several times from farm to farm: have your own solids tested and type the shares on Garden.',
    widths,
  });
  draft
    .fill('A4:F4', 'heading')
    .height(4, 32)
    .fill(`A5:A${lastMonth}`, 'result')
    .fill(`B5:F${lastMonth}`, formatted('result', formats.two))
    .put(
      'A4',
      `=SILT.HARVEST.LOG(SiltUnits,${usedPulls},${shares.nitrogen},${shares.phosphorus},${shares.potassium},"element",TRUE)`,
      'heading',
    );
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    charts: [
      chart('Nitrogen, phosphate and potash by month', 'H4:P20', ['D', 'E', 'F'], 'mass, in the unit of each name'),
      chart('Dry solids by month', 'H22:P36', ['B'], 'Months!$B$4'),
    ],
    print: print(profile, `A1:F${lastMonth}`, { landscape: false }),
  });
}

/** What the solids hold, what the garden needs, how much garden they feed, and their value. */
export function gardenSheet(profile: ReadyProfile): SheetData {
  const us = profile === 'US';
  const widths = [40, 16, 22, 18, 18];
  const draft = framed({
    name: 'Garden',
    title: 'How much garden the solids feed',
    step: 'Spread the solids over the larger of the two areas, so that neither nitrogen nor phosphate exceeds what the garden needs. Plants can use only part of the nitrogen in the first season; count all the phosphate.',
    caution: cautions.solids,
    widths,
  });
  draft
    .put('A4', 'What dry solids hold', 'section')
    .put('A5', 'Nitrogen')
    .put('B5', 0.0283, formatted('input', '0.00%'))
    .put('C5', 'of dry solids', 'note')
    .put('A6', 'Phosphorus, as P')
    .put('B6', 0.0254, formatted('input', '0.00%'))
    .put('A7', 'Potassium, as K')
    .put('B7', 0.001, formatted('input', '0.00%'))
    .put('A8', 'Grade N-P2O5-K2O', 'total')
    .put('B8', '=SILT.HARVEST.GRADE(B5,B6,B7)', 'total', 'A working figure, not a label guarantee.')
    .put('A10', 'What the garden needs in a season', 'section')
    .put('A11', 'Nitrogen')
    .put('B11', us ? 2 : 10, 'input')
    .put('C11', unitOf('application'), 'note')
    .put('A12', 'Phosphate, P2O5')
    .put('B12', us ? 1 : 5, 'input')
    .put('C12', unitOf('application'), 'note')
    .put('A13', 'Nitrogen available this season')
    .put('B13', 0.5, formatted('input', '0%'))
    .put('A15', 'Garden that the solids in this book feed', 'section')
    .fill('A16:D16', 'heading')
    .height(16, 32)
    .fill('A17:C17', formatted('total', formats.whole))
    .fill('D17', 'total')
    .put('A16', `=SILT.HARVEST.GARDEN(SiltUnits,${totalOf('B')},B11,B5,B13,B6,B12,"element",TRUE)`, 'heading')
    .put('A19', 'A dose', 'section')
    .put('A20', withUnit('Garden to dose', 'area'))
    .put('B20', us ? 200 : 20, 'input')
    .put('A21', 'Solids in the slurry')
    .put('B21', 0.02, formatted('input', '0.0%'))
    .put('A22', withUnit('Slurry for a whole season', 'volume'), 'total')
    .put('B22', '=SILT.HARVEST.DOSE(SiltUnits,B20,B11,B21,B5,B13,B6,B12)', formatted('total', formats.one))
    .put('A24', 'What it would cost to buy', 'section')
    .put('A25', withUnit('Price of nitrogen', 'price of mass'))
    .put('B25', us ? 0.9 : 2, formatted('input', formats.money))
    .put('A26', withUnit('Price of phosphate, P2O5', 'price of mass'))
    .put('B26', us ? 1.1 : 2.4, formatted('input', formats.money))
    .put('A27', withUnit('Price of potash, K2O', 'price of mass'))
    .put('B27', us ? 0.7 : 1.5, formatted('input', formats.money))
    .put('A28', 'Value of the solids so far', 'total')
    .put(
      'B28',
      `=SILT.HARVEST.VALUE(SiltUnits,${totalOf('D')},${totalOf('E')},${totalOf('F')},B25,B26,B27)`,
      formatted('total', formats.money),
    );
  return draft.sheet({
    columnWidths: columnWidths(widths),
    tabColor: '6B8E23',
    print: print(profile, 'A1:E28', { landscape: false, fitToHeight: 1, titleRows: '1:3' }),
  });
}

const lastBed = 16;

/** Beds that got solids, and the first day on which you may pick from them. */
export function pickingSheet(profile: ReadyProfile): SheetData {
  const widths = [22, 22, 16, 22, 22];
  const draft = framed({
    name: 'Picking',
    title: 'Earliest picking dates',
    step: 'One row per bed: the day you worked solids in, and whether the part that is eaten touches the soil. The waiting rule is for raw livestock manure under organic certification; it does not prove that a crop is safe.',
    caution: cautions.solids,
    widths,
  });
  draft
    .across('A4', ['Bed', 'Crop', 'Worked in on', 'Touches the soil', 'Pick from'], 'heading')
    .height(4, 32)
    .fill(`A5:B${lastBed}`, 'input')
    .fill(`C5:C${lastBed}`, formatted('input', formats.date))
    .fill(`D5:D${lastBed}`, 'input')
    .fill(`E5:E${lastBed}`, formatted('total', formats.date));
  const beds = [
    ['North wall', 'tomatoes on strings', 46_094, 'no'],
    ['Long bed', 'carrots', 46_101, 'yes'],
    ['Door bed', 'lettuce', 46_108, 'yes'],
    ['South frame', 'climbing beans', 46_122, 'no'],
  ] as const;
  beds.forEach(([bed, crop, date, touches], index) => {
    const row = 5 + index;
    draft
      .across(`A${row}`, [bed, crop], 'input')
      .put(`C${row}`, date, formatted('input', formats.date))
      .put(`D${row}`, touches, 'input');
  });
  draft
    .put(
      'E5',
      `=IF((C5:C${lastBed}="")+(D5:D${lastBed}=""),"",SILT.HARVEST.WAIT(C5:C${lastBed},D5:D${lastBed}))`,
      formatted('total', formats.date),
    )
    .choice(`D5:D${lastBed}`, ['yes', 'no'], 'Does the part that is eaten touch the soil?');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '6B8E23',
    print: print(profile, `A1:E${lastBed}`),
  });
}
