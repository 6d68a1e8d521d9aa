import type { SheetData } from '../../../hosts/workbook-model';
import { chooser } from '../chooser';
import { columnWidths, framed, print } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { settings } from './drums';
import { hasPattern, patternNames, patternRows, usedPatterns } from './patterns';

const stock = `${settings.sheetLength},${settings.sheetWidth},${settings.gap},1`;
/** Room for this many pieces: eight drums of eight. */
const mostPieces = 64;

/** The names of drums without a pattern, or with a piece that the plan could not place (`does not fit: …`). */
const notPlaced = `TEXTJOIN(", ",TRUE,IF((${patternNames}<>"")*((${hasPattern}=FALSE)+COUNTIFS($A$8:$A$${7 + mostPieces},SEQUENCE(ROWS(${patternNames})),$C$8:$C$${7 + mostPieces},"*: *")>0),${patternNames},""))`;

/** Sheets to buy, and where each piece goes on them. */
export function cutPlanSheet(profile: ReadyProfile): SheetData {
  const widths = [16, 14, 14, 14, 20, 14];
  const draft = framed({
    name: 'Cut plan',
    title: 'Sheets to buy, and where each piece goes',
    step: 'x and y are measured from the lower-left corner of the sheet to the center of the arcs. Direction is the angle of the piece’s center line, counter-clockwise from the length of the sheet. Select the plan and the task pane draws it.',
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
    .wide(
      'A6:F6',
      `=IF(${notPlaced}="","","Not placed: "&${notPlaced}&". Sheets for the others: "&IFERROR(MAX($C$8:$C$${7 + mostPieces}),0)&". Check that row in Patterns, and the sizes typed for it in Drums.")`,
      'alarm',
      32,
    )
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

/** Points to mark on the sheet, so that nobody needs a giant compass. */
export function markingOutSheet(profile: ReadyProfile): SheetData {
  const widths = [40, 16, 16, 16, 16, 16, 16];
  const draft = framed({
    name: 'Marking out',
    title: 'Marking-out table: points instead of a giant compass',
    step: 'x and y are measured from the lower-left corner of the blank. Bend a thin strip of wood along the outer marks and draw the curve; then do the same along the inner marks. Check the corner-to-corner distances with a tape before you cut.',
    widths,
  });
  draft
    .put('A4', 'Drum (number or name)', 'heading')
    .put('C4', 'Degrees between marks', 'heading')
    .put('D4', 15, 'input')
    .height(4, 32)
    .fill('A6:G6', 'heading')
    .height(6, 32)
    .fill('A7:A60', 'result')
    .fill('B7:G60', formatted('result', formats.two))
    .put('A6', `=SILT.CONE.MARKS(SiltUnits,INDEX(${patternRows},E4,0),D4,TRUE)`, 'heading');
  chooser(draft, {
    what: 'drum',
    list: patternNames,
    typed: 'B4',
    place: 'E4',
    shown: 'F4',
    listed: 'A5',
    first: 1,
  });
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 6,
    tabColor: '1F7A8C',
    print: print(profile, 'A1:G40', { landscape: false, titleRows: '1:6' }),
  });
}
