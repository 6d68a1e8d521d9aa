import type { CellError } from '../workbook-model';
import { namespace } from './function-set';

/** The meaning of the engine's own errors, if no function gave a reason. */
const meanings: Readonly<Record<string, string>> = {
  '#DIV/0!': 'a number is divided by zero',
  '#N/A': 'no value is found or given',
  '#NAME?': 'a function or name in the formula is not known, or a reference lies outside the sheet',
  '#NULL!': 'two ranges that are to cross do not',
  '#NUM!': 'a number is outside what can be computed',
  '#REF!': 'a cell that the formula refers to does not exist',
  '#SPILL!': 'the result needs more cells than are free; clear the cells below and to the right',
  '#CALC!': 'the engine cannot compute this array',
  '#CYCLE!': 'the formula refers to its own cell',
  '#ERROR!': 'the formula cannot be read; check its brackets, quotes and commas',
  '#VALUE!': 'a value is of the wrong kind for what is done with it',
  '#BLOCKED!': 'this cannot be done here',
  '#CONNECT!': 'no connection',
};

/** The names of functions that a cell formula calls, outside quoted text, in upper case. */
export function calledFunctions(formula: string): readonly string[] {
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '""').replace(/'(?:[^']|'')*'/g, "''");
  return [...new Set(Array.from(bare.matchAll(/([A-Za-z_][\w.]*)\s*\(/g), ([, name = '']) => name.toUpperCase()))];
}

function nameMeaning(formula: string, isKnown: (name: string) => boolean): string | undefined {
  const unknown = calledFunctions(formula).filter((name) => !isKnown(name));
  if (unknown.length === 0) return undefined;
  const own = unknown.some((name) => name.startsWith(`${namespace}.`));
  return `${unknown.join(', ')}: no function of that name${own ? '; names are listed while you type' : ''}`;
}

/** Adds a reason to an error that has none. */
export function explain(error: CellError, formula: string | undefined, isKnown: (name: string) => boolean): CellError {
  if (error.message !== '') return error;
  const named = error.code === '#NAME?' && formula !== undefined ? nameMeaning(formula, isKnown) : undefined;
  return { code: error.code, message: named ?? meanings[error.code] ?? 'the formula cannot be computed' };
}
