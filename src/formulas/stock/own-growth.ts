/**
 * Growth and feed conversion of your own fish, from weighings.
 */
import { fitLine } from '../numeric/line';
import { Refusal } from '../refusal';

export interface GrowthWeighing {
  readonly row: number;
  /** Days, as a spreadsheet counts them. */
  readonly date: number;
  /** Mean mass of one, kg. */
  readonly mass: number;
  /** Mean temperature of the water since the row before, °C; that of the first row is ignored. */
  readonly temperature: number | undefined;
}

export interface GrowthFit {
  /** Per cent form. */
  readonly coefficient: number;
  readonly standardError: number;
  readonly weighings: number;
}

/** Faster than any farmed fish grows, per cent form: masses or dates are wrong. */
const FASTEST = 0.5;

/**
 * Thermal-growth coefficient, per cent form, from weighings: 100 x the slope, with intercept, of the cube root of the mass in g on
 * degree-days since the first.
 *
 * Standard error of the slope by ordinary least squares, with weighings - 2 degrees of freedom. Refuses fewer than three
 * weighings, dates out of order, and fish that did not grow. Source: Iwama and Tautz, Canadian Journal of Fisheries and
 * Aquatic Sciences 38:649 (1981), as a straight line.
 */
export function stockCoefficient(weighings: readonly GrowthWeighing[]): GrowthFit {
  if (weighings.length < 3) {
    throw new Refusal(
      'weighings',
      `${weighings.length} of them fit any line, so the error is unknown; give at least three`,
    );
  }
  const degreeDays = [0];
  weighings.slice(1).forEach(({ row, date, temperature }, i) => {
    const before = weighings[i]?.date ?? date;
    if (date <= before) throw new Refusal('weighings', `row ${row} is not later than the row before it; sort by date`);
    if (temperature === undefined) {
      throw new Refusal(
        'weighings',
        `row ${row} has no temperature; give the mean water temperature since the row before`,
      );
    }
    degreeDays.push((degreeDays.at(-1) ?? 0) + (date - before) * temperature);
  });
  const roots = weighings.map(({ mass }) => Math.cbrt(mass * 1000));
  const { slope, residual, spread } = fitLine(degreeDays, roots);
  if (!(spread > 0))
    throw new Refusal('weighings', 'at a steady 0 °C there are no degree-days; give the temperatures measured');
  if (slope <= 0) {
    throw new Refusal(
      'weighings',
      'the fish did not grow over these weighings, so there is no coefficient; continue weighing',
    );
  }
  if (100 * slope > FASTEST) {
    throw new Refusal(
      'weighings',
      'no farmed fish grows that fast (a coefficient above 0.5); look for an error in masses, dates or temperatures',
    );
  }
  const variance = residual / (weighings.length - 2);
  return { coefficient: 100 * slope, standardError: 100 * Math.sqrt(variance / spread), weighings: weighings.length };
}

/**
 * Feed conversion, feed per growth: fed / (gained + loss), all kg over the same time.
 *
 * Gained is the final biomass less the first plus what was taken out; loss the mass of dead fish, which ate too. Refuses a case in which
 * nothing was gained. Source: definition.
 */
export function stockConversion(fed: number, gained: number, loss: number): number {
  const growth = gained + loss;
  if (growth <= 0) {
    throw new Refusal('gained', 'even with the dead fish nothing was gained; weigh again, or over a longer time');
  }
  return fed / growth;
}
