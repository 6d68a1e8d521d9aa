import type { SheetData } from '../../../hosts/workbook-model';
import { cautions, weightCautions } from '../cautions';
import { columnWidths, framed, print } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted, styles } from '../styles';
import { bankPartNames, bankParts, bankPartUnits, drumCount, partNames, partRows, partUnits } from './bank';
import { firstOwn, lastOwn, ownVerdicts } from './own-parts';
import { priceNames, usedPrices } from './prices';

const headRow = lastOwn + 2;
const lastLine = headRow + 34;
const listed = (letter: string): string => `Materials!$${letter}$${headRow + 1}:$${letter}$${lastLine}`;
/** The last row of the materials; its text also counts the items without a price. */
const ofLastRow = (letter: string): string =>
  `INDEX(${listed(letter)},MAX(1,(${listed('A')}<>"")*SEQUENCE(ROWS(${listed('A')}))))`;

/** A result of the list, or why there is none, which would otherwise be a total of 0. */
const orRefusal = (result: string): string => `=IF(ISERROR($A$${headRow}),$A$${headRow},${result})`;

/** The user's own parts, then the materials list with costs in whole packs. */
export function materialsSheet(profile: ReadyProfile): SheetData {
  const widths = [43, 14, 14, 14, 36];
  const draft = framed({
    name: 'Materials',
    title: 'Materials: needed, packs to buy, cost',
    step: 'Type your own parts in the first rows; they are added to the list and its total. Below are whole packs for the whole bank. An item without a price is marked in its row and in the total.',
    widths,
  });
  draft
    .put('A4', 'Extra to buy above what is needed', 'heading')
    .put(
      'B4',
      0,
      formatted('input', '0%'),
      'A share of each item, in whole packs, for parts that break, get lost or are cut wrong.',
    )
    .put('C4', 'Total', 'total')
    .put('D4', orRefusal(ofLastRow('D')), formatted('total', formats.money))
    .put(
      'E4',
      `=IF(ISERROR($A$${headRow}),"No total: look at Bank, Prices and Extra to buy.",IF(IFERROR(0+B4>1,FALSE),"CAUTION: "&TEXT(B4,"0%")&" extra is not likely. For 10 % type 0.1 or 10 %.",IF(${ofLastRow('A')}="total","",${ofLastRow('A')})))`,
      'note',
    )
    .alarm('B4', '=LEFT($E$4,7)="CAUTION"')
    .alarm('E4', '=OR(LEFT($E$4,7)="CAUTION",LEFT($E$4,8)="No total")')
    .put('A6', 'Your own parts', 'section')
    .across('A7', ['item', 'quantity', 'unit', 'price of one', 'in the list and its total'], 'heading')
    .fill(`A${firstOwn}:C${lastOwn}`, 'input')
    .fill(`D${firstOwn}:D${lastOwn}`, formatted('input', formats.money))
    .fill(`E${firstOwn}:E${lastOwn}`, 'result')
    .across(`A${firstOwn}`, ['float switch', 1, 'each'], 'input')
    .put(`D${firstOwn}`, 17.5, formatted('input', formats.money))
    .put(
      `E${firstOwn}`,
      `=${ownVerdicts({ partNames: bankPartNames, partUnits: bankPartUnits, priceNames })}`,
      'result',
    )
    .alarm(`A${firstOwn}:E${lastOwn}`, `=LEFT($E${firstOwn},3)="not"`)
    .fill(`A${headRow}:E${headRow}`, 'heading')
    .fill(`A${headRow + 1}:A${lastLine}`, 'result')
    .fill(`B${headRow + 1}:B${lastLine}`, formatted('result', formats.two))
    .fill(`C${headRow + 1}:C${lastLine}`, formatted('result', formats.whole))
    .fill(`D${headRow + 1}:D${lastLine}`, formatted('result', formats.money))
    .fill(`E${headRow + 1}:E${lastLine}`, 'result')
    .put(`E${headRow}`, 'unit of needed', 'heading')
    .put(
      `A${headRow}`,
      `=IF(ISERROR(${bankParts}),${bankParts},SILT.COST.LINES(FILTER(${partRows},${partNames}<>""),${usedPrices},B4,TRUE))`,
      'heading',
    );
  for (let row = headRow + 1; row <= lastLine; row += 1)
    draft.put(`E${row}`, `=IFERROR(INDEX(${partUnits},MATCH(A${row},${partNames},0)),"")`, 'result');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    print: print(profile, `A1:E${lastLine}`, { landscape: false, titleRows: '1:4' }),
  });
}

const firstShift = 14;
/** Changes in the price of materials. */
const shifts = [-0.2, -0.1, 0, 0.1, 0.2, 0.3, 0.5];
const lastShift = firstShift + shifts.length - 1;

