import { nearest } from '../../units/nearest';
import { wordList, wordText } from '../../units/text';
import type { CellFault, CellValue } from '../argument';
import type { NamedInputs } from '../plan/named-input';
import { ArgumentError } from './argument-error';
import { isBlank } from './blank';
import { inWords } from './headings';

export type OpenCell = CellValue | CellFault;

/** A table whose first column holds the names of inputs: the cells to the right of each name. */
export interface InputTable {
  readonly argument: string;
  /** The heading row, with the cell above the names. */
  readonly heading: readonly CellValue[] | undefined;
  /** Columns of values. */
  readonly count: number;
  /** By the key of the input. */
  readonly lines: ReadonlyMap<string, readonly OpenCell[]>;
}

/** A name in lower case with single spaces. */
export function foldedName(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, ' ');
}

/** The name of an input in the first column. */
export function inputName(inputs: NamedInputs, key: string): string {
  return inputs[key]?.name ?? inWords(key);
}

const keysByName = new WeakMap<NamedInputs, ReadonlyMap<string, string>>();

function keysOf(inputs: NamedInputs): ReadonlyMap<string, string> {
  let keys = keysByName.get(inputs);
  if (keys === undefined) {
    keys = new Map(Object.keys(inputs).map((key) => [foldedName(inputName(inputs, key)), key]));
    keysByName.set(inputs, keys);
  }
  return keys;
}

/**
 * Reads the names of a table. All-blank rows are skipped, and one heading row, whose first cell is blank, `input` or one
 * of the titles. Rows count from the first below the heading, as a user counts them.
 */
export function inputTable(
  argument: string,
  inputs: NamedInputs,
  cells: readonly (readonly OpenCell[])[],
  titles: readonly string[],
): InputTable {
  const count = (cells[0]?.length ?? 0) - 1;
  if (count < 1) {
    throw new ArgumentError(
      `${argument}: one column is not allowed; give names in the first column and values beside them`,
    );
  }
  const rows = cells.map((line) => [valueOrThrow(line[0]), line.slice(1)] as const);
  let first = rows.findIndex(([name, values]) => !isNothing(name) || !values.every(isNothing));
  const corner = rows[first]?.[0] ?? '';
  const heads = first >= 0 && (isNothing(corner) || titles.includes(foldedName(String(corner))));
  const heading = heads ? cells[first]?.map(valueOrThrow) : undefined;
  if (heads) first++;
  const lines = new Map<string, readonly OpenCell[]>();
  for (const [i, [name, values]] of rows.entries()) {
    if (i < first || (isNothing(name) && values.every(isNothing))) continue;
    const key = keyOf(`${argument}: row ${i - first + 1}`, inputs, name);
    if (lines.has(key)) {
      throw new ArgumentError(
        `${argument}: row ${i - first + 1}, ${inputName(inputs, key)} appears twice; delete one row`,
      );
    }
    lines.set(key, values);
  }
  if (lines.size === 0) throw new ArgumentError(`${argument}: no rows were given; give rows of name and value`);
  return { argument, heading, count, lines };
}

function keyOf(place: string, inputs: NamedInputs, name: CellValue): string {
  const keys = keysOf(inputs);
  if (isNothing(name)) throw new ArgumentError(`${place}: a name is missing`);
  const text = String(name);
  const key = keys.get(foldedName(text));
  if (key !== undefined) return key;
  const near = nearest(
    foldedName(text),
    Object.keys(inputs).map((one) => inputName(inputs, one)),
  );
  throw new ArgumentError(`${place}: ${wordText(text)} is not an input; nearest are ${wordList(near)}`);
}

/** Whether a cell counts as empty: blank, or the 0 that some hosts give for a blank. */
export function isNothing(value: unknown): boolean {
  return value === 0 || isBlank(value);
}

/** What stands where an input without a figure needs one. */
export function whatIsGiven({ lines }: InputTable, key: string, column: number): string {
  const cells = lines.get(key);
  if (cells === undefined) return 'its row is missing';
  const cell = cells[column];
  return `${isNothing(cell) ? '0 or blank' : wordText(String(cell))} is not allowed`;
}

function valueOrThrow(value: OpenCell | undefined): CellValue {
  if (value instanceof Error) throw value;
  return value ?? '';
}
