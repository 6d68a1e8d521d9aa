import type { SheetHost } from '../../hosts/sheet-host';
import { make, makeButton } from '../dom';
import { saveFile } from '../save-file';
import { waitForResults } from '../still-calculating';
import { valuesOnlyCopy } from '../values-only';
import type { PaneContext } from '../view';

const copyName = 'values only.xlsx';
const xlsxType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** Whether the host can give the workbook's file, and the pane can hand over the copy. */
function canCopy(host: SheetHost): boolean {
  return host.file !== undefined && (host.downloads || host.openFile !== undefined);
}

/** The button that makes a values-only copy; undefined where the page around the pane has one, or nothing can be saved. */
export function createValuesCopy({ host, functionLibrary, work, notify }: PaneContext): HTMLElement | undefined {
  if (host === undefined || !canCopy(host)) return undefined;
  const copy = makeButton('Save values only', () => {
    void work('Making the values-only copy', async ({ step, finishing }) => {
      await waitForResults(host);
      const file = await host.file?.();
      if (file === undefined) return;
      await step(0.3);
      const content = await valuesOnlyCopy(file, host, functionLibrary);
      await step(0.9);
      finishing();
      if (host.downloads) {
        saveFile({ name: copyName, type: xlsxType, content });
        notify('done', `Saved as ${copyName}.`);
      } else {
        await host.openFile?.(content);
        notify('done', 'The copy is open as a new workbook; save it there.');
      }
    });
  });
  return make(
    'section',
    {},
    make('h2', {}, 'A copy for people without the add-in'),
    make(
      'p',
      {},
      'Results in place of formulas, and the drawings as pictures, for phones, printers and other programs. This workbook does not change.',
    ),
    make('div', { class: 'buttons' }, copy),
  );
}
