import type { SheetData } from '../../workbook-model';
import { columnWidths, framed, print } from '../frame';
import type { ReadyProfile, SheetDraft } from '../sheet-draft';
import { formatted, styles } from '../styles';
import { fishFigures } from './fish';
import { airFigures, filterFigures } from './machines';
import { solidsFigures } from './solids';

/** Half of a triangle's base over its standard deviation, the square root of 6. */
const HALF_WIDTH = 2.449;

/** t at 0.84 for 1, 2 and 3 degrees of freedom, by which an error from few readings is widened; 1 from 4 on. */
const widening = [1.819, 1.312, 1.189] as const;

interface OwnFigure {
  readonly name: string;
  readonly value: string;
  /** Formula of its standard error; none where one season gives no error. */
  readonly error?: string;
  readonly readings?: string;
  /** Readings less these are the degrees of freedom. */
  readonly fitted: number;
  /** The coefficient whose published range stands beside it. */
  readonly published?: string;
  /** What the published range is of, where that is not plain. */
  readonly ofWhat?: string;
  /** The scenario input that takes it, and the kind whose unit its text carries. */
  readonly input?: string;
  readonly kind?: string;
  readonly format: string;
}

const figures: readonly OwnFigure[] = [
  {
    name: 'Growth coefficient',
    value: fishFigures.coefficient,
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
    fitted: 1,
    published: 'conversion of tilapia',
    input: 'conversion',
    format: '0.00',
  },
  {
    name: 'Solids share',
    value: solidsFigures.share,
    error: solidsFigures.error,
    readings: solidsFigures.weeks,
    fitted: 1,
    published: 'solids share',
    input: 'solids share',
    format: '0.000',
  },
  {
    name: 'Removal a pass',
    value: filterFigures.share,
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
  const widths = [22, 11, 11, 10, 11, 11, 14, 28, 26];
  const draft = framed({
    name: 'Figures',
    title: 'Your own figures, beside the published ones',
    step: 'No input needed. Half-width is 2.449 times the standard error, more where readings are few. Your error is of the mean over your readings: a kit that reads high reads high every time.',
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
    .height(4, 32);
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
        'Blank until it is measured, and then the published figure holds.',
      );
  });
  const end = scenarioFirst + inputs.length - 1;
  draft.wide(
    `A${end + 2}:H${end + 2}`,
    'STOCK.GROW and STOCK.SCHEDULE take the growth coefficient as a number. PLAN.RANGE and PLAN.DRIVERS take a range in place of the published one, so that only what you have not measured stays wide.',
    'text',
    32,
  );
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    print: print(profile, `A1:I${end + 2}`, { fitToHeight: 1 }),
  });
}

function putFigure(draft: SheetDraft, figure: OwnFigure, row: number): void {
  const { name, value, error, readings, fitted, published, ofWhat, kind, format } = figure;
  const style = formatted('result', format);
  const unit = kind === undefined ? '' : `&" "&SILT.UNIT.LABEL(SiltUnits,"${kind}")`;
  const text = (cell: string): string => `TEXT(${cell},"${format}")`;
  const measured = (then: string, otherwise = '""'): string => `=IF(ISNUMBER(B${row}),${then},${otherwise})`;
  const [one, two, three] = widening;
  const widened = `IF(D${row}=${fitted + 1},${one},IF(D${row}=${fitted + 2},${two},IF(D${row}=${fitted + 3},${three},1)))`;
  const withError = `IF(ISNUMBER(E${row}),IF(E${row}>=B${row},"wider than itself: measure more",${text(`B${row}`)}&" ± "&${text(`E${row}`)}${unit}),${text(`B${row}`)}${unit})`;
  const few = `IF(D${row}<=${fitted + 3},"from "&D${row}&" readings only: measure on",IF(E${row}>B${row}/3,"wide: measure on","good for planning"))`;
  draft
    .put(`A${row}`, kind === undefined ? name : `="${name} ("&SILT.UNIT.LABEL(SiltUnits,"${kind}")&")"`, 'heading')
    .put(`B${row}`, `=IFERROR(${value},"")`, formatted('total', format))
    .put(`C${row}`, error === undefined ? '' : measured(`IFERROR(${error},"")`), style)
    .put(`D${row}`, readings === undefined ? '' : `=${readings}`, 'result')
    .put(`E${row}`, measured(`IF(ISNUMBER(C${row}),${HALF_WIDTH}*C${row}*${widened},"")`), style)
    .put(`F${row}`, published === undefined ? '' : `=SILT.REF.VALUE(SiltUnits,"${published}","low")`, style, ofWhat)
    .put(`G${row}`, published === undefined ? '' : `=SILT.REF.VALUE(SiltUnits,"${published}","high")`, style)
    .put(`H${row}`, measured(withError, '"not measured"'), 'total')
    .put(`I${row}`, measured(error === undefined ? '"one season: error not known"' : few), {
      ...styles.result,
      wrap: true,
    })
    .height(row, 32);
}
