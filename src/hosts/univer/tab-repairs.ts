import { Direction, type IAccessor, IUniverInstanceService, UniverInstanceType, type Workbook } from '@univerjs/core';
import { KeyCode, MoveSelectionEnterAndTabCommand } from '@univerjs/preset-sheets-core';
import { type ISelectionWithStyle, SheetsSelectionsService } from '@univerjs/sheets';

/**
 * Where the grid loses its way with Tab and Enter:
 * - Enter goes under the cell where a row was begun with Tab, also long after another cell was clicked or shown; and
 * a row is begun with Shift+Tab too, and Shift+Enter goes above the cell where it was.
 * - Shift+Tab and Shift+Enter leave the workbook without a selected cell, after which the keys do nothing.
 */

interface MemoryKey {
  readonly unitId: string;
  readonly sheetId: string;
  readonly keycode: KeyCode;
}

/** Where the grid keeps the cell in which the first Tab of a row was pressed. */
interface TabMemory {
  readonly getCurrentBySearch: (key: MemoryKey) => object | undefined;
  readonly remove: (key: MemoryKey) => unknown;
}

const isTabMemory = (service: unknown): service is TabMemory =>
  typeof service === 'object' && service !== null && 'getCurrentBySearch' in service && 'remove' in service;

interface Place {
  readonly unitId: string;
  readonly sheetId: string;
  readonly cell: string;
}

/** The selected cell of the sheet in view. */
function selectedPlace(accessor: IAccessor): Place | undefined {
  const workbook = accessor.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  if (!workbook) return undefined;
  const primary = accessor.get(SheetsSelectionsService).getCurrentLastSelection()?.primary;
  return {
    unitId: workbook.getUnitId(),
    sheetId: workbook.getActiveSheet().getSheetId(),
    cell: `${primary?.actualRow} ${primary?.actualColumn}`,
  };
}

const isSame = (one: Place | undefined, other: Place | undefined): boolean =>
  one?.unitId === other?.unitId && one?.sheetId === other?.sheetId && one?.cell === other?.cell;

/** Before the first selection comes the last, which the grid looks for at -1. */
function asRing(selections: readonly ISelectionWithStyle[]): readonly ISelectionWithStyle[] {
  const concat = (): ISelectionWithStyle[] => Object.assign([...selections], { [-1]: selections.at(-1) });
  return Object.assign([...selections], { concat });
}

function withRing(service: SheetsSelectionsService): SheetsSelectionsService {
  return new Proxy(service, {
    get: (target, name) => {
      if (name === 'getCurrentSelections') return () => asRing(target.getCurrentSelections());
      const value: unknown = Reflect.get(target, name);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  });
}

let repaired = false;

export function repairTab(): void {
  if (repaired) return;
  repaired = true;
  const { handler } = MoveSelectionEnterAndTabCommand;
  /** Where the last Tab or Enter went. */
  let last: Place | undefined;
  MoveSelectionEnterAndTabCommand.handler = (accessor, params) => {
    const before = selectedPlace(accessor);
    if (before === undefined || params === undefined) return handler(accessor, params);
    const key = { unitId: before.unitId, sheetId: before.sheetId, keycode: KeyCode.TAB };
    const goesOn = isSame(before, last) && params.direction !== Direction.UP;
    let forgetAfter: TabMemory | undefined;
    const get = (...asked: Parameters<IAccessor['get']>): unknown => {
      const service: unknown = accessor.get(...asked);
      if (service instanceof SheetsSelectionsService) return withRing(service);
      if (isTabMemory(service)) {
        if (!goesOn) service.remove(key);
        if (params.direction === Direction.LEFT && service.getCurrentBySearch(key) === undefined) forgetAfter = service;
      }
      return service;
    };
    const moved = handler({ ...accessor, get } as IAccessor, params);
    forgetAfter?.remove(key);
    last = selectedPlace(accessor);
    return moved;
  };
}
