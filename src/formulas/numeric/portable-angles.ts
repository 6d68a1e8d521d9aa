/**
 * Sines, cosines and their inverses that are the same to the last digit in every JavaScript engine.
 *
 * Engines may choose the last digit of Math.sin and its like, and a new version of one browser has changed it. A search
 * that compares many lengths comes to another plan by such a digit. Sums, products, quotients and square roots alone are
 * fixed by IEEE 754, and these functions need nothing else.
 */

const half = Math.PI / 2;
/** A quarter of a turn in two parts: the first has so few digits that its multiples are exact (Cody and Waite, 1980). */
const quarterTurn = { most: 1.5707963267341256, rest: 6.077100506506192e-11 };

/** The sine of an angle of up to some hundred thousand turns, rad; within 2.3e-16. Source: the Taylor series. */
export function sine(angle: number): number {
  return sineAhead(angle, 0);
}

/** The cosine, as the sine: it is a quarter of a turn ahead of that. */
export function cosine(angle: number): number {
  return sineAhead(angle, 1);
}

/** The sine of an angle and so many quarters of a turn. */
function sineAhead(angle: number, ahead: number): number {
  const quarters = Math.round(angle / half);
  const rest = angle - quarters * quarterTurn.most - quarters * quarterTurn.rest;
  const side = ((quarters + ahead) & 1) === 0 ? sineNearZero(rest) : cosineNearZero(rest);
  return ((quarters + ahead) & 2) === 0 ? side : -side;
}

/** The series up to the 17th power; within an eighth of a turn the next one is less than 1e-19. */
function sineNearZero(x: number): number {
  const z = x * x;
  const high = 1 / 362880 + z * (-1 / 39916800 + z * (1 / 6227020800 + z * (-1 / 1307674368000 + z / 355687428096000)));
  return x + x * z * (-1 / 6 + z * (1 / 120 + z * (-1 / 5040 + z * high)));
}

/** The series up to the 18th power. */
function cosineNearZero(x: number): number {
  const z = x * x;
  const high =
    -1 / 3628800 + z * (1 / 479001600 + z * (-1 / 87178291200 + z * (1 / 20922789888000 - z / 6402373705728000)));
  return 1 - z / 2 + z * z * (1 / 24 + z * (-1 / 720 + z * (1 / 40320 + z * high)));
}

/** The arc tangents of 0, 1/8, 2/8 … 1. */
const arcTangents = [
  0, 0.12435499454676144, 0.24497866312686414, 0.3587706702705722, 0.4636476090008061, 0.5585993153435624,
  0.6435011087932844, 0.7188299996216245, 0.7853981633974483,
];

/**
 * The direction of a point from the origin, rad, from more than −π to π counter-clockwise from +x; 0 at the origin. Within
 * 4.5e-16. Source: the addition theorem, atan t = atan a + atan((t − a) / (1 + t a)), and the series of the last part.
 */
export function directionOf(y: number, x: number): number {
  const up = Math.abs(y);
  const across = Math.abs(x);
  const isSteep = up > across;
  const more = isSteep ? up : across;
  const less = isSteep ? across : up;
  if (more === 0) return 0;
  const eighths = Math.round((8 * less) / more);
  const near = eighths / 8;
  const t = (less - near * more) / (more + near * less);
  const z = t * t;
  const series = -1 / 3 + z * (1 / 5 + z * (-1 / 7 + z * (1 / 9 + z * (-1 / 11 + z / 13))));
  const flat = (arcTangents[eighths] as number) + (t + t * z * series);
  const inQuarter = isSteep ? half - flat : flat;
  const inHalf = x < 0 ? Math.PI - inQuarter : inQuarter;
  return y < 0 ? -inHalf : inHalf;
}

/** The angle whose sine is a number from −1 to 1, rad. */
export function arcSine(share: number): number {
  return directionOf(share, Math.sqrt((1 - share) * (1 + share)));
}
