import {
  absent,
  behind,
  bound,
  bracket,
  type Harmless,
  never,
  onlyRefusals,
  quick,
  rounding,
  zero,
} from './harmless-reasons';

const sameLimit = 'Both limits are the same figure there, so that either may be named.';
const noPanel = 'Where nothing is slower there is no panel either way.';

/** Changes to a farm's balance and plan that no test can or should notice. */
export const planHarmless: Harmless = {
  'src/formulas/balance/dissolved-balance.ts': {
    'byFlow <= capacity * (1 + ROUNDING) -> byFlow < capacity * (1 + ROUNDING)': rounding,
  },
  'src/formulas/balance/flow-needed.ts': {
    'levelAt(0) <= limit -> levelAt(0) < limit': bound,
    'levelAt(GREATEST) > limit -> levelAt(GREATEST) >= limit': bound,
    'Math.min(guess, GREATEST) -> Math.max(guess, GREATEST)': bracket,
    'levelAt(high) > limit -> levelAt(high) >= limit': bracket,
    'Math.min(high * 2, GREATEST) -> Math.max(high * 2, GREATEST)': bracket,
    'levelAt(flow) > limit * (1 + CLOSE) -> levelAt(flow) >= limit * (1 + CLOSE)': rounding,
    'model.ammonia / (limit * model.scenario.removal) -> model.ammonia * (limit * model.scenario.removal)': bracket,
    'limit * model.scenario.removal -> limit / model.scenario.removal': bracket,
    '(2 * model.solids) / limit -> 2 * model.solids * limit': bracket,
    '2 * model.solids -> 2 / model.solids': bracket,
    '(2 * model.oxygen) / (limit * degassing) -> 2 * model.oxygen * (limit * degassing)': bracket,
    '2 * model.oxygen -> 2 / model.oxygen': bracket,
    'limit * degassing -> limit / degassing': bracket,
    'unionized < ammoniaLimit -> unionized <= ammoniaLimit': sameLimit,
  },
  'src/formulas/balance/settling-parts.ts': {
    'deviation === 0 -> false': 'Without a spread every node is the median, and the sum is the same.',
    'i <= last -> i < last': 'The last node weighs under 1e-8 of the whole, below the accuracy stated.',
    'last > first -> true': noPanel,
    'last > first -> last >= first': noPanel,
    '(last - first) * Math.max(1, deviation) * 0.5 -> (last - first) * Math.max(1, deviation) / 0.5':
      'More panels give the same integral.',
  },
  'src/formulas/balance/solids-balance.ts': {
    'i < shares.length -> i <= shares.length': behind,
    'share === 0 -> false': 'A part without solids adds nothing.',
  },
  'src/formulas/plan/plan-check-balance.ts': {
    'nitrate.level > limit -> nitrate.level >= limit': bound,
  },
  'src/formulas/plan/plan-check-solids.ts': {
    'overflow > measured * (1 + 1e-9) -> overflow >= measured * (1 + 1e-9)': bound,
    'overflow <= overflowLimit * (1 + 1e-9) -> overflow < overflowLimit * (1 + 1e-9)': bound,
    'isFitted(pads) && padArea !== undefined -> true': absent,
    'isFitted(pads) && padArea !== undefined -> isFitted(pads) || padArea !== undefined': absent,
    'padArea !== undefined -> true': absent,
    'changed < DAY -> changed <= DAY': bound,
  },
  'src/formulas/plan/plan-check-water.ts': {
    'least !== undefined && most !== undefined -> true': absent,
    'least !== undefined && most !== undefined -> least !== undefined || most !== undefined': absent,
    'least !== undefined -> true': absent,
    'most !== undefined -> true': absent,
    'time < SHORT_TIME -> time <= SHORT_TIME': bound,
    "stageSketches(farm).find(({ stage }) => stage === 'air')?.capacity -> stageSketches(farm).find(({ stage }) => stage === 'air').capacity":
      never,
    "typeof capacity === 'number' -> true": absent,
    'capacity >= feed -> capacity > feed': bound,
    'capacity < feed * peakOxygenFactor -> capacity <= feed * peakOxygenFactor': bound,
    'fishCount === undefined || fishMass === undefined || !isFitted(tankVolume) -> false': absent,
    'fishCount === undefined || fishMass === undefined || !isFitted(tankVolume) -> (fishCount === undefined || fishMass === undefined) && !isFitted(tankVolume)':
      absent,
    'fishCount === undefined || fishMass === undefined -> false': absent,
    'fishCount === undefined || fishMass === undefined -> fishCount === undefined && fishMass === undefined': absent,
    'fishCount === undefined -> false': absent,
    'fishMass === undefined -> false': absent,
  },
  'src/formulas/plan/plan-check.ts': {
    'capacity >= feed * (1 - 1e-9) -> capacity > feed * (1 - 1e-9)': bound,
    'fishMass === undefined || feedingRate === undefined -> false': absent,
    'fishMass === undefined || feedingRate === undefined -> fishMass === undefined && feedingRate === undefined':
      absent,
    'fishMass === undefined -> false': absent,
    'feedingRate === undefined -> false': absent,
    'fishCount === undefined -> false': absent,
    'feed !== undefined && eaten !== undefined -> true': absent,
    'feed !== undefined && eaten !== undefined -> feed !== undefined || eaten !== undefined': absent,
    'feed !== undefined -> true': absent,
    'eaten !== undefined -> true': absent,
    'Math.abs(eaten - feed) > SAME_FEED * feed -> Math.abs(eaten - feed) >= SAME_FEED * feed': bound,
    'chart !== undefined -> true': absent,
    '{ if (error instanceof Refusal) return undefined; throw error; } -> {}': onlyRefusals,
    'error instanceof Refusal -> true': onlyRefusals,
  },
  'src/formulas/plan/plan-circulation.ts': {
    'added > 0 -> added >= 0': 'A feed divided by 0 is infinite as well.',
    'model.capacity < flow * scenario.removal * scenario.ammoniaLimit -> model.capacity <= flow * scenario.removal * scenario.ammoniaLimit':
      sameLimit,
    'solids.rising > 0 -> false': zero,
    'limit <= model.airCarbonDioxide -> limit < model.airCarbonDioxide': zero,
    'carried / (CARBON_DIOXIDE_PER_OXYGEN * model.oxygen) -> carried * (CARBON_DIOXIDE_PER_OXYGEN * model.oxygen)':
      bracket,
    'CARBON_DIOXIDE_PER_OXYGEN * model.oxygen -> CARBON_DIOXIDE_PER_OXYGEN / model.oxygen': bracket,
    'over(most) >= 0 -> false': bracket,
    'over(most) >= 0 -> over(most) > 0': bracket,
    '2 * most -> 2 / most': bracket,
    'over(high) <= 0 -> over(high) < 0': bracket,
    'high > 1e9 -> false': 'Doubled on and on the end becomes infinite, which is the result too.',
    'high > 1e9 -> high >= 1e9': bound,
  },
  'src/formulas/plan/plan-range.ts': {
    '[] -> ["Stryker was here"]': never,
    'Math.max(Math.abs(least), Math.abs(most)) -> Math.min(Math.abs(least), Math.abs(most))':
      'Where it matters the two differ by a rounding.',
  },
  'src/formulas/plan/plan-results.ts': {
    'farm.scenario.pads !== undefined -> false': 'Pads that are there remove what they would remove if they were.',
  },
  'src/formulas/plan/plan-stages.ts': {
    "typeof pumpFlow === 'number' -> true": quick,
    'at?.[waste] -> at[waste]': never,
  },
};
