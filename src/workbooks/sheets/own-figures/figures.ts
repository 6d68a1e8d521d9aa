import type { SheetData } from '../../../hosts/workbook-model';
import { columnWidths, framed, print } from '../frame';
import { cautionWord } from '../likely';
import type { ReadyProfile, SheetDraft } from '../sheet-draft';
import { formatted, styles } from '../styles';
import { fishFigures } from './fish';
import { airFigures, filterFigures } from './machines';
import { solidsFigures } from './solids';

/** Half of a triangle's base over its standard deviation, the square root of 6. */
const HALF_WIDTH = 2.449;

/** t at 0.84 for 1, 2 and 3 degrees of freedom, which widens an error from few readings; 1 from 4 on. */
const widening = [1.819, 1.312, 1.189] as const;

interface OwnFigure {
  readonly name: string;
  readonly value: string;
  /** The cell that has the error where its log cannot be read, and the cells of the log. */
  readonly log: readonly [error: string, cells: string];
  /** Formula of its standard error; none if one season gives no error. */
  readonly error?: string;
  readonly readings?: string;
  /** Readings less these are the degrees of freedom. */
  readonly fitted: number;
  /** The coefficient whose published range is shown beside it. */
  readonly published?: string;
  /** What the published range is of, if that is not obvious. */
  readonly ofWhat?: string;
  /** The scenario input that takes it, and the kind whose unit its text has. */
  readonly input?: string;
  readonly kind?: string;
  readonly format: string;
}

const figures: readonly OwnFigure[] = [
  {
    name: 'Growth coefficient',
    value: fishFigures.coefficient,
    log: ['Fish!E5', 'Fish!A6:C40'],
    error: fishFigures.error,
    readings: fishFigures.weighings,
    fitted: 2,
    published: 'growth coefficient',
    ofWhat: 'Published for rainbow trout; other fish differ.',
    format: '0.0000',
  },
  {
    name: 'Feed conversion',
    value: fishFigures.conversion,
    log: [fishFigures.conversion, 'Fish!F10:F14'],
    fitted: 1,
    published: 'conversion of tilapia',
    input: 'conversion',
    format: '0.00',
  },
  {
    name: 'Solids share',
    value: solidsFigures.share,
    log: [solidsFigures.share, 'Solids!B6:D40'],
    error: solidsFigures.error,
    readings: solidsFigures.weeks,
    fitted: 1,
    published: 'solids share',
    input: 'solids share',
    format: '0.000',
  },
  {
    name: 'Removal per pass',
    value: filterFigures.share,
    log: ['Filter!E5', 'Filter!B6:C40'],
    error: filterFigures.error,
    readings: filterFigures.pairs,
    fitted: 1,
    published: 'removal',
    input: 'removal',
    format: '0.000',
  },
  {
    name: 'Nitrification at 20 °C',
    value: filterFigures.rate,
    log: ['Filter!E5', 'Filter!B6:C40'],
    error: `${filterFigures.rate}*${filterFigures.error}/${filterFigures.share}`,
    readings: filterFigures.pairs,
    fitted: 1,
    published: 'nitrification',
    input: 'nitrification',
    kind: 'areal rate',
    format: '0.000',
  },
  {
    name: 'Air supply',
    value: airFigures.standard,
    log: ['Air!D5', 'Air!A6:B40'],
    error: `${airFigures.standard}*${airFigures.error}/${airFigures.transfer}`,
    readings: airFigures.readings,
    fitted: 3,
    input: 'air supply',
    kind: 'transfer',
    format: '0.00000',
  },
];

const first = 5;
const scenarioFirst = first + figures.length + 4;

