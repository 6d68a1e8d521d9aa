import type { SheetData } from '../../../hosts/workbook-model';
import type { Kind } from '../../../units/kinds';
import { columnWidths, framed, print } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { ownPrice, ownRows } from './own-parts';

type Price = readonly [item: string, packSize: number, packPrice: number, unit: string, pack: string];

/** A pack of something sold by measure: text with its unit, which stays right when the units profile changes. */
type MeasuredPrice = readonly [item: string, kind: Kind, sold: string, packPrice: number, pack: string];

/** Parts that are counted cost the same in both profiles; money is in the user's currency. */
const counted: readonly Price[] = [
  ['drums', 1, 20, 'each', 'used, food grade'],
  ['sheet for cones', 1, 46, 'sheet', 'a sheet of the size in Bank'],
  ['rivets', 50, 6.5, 'each', 'box of 50, stainless or plastic'],
  ['base mix cement', 1, 13.5, 'bag', 'a bag'],
  ['drain fittings', 1, 11, 'each', 'one'],
  ['flattened seats', 1, 2, 'each', 'one'],
  ['drain plugs', 1, 2.5, 'each', 'one'],
  ['drain valves', 1, 13, 'each', 'one'],
  ['wall grommets', 1, 3.2, 'each', 'one'],
  ['bulkhead fittings', 1, 14, 'each', 'one'],
  ['elbows', 1, 2.2, 'each', 'one'],
  ['unions', 1, 5.5, 'each', 'one'],
  ['pail', 1, 5, 'each', 'one'],
];

const measured: Readonly<Record<ReadyProfile, readonly MeasuredPrice[]>> = {
  US: [
    ['base mix aggregate', 'bulk', '4 ft3', 22, 'a bag'],
    ['bedding mortar', 'mass', '50 lb', 9, 'a bag'],
    ['sealant', 'volume', '10 fl oz', 9.5, 'a cartridge, safe for fish'],
    ['pipe', 'run', '10 ft', 12, 'a length'],
    ['stand posts', 'run', '8 ft', 7, 'a length'],
    ['stand tops', 'area', '32 ft2', 38, 'a board of 4 ft by 8 ft'],
    ['leak-test water', 'volume', '1000 gal', 6, 'from the tap'],
  ],
  metric: [
    ['base mix aggregate', 'bulk', '100 L', 20, 'a bag'],
    ['bedding mortar', 'mass', '25 kg', 9, 'a bag'],
    ['sealant', 'volume', '300 mL', 9.5, 'a cartridge, safe for fish'],
    ['pipe', 'run', '3 m', 12, 'a length'],
    ['stand posts', 'run', '2.4 m', 7, 'a length'],
    ['stand tops', 'area', '3 m2', 38, 'a board of 1.2 m by 2.5 m'],
    ['leak-test water', 'volume', '1000 L', 2.5, 'from the tap'],
  ],
};

/** The price table can grow to this row. */
const lastPrice = 64;
export const priceNames = `Prices!$A$5:$A$${lastPrice}`;
const lastOwnPrice = lastPrice + ownRows;
/** The rows that are filled in, those of own parts included. */
export const usedPrices = `FILTER(Prices!$A$5:$D$${lastOwnPrice},Prices!$A$5:$A$${lastOwnPrice}<>"")`;

/** What packs cost where you buy: a table to edit. */
export function pricesSheet(profile: ReadyProfile): SheetData {
  const widths = [26, 13, 13, 10, 16, 44];
  const draft = framed({
    name: 'Prices',
    title: 'Prices: what you pay for a pack',
    step: 'Type the pack sizes and prices of your shop over these. Add rows at the end for other items in Parts or for your own parts in Materials; use exactly the same name. For items sold by measure, type as sold with its unit, and the pack size is calculated. The prices here are invented.',
    widths,
  });
  const common = (row: number, item: string, packPrice: number, pack: string): void => {
    draft
      .put(`A${row}`, item, 'input')
      .put(`C${row}`, packPrice, formatted('input', formats.money))
      .put(`F${row}`, pack, 'input');
  };
  draft.across('A4', ['item', 'pack size', 'pack price', 'unit', 'as sold', 'what a pack is'], 'heading');
  counted.forEach(([item, packSize, packPrice, unit, pack], index) => {
    const row = 5 + index;
    draft.put(`B${row}`, packSize, 'input').put(`D${row}`, unit, 'input').fill(`E${row}`, 'input');
    common(row, item, packPrice, pack);
  });
  measured[profile].forEach(([item, kind, sold, packPrice, pack], index) => {
    const row = 5 + counted.length + index;
    draft
      .put(`B${row}`, `=SILT.UNIT.READ(SiltUnits,"${kind}",E${row})`, formatted('result', formats.two))
      .put(`D${row}`, `=SILT.UNIT.LABEL(SiltUnits,"${kind}")`, 'result')
      .put(`E${row}`, sold, 'input');
    common(row, item, packPrice, pack);
  });
  const own = lastPrice + 1;
  draft
    .put(`A${own}`, `=${ownPrice('item')}`, 'note')
    .put(`B${own}`, `=${ownPrice('pack size')}`, 'note')
    .put(`C${own}`, `=${ownPrice('price')}`, 'note')
    .put(`D${own}`, `=${ownPrice('unit')}`, 'note')
    .put(`F${own}`, `=IF(A${own}:A${lastOwnPrice}="","","your own: see Materials")`, 'note');
  const last = 4 + counted.length + measured[profile].length;
  draft
    .validate({
      range: `B5:B${last}`,
      type: 'decimal',
      operator: 'greaterThan',
      formulas: ['0'],
      errorTitle: 'Pack size',
      error: 'Give a number above 0.',
    })
    .validate({
      range: `C5:C${last}`,
      type: 'decimal',
      operator: 'greaterThanOrEqual',
      formulas: ['0'],
      errorTitle: 'Pack price',
      error: 'Give a price of 0 or more.',
    });
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: 'E0B400',
    tables: [{ name: 'PriceList', range: `A4:F${last}` }],
    print: print(profile, `A1:F${last}`, { landscape: false }),
  });
}
