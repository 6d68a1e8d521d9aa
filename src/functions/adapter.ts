import type { CatalogueRow } from '../catalogue/define';
import { ArgumentError } from '../catalogue/reading/argument-error';
import { isBlank } from '../catalogue/reading/blank';
import { AnswerFault, digitsToType, formatMessage, type KindOf } from '../catalogue/reading/wording';
import { Refusal } from '../formulas/refusal';
import { type Profile, readProfile } from '../units/profile';
import { wordGiven } from '../units/quantity';
import { wordList } from '../units/text';
import { Unreadable } from '../units/unreadable';
import { at, type Block, cell, height, isBlock, PassedError, unwrap, width } from './adapter/cells';
import { type Cell, headingRow, mostRows, type Presenter, presenter } from './adapter/results';
import { type GivenSoFar, type Slot, slot } from './adapter/slots';

/** Makes the host's own error object, which only the host layer knows. */
export type MakeError = (code: string, message: string) => unknown;

/** A worksheet function as hosts call it: cell values or blocks of them in, a block out, host errors thrown. */
export type Adapted = (...values: unknown[]) => unknown[][];

interface Plan {
  readonly row: CatalogueRow;
  readonly slots: readonly Slot[];
  readonly takesUnits: boolean;
  readonly takesHeadings: boolean;
  readonly kindOf: KindOf;
  readonly present: Presenter;
  readonly template: GivenSoFar;
}

/** Whether the function ends with the optional `headings` argument. */
export function takesHeadings(row: CatalogueRow): boolean {
  return 'row' in row.result || 'rows' in row.result || 'lines' in row.result;
}

/** The names of all arguments in order. */
export function argumentNames(row: CatalogueRow): readonly string[] {
  const names = Object.keys(row.arguments);
  return [...(row.units === false ? [] : ['units']), ...names, ...(takesHeadings(row) ? ['headings'] : [])];
}

/** Turns a catalogue row into the function that a host calls: coerce, check, broadcast, compute, convert. */
export function adapt(row: CatalogueRow, makeError: MakeError): Adapted {
  const plan = planOf(row);
  return (...values) => {
    try {
      return run(plan, values, makeError);
    } catch (error) {
      throw hostError(error, makeError);
    }
  };
}

function planOf(row: CatalogueRow): Plan {
  const kindOf: KindOf = (name) => {
    const spec = row.arguments[name];
    return spec !== undefined && 'kind' in spec ? spec.kind : undefined;
  };
  return {
    row,
    slots: Object.entries(row.arguments).map(([name, spec]) => slot(name, spec)),
    takesUnits: row.units !== false,
    takesHeadings: takesHeadings(row),
    kindOf,
    present: presenter(row.result, kindOf),
    template: Object.fromEntries(Object.keys(row.arguments).map((name) => [name, undefined])),
  };
}

const unitless = readProfile('metric');

function run(plan: Plan, values: unknown[], makeError: MakeError): unknown[][] {
  const { slots, takesUnits } = plan;
  const first = takesUnits ? 1 : 0;
  refuseSurplus(plan, values, first + slots.length + (plan.takesHeadings ? 1 : 0));
  const profile = takesUnits ? profileOf(values[0]) : unitless;
  const taken: unknown[] = new Array(slots.length);
  let rows = 1;
  let columns = 1;
  for (let i = 0; i < slots.length; i++) {
    const value = unwrap(values[first + i]);
    taken[i] = value;
    const slot = slots[i];
    if (slot === undefined || !isBlock(value)) continue;
    const { name, spec, broadcasts } = slot;
    if ('choice' in spec) throw new ArgumentError(`${name}: a range is not allowed; give one word`);
    if (!broadcasts) continue;
    rows = joinedSize(rows, height(value), name, 'rows');
    columns = joinedSize(columns, width(value), name, 'columns');
  }
  const wanted = plan.takesHeadings && wantsHeadings(values[first + slots.length]);
  const body =
    rows === 1 && columns === 1
      ? errorsShown(plan, callOnce(plan, taken, profile), makeError)
      : broadcast(plan, taken, profile, { rows, columns }, makeError);
  const top = wanted ? headingRow(plan.row.result, profile) : undefined;
  return top === undefined ? body : [top, ...body];
}

function profileOf(value: unknown): Profile {
  const plain = unwrap(value);
  if (isBlock(plain))
    throw new ArgumentError('units: a range is not allowed; put "US", "metric" or the cell SiltUnits first');
  return readProfile(cell(plain));
}

/** Excel adds one object after the declared arguments; anything else there was typed by the user. */
function refuseSurplus(plan: Plan, values: unknown[], most: number): void {
  if (values.length <= most) return;
  const last = values[most];
  if (values.length === most + 1 && typeof last === 'object' && !Array.isArray(last)) return;
  const surplus = values.slice(most);
  if (surplus.every((value) => value === null || value === undefined)) return;
  const names = argumentNames(plan.row);
  throw new ArgumentError(`SILT.${plan.row.name} takes at most ${names.length} arguments: ${names.join(', ')}`);
}

function joinedSize(sofar: number, next: number, name: string, what: string): number {
  if (next === sofar || next === 1) return sofar;
  if (sofar === 1) return next;
  throw new ArgumentError(`${name}: ${next} ${what} do not fit the ${sofar} ${what} of the arguments before it`);
}

function wantsHeadings(value: unknown): boolean {
  const plain = cell(unwrap(value));
  if (typeof plain === 'boolean') return plain;
  if (typeof plain === 'number') return plain !== 0;
  const typed = plain.trim().toLowerCase();
  if (typed === '' || typed === 'false') return false;
  if (typed === 'true') return true;
  throw new ArgumentError(`headings: "${plain.slice(0, 40)}" is not allowed; give TRUE or FALSE`);
}

