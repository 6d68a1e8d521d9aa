import type { SheetData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, unitOf, withUnit } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted, styles } from '../styles';
import { type Reading, readingAt, testColumn } from './tests';

const species = [
  'tilapia',
  'rainbow trout',
  'channel catfish',
  'common carp',
  'barramundi',
  'flathead mullet',
  'warm-water',
  'cool-water',
  'cold-water',
];
const alkalis = [
  'sodium bicarbonate',
  'potassium bicarbonate',
  'calcium carbonate',
  'calcium hydroxide',
  'potassium hydroxide',
];

/** One test, with a verdict in words on each reading. */
export function verdictSheet(profile: ReadyProfile): SheetData {
  const widths = [22, 12, 9, 9, 24, 44];
  const draft = framed({
    name: 'Verdict',
    title: 'One test, judged in words',
    step: 'Choose the species and the day of a test. A missing reading shows as not measured; that does not mean it is fine. Fish survive over a wider range than they grow in. Local advice for your fish comes first.',
    caution: cautions.water,
    widths,
  });
  const readings = (['temperature', 'pH', 'ammonia', 'nitrite', 'nitrate', 'oxygen'] as const).map(readingAt).join(',');
  draft
    .put('A4', 'Species', 'heading')
    .put('B4', 'tilapia', 'input')
    .put('A5', 'Day of the test', 'heading')
    .put('B5', 46_118, formatted('input', formats.date))
    .put('C5', `=IFERROR(MATCH(B5,${testColumn('date')},0),IFERROR(MATCH(9.9E+307,${testColumn('date')}),1))`, 'result')
    .put(
      'D5',
      `=IF(ISNUMBER(MATCH(B5,${testColumn('date')},0)),"test "&C5&" of the list","No test was taken on that day; this is the last one, of "&TEXT(INDEX(${testColumn('date')},C5),"yyyy-mm-dd")&".")`,
      'note',
    )
    .alarm('B5', '=LEFT(D5,3)="No "')
    .alarm('D5', '=LEFT(D5,3)="No "')
    .put('A6', withUnit('Un-ionized ammonia N allowed', 'concentration'), 'heading')
    .put(
      'B6',
      0.05,
      formatted('input', formats.three),
      'UF/IFAS FA16: more than 0.05 mg/L harms fish. For trout and their relatives, 0.02.',
    )
    .put('A7', withUnit('Height above sea level', 'run'), 'heading')
    .put('B7', 0, 'input')
    .put(
      'C7',
      '="Temperature in "&SILT.UNIT.LABEL(SiltUnits,"temperature")&", alkalinity in "&SILT.UNIT.LABEL(SiltUnits,"alkalinity")&", all others but pH in "&SILT.UNIT.LABEL(SiltUnits,"concentration")',
      'note',
    )
    .fill('A8:F8', 'heading')
    .fill('A9:A18', 'tall')
    .fill('B9:D18', formatted('tall', '#,##0.0##'))
    .fill('E9:E18', 'tall')
    .fill('F9:F18', { ...styles.tall, wrap: true })
    .put('A8', `=SILT.WATER.CHECK(SiltUnits,B4,${readings},0,${readingAt('alkalinity')},"-","N",B7,TRUE)`, 'heading')
    .put('H7', 'Limits of the species, which the verdicts of the sheet Tests use', 'note')
    .fill('H8:U8', 'heading')
    .fill('H9:U9', 'result')
    .put('H8', '=SILT.STOCK.SPECIES(SiltUnits,B4,TRUE)', 'heading')
    .choice('B4', species, 'the fish that you keep')
    .choiceFrom('B5', testColumn('date'), 'a day on the sheet Tests; for any other day the last test is shown');
  // What a spill shows does not make its rows taller; the advice about ammonia is the longest.
  const heights: Readonly<Record<number, number>> = { 9: 94, 11: 94, 12: 94, 18: 48 };
  for (let row = 9; row <= 18; row += 1) draft.height(row, heights[row] ?? 48);
  draft
    .height(6, 32)
    .height(7, 32)
    .height(8, 32)
    .alarm('E9:E18', '=AND(E9<>"",E9<>"within limits",E9<>"not measured")');
  return draft.sheet({
    // The limits of the species stand at the right, with long headings.
    columnWidths: columnWidths([...widths, 4, ...Array.from({ length: 14 }, () => 22)]),
    frozenRows: 8,
    tabColor: '1F7A8C',
    print: print(profile, 'A1:F18', { landscape: false, fitToHeight: 1, titleRows: '1:3' }),
  });
}

/** The last reading; text after it may be a later reading, so that no older one takes its place. */
function lastReading(reading: Reading): string {
  const typed = testColumn(reading);
  const lastRow = (kind: string) => `SUMPRODUCT(MAX(${kind}(${typed})*ROW(${typed})))`;
  return `=IF(${lastRow('ISTEXT')}>${lastRow('ISNUMBER')},"the last one is text",LOOKUP(9.9E+307,${typed}))`;
}

const isLastText = 'ISTEXT(B21)+ISTEXT(B22)+ISTEXT(B23)>0';

/** The last row with room for a day of dosing. */
const lastStep = 49;

