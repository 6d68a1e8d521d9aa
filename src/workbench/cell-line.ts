import { cellName } from '../hosts/address';
import type { Block, SheetHost } from '../hosts/sheet-host';
import type { HostFunction } from '../hosts/univer/function-set';
import type { Spreadsheet } from '../hosts/univer/spreadsheet';
import { debounced } from '../task-pane/debounced';
import { part } from './page-parts';
import { typingHelp } from './typing-help';

function show(text: string, isError: boolean): void {
  part('cell-text').textContent = text;
  part('cell-line').classList.toggle('bad', isError);
}

/** The line above the grid: the selected cell with the reason of its error, or its note. */
export function showCellLine(spreadsheet: Spreadsheet, selection: Block): void {
  const { row, column } = selection.range;
  const value = selection.values[0]?.[0] ?? '';
  const isError = typeof value === 'object';
  part('cell-place').textContent = cellName(row, column);
  const note = spreadsheet.current().notes.at(selection.sheet, row, column) ?? '';
  show(isError ? `${value.error.code} ${value.error.message}` : note, isError);
}

/** While a formula is typed, the line explains the present argument. */
export function helpWhileTyping(spreadsheet: Spreadsheet, functions: readonly HostFunction[]): void {
  const byName = new Map(functions.map((fn) => [fn.fullName, fn]));
  const { api } = spreadsheet;
  api.addEvent(api.Event.SheetEditChanging, (event) => {
    show(typingHelp(event.value.toPlainText().trimEnd(), byName), false);
  });
}

/** Calls back with the selection now and after each change of it or of cells. */
export async function followSelection(
  host: SheetHost,
  listeners: readonly ((selection: Block) => void)[],
): Promise<void> {
  const tell = async (): Promise<void> => {
    const selection = await host.selection().catch(() => undefined);
    if (selection === undefined) return;
    for (const listener of listeners) listener(selection);
  };
  const update = debounced(() => void tell(), 40);
  await host.onSelectionChanged(update);
  await host.onCellsChanged(update);
  update();
}
