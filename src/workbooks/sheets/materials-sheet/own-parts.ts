/** The user's own parts on the sheet Materials, and how the sheets Parts and Prices add them at their end. */
export const firstOwn = 8;
export const ownRows = 8;
export const lastOwn = firstOwn + ownRows - 1;

type OwnColumn = 'item' | 'quantity' | 'unit' | 'price' | 'verdict';
const letters: Readonly<Record<OwnColumn, string>> = { item: 'A', quantity: 'B', unit: 'C', price: 'D', verdict: 'E' };

export function ownColumn(name: OwnColumn): string {
  return `Materials!$${letters[name]}$${firstOwn}:$${letters[name]}$${lastOwn}`;
}

/** The verdict of a row that is in the list begins with this word; it is the whole verdict if the row's own price is used. */
export const counted = 'counted';

/** Cells as they are; blank ones would become 0 in a spill. */
const typed = (cells: string): string => `IF(${cells}="","",${cells})`;

/** Own parts for the end of Parts: name, quantity and unit; a row that cannot be counted stays blank. */
export const ownItems = `IF(LEFT(${ownColumn('verdict')},${counted.length})="${counted}",${typed(`Materials!$A$${firstOwn}:$C$${lastOwn}`)},"")`;

/** One column of own parts for the end of Prices, only for parts whose own price is used. */
export function ownPrice(of: 'item' | 'pack size' | 'price' | 'unit'): string {
  return `IF(${ownColumn('verdict')}="${counted}",${of === 'pack size' ? '1' : typed(ownColumn(of))},"")`;
}

/** Columns of the lists to which own parts are added. */
export interface Lists {
  readonly partNames: string;
  readonly partUnits: string;
  readonly priceNames: string;
}

/** The verdict on each row of own parts: counted or not, and why. */
export function ownVerdicts({ partNames, partUnits, priceNames }: Lists): string {
  const [item, quantity, unit, price] = (['item', 'quantity', 'unit', 'price'] as const).map(ownColumn);
  const listedUnit = `IFERROR(INDEX(${partUnits},MATCH(${item},${partNames},0)),${unit})`;
  const faults: readonly (readonly [condition: string, words: string])[] = [
    [`TRIM(${item})=""`, 'give a name'],
    [`NOT(ISNUMBER(${quantity}))`, 'give the quantity as a number'],
    [`${quantity}<0`, 'the quantity is less than 0'],
    [`(${price}<>"")*NOT(ISNUMBER(${price}))`, 'give the price as a number'],
    [`(${price}<>"")*(${price}<0)`, 'the price is less than 0'],
    [`COUNTIF(${item},${item})>1`, 'this name appears twice'],
    [`(${unit}<>"")*(${listedUnit}<>"")*(${listedUnit}<>${unit})`, 'Parts lists it in another unit'],
  ];
  const fine = `IF(COUNTIF(${priceNames},${item})>0,"${counted}, at the price in Prices",IF(${price}="","${counted}, but it has no price","${counted}"))`;
  const judged = faults.reduceRight(
    (rest, [condition, words]) => `IF(${condition},"not counted: ${words}",${rest})`,
    fine,
  );
  return `IF((${item}="")*(${quantity}="")*(${price}=""),"",${judged})`;
}
