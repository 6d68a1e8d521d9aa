import { bracket, ends, type Harmless, more, never, rounding, starts, stops, zero } from './harmless-reasons';

/** Changes to pipes and air that no test can or should notice. */
export const pipeHarmless: Harmless = {
  'src/formulas/air/air-test.ts': {
    'first?.time -> first.time': never,
    'curveAt(next, times, oxygen).residual < curveAt(best, times, oxygen).residual -> curveAt(next, times, oxygen).residual <= curveAt(best, times, oxygen).residual':
      'Of two rates as good, either may be taken.',
    'gradient(left) < 0 -> gradient(left) <= 0': rounding,
    'gradient(right) >= 0 -> gradient(right) > 0': rounding,
    'gradient(low) < 0 -> gradient(low) <= 0': rounding,
    'log[i - 1]?.time -> log[i - 1].time': never,
    'log[0]?.oxygen -> log[0].oxygen': never,
    'log.at(-1)?.oxygen -> log.at(-1).oxygen': never,
  },
  'src/formulas/air/air.ts': {
    'aerator.target >= saturation -> aerator.target > saturation': rounding,
  },
  'src/formulas/pipe/friction.ts': {
    '-1.8 * Math.log10(6.9 / reynolds + a ** 1.11) -> -1.8 / Math.log10(6.9 / reynolds + a ** 1.11)': starts,
    'step < 8 -> step <= 8': starts,
    'step++ -> step--': stops,
    'Math.abs(change) < 1e-13 * x -> false': more,
    'Math.abs(change) < 1e-13 * x -> Math.abs(change) <= 1e-13 * x': more,
    '1e-13 * x -> 1e-13 / x': more,
    'reynolds <= LAMINAR -> reynolds < LAMINAR': rounding,
    'reynolds >= TURBULENT -> reynolds > TURBULENT': rounding,
  },
  'src/formulas/pipe/pipe-flow.ts': {
    '2 * GRAVITY * drop -> 2 * GRAVITY / drop': bracket,
    '2 * GRAVITY -> 2 / GRAVITY': bracket,
    'fixed + (0.001 * length) / bore -> fixed - 0.001 * length / bore': bracket,
    '(0.001 * length) / bore -> 0.001 * length * bore': bracket,
    'Math.log(fastest) - 2 -> Math.log(fastest) + 2': bracket,
    'excess(at) <= 0 -> excess(at) < 0': rounding,
    'excess(at) >= 0 -> excess(at) > 0': rounding,
    'low === undefined || high === undefined -> low === undefined && high === undefined': ends,
    'low === undefined -> false': ends,
    'high === undefined -> false': ends,
    'i < MOST_STEPS && Number.isFinite(at) -> i < MOST_STEPS || Number.isFinite(at)':
      'The search ends by its other conditions: at no speed nothing is lost, and at the greatest everything.',
    'i < MOST_STEPS -> true':
      'The search ends by its other conditions: at no speed nothing is lost, and at the greatest everything.',
    'i < MOST_STEPS -> i <= MOST_STEPS':
      'The search ends by its other conditions: at no speed nothing is lost, and at the greatest everything.',
    'i++ -> i--': 'The search ends by its other conditions.',
  },
  'src/formulas/pipe/pump-curve.ts': {
    'first === undefined -> false': 'Without a first point there is no last.',
    'before.secant === 0 || after.secant === 0 -> false': zero,
    'before.secant === 0 -> false': zero,
    'after.secant === 0 -> false': zero,
    'before.secant === 0 || after.secant === 0 -> before.secant === 0 && after.secant === 0': zero,
    'slope > 0 -> slope >= 0': zero,
    'secant === 0 -> false': zero,
    'flow <= to.flow -> flow < to.flow': rounding,
    'span === undefined -> false': never,
  },
};
