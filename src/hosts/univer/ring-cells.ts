import { cellName } from '../address';

/** Formulas that refer to themselves or to each other in a circle, found while one calculation runs. */

export interface RingCell {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly row: number;
  readonly column: number;
}

const ofItself = 'the formula refers to its own cell';
const inCircle = 'the formulas refer to each other in a circle: ';
const mostNamed = 4;

/** By the engine's record of the calculation. */
const found = new WeakMap<object, Map<string, string>>();

const keyOf = (unitId: string, sheetId: string, row: number, column: number): string =>
  `${unitId}\n${sheetId}\n${row},${column}`;

export function noteRing(runtime: object, ring: readonly RingCell[]): void {
  const cells = found.get(runtime) ?? new Map<string, string>();
  found.set(runtime, cells);
  const names = [...ring]
    .sort((one, other) => one.row - other.row || one.column - other.column)
    .slice(0, mostNamed)
    .map(({ row, column }) => cellName(row, column));
  const message = ring.length === 1 ? ofItself : `${inCircle}${names.join(', ')}${ring.length > mostNamed ? ' …' : ''}`;
  for (const { unitId, subUnitId, row, column } of ring) cells.set(keyOf(unitId, subUnitId, row, column), message);
}

/** Why the formula in a cell has no value; undefined if it is not part of a circle. */
export function ringMessage(
  runtime: object,
  unitId: string,
  sheetId: string,
  row: number,
  column: number,
): string | undefined {
  return found.get(runtime)?.get(keyOf(unitId, sheetId, row, column));
}

export function forgetRings(runtime: object): void {
  found.delete(runtime);
}

/** Whether a message is about a cell in a circle, not about one that only reads such a cell. */
export function isRingMessage(message: string): boolean {
  return message === ofItself || message.startsWith(inCircle);
}
