import type { Drawing } from '../../drawing/drawing-model';
import type { FunctionLibrary } from '../../functions/function-library';
import { type CellRange, cellName } from '../../hosts/address';
import type { Block, SheetHost } from '../../hosts/sheet-host';
import { NotFollowed } from '../follow/grid';
import { sentenceIn } from '../user-error';
import { readWorkbookUnits } from '../workbook-units';
import { drawingsOf } from './drawings-of';
import type { Recognized, SelectionContext } from './recognition';
import { recognize } from './recognize';

/** Functions whose results the pane draws. */
const drawnCall = /SILT[._](CONE[._]PATTERN|CUT[._]PLAN|PLAN[._](?:COMPARE|RANGE|DRIVERS))\s*\(/i;
const mostDrawings = 60;

export interface WorkbookDrawings {
  readonly drawings: readonly Drawing[];
  /** How many there would be in all. */
  readonly count: number;
}

/** Everything that the pane would draw if somebody selected each result of a workbook in turn, each drawing once. */
export async function workbookDrawings(
  host: Pick<SheetHost, 'read' | 'readUsed' | 'names'>,
  functionLibrary: FunctionLibrary,
): Promise<WorkbookDrawings> {
  const { units } = await readWorkbookUnits(host);
  const around: SelectionContext = {
    host,
    functionLibrary,
    names: await host.names(),
    units: units?.profile?.text,
  };
  const found = new Map<string, Drawing>();
  for (const block of await host.readUsed())
    for (const range of selections(block)) {
      const recognition = await recognize({ ...block, range }, around);
      if (!('recognized' in recognition)) continue;
      for (const { request } of withOthers(recognition.recognized))
        for (const drawing of drawable(() => drawingsOf(request)))
          found.set(JSON.stringify([drawing.title, drawing.entities]), drawing);
    }
  return { drawings: [...found.values()].slice(0, mostDrawings), count: found.size };
}

/**
 * What to select: the cells that each formula fills. Pattern rows below each other are one selection, so that they have
 * the numbers of the cut plan.
 */
function selections({ range: used, formulas, spills }: Block): readonly CellRange[] {
  const filled = new Map(spills.map((spill) => [cellName(spill.row, spill.column), spill]));
  const ranges: CellRange[] = [];
  formulas.forEach((line, down) => {
    line.forEach((formula, across) => {
      const call = drawnCall.exec(formula ?? '')?.[1];
      if (call === undefined) return;
      const [row, column] = [used.row + down, used.column + across];
      const range = filled.get(cellName(row, column)) ?? { row, column, rows: 1, columns: 1 };
      const above = ranges.findIndex((one) => one.column === column && one.row + one.rows === row);
      const upper = ranges[above];
      if (upper === undefined || !/^CONE/i.test(call)) ranges.push(range);
      else ranges[above] = { ...upper, rows: upper.rows + range.rows, columns: Math.max(upper.columns, range.columns) };
    });
  });
  return ranges;
}

/** Where one drawing of several is shown, such as a scenario of a table, all of them. */
function withOthers(recognized: Recognized): readonly Recognized[] {
  const { others } = recognized;
  return others === undefined
    ? [recognized]
    : others.titles.flatMap((_, i) => drawable(() => [others.recognizeOther(i)]));
}

/** What cannot be drawn is left out; in its place the pane shows a sentence. */
function drawable<T>(make: () => readonly T[]): readonly T[] {
  try {
    return make();
  } catch (error) {
    if (sentenceIn(error) === undefined && !(error instanceof NotFollowed)) throw error;
    return [];
  }
}
