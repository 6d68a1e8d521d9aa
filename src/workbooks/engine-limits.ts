import { isRingMessage } from '../hosts/univer/ring-cells';
import type { CellResult } from '../hosts/workbook-model';
import type { ScannedCell } from './sheet-scan';

/** Errors by which the engine says that it could not compute, rather than what a formula gives. */
const engineErrors: ReadonlySet<string> = new Set([
  '#ERROR!',
  '#NAME?',
  '#BLOCKED!',
  '#CONNECT!',
  '#CYCLE!',
  '#GETTING_DATA',
]);

function withoutQuotes(formula: string): string {
  return formula.replace(/"(?:[^"]|"")*"/g, '""').replace(/'(?:[^']|'')*'/g, 'S');
}

/** Why the engine cannot calculate a formula, judged from its text; undefined if it can. */
export function beyondEngine(formula: string, knows: (name: string) => boolean): string | undefined {
  if (/'[^']*\[\d+\]|'[^']*\.xl\w+\]/.test(formula)) return 'it refers to another workbook';
  const bare = withoutQuotes(formula);
  if (/\[\d+\][\w.]*!/.test(bare)) return 'it refers to another workbook';
  if (/[\w.]+\[/.test(bare) || /\[@/.test(bare)) return 'it refers to a table by name';
  if (/[A-Z]\$?\d+#/i.test(bare)) return 'it refers to a spill by its first cell and #';
  if (/(?:^|[^\w\]])@/.test(bare)) return 'it uses @, one value out of a range';
  if (/\b\w+:\w+!/.test(bare)) return 'it refers to several sheets at once';
  const called = Array.from(bare.matchAll(/([A-Za-z_][\w.]*)\s*\(/g), ([, name = '']) => name);
  const unknown = [...new Set(called)].filter((name) => !knows(name));
  return unknown.length === 0 ? undefined : `the engine has no function ${unknown.join(', ')}`;
}

/** Why a result is not written, if the engine gave one that the file cannot hold. */
export function unusable(cell: ScannedCell, value: CellResult, spills: boolean): string | undefined {
  const isArray = cell.formula?.type === 'array';
  const code = typeof value === 'object' ? value.error.code : undefined;
  if (!isArray && (spills || code === '#SPILL!')) return 'it gives several cells and is not stored as an array formula';
  if (code === undefined || !engineErrors.has(code)) return undefined;
  const message = typeof value === 'object' ? value.error.message : '';
  // What only reads a cell of the circle can be computed once the circle keeps its values.
  if (code === '#CYCLE!') return isRingMessage(message) ? message : undefined;
  if (cell.attributes.t === 'e' && cell.value === code) return undefined;
  return `the engine answers ${code}: ${message}`;
}
