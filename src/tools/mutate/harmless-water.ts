import {
  absent,
  bound,
  fresh,
  type Harmless,
  left,
  more,
  onlyRefusals,
  rounding,
  starts,
  still,
  stops,
} from './harmless-reasons';

/** Changes to water, settling and tanks that no test can or should notice. */
export const waterHarmless: Harmless = {
  'src/formulas/settle/drag.ts': {
    'step < STEPS -> step <= STEPS': stops,
    'step++ -> step--': stops,
    'Math.abs(change) < CLOSE -> false': more,
    'Math.abs(change) < CLOSE -> Math.abs(change) <= CLOSE': more,
    'archimedes < 1e-14 -> archimedes <= 1e-14': rounding,
    'archimedes / (18 + Math.sqrt(0.3 * archimedes)) -> archimedes * (18 + Math.sqrt(0.3 * archimedes))': starts,
    '0.3 * archimedes -> 0.3 / archimedes': starts,
    'ratio > 24e26 -> ratio >= 24e26': rounding,
    '(0.2 + Math.sqrt(0.04 + 24 * ratio)) / ratio -> (0.2 + Math.sqrt(0.04 + 24 * ratio)) * ratio': starts,
    '24 * ratio -> 24 / ratio': starts,
  },
  'src/formulas/settle/settle-capture.ts': {
    'deviation === 0 -> false': 'Without a spread the long way takes the mean of equal figures, which is that figure.',
    'i <= reach -> i < reach': 'The last point weighs under 1e-8 of the whole, below the accuracy stated.',
    'mean + deviation * x -> mean - deviation * x':
      'The points lie evenly to both sides of the median, so the sum is the same the other way round.',
    'panel < panels -> panel <= panels':
      'In a panel more, either everything settles or less than 1e-9 of the solids lie.',
  },
  'src/formulas/settle/settle-jar.ts': {
    'fall / first.time -> fall * first.time': starts,
    'squares(residuals(next)) < squares(residuals(best)) -> squares(residuals(next)) <= squares(residuals(best))':
      'Of two fits as good, either may be taken.',
    'below === 0 -> false':
      'A step to where nothing settles fits no better than before, so it is dropped whatever it yields.',
    'i <= 16 -> i < 16': starts,
    'first === undefined || last === undefined -> false': 'No reading is fewer than three as well.',
    'first === undefined -> false': 'No reading is fewer than three as well.',
    'last === undefined -> false': 'No reading is fewer than three as well.',
    'first === undefined || last === undefined -> first === undefined && last === undefined':
      'A list has a first reading if it has a last one.',
  },
  'src/formulas/settle/settling-velocity.ts': {
    'reynolds > 1 -> reynolds >= 1': bound,
    'velocity > 0 -> velocity >= 0': still,
    'reynolds <= FASTEST -> reynolds < FASTEST': bound,
  },
  'src/formulas/tank/tank-drain.ts': {
    'volume !== undefined -> true': 'A level that is not a number adds nothing to the integral, as the level 0 does.',
    'level > coneHeight -> level >= coneHeight': rounding,
  },
  'src/formulas/tank/tank-ports.ts': {
    'quarters === 0 -> false': 'Cosine and sine of 0 are exact.',
  },
  'src/formulas/tank/tank-shape.ts': {
    'held >= cone -> held > cone': rounding,
  },
  'src/formulas/water/alkali-dose.ts': {
    'before.ph >= SAFE_PH -> before.ph > SAFE_PH': bound,
    'dose === left -> false': 'The sum is the alkalinity wanted to a rounding, and the next turn ends there.',
    'gained <= 0 -> gained < 0': 'A dose divided by 0 is infinite as well.',
    'atOnce <= SAFE_PH -> atOnce < SAFE_PH': bound,
    'safe <= 0 -> safe < 0': left,
    'safe <= 0 -> false': left,
    'airedPh(target / CALCIUM_CARBONATE_PER_EQUIVALENT, dioxide, constants) <= SAFE_PH -> airedPh(target / CALCIUM_CARBONATE_PER_EQUIVALENT, dioxide, constants) < SAFE_PH':
      bound,
  },
  'src/formulas/water/carbonate.ts': {
    'carbonate < 0 -> carbonate <= 0': bound,
    'dioxide > most -> dioxide >= most': bound,
  },
  'src/formulas/water/water-ammonia.ts': {
    'salinity === 0 -> false': fresh,
  },
  'src/formulas/water/water-check-carbon.ts': {
    'error instanceof Refusal -> true': onlyRefusals,
  },
  'src/formulas/water/water-check-nitrogen.ts': {
    'byUnionized < total -> byUnionized <= total':
      'Both limits are the same figure there, so that either source may be named.',
    'nitrite !== undefined && chloride !== undefined -> true': absent,
    'nitrite !== undefined && chloride !== undefined -> nitrite !== undefined || chloride !== undefined': absent,
    'nitrite !== undefined -> true': absent,
    'chloride !== undefined -> true': absent,
  },
  'src/formulas/water/water-check-row.ts': {
    'low !== undefined -> true': absent,
    'high !== undefined -> true': absent,
  },
  'src/formulas/water/water-check.ts': {
    'temperature !== undefined -> true': 'The row of a temperature not taken is complete before.',
    'high < low -> high <= low': bound,
  },
  'src/formulas/water/water-density.ts': {
    'salinity === 0 -> false': fresh,
  },
  'src/formulas/water/water-viscosity.ts': {
    'salinity === 0 -> false': fresh,
  },
};
