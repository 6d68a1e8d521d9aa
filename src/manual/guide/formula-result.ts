import { catalogue } from '../../catalogue/all';
import { isCall, readCall } from '../../command-line/read-call';
import { adapt } from '../../functions/adapter';
import { dateOfSerial } from '../../units/date';
import { markupSafe, withCode } from '../markup-safe';
import { table } from '../table';

const functions = new Map(
  catalogue.map((row) => [row.name, adapt(row, (code, message) => new Error(`${code} ${message}`))]),
);

/** What a call of SILT functions gives, as a block of cells; a refusal ends the build. */
export function callResult(formula: string): readonly (readonly unknown[])[] {
  const compute = (value: unknown): unknown => {
    if (!isCall(value)) return value;
    const call = functions.get(value.name);
    if (call === undefined) throw new Error(`${formula}: there is no SILT.${value.name}`);
    return call(...value.values.map(compute));
  };
  const result = compute(readCall(formula)) as readonly (readonly unknown[])[];
  const fault = result.flat().find((cell) => cell instanceof Error);
  if (fault instanceof Error) throw new Error(`${formula}: ${fault.message}`);
  return result;
}

/** A number with as many digits as a tape or a scale can tell; text as it is. */
export function formatValue(value: unknown, digits = 3): string {
  if (typeof value !== 'number') return markupSafe(String(value));
  return String(Number(value.toPrecision(Math.max(digits, Math.ceil(Math.log10(Math.abs(value) + 1))))));
}

/** A date as a calendar shows it; anything else as it is. */
export function formatDate(value: unknown): string {
  return typeof value === 'number' ? dateOfSerial(value) : markupSafe(String(value));
}

/** A formula with its result: its first cell, or the one that is named by its column. */
export function formulaLine(formula: string, unit = '', column = 0): string {
  const result = callResult(formula)[0]?.[column];
  const words = unit === 'date' ? formatDate(result) : `${formatValue(result)}${unit && ` ${unit}`}`;
  return `<p class="call"><code>${markupSafe(formula)}</code> gives <strong>${words}</strong></p>`;
}

/** A sentence with the results of the calls in it: `wait {=SILT.REF.VALUE("metric","leach")} days`. */
export function withResults(text: string): string {
  return withCode(text.replace(/\{(=SILT[^}]*)\}/g, (_, formula: string) => formatValue(callResult(formula)[0]?.[0])));
}

/** What a formula spills, its first row the headings. */
export function spilledTable(formula: string): string {
  const [head = [], ...rows] = callResult(formula);
  const line = (cells: readonly unknown[]) =>
    `<tr>${cells.map((cell, i) => `<td>${head[i] === 'date' ? formatDate(cell) : formatValue(cell, 4)}</td>`).join('')}</tr>`;
  return `<p class="call"><code>${markupSafe(formula)}</code></p>
${table(head.map(String), rows.map(line))}`;
}
