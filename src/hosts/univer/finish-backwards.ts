import { CommandType, Direction, type IAccessor, ICommandService, type Injector } from '@univerjs/core';
import {
  DeviceInputEventType,
  IEditorBridgeService,
  IShortcutService,
  KeyCode,
  MetaKeys,
  MoveSelectionEnterAndTabCommand,
  SetCellEditVisibleOperation,
  whenSheetEditorActivated,
} from '@univerjs/preset-sheets-core';

/** Above the list of functions, which has 1000. */
const priority = 1001;

const ways = [
  { id: 'siltstead.command.finish-left', direction: Direction.LEFT, keycode: KeyCode.TAB },
  { id: 'siltstead.command.finish-up', direction: Direction.UP, keycode: KeyCode.ENTER },
] as const;

/**
 * Shift+Tab and Shift+Enter take what was typed and go back by one cell. The grid has no such keys while a cell is
 * edited; the browser would go to the line above the grid, and what is typed next would be lost.
 */
export function finishBackwards(injector: Injector): void {
  const commands = injector.get(ICommandService);
  const shortcuts = injector.get(IShortcutService);
  for (const { id, ...way } of ways) {
    const handler = (accessor: IAccessor): Promise<boolean> => {
      const bridge = accessor.get(IEditorBridgeService);
      const unitId = bridge.getEditCellState()?.unitId;
      bridge.disableForceKeepVisible();
      const end = { visible: false, eventType: DeviceInputEventType.Keyboard, unitId };
      commands.syncExecuteCommand(SetCellEditVisibleOperation.id, end);
      return commands.executeCommand(MoveSelectionEnterAndTabCommand.id, way);
    };
    commands.registerCommand({ id, type: CommandType.COMMAND, handler });
    const binding = way.keycode | MetaKeys.SHIFT;
    shortcuts.registerShortcut({ id, binding, preconditions: whenSheetEditorActivated, priority });
  }
}
