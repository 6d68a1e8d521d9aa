import { DOCS_NORMAL_EDITOR_UNIT_ID_KEY, IUniverInstanceService, UniverInstanceType } from '@univerjs/core';
import { ILayoutService } from '@univerjs/preset-sheets-core';
import type { Spreadsheet } from '../hosts/univer/spreadsheet';
import { FocusKeeper } from './keep-focus';
import { part } from './page-parts';

type Region = 'bar' | 'grid' | 'charts' | 'pane';

const order: readonly Region[] = ['bar', 'grid', 'charts', 'pane'];

/** Puts a part in front if there is no room for both: the grid or the pane. */
export function bringForward(front: 'grid' | 'pane'): void {
  document.body.dataset.front = front;
  part('switch').textContent = front === 'pane' ? 'Show the sheet' : 'Show the pane';
}

/** Goes to the tab of the view in front; its controls come next by Tab. */
export function focusPane(): void {
  bringForward('pane');
  part('pane').querySelector<HTMLElement>('[role=tab][aria-selected=true]')?.focus();
}

/**
 * The grid gives the focus to the editor of its cell. As the page opens, that editor is not yet there, or has not yet
 * been made the current one, which a first selected cell does only if it is selected later.
 */
function focusGrid(spreadsheet: Spreadsheet): void {
  const documents = spreadsheet.injector.get(IUniverInstanceService);
  const cellEditor = documents.getUnit(DOCS_NORMAL_EDITOR_UNIT_ID_KEY);
  if (cellEditor && !documents.getCurrentUnitOfType(UniverInstanceType.UNIVER_DOC))
    documents.setCurrentUnitForType(DOCS_NORMAL_EDITOR_UNIT_ID_KEY);
  spreadsheet.injector.get(ILayoutService).focus();
  if (document.activeElement === document.body) requestAnimationFrame(() => focusGrid(spreadsheet));
}

/**
 * F6 goes from the bar to the grid, its charts if it has some, and the pane, and back to the bar; Shift+F6 goes the
 * other way. The grid uses every other key itself. On a narrow page, which shows only the grid or the pane, a button
 * changes between them.
 */
export function moveBetweenRegions(spreadsheet: Spreadsheet): void {
  const keeper = new FocusKeeper(part('grid'));
  const focus: Readonly<Record<Region, () => void>> = {
    bar: () => part('samples').focus(),
    grid: () => {
      bringForward('grid');
      const toggle = part('charts-toggle');
      const coverGrid = getComputedStyle(part('charts')).position === 'absolute';
      if (coverGrid && toggle.getAttribute('aria-expanded') === 'true') toggle.click();
      keeper.letIn();
      focusGrid(spreadsheet);
    },
    charts: () => {
      bringForward('grid');
      part('charts-toggle').focus();
    },
    pane: focusPane,
  };
  const here = (): Region =>
    order.find((region) => region !== 'grid' && part(region).contains(document.activeElement)) ?? 'grid';
  addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'F6' || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      // The grid would take the focus back while it still handles a key.
      const regions = order.filter((region) => !part(region).hidden);
      const step = event.shiftKey ? regions.length - 1 : 1;
      const next = regions[(regions.indexOf(here()) + step) % regions.length];
      if (next === undefined) return;
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      focus[next]();
    },
    { capture: true },
  );
  part('switch').addEventListener('click', () => {
    bringForward(document.body.dataset.front === 'pane' ? 'grid' : 'pane');
  });
  bringForward('grid');
}
