import type { SheetData } from '../../hosts/workbook-model';
import { columnWidths, framed, print } from './frame';
import type { ReadyProfile } from './sheet-draft';

export interface Start {
  readonly title: string;
  /** The invented farm that the numbers describe. */
  readonly setting: string;
  /** What to type where, in five lines. */
  readonly lines: readonly [string, string, string, string, string];
  readonly cautions: readonly string[];
}

/** The first sheet of a workbook: what to type where, in five lines, how cells look, and the cautions. */
export function startSheet(profile: ReadyProfile, { title, setting, lines, cautions }: Start): SheetData {
  const widths = [5, 24, 90];
  const draft = framed({ name: 'Start', title, step: setting, widths });
  draft.put('A4', 'What to type where', 'section');
  lines.forEach((line, index) => {
    draft
      .put(`A${5 + index}`, index + 1, { vertical: 'top', horizontal: 'left' })
      .wide(`B${5 + index}:C${5 + index}`, line, 'text', line.length > 112 ? 32 : 17);
  });
  draft
    .put('A11', 'How cells look', 'section')
    .put('B12', 'type here', 'input')
    .put('C12', 'a number in the unit of the heading, or text with its own unit', 'label')
    .put('B13', 'calculated', 'result')
    .put('C13', 'by a formula; do not type over it, and keep the cells below it and to its right empty', 'label')
    .put('A15', 'Cautions', 'section');
  cautions.forEach((caution, index) => {
    draft.wide(`A${16 + index}:C${16 + index}`, caution, 'caution', caution.length > 118 ? 32 : 17);
  });
  return draft.sheet({
    columnWidths: columnWidths(widths),
    tabColor: '1F4E5F',
    hideGridlines: true,
    print: print(profile, `A1:C${16 + cautions.length}`, { fitToHeight: 1, titleRows: '1:3' }),
  });
}
