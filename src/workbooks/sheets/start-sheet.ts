import type { SheetData } from '../workbook-model';
import { columnWidths, framed, print } from './frame';
import type { ReadyProfile } from './sheet-draft';

export interface Start {
  readonly title: string;
  /** The invented place that the numbers come from. */
  readonly setting: string;
  /** What to type where, in five lines. */
  readonly lines: readonly [string, string, string, string, string];
  readonly cautions: readonly string[];
}

/** The first sheet of a workbook: what to type where, in five lines, how cells look, and what can hurt. */
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
    .put('C12', 'a number in the unit of its heading, or text with a unit of its own', 'label')
    .put('B13', 'worked out', 'result')
    .put('C13', 'by a formula; leave it be, and leave the cells below and to the right of it free', 'label')
    .put('A15', 'What can hurt', 'section');
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