/** How long the fish have, and the alkali to add, day by day. */
export function careSheet(profile: ReadyProfile): SheetData {
  const us = profile === 'US';
  const widths = [44, 22, 24, 16, 16];
  const draft = framed({
    name: 'Oxygen and alkali',
    title: 'How long the fish have, and what to add',
    step: 'When pump and air stop, the fish have only the oxygen in the water. Nitrification uses alkalinity every day: replace it, and follow your water test, not only this figure.',
    caution: cautions.electricity,
    widths,
  });
  draft
    .put('A4', 'When pump and air stop', 'section')
    .put('A5', withUnit('Water with fish in it', 'volume'))
    .put('B5', us ? 400 : 1500, 'input')
    .put('A6', withUnit('Feed per day', 'daily'))
    .put('B6', us ? 0.9 : 0.4, 'input')
    .put('A7', withUnit('Oxygen at power failure', 'concentration'))
    .put('B7', 6, 'input')
    .put('A8', withUnit('Oxygen at which fish are in danger', 'concentration'))
    .put(
      'B8',
      // Without a species there is no floor; 0 would double the time that the fish seem to have.
      '=IF(Verdict!B4="","choose a species on Verdict",IF(ISERROR(Verdict!H8),Verdict!H8,Verdict!M9))',
      'result',
    )
    .put('C8', 'the oxygen floor of the species on Verdict', 'note')
    .put('A9', withUnit('Oxygen used per day, with bacteria', 'daily'), 'heading')
    .put('B9', '=SILT.LOAD.OXYGEN(SiltUnits,B6,"system")', formatted('result', formats.three))
    .put('A10', 'Minutes that the fish have', 'total')
    .put('B10', '=SILT.WATER.OXYGENTIME(SiltUnits,B5,B7,B8,B9)', formatted('total', formats.one))
    .put('A11', 'Backup air must start within, minutes', 'total')
    .put('B11', '=B10/2', formatted('total', formats.one), 'If nobody can come in that time, it must start by itself.')
    .put('A13', 'Alkali to add', 'section')
    .put('A14', 'Protein in the feed')
    .put('B14', 0.32, formatted('input', '0%'))
    .put('A15', 'Alkali')
    .put('B15', 'sodium bicarbonate', 'input')
    .put('A16', 'Purity')
    .put('B16', 1, formatted('input', '0%'))
    .put('A17', withUnit('Ammonia N per day', 'daily'), 'heading')
    .put('B17', '=SILT.LOAD.AMMONIA(SiltUnits,B6,B14)', formatted('result', '0.0000'))
    .put('A18', withUnit('Alkali per day', 'daily'), 'total')
    .put('B18', '=SILT.WATER.BUFFER(SiltUnits,B17,B15,B16)', formatted('total', formats.three))
    .put('C18', 'at most: plants and sludge give some back', 'note')
    .put('A20', 'Alkalinity wanted')
    .put('B20', 100, 'input')
    .put('C20', unitOf('alkalinity'), 'note')
    .put('A21', 'Last measured alkalinity', 'heading')
    .put('B21', lastReading('alkalinity'), formatted('result', formats.whole))
    .put('C21', 'the last reading on the sheet Tests', 'note')
    .put('A22', 'Last measured pH', 'heading')
    .put('B22', lastReading('pH'), formatted('result', formats.one))
    .put('A23', withUnit('Last measured temperature', 'temperature'), 'heading')
    .put('B23', lastReading('temperature'), formatted('result', formats.one))
    .put('A24', withUnit('Total alkali to raise it', 'portion'), 'total')
    .put(
      'B24',
      `=IF(${isLastText},"no dose: see B21:B23",IF(ISERROR(A29),A29,IFERROR(SILT.WATER.DOSE(SiltUnits,B5,MAX(0,B20-B21),B15,B16,B21,B22,B23),"not safe at once")))`,
      formatted('total', formats.one),
    )
    .alarm('B21:B24', '=ISTEXT(B21)')
    .put('C24', 'day by day as below, not at once', 'note')
    .wide('A26:D26', `CAUTION: ${cautions.water}`, 'caution', 48)
    .put('A28', 'Day by day, so that pH rises by at most 0.2', 'section')
    .fill('A29:E29', 'heading')
    .height(29, 32)
    .fill(`A30:A${lastStep}`, 'result')
    .fill(`B30:B${lastStep}`, formatted('result', formats.one))
    .fill(`C30:C${lastStep}`, formatted('result', formats.whole))
    .fill(`D30:E${lastStep}`, formatted('result', formats.two))
    .put(
      'A29',
      `=IF(${isLastText},"The last reading on Tests is text, so nothing can be said. Type it as a number.",IF(B20>B21,SILT.WATER.STEPS(SiltUnits,B5,B21,B20,B22,B23,B15,0.2,B16,TRUE),"The water already has the alkalinity wanted."))`,
      'heading',
    )
    .put('C28', 'test every day; what nitrification uses is not counted', 'note')
    .choice('B15', alkalis, 'by its chemical name', false);
  return draft.sheet({
    columnWidths: columnWidths(widths),
    tabColor: '8A6D3B',
    print: print(profile, `A1:E${lastStep}`, { landscape: false, fitToHeight: 1, titleRows: '1:3' }),
  });
}
