import type { SheetData } from '../../workbook-model';
import { columnWidths, framed, print } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';

type Price = readonly [item: string, packSize: number, packPrice: number, unit: string, pack: string];

/** Parts that are counted cost the same under both profiles; money is whatever you pay in. */
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

const measured: Readonly<Record<ReadyProfile, readonly Price[]>> = {
  US: [
    ['base mix aggregate', 4, 22, 'ft3', 'bag of 4 ft3'],
    ['bedding mortar', 50, 9, 'lb', 'bag of 50 lb'],
    ['sealant', 0.08, 9.5, 'gal', 'cartridge of 10 fl oz, safe for fish'],
    ['pipe', 10, 12, 'ft', 'length of 10 ft'],
    ['stand posts', 8, 7, 'ft', 'length of 8 ft'],
    ['stand tops', 32, 38, 'ft2', 'board of 4 ft by 8 ft'],
    ['leak-test water', 1000, 6, 'gal', '1000 gal from the tap'],
  ],
  metric: [
    ['base mix aggregate', 100, 20, 'L', 'bag of 100 L'],
    ['bedding mortar', 25, 9, 'kg', 'bag of 25 kg'],
    ['sealant', 0.3, 9.5, 'L', 'cartridge of 300 mL, safe for fish'],
    ['pipe', 3, 12, 'm', 'length of 3 m'],
    ['stand posts', 2.4, 7, 'm', 'length of 2.4 m'],
    ['stand tops', 3, 38, 'm2', 'board of 1.2 m by 2.5 m'],
    ['leak-test water', 1000, 2.5, 'L', '1000 L from the tap'],
  ],
};

/** Rows that the price table may grow to. */
const lastPrice = 64;
const names = `Prices!$A$5:$A$${lastPrice}`;
/** The rows that are filled in. */
export const usedPrices = `FILTER(Prices!$A$5:$D$${lastPrice},${names}<>"")`;

/** What packs cost where you buy: a table to edit. */
export function pricesSheet(profile: ReadyProfile): SheetData {
  const widths = [26, 13, 13, 10, 44];
  const draft = framed({
    name: 'Prices',
    title: 'Prices: what you pay for a pack',
    step: 'Type over the sizes and prices with your shop’s; add rows at the foot. An item is found by its name as Parts gives it, in the unit shown there; the prices here are invented.',
    widths,
  });
  const rows = [...counted, ...measured[profile]];
  draft.across('A4', ['item', 'pack size', 'pack price', 'unit', 'what a pack is'], 'heading');
  rows.forEach(([item, packSize, packPrice, unit, pack], index) => {
    const row = 5 + index;
    draft
      .put(`A${row}`, item, 'input')
      .put(`B${row}`, packSize, 'input')
      .put(`C${row}`, packPrice, formatted('input', formats.money))
      .put(`D${row}`, unit, 'input')
      .put(`E${row}`, pack, 'input');
  });
  const last = 4 + rows.length;
  draft
    .validate({
      range: `B5:B${last}`,
      type: 'decimal',
      operator: 'greaterThan',
      formulas: ['0'],
      errorTitle: 'Pack size',
      error: 'A pack holds more than nothing: give a number above 0.',
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
    tabColour: 'E0B400',
    tables: [{ name: 'PriceList', range: `A4:E${last}` }],
    print: print(profile, `A1:E${last}`, { landscape: false }),
  });
}
