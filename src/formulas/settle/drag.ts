/**
 * Drag on a sphere at its terminal velocity, and the two equations that settling needs.
 *
 * Both are solved for ln Re by Newton's method, on curves that are nearly straight there, so that a handful of steps from a
 * good start reaches 1e-12. Source: Cheng, Powder Technology 189:395 (2009), eq. 19, Re below 2e5.
 */

/** The most steps taken; three or four are usual. */
const STEPS = 20;

/** A step this small in ln Re leaves an error of its square, below 1e-15. */
const CLOSE = 1e-8;

/**
 * Drag coefficient: 24/Re (1 + 0.27 Re)^0.43 + 0.47 (1 - exp(-0.04 Re^0.38)).
 *
 * Re above 0 up to 2e5; tends to Stokes' 24/Re as Re falls to 0. Source: Cheng (2009).
 */
export function dragCoefficient(reynolds: number): number {
  return (24 / reynolds) * (1 + 0.27 * reynolds) ** 0.43 - 0.47 * Math.expm1(-0.04 * reynolds ** 0.38);
}

/** Solves Cd Re^exponent = target for Re, exponent 2 or -1. Powers are taken from the logarithm at hand, which is quicker. */
function solve(exponent: 2 | -1, target: number, start: number): number {
  const goal = Math.log(target);
  let x = Math.log(start);
  for (let step = 0; step < STEPS; step++) {
    const reynolds = Math.exp(x);
    const stretched = 1 + 0.27 * reynolds;
    const viscous = (24 / reynolds) * Math.exp(0.43 * Math.log(stretched));
    const power = 0.04 * Math.exp(0.38 * x);
    const decay = Math.exp(-power);
    const drag = viscous + 0.47 * (1 - decay);
    const slope = (viscous * ((0.1161 * reynolds) / stretched - 1) + 0.1786 * power * decay) / drag;
    const change = (Math.log(drag) + exponent * x - goal) / (slope + exponent);
    x -= change;
    if (Math.abs(change) < CLOSE) break;
  }
  return Math.exp(x);
}

/**
 * Terminal Reynolds number of a sphere whose Archimedes number is g d3 |drho| rho / mu2: Cd Re2 = 4/3 Ar.
 *
 * Starts from Ferguson and Church, Re = Ar / (18 + sqrt(0.3 Ar)), Journal of Sedimentary Research 74:933 (2004).
 */
export function terminalReynolds(archimedes: number): number {
  // Below this the result is Stokes' Ar/18 to the last digit.
  if (archimedes < 1e-14) return archimedes / 18;
  return solve(2, (4 / 3) * archimedes, archimedes / (18 + Math.sqrt(0.3 * archimedes)));
}

/**
 * Reynolds number of the sphere that settles at a given velocity: Cd/Re = 4/3 g |drho| mu / (rho2 v3).
 *
 * Starts from 24/Re2 + 0.4/Re, whose root is closed.
 */
export function settlingReynolds(ratio: number): number {
  if (ratio > 24e26) return Math.sqrt(24 / ratio);
  return solve(-1, ratio, (0.2 + Math.sqrt(0.04 + 24 * ratio)) / ratio);
}
