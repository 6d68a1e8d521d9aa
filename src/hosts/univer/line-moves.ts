import type { ICommandInfo, IRange } from '@univerjs/core';
import {
  InsertColMutation,
  InsertRowMutation,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
} from '@univerjs/sheets';
import type { CellRange } from '../address';
import type { LineMove, Move } from '../moved-lines';
import { fromEngineRange } from './snapshot';

interface LinesParams {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly range: IRange;
  readonly sourceRange: IRange;
  readonly targetRange: IRange;
}

export interface SheetMove<M extends Move = LineMove> {
  readonly workbook: string;
  readonly sheet: string;
  readonly move: M;
}

interface CutParams {
  readonly unitId: string;
  readonly fromRange: IRange;
  readonly toRange: IRange;
  readonly from: { readonly subUnitId: string };
  readonly to: { readonly subUnitId: string };
}

interface SheetCells {
  readonly sheet: string;
  readonly range: CellRange;
}

/** The cells that are cut and pasted by a command. */
export function cutCells({ id, params }: Readonly<ICommandInfo>) {
  if (id !== MoveRangeMutation.id) return undefined;
  const { unitId: workbook, fromRange, toRange, from, to } = params as CutParams;
  const source: SheetCells = { sheet: from.subUnitId, range: fromEngineRange(fromRange) };
  const target: SheetCells = { sheet: to.subUnitId, range: fromEngineRange(toRange) };
  return { workbook, from: source, to: target };
}

/** The rows, columns or cells that come, go or move by a command; cells that go to another sheet are none of them. */
export function anyMove(command: Readonly<ICommandInfo>): SheetMove<Move> | undefined {
  const cut = cutCells(command);
  if (cut === undefined) return sheetMove(command);
  const { workbook, from, to } = cut;
  if (from.sheet !== to.sheet) return undefined;
  const { row, column } = to.range;
  return { workbook, sheet: from.sheet, move: { across: 'cells', from: from.range, row, column } };
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
