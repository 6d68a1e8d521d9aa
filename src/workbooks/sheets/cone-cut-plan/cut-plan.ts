import type { SheetData } from '../../workbook-model';
import { columnWidths, framed, print } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { settings } from './drums';
import { patternNames, patternRows, usedPatterns } from './patterns';

const stock = `${settings.sheetLength},${settings.sheetWidth},${settings.gap},1`;
/** Room for so many pieces: eight drums of eight. */
const mostPieces = 64;

/** Sheets to buy, and where each piece lies on them. */
export function cutPlanSheet(profile: ReadyProfile): SheetData {
  const widths = [16, 14, 14, 14, 18, 14];
  const draft = framed({
    name: 'Cut plan',
    title: 'Sheets to buy, and where each piece lies',
    step: 'x and y run from the sheet’s lower-left corner to the center that the arcs are struck from; the direction is that of the piece’s center line, counter-clockwise from the sheet’s length. Select the plan and the task pane draws it.',
    caution: 'Support both sides of a cut, keep hands behind the blade, and wear goggles and gloves.',
    widths,
  });
  draft
    .fill('A4:E4', 'heading')
    .height(4, 32)
    .fill('A5:E5', formatted('total', formats.two))
    .fill('A5', formatted('total', formats.whole))
    .fill('D5', formatted('total', formats.share))
    .put('A4', `=SILT.CUT.SHEETS(SiltUnits,${usedPatterns},${stock},TRUE)`, 'heading')
    .fill('A7:F7', 'heading')
    .height(7, 32)
    .fill(`A8:C${7 + mostPieces}`, formatted('result', formats.whole))
    .fill(`D8:F${7 + mostPieces}`, formatted('result', formats.two))
    .put('A7', `=SILT.CUT.PLAN(SiltUnits,${usedPatterns},${stock},TRUE)`, 'heading');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 7,
    tabColor: '1F7A8C',
    print: print(profile, `A1:F${7 + mostPieces}`, { landscape: false, titleRows: '1:7' }),
  });
}

/** Points to mark on the sheet, so that no giant compass is needed. */
export function markingOutSheet(profile: ReadyProfile): SheetData {
  const widths = [40, 16, 16, 16, 16, 16, 16];
  const draft = framed({
    name: 'Marking out',
    title: 'Marking-out table: points instead of a giant compass',
    step: 'x and y run from the lower-left corner of the blank. Bend a thin batten through the outer marks, then through the inner ones, and check the corner-to-corner distances with a tape before cutting.',
    widths,
  });
  draft
    .put('A4', 'Drum', 'heading')
    .put('B4', 'Fern', 'input')
    .choiceFrom('B4', patternNames, 'the drum whose piece is marked out')
    .put('C4', 'Degrees between marks', 'heading')
    .put('D4', 15, 'input')
    .height(4, 32)
    .fill('A6:G6', 'heading')
    .height(6, 32)
    .fill('A7:A60', 'result')
    .fill('B7:G60', formatted('result', formats.two))
    .put('A6', `=SILT.CONE.MARKS(SiltUnits,INDEX(${patternRows},MATCH(B4,${patternNames},0),0),D4,TRUE)`, 'heading');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 6,
    tabColor: '1F7A8C',
    print: print(profile, 'A1:G40', { landscape: false, titleRows: '1:6' }),
  });
}
