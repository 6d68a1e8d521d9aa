import { tokenize, translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx';
import { cellName } from '../address';

/**
 * Functions that give one result for each cell of a range, so that a range in place of a cell gives a range of
 * results.
 */
const answersCellByCell = new Set(
  'ABS EXACT FIND IF ISBLANK ISERROR ISNUMBER ISTEXT LEFT LEN LOWER MID NOT RIGHT ROUND SEARCH UPPER'.split(' '),
);

/** The formula of the first cell, moved down and across by so many rows and columns. */
export function offsetFormula(formula: string, rows: number, columns: number): string {
  return translateFormulaToA1(translateFormulaToR1C1(formula, 'A1'), cellName(rows, columns));
}

/**
 * One formula for all cells of a block, from that of its first cell; undefined if a part of it would use the block as
 * a whole, as SUM does.
 */
export function spreadFormula(formula: string, rows: number, columns: number): string | undefined {
  const parts = tokenize(formula).map(({ type, value }): string | undefined => {
    if (type === 'func') return answersCellByCell.has(value.toUpperCase()) ? value : undefined;
    if (type === 'range' && value.includes(':')) return undefined;
    if (type === 'range') {
      const last = offsetFormula(`=${value}`, rows - 1, columns - 1).slice(1);
      return last === value ? value : `${value}:${last.slice(last.lastIndexOf('!') + 1)}`;
    }
    return type.startsWith('range_') || type === 'structured' ? undefined : value;
  });
  return parts.includes(undefined) ? undefined : parts.join('');
}
