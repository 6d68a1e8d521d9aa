import type { CellResult } from '../../hosts/workbook-model';
import { cellByCell, compared, first, type Grid, isTrue, NotFollowed, numberIn, single, widthOf } from './grid';

/** The few ordinary worksheet functions that are used around our functions to pick rows of a table. */
const functions: Readonly<Record<string, (...given: readonly Grid[]) => Grid>> = {
  FILTER: (table = [], wanted = []) => {
    const down = wanted.length === table.length && widthOf(wanted) === 1;
    const kept = down
      ? table.filter((_, row) => isTrue(wanted[row]?.[0] ?? ''))
      : table.map((line) => line.filter((_, column) => isTrue(wanted[0]?.[column] ?? false)));
    if (kept.length === 0 || widthOf(kept) === 0) throw new NotFollowed('finds no rows to take');
    return kept;
  },
  INDEX: (table = [], row = single(0), column) => {
    const across = table.length === 1 && column === undefined && widthOf(table) > 1;
    const [down, over] = across
      ? [0, wholeNumber(row)]
      : [wholeNumber(row), column === undefined ? 0 : wholeNumber(column)];
    const lines = down === 0 ? table : table.slice(down - 1, down);
    const kept = over === 0 ? lines : lines.map((line) => line.slice(over - 1, over));
    if (kept.length === 0 || widthOf(kept) === 0) throw new NotFollowed('points outside a table');
    return kept;
  },
  MATCH: (sought = [], list = [], way = single(1)) => {
    if (first(way) !== 0) throw new NotFollowed('looks for the nearest value');
    const values = list.length === 1 ? (list[0] ?? []) : list.map((line) => line[0] ?? '');
    return cellByCell([sought], (value) => {
      const place = values.findIndex((one) => typeof one !== 'object' && compared(one, value) === 0);
      if (place < 0) throw new NotFollowed('looks for a value that is not in the list');
      return place + 1;
    });
  },
  IF: (asked = [], then = single(true), otherwise = single(false)) => {
    // An error in the other branch does not matter, so only the place in each branch is computed first.
    const places = cellByCell([asked, numbered(then), numbered(otherwise)], (test, yes, no) =>
      isTrue(test ?? '') ? `then ${yes}` : `otherwise ${no}`,
    );
    return places.map((line) => line.map((place) => valueAt(place, then, otherwise)));
  },
  ISNUMBER: (values = []) => values.map((line) => line.map((value) => typeof value === 'number')),
  ISERROR: (values = []) => values.map((line) => line.map((value) => typeof value === 'object')),
  COLUMNS: (table = []) => single(widthOf(table)),
  ROWS: (table = []) => single(table.length),
  SEQUENCE: (rows = single(1), columns = single(1), start = single(1)) =>
    Array.from({ length: wholeNumber(rows) }, (_, down) =>
      Array.from(
        { length: wholeNumber(columns) },
        (__, over) => wholeNumber(start) + down * wholeNumber(columns) + over,
      ),
    ),
  ISBLANK: (given = []) => cellByCell([given], (value) => value === ''),
  VSTACK: (...tables) => {
    const wide = Math.max(...tables.map(widthOf));
    return tables.flatMap((table) => table.map((line) => [...line, ...new Array(wide - line.length).fill('')]));
  },
  CHOOSEROWS: (table = [], ...rows) => rows.flatMap((row) => row.flat()).map((row) => table[numberIn(row) - 1] ?? []),
};

/** The places of a table's cells, in the shape of the table. */
function numbered(table: Grid): Grid {
  return table.map((line, row) => line.map((_, column) => `${row} ${column}`));
}

function valueAt(place: CellResult, then: Grid, otherwise: Grid): CellResult {
  if (typeof place === 'object') return place;
  const [branch, row, column] = String(place).split(' ');
  return (branch === 'then' ? then : otherwise)[Number(row)]?.[Number(column)] ?? '';
}

function wholeNumber(grid: Grid): number {
  return Math.trunc(numberIn(first(grid)));
}

export function sheetFunction(name: string): ((...given: readonly Grid[]) => Grid) | undefined {
  const plain = name.toUpperCase().replace(/^_XLFN\.(?:_XLWS\.)?/, '');
  return Object.keys(functions).includes(plain) ? functions[plain] : undefined;
}
