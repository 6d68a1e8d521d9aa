/**
 * Where a continuous function of one number crosses zero, between two ends at which its signs differ.
 *
 * Brent's method: never outside the bracket, and never more than some tens of evaluations. Source: Brent, Algorithms for Minimization
 * without Derivatives (1973), chapter 4.
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
    const guess = Math.abs(e) >= close && Math.abs(fa) > Math.abs(fb) ? interpolated(a, b, c, fa, fb, fc) : undefined;
    if (guess !== undefined && 2 * Math.abs(guess) < Math.min(3 * Math.abs(half) - close, Math.abs(e))) {
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

/** The step of inverse quadratic interpolation, toward c; undefined where it points the other way. */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number | undefined {
  const s = fb / fa;
  const half = (c - b) / 2;
  let p: number;
  let q: number;
  if (a === c) {
    p = 2 * half * s;
    q = 1 - s;
  } else {
    const r = fb / fc;
    const t = fa / fc;
    p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
    q = (t - 1) * (r - 1) * (s - 1);
  }
  const step = p > 0 ? p / -q : -p / q;
  return Math.sign(step) === Math.sign(half) ? step : undefined;
}
