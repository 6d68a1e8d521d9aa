import type { ICommandInfo, IRange } from '@univerjs/core';
import {
  InsertColMutation,
  InsertRowMutation,
  MoveColsMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
} from '@univerjs/sheets';
import type { LineMove } from '../moved-lines';

interface LinesParams {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly range: IRange;
  readonly sourceRange: IRange;
  readonly targetRange: IRange;
}

export interface SheetMove {
  readonly workbook: string;
  readonly sheet: string;
  readonly move: LineMove;
}

/** Whether rows come, go or move by a command, or columns; undefined if none do. */
const linesOf: ReadonlyMap<string, readonly [LineMove['across'], sign: 1 | 0 | -1]> = new Map([
  [InsertRowMutation.id, ['row', 1]],
  [InsertColMutation.id, ['column', 1]],
  [RemoveRowMutation.id, ['row', -1]],
  [RemoveColMutation.id, ['column', -1]],
  [MoveRowsMutation.id, ['row', 0]],
  [MoveColsMutation.id, ['column', 0]],
]);

/** The rows or columns that come, go or move by a command. */
export function sheetMove({ id, params }: Readonly<ICommandInfo>): SheetMove | undefined {
  const [across, sign] = linesOf.get(id) ?? [];
  if (across === undefined || sign === undefined) return undefined;
  const { unitId: workbook, subUnitId: sheet, range, sourceRange, targetRange } = params as LinesParams;
  const ends = (lines: IRange): [number, number] =>
    across === 'row' ? [lines.startRow, lines.endRow] : [lines.startColumn, lines.endColumn];
  const [first, last] = ends(sign === 0 ? sourceRange : range);
  const count = last - first + 1;
  if (sign !== 0) return { workbook, sheet, move: { across, first, count: sign * count } };
  return { workbook, sheet, move: { across, first, count, to: ends(targetRange)[0] } };
}
