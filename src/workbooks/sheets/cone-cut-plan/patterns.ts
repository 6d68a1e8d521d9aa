import type { SheetData } from '../../../hosts/workbook-model';
import { cautions } from '../cautions';
import { chooser } from '../chooser';
import { columnWidths, framed, print, withUnit } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { mostDrums, ofUsed, settings } from './drums';

const last = 4 + mostDrums;

/** The pattern rows, with names beside them; an unused row is blank. */
export const patternNames = `Patterns!$A$5:$A$${last}`;
export const patternRows = `Patterns!$B$5:$K$${last}`;
/** Whether the row of a drum could be calculated. */
export const hasPattern = `ISNUMBER(Patterns!$B$5:$B$${last})`;
/**
 * The pattern rows for functions that take a table. A row without a result is passed on blank, so that the others are
 * still placed and keep their numbers.
 */
export const usedPatterns = `FILTER(IF(${hasPattern},${patternRows},""),${patternNames}<>"")`;
/** A figure of a drum by its place among those that have a name, in the order of the pattern rows. */
export function ofDrum(name: Parameters<typeof ofUsed>[0], place: string): string {
  return `INDEX(${ofUsed(name)},${place})`;
}

/** One pattern row per drum, and the cautions for a chosen one. */
export function patternsSheet(profile: ReadyProfile): SheetData {
  const widths = [19, 11, 10, 10, 10, 11, 11, 11, 10, 8, 8];
  const draft = framed({
    name: 'Patterns',
    title: 'Pattern rows: what to mark and cut',
    step: 'One row per drum. Select a row: the task pane can draw it, print it full size on ordinary paper, or save it for a cutting machine.',
    caution: 'Cut edges are sharp: wear gloves and goggles, and clamp each piece before you cut it.',
    widths,
  });
  const of = (name: Parameters<typeof ofUsed>[0]): string => ofDrum(name, '$C$15');
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
    .put('A14', 'What to check first', 'section')
    .put('A15', 'Drum (no. or name)')
    .sentences(
      `=SILT.CONE.CHECK(SiltUnits,${of('diameter')}-2*IF(${settings.clearance}="",0,SILT.UNIT.READ(SiltUnits,"dimension",${settings.clearance})),${of('drain')},${of('height')},${of('pieces')},${of('lap')},${settings.thickness},${of('diameter')},${settings.sheetLength},${settings.sheetWidth})`,
      'M16',
      'A16:J16',
      9,
    )
    .put('A26', withUnit('Rivets along one seam, spacing at most', 'dimension'))
    .put('F26', profile === 'US' ? 1.5 : 40, 'input')
    .put(
      'G26',
      `=SILT.CONE.RIVETS(SiltUnits,INDEX(Patterns!$C$5:$C$${last},C15),F26)`,
      formatted('result', formats.whole),
    )
    .put('H26', 'rivets', 'note')
    .wide('A27:J27', `CAUTION: ${cautions.metals}`, 'caution', 32);
  chooser(draft, {
    what: 'drum',
    list: patternNames,
    typed: 'B15',
    place: 'C15',
    shown: 'D15',
    listed: 'C14',
    first: 1,
  });
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    print: print(profile, 'A1:K27', { fitToHeight: 1 }),
  });
}
