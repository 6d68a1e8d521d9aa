/**
 * Least squares in two unknowns by the method of Levenberg and Marquardt.
 *
 * Slopes are taken by central differences; the steps are bounded. Source: Marquardt, SIAM Journal 11:431 (1963).
 */
export type Point = readonly [number, number];

const ROUNDS = 200;
const NUDGE = 1e-6;

/** The point near `start` at which the sum of squares of the residuals is least. */
export function leastSquares(residuals: (at: Point) => readonly number[], start: Point): Point {
  let at = start;
  let now = residuals(at);
  let best = squares(now);
  let damping = 1e-3;
  for (let round = 0; round < ROUNDS && damping < 1e12; round++) {
    const step = stepFrom(residuals, at, now, damping);
    const next: Point = [at[0] + step[0], at[1] + step[1]];
    const there = residuals(next);
    const sum = squares(there);
    if (sum < best) {
      const small = Math.hypot(...step) < 1e-13;
      at = next;
      now = there;
      best = sum;
      damping = Math.max(damping / 10, 1e-15);
      if (small) break;
    } else damping *= 10;
  }
  return at;
}

export function squares(residuals: readonly number[]): number {
  return residuals.reduce((sum, one) => sum + one * one, 0);
}

function stepFrom(
  residuals: (at: Point) => readonly number[],
  at: Point,
  now: readonly number[],
  damping: number,
): Point {
  const [x, y] = at;
  const right = residuals([x + NUDGE, y]);
  const left = residuals([x - NUDGE, y]);
  const up = residuals([x, y + NUDGE]);
  const down = residuals([x, y - NUDGE]);
  let xx = 0;
  let xy = 0;
  let yy = 0;
  let xr = 0;
  let yr = 0;
  now.forEach((residual, i) => {
    const dx = ((right[i] ?? 0) - (left[i] ?? 0)) / (2 * NUDGE);
    const dy = ((up[i] ?? 0) - (down[i] ?? 0)) / (2 * NUDGE);
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
    xr += dx * residual;
    yr += dy * residual;
  });
  const a = xx * (1 + damping) + 1e-300;
  const b = yy * (1 + damping) + 1e-300;
  const determinant = a * b - xy * xy;
  if (!(Math.abs(determinant) > 0)) return [0, 0];
  return [(xy * yr - b * xr) / determinant, (xy * xr - a * yr) / determinant];
}
