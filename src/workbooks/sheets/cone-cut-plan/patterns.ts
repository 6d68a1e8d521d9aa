import type { SheetData } from '../../workbook-model';
import { cautions } from '../cautions';
import { columnWidths, framed, print, withUnit } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { drumColumn, mostDrums, ofUsed, settings } from './drums';

const last = 4 + mostDrums;

/** The pattern rows, names beside them; an unused row is blank. */
export const patternNames = `Patterns!$A$5:$A$${last}`;
export const patternRows = `Patterns!$B$5:$K$${last}`;
/** The pattern rows that are used, for functions that take a table. */
export const usedPatterns = `FILTER(${patternRows},${patternNames}<>"")`;

/** The row, counted from 1, of the drum that a cell names. */
export function drumAt(cell: string): string {
  return `MATCH(${cell},${drumColumn('drum')},0)`;
}

/** One pattern row a drum, and what is to be said against one of them. */
export function patternsSheet(profile: ReadyProfile): SheetData {
  const widths = [16, 12, 11, 12, 12, 13, 13, 13, 11, 9, 9];
  const draft = framed({
    name: 'Patterns',
    title: 'Pattern rows: what to mark and cut',
    step: 'One row a drum. Select a row and the task pane draws it, prints it full size on ordinary paper, or saves it for a cutter.',
    caution: 'Cut edges are sharp: gloves and goggles, and a piece clamped down before it is cut.',
    widths,
  });
  const of = (name: Parameters<typeof drumColumn>[0]): string => `INDEX(${drumColumn(name)},$C$15)`;
  draft
    .fill('A4:K4', 'heading')
    .put('A4', 'Drum', 'heading')
    .height(4, 48)
    .fill(`A5:A${last}`, 'result')
    .fill(`B5:K${last}`, formatted('result', formats.two))
    .fill(`J5:J${last}`, formatted('result', formats.whole))
    .put('A5', `=${ofUsed('drum')}`, 'result')
    .put(
      'B4',
      `=SILT.CONE.PATTERN(SiltUnits,${ofUsed('diameter')},${ofUsed('drain')},${ofUsed('height')},${ofUsed('pieces')},${ofUsed('lap')},${settings.thickness},${settings.measured},${settings.clearance},TRUE)`,
      'heading',
    )
    .put('A14', 'What to look at first', 'section')
    .put('A15', 'Drum')
    .put('B15', 'Fern', 'input')
    .choiceFrom('B15', drumColumn('drum'), 'the drum whose cone is checked below')
    .put('C15', `=${drumAt('B15')}`, 'result')
    .put('D15', 'which drum of the list', 'note')
    .put(
      'A16',
      `=SILT.CONE.CHECK(SiltUnits,${of('diameter')}-2*IF(${settings.clearance}="",0,SILT.UNIT.READ(SiltUnits,"dimension",${settings.clearance})),${of('drain')},${of('height')},${of('pieces')},${of('lap')},${settings.thickness},${of('diameter')},${settings.sheetLength},${settings.sheetWidth})`,
      'label',
    )
    .put('A26', withUnit('Rivets along one seam, no further apart than', 'dimension'))
    .put('F26', profile === 'US' ? 1.5 : 40, 'input')
    .put(
      'G26',
      `=SILT.CONE.RIVETS(SiltUnits,INDEX(Patterns!$C$5:$C$${last},MATCH(B15,${patternNames},0)),F26)`,
      formatted('result', formats.whole),
    )
    .put('H26', `rivets. ${cautions.metals}`, 'note');
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    print: print(profile, 'A1:K26'),
  });
}
