import type { CellResult } from '../../hosts/workbook-model';
import { wordText } from '../../units/text';
import { shownValue } from '../follow/grid';
import { asSentence } from './verdicts';

/**
 * What is wrong with an entry, in one sentence: the label that a person sees, what was typed, once, and what is allowed.
 * The message of the function begins with names that nobody sees on the sheet, such as `quantity: `; those are left out.
 */
export function entrySentence(label: string, value: CellResult, reason: string): string {
  const [, advice] = / is not allowed; (.*)$/.exec(reason) ?? [];
  if (value === '') return asSentence(`${label}: the cell is empty${advice ? `; ${advice}` : `. ${reason}`}`, false);
  const given = givenText(value);
  const quoted = quotedEntry(value);
  const at = reason.indexOf(`: ${given}`) + 2;
  const rest = reason.slice(at + given.length);
  if (at > 1 && !/^[\w.]/.test(rest)) return asSentence(`${label}: ${quoted}${rest}`, false);
  // A number that a formula makes of the entry is refused: the message has to say which one.
  if (typeof value !== 'string') return asSentence(`${label}: the cell holds ${quoted}. ${reason}`, false);
  if (advice) return asSentence(`${label}: ${quoted} is not allowed; ${advice}`, false);
  // Only a part is named, such as a unit that is not known.
  return asSentence(`${label}: ${quoted} is not allowed: ${withoutNames(reason)}`, false);
}

/** What a cell holds, shortened as in every message; text that can be seen is in quotation marks. */
export function quotedEntry(value: CellResult): string {
  return typeof value === 'string' && value.trim() !== '' ? `“${givenText(value)}”` : givenText(value);
}

function givenText(value: CellResult): string {
  return wordText(shownValue(value));
}

/** A message without the names of arguments, tables and rows that it begins with. */
export function withoutNames(reason: string): string {
  return reason.replace(/^(?:[a-z][\w ]{0,30}: |(?:row|column) \d[^:]*: )+/, '');
}