/** Every figure with its error beside the published range, and the scenario column that takes it. */
export function figuresSheet(profile: ReadyProfile): SheetData {
  const widths = [16, 9, 10, 10, 8, 12, 12, 24, 17];
  const draft = framed({
    name: 'Figures',
    title: 'Your own figures, beside the published ones',
    step: 'No input needed on this sheet. Half-width is 2.449 times the standard error, and more with few readings. The error shows the spread of your readings only: it does not show a test kit that always reads high.',
    widths,
  });
  draft
    .across(
      'A4',
      [
        'Figure',
        'Yours',
        'Standard error',
        'Readings',
        'Half-width',
        'Published, low',
        'Published, high',
        'Type it as',
        'How sure',
      ],
      'heading',
    )
    .height(4, 48);
  figures.forEach((figure, index) => {
    putFigure(draft, figure, first + index);
  });
  const inputs = figures.flatMap(({ input }, index) => (input === undefined ? [] : [{ input, row: first + index }]));
  draft
    .put(`G${scenarioFirst - 2}`, 'Copy these two columns into a scenario', 'section')
    .across(`G${scenarioFirst - 1}`, ['input', 'own figures'], 'heading');
  inputs.forEach(({ input, row }, index) => {
    draft
      .put(`G${scenarioFirst + index}`, input, 'result')
      .put(
        `H${scenarioFirst + index}`,
        `=IF(ISNUMBER(B${row}),IF(IF(ISNUMBER(E${row}),E${row},0)<B${row},H${row},""),"")`,
        'result',
        'Blank until you measure it; until then the plan uses the published figure.',
      );
  });
  const end = scenarioFirst + inputs.length - 1;
  draft.wide(
    `A${end + 2}:H${end + 2}`,
    'STOCK.GROW and STOCK.SCHEDULE take the growth coefficient as a number. PLAN.RANGE and PLAN.DRIVERS use your range instead of the published one, so that only figures you have not measured stay uncertain.',
    'text',
    47,
  );
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    print: print(profile, `A1:I${end + 2}`, { fitToHeight: 1 }),
  });
}

function putFigure(draft: SheetDraft, figure: OwnFigure, row: number): void {
  const { name, value, log, error, readings, fitted, published, ofWhat, kind, format } = figure;
  const sheet = value.slice(0, value.indexOf('!'));
  const style = formatted('result', format);
  const unit = kind === undefined ? '' : `&" "&SILT.UNIT.LABEL(SiltUnits,"${kind}")`;
  const text = (cell: string): string => `TEXT(${cell},"${format}")`;
  const measured = (then: string, otherwise = '""'): string => `=IF(ISNUMBER(B${row}),${then},${otherwise})`;
  const [oneDegree, twoDegrees, threeDegrees] = widening;
  const widened = `IF(D${row}=${fitted + 1},${oneDegree},IF(D${row}=${fitted + 2},${twoDegrees},IF(D${row}=${fitted + 3},${threeDegrees},1)))`;
  const withError = `IF(ISNUMBER(E${row}),IF(E${row}>=B${row},"error exceeds the figure: measure more",${text(`B${row}`)}&" ± "&${text(`E${row}`)}${unit}),${text(`B${row}`)}${unit})`;
  // Further from the published figures than three times: common practice, no source.
  const unlikely = `IF((B${row}<F${row}/3)+(B${row}>G${row}*3)>0,"${cautionWord}: "&${text(`B${row}`)}&" is not likely; the published range is "&${text(`F${row}`)}&" to "&${text(`G${row}`)}${unit}&".",`;
  const judged = (words: string): string => (published === undefined ? words : `${unlikely}${words})`);
  const few = `IF(D${row}<=${fitted + 3},"only "&D${row}&" readings: measure more",IF(E${row}>B${row}/3,"wide: measure more","good for planning"))`;
  draft
    .put(`A${row}`, kind === undefined ? name : `="${name} ("&SILT.UNIT.LABEL(SiltUnits,"${kind}")&")"`, 'heading')
    // A log without a figure is an error or, below a refusal, a blank cell, which IFERROR would make 0.
    .put(`B${row}`, `=IF(ISNUMBER(${value}),${value},"")`, formatted('total', format))
    .put(`C${row}`, error === undefined ? '' : measured(`IFERROR(${error},"")`), style)
    .put(`D${row}`, readings === undefined ? '' : `=${readings}`, 'result')
    .put(`E${row}`, measured(`IF(ISNUMBER(C${row}),${HALF_WIDTH}*C${row}*${widened},"")`), style)
    .put(`F${row}`, published === undefined ? '' : `=SILT.REF.VALUE(SiltUnits,"${published}","low")`, style, ofWhat)
    .put(`G${row}`, published === undefined ? '' : `=SILT.REF.VALUE(SiltUnits,"${published}","high")`, style)
    .put(
      `H${row}`,
      measured(withError, `IF(ISERROR(${log[0]})*(COUNTA(${log[1]})>0),"look at ${sheet}","not measured")`),
      'total',
    )
    .put(`I${row}`, measured(judged(error === undefined ? '"one season: error unknown"' : few)), {
      ...styles.result,
      fontSize: 9,
      wrap: true,
    })
    .alarm(`I${row}`, `=LEFT(I${row},${cautionWord.length})="${cautionWord}"`)
    // Room for a caution of four lines.
    .height(row, 50);
}
