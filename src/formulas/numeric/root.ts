/**
 * Where a continuous function of one number crosses zero, between two ends at which its signs differ.
 *
 * Brent's method: never outside the bracket, about ten evaluations for a smooth function, at most a hundred. Source:
 * Brent, Algorithms for Minimization without Derivatives (1973), chapter 4.
 */
const STEPS = 100;

/** The root between `low` and `high`, to about 1e-15 of its size plus `tolerance`. */
export function rootBetween(of: (x: number) => number, low: number, high: number, tolerance: number): number {
  let a = low;
  let b = high;
  let fa = of(a);
  let fb = of(b);
  if (fa === 0) return a;
  let c = a;
  let fc = fa;
  let d = b - a;
  let e = d;
  for (let step = 0; step < STEPS && fb !== 0; step++) {
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      d = b - a;
      e = d;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const close = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= close) break;
    const mayInterpolate = Math.abs(e) >= close && Math.abs(fa) > Math.abs(fb);
    const guess = mayInterpolate ? interpolated(a, b, c, fa, fb, fc) : Number.NaN;
    if (2 * Math.abs(guess) < Math.min(3 * Math.abs(half) - close, Math.abs(e))) {
      e = d;
      d = guess;
    } else {
      d = half;
      e = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(d) > close ? d : Math.sign(half) * close;
    fb = of(b);
  }
  return b;
}

/**
 * The step of inverse quadratic interpolation. It points toward c, because a lies on the same side of the root as b, and
 * farther from it.
 */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return ((c - b) * s) / (s - 1);
  const r = fb / fc;
  const t = fa / fc;
  const p = s * ((c - b) * t * (t - r) - (b - a) * (r - 1));
  return p / ((t - 1) * (r - 1) * (1 - s));
}
