import type { Evaluated } from '../hosts/univer/headless';
import type { CellError, CellResult } from '../hosts/workbook-model';

interface ErrorCell {
  readonly error: CellError;
}

function isError(value: Evaluated | CellResult): value is ErrorCell {
  return typeof value === 'object' && 'error' in value;
}

/** One cell on a line of text: numbers in full, nothing that would break the line. */
function cellText(value: CellResult): string {
  if (isError(value)) return value.error.code;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return String(value).replace(/[\t\r\n]+/g, ' ');
}

/** The errors in one result, with row and column if it has several cells. */
function errorsOf(value: Evaluated): readonly string[] {
  if (isError(value)) return [`${value.error.code} ${value.error.message}`];
  if (!Array.isArray(value)) return [];
  return value.flatMap((row: readonly CellResult[], index) =>
    row.flatMap((cell) => (isError(cell) ? [`${cell.error.code} row ${index + 1}: ${cell.error.message}`] : [])),
  );
}

export interface CalcOutput {
  readonly stdout: string;
  readonly stderr: string;
  readonly exitCode: 0 | 1;
}

/** What is printed for formulas and their results, in order. */
export function calcOutput(formulas: readonly string[], results: readonly Evaluated[], json: boolean): CalcOutput {
  const several = formulas.length > 1;
  const errors = results.flatMap((value, index) =>
    errorsOf(value).map((text) => `${text}${several ? `  (${formulas[index]})` : ''}\n`),
  );
  const stdout = json
    ? `${JSON.stringify(results.map((value, index) => jsonEntry(formulas[index] ?? '', value)))}\n`
    : results.map(plainText).join('');
  return { stdout, stderr: errors.join(''), exitCode: errors.length > 0 ? 1 : 0 };
}

function jsonEntry(formula: string, value: Evaluated): object {
  return isError(value) ? { formula, error: value.error } : { formula, value };
}

function plainText(value: Evaluated): string {
  if (isError(value)) return '';
  if (!Array.isArray(value)) return `${cellText(value as CellResult)}\n`;
  return value.map((row: readonly CellResult[]) => `${row.map(cellText).join('\t')}\n`).join('');
}
