import type { Drawing } from '../../drawing/drawing-model';
import { type Band, bandsDrawing, driversDrawing } from '../../drawing/how-sure-drawing';
import type { CellScalar } from '../../hosts/workbook-model';
import { UserError } from '../user-error';
import type { Cells, HowSureRequest } from './request';

/** Columns of PLAN.RANGE and of PLAN.DRIVERS. */
const rangeWidth = 5;
const driversWidth = 8;
const mostBars = 8;
/** Less than this rounds to nothing. */
const leastShare = 0.005;

/** The bands of a range, or the bars of its drivers, from rows as the functions give them. */
export function howSureDrawing({ rows, title }: HowSureRequest, units: 'metric' | 'US'): Drawing {
  if (widthOf(rows) >= driversWidth) {
    const bars = rows.flatMap(([name, ...rest]) => {
      const share = rest[driversWidth - 2];
      return typeof share === 'number' && name !== 'together' && share >= leastShare
        ? [{ name: String(name), share }]
        : [];
    });
    if (bars.length === 0)
      throw new UserError('This result depends on no uncertain figure, so there are no bars to draw.');
    const notes = ['Each bar is the share of the uncertainty of the result that this figure alone explains.'];
    return driversDrawing({ bars: bars.slice(0, mostBars), title, units, notes });
  }
  const bands = rows.flatMap(bandOf);
  if (bands.length === 0)
    throw new UserError('No result of this range has a band to draw: nothing in it is uncertain.');
  const notes = [
    'Each band holds four of five random draws. The plan may be outside its band if a typical coefficient is at the end of its range.',
  ];
  return bandsDrawing({ bands, title, units, notes });
}

function widthOf(rows: Cells): number {
  return Math.max(...rows.map((row) => row.length), 0);
}

function bandOf(row: readonly CellScalar[]): readonly Band[] {
  const [name, unit, low, plan, high] = row.slice(0, rangeWidth);
  if (typeof low !== 'number' || typeof plan !== 'number' || typeof high !== 'number') return [];
  if (!(plan > 0) || high - low <= 1e-9 * plan) return [];
  const withUnit = (value: number): string => `${Number(value.toPrecision(3))} ${unit}`.trimEnd();
  return [
    { name: String(name), low, plan, high, words: { low: withUnit(low), plan: withUnit(plan), high: withUnit(high) } },
  ];
}
