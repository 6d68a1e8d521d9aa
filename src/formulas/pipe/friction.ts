/**
 * Friction of water along the wall of a pipe.
 */

/** Reynolds numbers between which the flow is neither laminar nor turbulent. */
const LAMINAR = 2000;
const TURBULENT = 4000;

const TWO_OVER_LN_TEN = 2 / Math.LN10;

/**
 * Darcy friction factor of turbulent flow, to 1e-12: 1/sqrt(f) = -2 log10(e/3.7 + 2.51/(Re sqrt(f))).
 *
 * e is roughness over bore, 0 to 0.05. Newton's method from Haaland's formula, on a curve so nearly straight that three steps do.
 * Source: Colebrook, Journal of the Institution of Civil Engineers 11:133 (1939).
 */
export function colebrook(reynolds: number, relativeRoughness: number): number {
  const a = relativeRoughness / 3.7;
  const b = 2.51 / reynolds;
  let x = -1.8 * Math.log10(6.9 / reynolds + a ** 1.11);
  for (let step = 0; step < 8; step++) {
    const inside = a + b * x;
    const change = (x + TWO_OVER_LN_TEN * Math.log(inside)) / (1 + (TWO_OVER_LN_TEN * b) / inside);
    x -= change;
    if (Math.abs(change) < 1e-13 * x) break;
  }
  return 1 / (x * x);
}

/**
 * Darcy friction factor at any Reynolds number above 0: 64/Re up to 2000, Colebrook from 4000, a straight line between.
 *
 * The line meets both, so there is no jump; real flow wanders in between, and no formula is exact there.
 * Source: Hagen and Poiseuille; Colebrook (1939); the blend is this work's own.
 */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= LAMINAR) return 64 / reynolds;
  if (reynolds >= TURBULENT) return colebrook(reynolds, relativeRoughness);
  const low = 64 / LAMINAR;
  const high = colebrook(TURBULENT, relativeRoughness);
  return low + ((high - low) * (reynolds - LAMINAR)) / (TURBULENT - LAMINAR);
}

/** Roughness of the clean commercial steel pipe that Crane's fittings are referred to, m. */
const STEEL = 4.572e-5;

/**
 * Friction factor at complete turbulence in clean steel pipe, by which Crane's fittings are scaled: 0.25/log10(e/(3.7 D))2.
 *
 * Bore in m. 0.027 at 1/2 in, 0.019 at 2 in, 0.017 at 4 in. Source: Crane Technical Paper 410, page A-26.
 */
export function fullyTurbulentFactor(bore: number): number {
  const logarithm = Math.log10(STEEL / (3.7 * bore));
  return 0.25 / (logarithm * logarithm);
}
