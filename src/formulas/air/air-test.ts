/**
 * Oxygen transfer of your own aerator, from the rise of oxygen in a tank without fish.
 */
import { fitLine } from '../numeric/line';
import { rootBetween } from '../numeric/root';
import { type Figure, Refusal } from '../refusal';
import { waterOxygen } from '../water/water-oxygen';
import { THETA } from './air';

export interface OxygenReading {
  readonly row: number;
  /** s. */
  readonly time: number;
  /** kg/m3. */
  readonly oxygen: number;
}

export interface AerationFit {
  /** 1/s. */
  readonly transfer: number;
  readonly transferAt20: number;
  /** kg/m3. */
  readonly saturation: number;
  /** kg/s, into water without oxygen at 20 °C and 1 atm. */
  readonly standard: number;
  /** Of the transfer, 1/s. */
  readonly standardError: number;
}

/** Reading over saturation at the surface beyond which the meter is wrong: deep bubbles add some, never this much. */
const ABOVE_ANY = 1.2;

/** Parts of saturation between which the curve must be seen. */
const [FROM, TO] = [1 / 3, 0.9];

/** Rates looked for, per length of the log. */
const SLOWEST = 1e-2;
const FASTEST = 1e3;
const NET = 60;

interface Curve {
  /** Below 0 where a larger rate fits better. */
  readonly gradient: number;
  readonly saturation: number;
  readonly residual: number;
  readonly sensitivity: readonly number[];
  readonly decay: readonly number[];
}

/**
 * KLa of a re-aeration test: least squares of C = Cs - (Cs - C0) exp(-KLa t) for KLa, Cs and C0 at once.
 *
 * For a KLa the other two are a straight line in exp(-KLa t), so only KLa is searched for; its standard error is that of the full
 * non-linear regression, with n - 3 degrees of freedom. Standard transfer = KLa 1.024^(20 - t) x saturation at 20 °C and 1 atm x
 * volume, m3. Refuses fewer than four readings, times out of order, and oxygen that does not rise from under a third to over
 * nine tenths of saturation or exceeds any saturation. Source: ASCE/EWRI 2-06, non-linear regression.
 */
export function airTest(
  log: readonly OxygenReading[],
  volume: number,
  temperature: number,
  elevation: number,
  salinity: number,
): AerationFit {
  refuseUnfit(log, waterOxygen(temperature, elevation, salinity));
  const [first] = log;
  const start = first?.time ?? 0;
  const times = log.map(({ time }) => time - start);
  const oxygen = log.map((reading) => reading.oxygen);
  const span = times.at(-1) ?? 1;
  const gradient = (logRate: number): number => curveAt(Math.exp(logRate) / span, times, oxygen).gradient;
  const fits = turningPoints(gradient).map((logRate) => Math.exp(logRate) / span);
  const rate = fits.reduce((best, next) =>
    curveAt(next, times, oxygen).residual < curveAt(best, times, oxygen).residual ? next : best,
  );
  const { saturation, residual, sensitivity, decay } = curveAt(rate, times, oxygen);
  const own = fitLine(decay, sensitivity).residual;
  const transferAt20 = rate * THETA ** (20 - temperature);
  return {
    transfer: rate,
    transferAt20,
    saturation,
    standard: transferAt20 * waterOxygen(20, 0, 0) * volume,
    standardError: Math.sqrt(residual / (log.length - 3) / own),
  };
}

/** Saturation and start that fit best at a rate, with the slope of the squares left over in the rate. */
function curveAt(rate: number, times: readonly number[], oxygen: readonly number[]): Curve {
  const decay = times.map((time) => Math.exp(-rate * time));
  const { slope, intercept, residual } = fitLine(decay, oxygen);
  const sensitivity = times.map((time, i) => -slope * time * (decay[i] ?? 0));
  const gradient = oxygen.reduce(
    (sum, value, i) => sum - (value - intercept - slope * (decay[i] ?? 0)) * (sensitivity[i] ?? 0),
    0,
  );
  return { gradient, saturation: intercept, residual, sensitivity, decay };
}

/** Logarithms of the rate times the length of the log where the squares left over are least among their neighbors. */
function turningPoints(gradient: (logRate: number) => number): readonly number[] {
  const [low, high] = [Math.log(SLOWEST), Math.log(FASTEST)];
  const net = Array.from({ length: NET + 1 }, (_, i) => low + ((high - low) * i) / NET);
  const found = net.slice(1).flatMap((right, i) => {
    const left = net[i] ?? low;
    return gradient(left) < 0 && gradient(right) >= 0 ? [rootBetween(gradient, left, right, 1e-14)] : [];
  });
  if (found.length > 0) return found;
  // Where even the slowest rate is too slow, every rate is: the readings show only the end of the rise.
  const advice =
    gradient(low) < 0
      ? 'oxygen rises too fast for these readings, so no rate fits; read more often'
      : 'oxygen does not level off, so no rate fits; keep reading, with the fish out of the tank';
  throw new Refusal('log', advice);
}

function refuseUnfit(log: readonly OxygenReading[], saturation: number): void {
  const level = (value: number): Figure => ({ value, like: 'concentration', digits: 3 });
  const figures = { saturation: level(saturation) };
  if (log.length < 4) throw new Refusal('log', `${log.length} readings give no standard error; give at least four`);
  log.forEach(({ row, time, oxygen }, i) => {
    if (i > 0 && time <= (log[i - 1]?.time ?? 0)) {
      throw new Refusal(
        'log',
        `row ${row} is not later than the row before it; give minutes since the start, in order`,
      );
    }
    if (oxygen <= ABOVE_ANY * saturation) return;
    throw new Refusal(
      'log',
      `row ${row} holds more oxygen than air can dissolve here, {saturation}; calibrate the meter, and check temperature and height`,
      { figures },
    );
  });
  const least = log[0]?.oxygen ?? 0;
  const most = log.at(-1)?.oxygen ?? 0;
  if (most <= least)
    throw new Refusal('log', 'oxygen does not rise; remove the oxygen first, then log how it rises again');
  if (least < saturation * FROM && most > saturation * TO) return;
  throw new Refusal(
    'log',
    'the log must run from under {least} to over {most}, a third and nine tenths of the {saturation} that water holds here',
    {
      figures: {
        ...figures,
        least: level(saturation * FROM),
        most: level(saturation * TO),
      },
    },
  );
}
