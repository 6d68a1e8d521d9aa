/**
 * Shopping lists in whole packs, building or buying, and the running cost of a motor.
 */

import { HOUR } from '../numeric/time';
import { wholeUp } from '../numeric/whole';
import { Refusal } from '../refusal';

export interface Item {
  readonly item: string;
  readonly quantity: number;
  readonly unit?: string | undefined;
}

export interface Price {
  readonly item: string;
  readonly packSize: number;
  readonly packPrice: number;
  readonly unit?: string | undefined;
}

export interface CostLine {
  readonly item: string;
  readonly needed: number | undefined;
  /** Whole packs, or why there are none. */
  readonly packs: number | string | undefined;
  readonly cost: number | undefined;
}

const fold = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

/**
 * One line per item and a total: needed = quantity x (1 + allowance); packs = needed / pack size, rounded up; cost =
 * packs x price.
 *
 * An item listed twice is bought once, so that part packs are not paid for twice. One without a price says so, costs
 * nothing known and is counted in the total's own words. Refuses different units of one item, and two prices
 * of one item. Source: definition.
 */
export function costLines(items: readonly Item[], prices: readonly Price[], allowance: number): readonly CostLine[] {
  const known = new Map<string, Price>();
  for (const price of prices) {
    const name = fold(price.item);
    if (known.has(name)) throw new Refusal('prices', `${price.item} has two prices; keep one`);
    known.set(name, price);
  }
  const wanted = new Map<string, Item>();
  for (const item of items) {
    const before = wanted.get(fold(item.item));
    if (before) refuseUnits('items', item.item, before.unit, item.unit);
    const unit = before?.unit || item.unit;
    wanted.set(fold(item.item), {
      item: before?.item ?? item.item,
      quantity: (before?.quantity ?? 0) + item.quantity,
      unit,
    });
  }
  const lines = [...wanted].map(([name, { item, quantity, unit }]): CostLine => {
    const needed = quantity * (1 + allowance);
    const price = known.get(name);
    if (!price) return { item, needed, packs: 'no price', cost: undefined };
    refuseUnits('prices', item, unit, price.unit);
    const packs = wholeUp(needed / price.packSize);
    return { item, needed, packs, cost: packs * price.packPrice };
  });
  const without = lines.filter(({ cost }) => cost === undefined).length;
  const total = lines.reduce((sum, { cost = 0 }) => sum + cost, 0);
  const words =
    without === 0
      ? 'total'
      : `total without ${without} item${without > 1 ? 's' : ''} that ${without > 1 ? 'have' : 'has'} no price`;
  return [...lines, { item: words, needed: undefined, packs: undefined, cost: total }];
}

function refuseUnits(argument: string, item: string, one: string | undefined, other: string | undefined): void {
  if (one && other && fold(one) !== fold(other)) {
    throw new Refusal(argument, `${item} is in ${one.trim()} and in ${other.trim()}; use one unit for both`);
  }
}

export interface Comparison {
  /** Money: one built with your own hours counted, all of them, what building saves, and as a share of buying. */
  readonly each: number;
  readonly all: number;
  readonly saved: number;
  readonly shareSaved: number;
}

/**
 * Building against buying so many: each = built + hours x wage; saved = count x (bought - each), negative where buying
 * is cheaper.
 *
 * Built and bought are money for one; hours for one, in s; wage money an hour. Refuses a price to buy of
 * 0. Source: definition.
 */
export function costCompare(built: number, bought: number, count: number, hours: number, wage: number): Comparison {
  if (bought <= 0) throw new Refusal('bought', 'give the price of one bought, more than 0');
  const each = built + (hours / HOUR) * wage;
  const saved = (bought - each) * count;
  return { each, all: each * count, saved, shareSaved: (bought - each) / bought };
}

/** Money a year for a motor: power, W, x time a day, s, x 365 x price a joule. Source: definition. */
export function costRunning(power: number, hoursADay: number, price: number): number {
  return power * hoursADay * 365 * price;
}
