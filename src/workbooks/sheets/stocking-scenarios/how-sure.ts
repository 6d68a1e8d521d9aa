import { numberFormats } from '../../../catalogue/number-formats';
import { figureResults } from '../../../catalogue/plan/plan-sure';
import { scenarioResults } from '../../../catalogue/plan/scenario-results';
import type { SheetData } from '../../../hosts/workbook-model';
import { columnWidths, framed, print } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formatted, styles } from '../styles';
import { chosenScenario, putScenarioChooser } from './scenarios';

/** The last row of the longer of the two lists, which begin at row 10. */
const last = 70;
/** The last row on paper: each result, the chance of each of at most twelve stages, and the count of refused draws. */
const lastPrinted = 9 + figureResults.length + 13;
/** The chart shows this many drivers. */
const charted = 8;
const figures = '#,##0.0##';

const outsideOf = (column: string): string => `${column}10:${column}${9 + figureResults.length}`;

/** Names the results whose plan is outside its band, which a reader would take for a fault, and says why. */
const outside = `=LET(beside,ISNUMBER(${outsideOf('C')})*ISNUMBER(${outsideOf('D')})*ISNUMBER(${outsideOf('E')})*((${outsideOf('D')}<${outsideOf('C')})+(${outsideOf('D')}>${outsideOf('E')})),IF(SUM(beside)=0,"","The plan is outside its band for "&TEXTJOIN(", ",TRUE,IF(beside>0,${outsideOf('A')},""))&". Its published typical figure is also the lowest or the highest one, so nearly all draws lie on one side of it."))`;

/** How sure the plan of a scenario is, which figure to measure first, and how often each stage is the first limit. */
export function howSureSheet(profile: ReadyProfile): SheetData {
  const widths = [48, 9, 11, 11, 11, 2, 23, 8, 9, 9, 9, 11, 11, 11];
  const draft = framed({
    name: 'How sure',
    title: 'How sure is it, and what to measure first',
    step: 'Choose a scenario and a result. In four cases of five the result is between low and high, given the published coefficients and the ranges that you typed in Scenarios (0.2 to 0.4, or 350 ± 20). Your own figures make the band narrower.',
    widths,
  });
  const chosen = chosenScenario('$C$4');
  draft
    .put('A4', 'Scenario (number or name)', 'heading')
    .put('A6', 'Result to look at', 'heading')
    .put('B6', 'solids captured', 'input', 'The name of a result, from the first column below.')
    .wide(
      'A7:E7',
      '=IF(ISNUMBER(N10)*(N10<>0),"Measure this first: "&G10&". It alone explains "&TEXT(N10,"0%")&" of the uncertainty of "&B6&"; then "&G11&", "&TEXT(N11,"0%")&", and "&G12&", "&TEXT(N12,"0%")&".","Type the name of a result from the list below. A result without uncertain inputs has nothing to measure.")',
      { ...styles.total, wrap: true },
      32,
    )
    .wide('A8:E8', outside, { ...styles.note, wrap: true }, 32)
    .fill('A9:E9', 'heading')
    .fill(`A10:B${last}`, 'result')
    .fill(`C10:E${last}`, formatted('result', figures))
    .put('A9', `=SILT.PLAN.RANGE(SiltUnits,${chosen},TRUE)`, 'heading')
    .fill('G9:N9', 'heading')
    .height(9, 48)
    .fill(`G10:H${last}`, 'result')
    .fill(`I10:M${last}`, formatted('result', figures))
    .fill(`N10:N${last}`, formatted('result', numberFormats.share))
    .put('G9', `=SILT.PLAN.DRIVERS(SiltUnits,${chosen},$B$6,TRUE)`, 'heading')
    .choiceFrom('B6', `$A$10:$A$${9 + figureResults.length}`, 'a result from the list below');
  for (const [index, key] of figureResults.entries()) {
    // Whole counts without decimals; one between two draws keeps them.
    const isCount = scenarioResults[key].kind === 'count';
    if (isCount) draft.fill(`C${10 + index}:E${10 + index}`, formatted('result', numberFormats.general));
  }
  putScenarioChooser(draft);
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 9,
    tabColor: '1F7A8C',
    charts: [
      {
        type: 'bar',
        title: 'What the result depends on',
        place: 'P9:W26',
        series: [
          {
            name: "'How sure'!$N$9",
            categories: `'How sure'!$G$10:$G$${9 + charted}`,
            values: `'How sure'!$N$10:$N$${9 + charted}`,
          },
        ],
        valueTitle: 'share of the variance',
        valueFormat: '0%',
      },
    ],
    print: print(profile, `A1:N${lastPrinted}`, { titleRows: '9:9' }),
  });
}
