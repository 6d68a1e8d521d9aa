import { tokenize } from '@borgar/fx';
import { cellName, parseRange, splitSheet } from '../../src/hosts/address';
import { typedFormula } from '../../src/workbooks/typed-formula';
import { openPackage, storedCells } from './package-parts';

/** How many calls of the add-in wait for each other in the deepest chain of a file, and the cell where it ends. */
export function deepestChain(bytes: Uint8Array): { readonly depth: number; readonly cell: string } {
  const file = openPackage(bytes);
  const formulas = new Map<string, string>();
  const sources = new Map<string, string>();
  for (const { name, part } of file.sheets)
    for (const { address, formula, ref } of storedCells(file.xml(part))) {
      if (formula === undefined) continue;
      formulas.set(`${name}!${address}`, typedFormula(formula));
      for (const covered of cellsOf(ref ?? address)) sources.set(`${name}!${covered}`, `${name}!${address}`);
    }
  const depths = new Map<string, number>();
  const depthOf = (cell: string): number => {
    const known = depths.get(cell);
    if (known !== undefined) return known;
    depths.set(cell, 0);
    const sheet = cell.slice(0, cell.lastIndexOf('!'));
    const tokens = tokenize(formulas.get(cell)!);
    let below = 0;
    for (const { type, value } of tokens) {
      if (type !== 'range') continue;
      const { sheet: other, rest } = splitSheet(value);
      for (const address of cellsOf(rest.replaceAll('$', ''))) {
        const source = sources.get(`${other ?? sheet}!${address}`);
        if (source !== undefined && source !== cell) below = Math.max(below, depthOf(source));
      }
    }
    // Calls inside each other wait as calls in different cells do.
    let open = 0;
    let nested = 0;
    const calls: boolean[] = [];
    tokens.forEach(({ value }, index) => {
      if (value === '(') {
        const isOurs = /^SILT\./i.test(tokens[index - 1]?.value ?? '');
        calls.push(isOurs);
        if (isOurs) open += 1;
        nested = Math.max(nested, open);
      } else if (value === ')' && calls.pop()) open -= 1;
    });
    depths.set(cell, below + nested);
    return below + nested;
  };
  let deepest = { depth: 0, cell: '' };
  for (const cell of formulas.keys()) if (depthOf(cell) > deepest.depth) deepest = { depth: depthOf(cell), cell };
  return deepest;
}

/** The addresses of a range's cells; none where it is no range. */
export function cellsOf(range: string): string[] {
  const parsed = parseRange(range);
  if (parsed === undefined) return [];
  const { row, column, rows, columns } = parsed;
  return Array.from({ length: rows * columns }, (_, index) =>
    cellName(row + Math.floor(index / columns), column + (index % columns)),
  );
}
