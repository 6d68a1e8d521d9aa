/**
 * What a harvest of solids is worth, when the garden may be picked, and what a season's log adds up to.
 */
import { firstOf, monthLabel, monthOf } from '../numeric/calendar';
import { DAY } from '../numeric/time';
import { Refusal } from '../refusal';
import { harvestNutrients, type NutrientBasis } from './nutrients';
import { slurryDry } from './slurry';

/** Money for nutrients: mass, kg, x price, a kg, of nitrogen, P2O5 and K2O. Source: definition. */
export function harvestValue(
  nitrogen: number,
  phosphate: number,
  potash: number,
  priceN: number,
  priceP2O5: number,
  priceK2O: number,
): number {
  return nitrogen * priceN + phosphate * priceP2O5 + potash * priceK2O;
}

/** Days from raw manure to harvest, where the part that is eaten touches the soil and where it does not. */
export const WAIT_TOUCHING = 120;
export const WAIT_CLEAR = 90;

/**
 * Earliest harvest, date serial: the day of application + 120 where the part eaten touches soil, else + 90.
 *
 * The rule is for livestock manure, worked in, under organic certification; whether it covers fish solids is for the
 * certifier. It is no safety test: gloves, washing and cooking still apply. Source: 7 CFR 205.203(c)(1).
 */
export function harvestWait(applied: number, touchesSoil: boolean): number {
  return Math.floor(applied) + (touchesSoil ? WAIT_TOUCHING : WAIT_CLEAR);
}

export interface LogEntry {
  /** Date serial. */
  readonly date: number;
  /** Slurry drawn off, m3, and its share of solids by mass. */
  readonly volume: number;
  readonly solidsShare: number;
}

export interface LogRow {
  readonly month: string;
  /** kg. */
  readonly dry: number;
  /** kg/s over the days of the log that fall in the month, first and last day included. */
  readonly aDay: number;
  /** kg. */
  readonly nitrogen: number;
  readonly phosphate: number;
  readonly potash: number;
}

/** Days; a row a month over longer than this is a mistyped year, not a log. */
const LONGEST_LOG = 20 * 366;

/**
 * A log of drawn-off slurry by month, with a total: dry solids, their mean a day, and nutrients.
 *
 * Dry = volume x 1000 kg/m3 x solids share. Days run from the first date to the last, both counted; a month between in
 * which nothing was drawn is a row of 0. Entries can be in any order, several on one day. Refuses an empty log and one of over 20 years. Source: mass
 * balance.
 *
 * How it is measured: draw off each time until the water runs clear, read liters off the pail, stir, dry a weighed cup
 * of it until it loses no more weight, and write date, liters and dry over wet. The share changes little from week to
 * week, so a cup a month will do. Wear gloves and work in the open: stored wet solids give off hydrogen sulfide.
 */
export function harvestLog(
  log: readonly LogEntry[],
  nitrogen: number,
  phosphorus: number,
  potassium: number,
  basis: NutrientBasis,
): readonly LogRow[] {
  if (log.length === 0) throw new Refusal('log', 'give at least one row of date, slurry volume and solids share');
  const byMonth = new Map<number, number>();
  let first = Infinity;
  let last = -Infinity;
  let total = 0;
  for (const { date, volume, solidsShare } of log) {
    const day = Math.floor(date);
    const dry = slurryDry(volume, solidsShare);
    first = Math.min(first, day);
    last = Math.max(last, day);
    total += dry;
    byMonth.set(monthOf(day), (byMonth.get(monthOf(day)) ?? 0) + dry);
  }
  if (last - first > LONGEST_LOG) {
    const span = `${monthLabel(monthOf(first))} to ${monthLabel(monthOf(last))}`;
    throw new Refusal('log', `dates from ${span} are more than 20 years apart; look for a mistyped year`);
  }
  const row = (month: string, dry: number, days: number): LogRow => ({
    month,
    dry,
    aDay: dry / (days * DAY),
    ...harvestNutrients(dry, nitrogen, phosphorus, potassium, basis),
  });
  const rows: LogRow[] = [];
  for (let month = monthOf(first); month <= monthOf(last); month++) {
    const days = Math.min(last, firstOf(month + 1) - 1) - Math.max(first, firstOf(month)) + 1;
    rows.push(row(monthLabel(month), byMonth.get(month) ?? 0, days));
  }
  return [...rows, row('total', total, last - first + 1)];
}
