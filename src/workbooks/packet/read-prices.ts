/** What a packet takes from the ready-made Materials sheets, if the workbook has them: prices, own parts, dates. */
import type { CellScalar } from '../../hosts/workbook-model';
import { type SheetCells, tableIn, valueBesideOr, valueOrThrow } from './packet-cells';

export interface Prices {
  /** Item, pack size, pack price, unit. */
  readonly rows: readonly (readonly CellScalar[])[];
  /** Extra share to buy. */
  readonly allowance: CellScalar;
  /** Item, quantity, unit of the user's own parts. */
  readonly own: readonly (readonly CellScalar[])[];
}

function optional(sheets: readonly SheetCells[], name: string): SheetCells | undefined {
  return sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
}

/** Undefined if there is no sheet Prices. */
export function readPrices(sheets: readonly SheetCells[]): Prices | undefined {
  const prices = optional(sheets, 'Prices');
  if (prices === undefined) return undefined;
  const top = prices.rows.findIndex(([first]) => first === 'item');
  // Own parts are far below the price list, so blank rows do not end it.
  const rows = prices.rows.slice(top + 1).flatMap((row) => {
    const [item = '', size = '', price = '', unit = ''] = row.slice(0, 4).map((value) => valueOrThrow(value, 'Prices'));
    return top < 0 || item === '' || size === '' ? [] : [[item, size, price, unit]];
  });
  const materials = optional(sheets, 'Materials');
  if (materials === undefined) return { rows, allowance: 0, own: [] };
  const listed = tableIn(materials, 'item', 'price of one').rows;
  const own = listed.flatMap(([item = '', quantity = '', unit = '', , verdict = '']) =>
    String(verdict).startsWith('counted')
      ? [[item, quantity, unit].map((value) => valueOrThrow(value, 'Materials'))]
      : [],
  );
  return { rows, allowance: valueBesideOr(materials, 'Extra to buy', 0), own };
}

/** The rows of step, date and note on the sheet Calendar; undefined if there is none. */
export function readCalendar(sheets: readonly SheetCells[]): readonly (readonly CellScalar[])[] | undefined {
  const calendar = optional(sheets, 'Calendar');
  if (calendar === undefined) return undefined;
  return tableIn(calendar, 'step', 'date').rows.map((row) =>
    row.slice(0, 3).map((value) => valueOrThrow(value, 'Calendar')),
  );
}

/** Pipe and wall seal of the sheet Bank, or the usual ones. */
export function readPlumbing(sheets: readonly SheetCells[], usualPipe: string): readonly (readonly CellScalar[])[] {
  const bank = optional(sheets, 'Bank');
  const chosen = (name: string, usual: CellScalar) => (bank === undefined ? usual : valueBesideOr(bank, name, usual));
  return [
    ['pipe size', chosen('pipe size', usualPipe)],
    ['wall seal', chosen('wall seal', 'grommet')],
  ];
}
