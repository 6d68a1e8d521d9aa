import {
  behind,
  bound,
  type Harmless,
  halved,
  interpolates,
  more,
  never,
  noLap,
  onlyRefusals,
  rounding,
  stops,
} from './harmless-reasons';

/** Changes to numeric methods and cones that no test can or should notice. */
export const numericHarmless: Harmless = {
  'src/formulas/cone/cone-check.ts': {
    'error instanceof Refusal -> true': onlyRefusals,
    'wallAngle < limit * degree - 1e-9 -> wallAngle <= limit * degree - 1e-9': bound,
  },
  'src/formulas/cone/read-pattern.ts': {
    "typeof piece === 'string' -> false": 'What is wrong with the row is known by then.',
    'angle <= 0 -> false': 'Such an angle does not go with the wall angle either.',
    'angle <= 0 -> angle < 0': 'Such an angle does not go with the wall angle either.',
  },
  'src/formulas/cone/cone-marks.ts': {
    'Math.abs(length) < 1e-14 * outerRadius -> Math.abs(length) <= 1e-14 * outerRadius': rounding,
    '1e-14 * outerRadius -> 1e-14 / outerRadius': 'It only removes what rounding has left.',
    'mark.innerX !== undefined -> true': never,
    'first === undefined || last === undefined -> first === undefined && last === undefined': never,
    'first === undefined || last === undefined -> false': never,
    'first === undefined -> false': never,
    'last === undefined -> false': never,
  },
  'src/formulas/cone/cone-mid-plane.ts': {
    'narrowing === 0 -> false': 'Halving finds the same angle.',
    '(step - narrowing * Math.sin(angle)) * Math.sin(angle) < 2 * height * Math.cos(angle) -> (step - narrowing * Math.sin(angle)) * Math.sin(angle) <= 2 * height * Math.cos(angle)':
      rounding,
    'Math.sin(angle) * (1 + Math.cos(angle) ** 2) < ratio -> Math.sin(angle) * (1 + Math.cos(angle) ** 2) <= ratio':
      rounding,
    'step < HALVINGS -> step <= HALVINGS': halved,
    'step++ -> step--': halved,
    'middle <= low || middle >= high -> false': halved,
    'middle <= low -> false': halved,
    'middle >= high -> false': halved,
    'middle <= low || middle >= high -> middle <= low && middle >= high': halved,
    'middle <= low -> middle < low': halved,
    'middle >= high -> middle > high': halved,
  },
  'src/formulas/cone/cone-pattern.ts': {
    "piece.shape === 'sector' -> true": 'A rectangle has no radii and no angle, so that they are blank either way.',
    "piece.shape === 'rectangle' -> false": 'A rectangle has no angle, so that no lap comes round it either way.',
    'lap > 0 -> true': noLap,
    'lap > 0 -> lap >= 0': noLap,
  },
  'src/formulas/numeric/latin-hypercube.ts': {
    'last > 0 -> last >= 0': 'The first is exchanged with itself.',
  },
  'src/formulas/numeric/least-squares.ts': {
    'round < ROUNDS -> true': stops,
    'round < ROUNDS -> round <= ROUNDS': stops,
    'damping < 1e12 -> damping <= 1e12': stops,
    'round++ -> round--': stops,
    'sum < best -> sum <= best': 'Of two points as good, either may be taken.',
    'Math.hypot(...step) < 1e-13 -> false': more,
    'Math.hypot(...step) < 1e-13 -> Math.hypot(...step) <= 1e-13': more,
    'small -> false': more,
    'xx * (1 + damping) + 1e-300 -> xx * (1 + damping) - 1e-300':
      'It only keeps the determinant from 0, on either side of it.',
    'yy * (1 + damping) + 1e-300 -> yy * (1 + damping) - 1e-300':
      'It only keeps the determinant from 0, on either side of it.',
  },
  'src/formulas/numeric/normal.ts': {
    'x > 0 -> x >= 0': never,
    'z < 7.07106781186547 -> z <= 7.07106781186547': rounding,
  },
  'src/formulas/numeric/percentile.ts': {
    'share < 1e-12 -> share <= 1e-12': bound,
  },
  'src/formulas/numeric/root.ts': {
    'fb > 0 -> fb >= 0': 'A root that is met ends the search before.',
    'fc > 0 -> fc >= 0': 'A root that is met ends the search before.',
    'b - a -> b + a': interpolates,
    'Math.abs(fc) < Math.abs(fb) -> Math.abs(fc) <= Math.abs(fb)': 'Of two points as near, either may be taken.',
    'Math.abs(half) <= close -> Math.abs(half) < close': bound,
    'Math.abs(e) >= close -> true': interpolates,
    'Math.abs(e) >= close -> Math.abs(e) > close': interpolates,
    'Math.abs(fa) > Math.abs(fb) -> Math.abs(fa) >= Math.abs(fb)': interpolates,
    '2 * Math.abs(guess) < Math.min(3 * Math.abs(half) - close, Math.abs(e)) -> 2 * Math.abs(guess) <= Math.min(3 * Math.abs(half) - close, Math.abs(e))':
      bound,
    'Math.min(3 * Math.abs(half) - close, Math.abs(e)) -> Math.max(3 * Math.abs(half) - close, Math.abs(e))':
      interpolates,
    '3 * Math.abs(half) - close -> 3 * Math.abs(half) + close': interpolates,
    'Math.abs(d) > close -> Math.abs(d) >= close': rounding,
  },
  'src/formulas/numeric/triangle.ts': {
    'high <= low -> high < low': 'Between equal ends the long way gives that figure too.',
    'p <= below -> p < below': rounding,
  },
  'src/formulas/numeric/variance-share.ts': {
    'at < count -> at <= count': behind,
    '(sums[bin] ?? 0) + apart -> (sums[bin] ?? 0) - apart': 'The sum is squared, so that its sign does not count.',
    'bin < bins -> bin <= bins': behind,
    'at < results.length -> at <= results.length': behind,
  },
};