/** Building compared with buying a settler, with the user's own hours, at several prices of materials. */
export function buildOrBuySheet(profile: ReadyProfile): SheetData {
  const widths = [34, 14, 14, 14, 14, 14];
  const draft = framed({
    name: 'Build or buy',
    title: 'Build or buy',
    step: 'Compares a bought settler of the same size with one that you build, and counts your own hours at their value to you. Below is the same comparison with cheaper and more expensive materials.',
    caution: weightCautions[profile],
    widths,
  });
  draft
    .put('A4', 'Price of one bought settler', 'heading')
    .put('B4', 640, formatted('input', formats.money))
    .put('A5', 'Your own hours for one', 'heading')
    .put('B5', 9, 'input')
    .put('A6', 'Value of one of your hours', 'heading')
    .put('B6', 18, formatted('input', formats.money))
    .put('A7', 'Materials for one', 'heading')
    .put('B7', `=Materials!D4/${drumCount}`, formatted('result', formats.money))
    .fill('B9:E9', 'heading')
    .fill('B10:D10', formatted('total', formats.money))
    .fill('E10', formatted('total', formats.share))
    .put('A10', 'Built, with your hours', 'total')
    .put('B9', `=SILT.COST.COMPARE(B7,B4,${drumCount},B5,B6,TRUE)`, 'heading')
    .put('A12', 'When materials cost more or less', 'section')
    .put('A13', 'Change in the price of materials', 'heading')
    .put('B13', 'Materials for one', 'heading')
    .across('C13', ['each', 'all', 'saved', 'share saved'], 'heading')
    .height(13, 32)
    .fill(`B${firstShift}:E${lastShift}`, formatted('result', formats.money))
    .fill(`F${firstShift}:F${lastShift}`, formatted('result', formats.share))
    .put(
      `C${firstShift}`,
      `=SILT.COST.COMPARE(B${firstShift}:B${lastShift},B4,${drumCount},B5,B6)`,
      formatted('result', formats.money),
    );
  shifts.forEach((shift, index) => {
    const row = firstShift + index;
    draft
      .put(`A${row}`, shift, formatted('input', '+0%;-0%;0%'))
      .put(`B${row}`, `=$B$7*(1+A${row})`, formatted('result', formats.money));
  });
  return draft.sheet({
    columnWidths: columnWidths(widths),
    tabColor: '1F7A8C',
    charts: [
      {
        type: 'scatter',
        title: 'Saved by building the bank',
        place: `A${lastShift + 2}:F${lastShift + 18}`,
        series: [
          {
            name: 'saved',
            categories: `'Build or buy'!$A$${firstShift}:$A$${lastShift}`,
            values: `'Build or buy'!$E$${firstShift}:$E$${lastShift}`,
          },
        ],
        categoryTitle: 'Change in the price of materials',
        categoryFormat: '+0%;-0%;0%',
        valueTitle: 'money',
        valueFormat: '#,##0',
      },
    ],
    print: print(profile, `A1:F${lastShift + 18}`, { landscape: false, fitToHeight: 1 }),
  });
}

/** Build calendar: leak tests, cures, leaching, first fill. */
export function calendarSheet(profile: ReadyProfile): SheetData {
  const widths = [30, 14, 78];
  const draft = framed({
    name: 'Calendar',
    title: 'Build calendar',
    step: 'Do the leak test before you pour any mix, and the first fill last. Makers’ sheets come first; cold slows every cure.',
    caution: cautions.dust,
    widths,
  });
  draft
    .put('A4', 'First leak test on', 'heading')
    .put('B4', '2026-05-04', 'input', 'A date, or text such as 2026-05-04.')
    .put('A5', 'Days for the base mix', 'heading')
    .put('B5', 3, 'input')
    .put('A6', 'Days for the mortar', 'heading')
    .put('B6', 3, 'input')
    .put('A7', 'Days for the sealant', 'heading')
    .put('B7', 7, 'input')
    .put('A8', 'Days of leaching', 'heading')
    .put('B8', 7, 'input')
    .fill('A10:C10', 'heading')
    .fill('A11:A17', 'tall')
    .fill('B11:B17', formatted('tall', formats.date))
    .fill('C11:C17', { ...styles.tall, wrap: true })
    .put('A10', '=SILT.PLAN.DATES(B4,B5,B6,B7,B8,TRUE)', 'heading');
  for (let row = 11; row <= 17; row += 1) draft.height(row, 32);
  return draft.sheet({
    columnWidths: columnWidths(widths),
    tabColor: '8A6D3B',
    print: print(profile, 'A1:C17', { fitToHeight: 1 }),
  });
}
