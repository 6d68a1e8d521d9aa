import type { Drawing } from '../drawing/drawing-model';
import { functionLibrary } from '../functions/function-library';
import { drawingsOf } from '../task-pane/drawings/drawings-of';
import { recognizedScenario } from '../task-pane/drawings/recognize-scenario';
import { DrawMistake, type DrawRequest } from './draw-request';
import { cellsOf, openDrawn, unitsOf } from './draw-workbook';

/** The train of one scenario of a workbook, the very drawing that the pane shows of it. */
export async function trainDrawings({ given }: DrawRequest): Promise<readonly Drawing[]> {
  const workbook = await openDrawn(given.workbook ?? '');
  const units = given.units ?? unitsOf(workbook);
  if (units === undefined) throw new DrawMistake('--units: give US or metric');
  const range = given.scenarios ?? '';
  const cells = cellsOf(workbook, range);
  const most = (cells[0]?.length ?? 0) - 1;
  const column = Number(given.column ?? 1);
  if (!Number.isInteger(column) || column < 1 || column > most) {
    throw new DrawMistake(`--column: ${given.column} is not a scenario of ${range}; give 1 to ${most}`);
  }
  return drawingsOf(recognizedScenario(cells, column - 1, units, range, functionLibrary).request);
}
