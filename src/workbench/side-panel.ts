import type { Drawing } from '../drawing/drawing-model';
import { toSvg } from '../drawing/svg';
import type { Block } from '../hosts/sheet-host';
import { type DrawingSource, selectionDrawing } from './selection-drawing';

const invitation = 'Select a pattern row or a cut plan to see it drawn.';

function line(tag: 'h2' | 'p', text: string): HTMLElement {
  const element = document.createElement(tag);
  element.textContent = text;
  return element;
}

/** The drawing as a picture of its own, so that nothing in it can reach the page. */
function picture(drawing: Drawing): HTMLImageElement {
  const image = document.createElement('img');
  image.alt = drawing.title;
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(toSvg(drawing))}`;
  return image;
}

let shown = 0;

/** Shows what belongs to the selected cells beside the grid. */
export async function showSelection(panel: HTMLElement, selection: Block, source: DrawingSource): Promise<void> {
  shown += 1;
  const mine = shown;
  let content: HTMLElement[];
  try {
    const drawing = await selectionDrawing(selection, source);
    content =
      drawing === undefined
        ? [line('h2', 'Drawing'), line('p', invitation)]
        : [line('h2', drawing.title), picture(drawing), ...drawing.notes.map((note) => line('p', note))];
  } catch (thrown) {
    content = [line('h2', 'Drawing'), line('p', thrown instanceof Error ? thrown.message : String(thrown))];
  }
  // A later selection may have been answered first.
  if (mine === shown) panel.replaceChildren(...content);
}
