import type { Drawing } from '../../drawing/drawing-model';
import type { PaperName } from '../../drawing/tiling';
import { make, makeButton } from '../dom';
import type { Notify } from '../messages';
import { saveFile } from '../save-file';
import { sentenceIn } from '../user-error';
import type { Work } from '../work';
import { drawingFile, type Format } from './drawing-file';

export interface SavePanel {
  readonly element: HTMLElement;
  /** Sets the drawings to save. */
  readonly offer: (drawings: readonly Drawing[]) => void;
}

const labels: Readonly<Record<Format, string>> = { pdf: 'Save PDF', dxf: 'Save DXF', svg: 'Save SVG' };

/** Buttons that save the drawing: pages to tape together, a file for a cutter, a picture. */
export function createSavePanel(notify: Notify, work: Work): SavePanel {
  let drawings: readonly Drawing[] = [];
  const paper = select('Paper', ['A4', 'Letter']);
  const size = select('Size', ['Full size, on pages to tape', 'Fitted to one page']);
  let chosenPaper = false;
  paper.choice.addEventListener('change', () => {
    chosenPaper = true;
  });
  const save = async (format: Format): Promise<void> => {
    await work(labels[format].replace('Save', 'Making the'), async ({ step, finishing }) => {
      try {
        const options = {
          format,
          paper: paper.choice.value as PaperName,
          fullSize: !size.element.hidden && size.choice.selectedIndex === 0,
        };
        const file = await drawingFile(drawings, options, { step });
        finishing();
        saveFile(file);
        notify(
          'done',
          `Saved ${file.name}.${format === 'pdf' && options.fullSize ? ' Print it at 100 % and measure the bars first.' : ''}`,
        );
      } catch (error) {
        const sentence = sentenceIn(error);
        if (sentence === undefined) throw error;
        notify('fault', sentence);
      }
    });
  };
  const buttons = (['pdf', 'dxf', 'svg'] as const).map((format) => makeButton(labels[format], () => void save(format)));
  const element = make(
    'fieldset',
    { class: 'save' },
    make('legend', {}, 'Save'),
    paper.element,
    size.element,
    make('div', { class: 'buttons' }, ...buttons),
    make(
      'p',
      { class: 'faint' },
      'PDF for ordinary paper, DXF for a cutter, SVG for a picture; DXF and SVG are full size.',
    ),
  );
  return {
    element,
    offer: (next) => {
      drawings = next;
      const [first] = next;
      if (first === undefined) return;
      size.element.hidden = !first.fullSize;
      if (!chosenPaper) paper.choice.value = first.units === 'US' ? 'Letter' : 'A4';
    },
  };
}

function select(
  label: string,
  options: readonly string[],
): { readonly element: HTMLElement; readonly choice: HTMLSelectElement } {
  const choice = make('select', {}, ...options.map((option) => make('option', {}, option)));
  const element = make('label', { class: 'choice' }, make('span', {}, label), choice);
  return { element, choice };
}
