import { columnName, columnNumber } from './address';

export type Axis = 'row' | 'column';

/** A row or a column of a reference, counted from 0. */
export interface Corner {
  readonly at: number;
  /** Written with `$`. */
  readonly isFixed: boolean;
}

/** The columns, the rows or both of a reference: one or two corners each. */
export type Corners = Readonly<Partial<Record<Axis, readonly Corner[]>>>;

const axes = ['column', 'row'] as const;

/** Reads `$B5:K7`, `B:C` or `$4:7`; undefined for anything else. */
export function parseCorners(text: string): Corners | undefined {
  const row = (fixed: string | undefined, number: string | undefined): Corner => ({
    at: Number(number) - 1,
    isFixed: fixed === '$',
  });
  const column = (fixed: string | undefined, name: string | undefined): Corner => ({
    at: columnNumber(name ?? ''),
    isFixed: fixed === '$',
  });
  const cell = /^(\$?)([A-Z]{1,3})(\$?)(\d+)(?::(\$?)([A-Z]{1,3})(\$?)(\d+))?$/i.exec(text);
  if (cell !== null) {
    const [, column1, name1, row1, number1, column2, name2, row2, number2] = cell;
    const isRange = name2 !== undefined;
    return {
      column: [column(column1, name1), ...(isRange ? [column(column2, name2)] : [])],
      row: [row(row1, number1), ...(isRange ? [row(row2, number2)] : [])],
    };
  }
  const columns = /^(\$?)([A-Z]{1,3}):(\$?)([A-Z]{1,3})$/i.exec(text);
  if (columns !== null) return { column: [column(columns[1], columns[2]), column(columns[3], columns[4])] };
  const rows = /^(\$?)(\d+):(\$?)(\d+)$/.exec(text);
  return rows === null ? undefined : { row: [row(rows[1], rows[2]), row(rows[3], rows[4])] };
}

export function cornersText(corners: Corners): string {
  const names = axes.flatMap((across) => {
    const list = corners[across];
    if (list === undefined) return [];
    return [list.map(({ at, isFixed }) => (isFixed ? '$' : '') + (across === 'row' ? String(at + 1) : columnName(at)))];
  });
  const [one = [], other] = names;
  return one.map((text, index) => text + (other?.[index] ?? '')).join(':');
}