/** One computation: reads each argument, computes, converts the result. */
function callOnce(plan: Plan, taken: readonly unknown[], profile: Profile): Cell[][] {
  const { slots, row } = plan;
  const given: GivenSoFar = { ...plan.template };
  slots.forEach(({ name, read }, i) => {
    const value = taken[i];
    given[name] = read(typeof value === 'number' || isBlock(value) ? value : cell(value), profile, given);
  });
  try {
    return plan.present(row.compute(given, profile), profile);
  } catch (error) {
    throw errorWithArgument(error, plan, taken, profile);
  }
}

/** The error of a computation, with the argument at fault. */
function errorWithArgument(error: unknown, plan: Plan, taken: readonly unknown[], profile: Profile): unknown {
  if (error instanceof Refusal) {
    try {
      return reworded(error, plan, taken, profile);
    } catch (again) {
      return errorWithArgument(again, plan, taken, profile);
    }
  }
  if (!(error instanceof AnswerFault)) return error;
  const given = plan.slots.filter(({ spec }, i) => !('choice' in spec) && !isBlank(taken[i]));
  return new ArgumentError(
    `${wordList((given.length > 0 ? given : plan.slots).map(({ name }) => name))}: ${error.message}`,
  );
}

/** Turns a formula's refusal into the message that the user reads. */
function reworded(refusal: Refusal, plan: Plan, taken: readonly unknown[], profile: Profile): ArgumentError {
  const advice = formatMessage({ text: refusal.advice, figures: refusal.figures }, plan.kindOf, profile, digitsToType);
  const place = plan.slots.findIndex(({ name }) => name === refusal.argument);
  const code = refusal.reason === 'unavailable' ? '#N/A' : '#VALUE!';
  if (refusal.argument === '') return new ArgumentError(advice, code);
  const kind = plan.kindOf(refusal.argument);
  const value = taken[place];
  if (kind === undefined || isBlock(value) || isBlank(value))
    return new ArgumentError(`${refusal.argument}: ${advice}`, code);
  const given = value === 0 ? '0 or blank' : wordGiven(profile, kind, value);
  const verdict = code === '#N/A' ? 'is not covered' : 'is not allowed';
  return new ArgumentError(`${refusal.argument}: ${given} ${verdict}; ${advice}`, code);
}

/** Ranges: one value a cell, or one row a computation, each with its own error. */
function broadcast(
  plan: Plan,
  taken: readonly unknown[],
  profile: Profile,
  shape: { readonly rows: number; readonly columns: number },
  makeError: MakeError,
): unknown[][] {
  const { result } = plan.row;
  if ('rows' in result || 'lines' in result || 'grid' in result) {
    const ranged = plan.slots.find((slot, i) => slot.broadcasts && isBlock(taken[i]));
    throw new ArgumentError(
      `${ranged?.name ?? 'arguments'}: a range is not allowed here, because the result has several rows; give one value`,
    );
  }
  const rangesGiven = () =>
    wordList(plan.slots.filter((one, i) => one.broadcasts && isBlock(taken[i])).map(({ name }) => name));
  const stacks = 'row' in result;
  if (stacks && shape.rows > 1 && shape.columns > 1) {
    throw new ArgumentError(
      `${rangesGiven()}: ranges of ${shape.rows} rows and ${shape.columns} columns do not stack; give one column`,
    );
  }
  if (shape.rows * shape.columns > mostRows * (stacks ? 1 : 100)) {
    throw new ArgumentError(
      `${rangesGiven()}: the result would be ${shape.rows * shape.columns} values; give smaller ranges`,
    );
  }
  const varies = plan.slots.map((one, i) => one.broadcasts && isBlock(taken[i]));
  const lineAt = (row: number, column: number): unknown[] => {
    const values = taken.map((value, i) => (varies[i] ? at(value as Block, row, column) : value));
    if (values.every((value, i) => !varies[i] || isBlank(value))) return [''];
    try {
      return callOnce(plan, values, profile)[0] ?? [''];
    } catch (error) {
      return [hostError(error, makeError)];
    }
  };
  const wide = stacks ? Object.keys(result.row).length : 1;
  const block: unknown[][] = [];
  for (let row = 0; row < shape.rows; row++) {
    const line: unknown[] = [];
    for (let column = 0; column < shape.columns; column++) {
      const cells = lineAt(row, column);
      if (stacks) block.push([...cells, ...new Array(wide - cells.length).fill('')]);
      else line.push(cells[0]);
    }
    if (!stacks) block.push(line);
  }
  return block;
}

/** Errors in single cells of a grid, as the host's own. */
function errorsShown(plan: Plan, block: Cell[][], makeError: MakeError): unknown[][] {
  if (!('grid' in plan.row.result)) return block;
  return block.map((line) => line.map((value) => (value instanceof Error ? hostError(value, makeError) : value)));
}

/** Any error as the host's own; a fault of the add-in says so. */
function hostError(error: unknown, makeError: MakeError): unknown {
  if (error instanceof ArgumentError) return makeError(error.code, error.message);
  if (error instanceof PassedError) return makeError(error.code, error.message);
  if (error instanceof Unreadable) return makeError('#VALUE!', error.message);
  const detail = error instanceof Error ? error.message : String(error);
  return makeError('#VALUE!', `this is a fault in Siltstead, please report it: ${detail.slice(0, 150)}`);
}
