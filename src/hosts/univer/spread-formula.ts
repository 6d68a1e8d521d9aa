import { tokenize, translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx';
import { cellName } from '../address';

/** Functions that give one answer for each cell of a range, so that a range in place of a cell gives a range of answers. */
const answersCellByCell = new Set(
  'ABS EXACT FIND IF ISBLANK ISERROR ISNUMBER ISTEXT LEFT LEN LOWER MID NOT RIGHT ROUND SEARCH UPPER'.split(' '),
);

/** A formula of the first cell as it reads in the cell so many rows down and columns across. */
export function movedFormula(formula: string, rows: number, columns: number): string {
  return translateFormulaToA1(translateFormulaToR1C1(formula, 'A1'), cellName(rows, columns));
}

/**
 * A formula of the first cell of a block as one that answers for all its cells at once; undefined where something
 * in it would take the block as one thing, as SUM does.
 */
export function spreadFormula(formula: string, rows: number, columns: number): string | undefined {
  const parts = tokenize(formula).map(({ type, value }): string | undefined => {
    if (type === 'func') return answersCellByCell.has(value.toUpperCase()) ? value : undefined;
    if (type === 'range' && value.includes(':')) return undefined;
    if (type === 'range') {
      const last = movedFormula(`=${value}`, rows - 1, columns - 1).slice(1);
      return last === value ? value : `${value}:${last.slice(last.lastIndexOf('!') + 1)}`;
    }
    return type.startsWith('range_') || type === 'structured' ? undefined : value;
  });
  return parts.includes(undefined) ? undefined : parts.join('');
}
