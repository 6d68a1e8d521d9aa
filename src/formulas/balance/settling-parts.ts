/**
 * Solids as parts that settle alike: what a settler removes of each in one pass.
 *
 * A measured share r says that at least r settles: the part that settles is the larger of r and the settleable share s,
 * and the settler takes r over that of it in each pass. A computed settler has its spread of settling velocities cut
 * into nodes, so that a sum over them is an integral over the spread, to 1e-6 of the level of the tank.
 */
import { normalBelow } from '../numeric/normal';
import { Refusal } from '../refusal';

/** Shares of all solids, which sum to 1, and what the settler takes of each in one pass. */
export interface SolidsParts {
  readonly shares: readonly number[];
  readonly taken: readonly number[];
}

/** Solids that no settler removes. */
export const unsettled: SolidsParts = { shares: [1], taken: [0] };

/** The two parts of a settler whose share was measured. */
export function measuredParts(share: number, settleable: number): SolidsParts {
  const settling = Math.max(share, settleable);
  if (settling === 0) return unsettled;
  return { shares: [settling, 1 - settling], taken: [share / settling, 0] };
}

/** Settling velocities of settleable solids: log-normal, median in m/s, geometric standard deviation. */
export interface Spread {
  readonly median: number;
  readonly spread: number;
  readonly settleable: number;
}

/** Beyond this the slowest solids decide the level, and nobody has measured those. */
const WIDEST = 6;

/** Deviations from the peak of the bell, and of the bell over velocity, beyond which 1e-9 of each lies. */
const REACH = 6;

function refuseWide(spread: number): void {
  if (spread <= WIDEST) return;
  throw new Refusal(
    'spread',
    'at steady state the slowest solids decide, and nobody has measured those; give up to {widest}, or a measured share as settler',
    { figures: { widest: { value: WIDEST, like: 'spread' } } },
  );
}

interface Nodes {
  readonly velocities: readonly number[];
  readonly weights: readonly number[];
}

/**
 * Parts by overflow rate in a well-mixed drum, which takes z/(1 + z) of what settles at z times the overflow rate.
 *
 * Trapezoidal rule over the bell: with z continued into the complex plane the level has no pole within half a turn of
 * ln z, so a step h errs by less than 2 exp(-pi2/(h s)) and, for the bell, 2 exp(-2 pi2/h2).
 */
export function mixedParts({ median, spread, settleable }: Spread): (overflow: number) => SolidsParts {
  refuseWide(spread);
  const deviation = Math.log(spread);
  const { velocities, weights } = bellNodes(median, deviation);
  const shares = [...weights.map((weight) => settleable * weight), 1 - settleable];
  return (overflow) => {
    const taken = velocities.map((velocity) => velocity / (velocity + overflow));
    taken.push(0);
    return { shares, taken };
  };
}

function bellNodes(median: number, deviation: number): Nodes {
  if (deviation === 0) return { velocities: [median], weights: [1] };
  const step = Math.min(0.7, 0.5 / deviation);
  const velocities: number[] = [];
  const bells: number[] = [];
  const last = Math.ceil(REACH / step);
  for (let i = -Math.ceil((REACH + deviation) / step); i <= last; i++) {
    const x = i * step;
    velocities.push(median * Math.exp(deviation * x));
    bells.push(Math.exp(-0.5 * x * x));
  }
  const sum = bells.reduce((total, bell) => total + bell, 0);
  return { velocities, weights: bells.map((bell) => bell / sum) };
}

/** Nodes and weights of Gauss and Legendre on -1 to 1, eight points; symmetric, so four are kept. */
const LEGENDRE: readonly (readonly [node: number, weight: number])[] = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
];

/** Parts by overflow rate in an ideal drum, which takes min(1, z): one part that is faster than the overflow rate, and panels of slower ones. */
export function idealParts({ median, spread, settleable }: Spread): (overflow: number) => SolidsParts {
  refuseWide(spread);
  const deviation = Math.log(spread);
  return (overflow) => {
    const mean = Math.log(median / overflow);
    if (deviation === 0) return { shares: [settleable, 1 - settleable], taken: [Math.min(1, Math.exp(mean)), 0] };
    const last = Math.min(REACH, -mean / deviation);
    const shares: number[] = [];
    const taken: number[] = [];
    const first = -REACH - deviation;
    const panels = last > first ? Math.ceil((last - first) * Math.max(1, deviation) * 0.5) : 0;
    const half = (last - first) / panels / 2;
    for (let panel = 0; panel < panels; panel++) {
      const middle = first + (2 * panel + 1) * half;
      for (const [node, weight] of LEGENDRE) {
        for (const x of [middle - half * node, middle + half * node]) {
          shares.push((settleable * weight * half * Math.exp(-0.5 * x * x)) / Math.sqrt(2 * Math.PI));
          taken.push(Math.min(1, Math.exp(mean + deviation * x)));
        }
      }
    }
    return { shares: [...shares, settleable * normalBelow(-last), 1 - settleable], taken: [...taken, 1, 0] };
  };
}
