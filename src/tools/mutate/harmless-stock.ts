import { bound, type Harmless, never, rounding } from './harmless-reasons';

/** Changes to fish and costs that no test can or should notice. */
export const stockHarmless: Harmless = {
  'src/formulas/cost/cost.ts': {
    'text.trim().toLowerCase() -> text.trim().toUpperCase()': 'Names are compared in one case, whichever it is.',
  },
  'src/formulas/stock/own-growth.ts': {
    'weighings[i]?.date -> weighings[i].date': never,
    '100 * slope > FASTEST -> 100 * slope >= FASTEST': bound,
  },
  'src/formulas/stock/stock-feed-rate.ts': {
    'fishMass >= mass * (1 - 1e-9) -> fishMass > mass * (1 - 1e-9)': bound,
    'place < -1e-9 -> place <= -1e-9': bound,
    'place > last + 1e-9 -> place >= last + 1e-9': bound,
    'Math.abs(place - near) < 1e-9 -> Math.abs(place - near) <= 1e-9': rounding,
    'percentADay[row]?.[column] -> percentADay[row][column]': never,
    'percentADay[row + 1]?.[column] -> percentADay[row + 1][column]': never,
    'temperature < TILAPIA_COOLEST - 1e-9 -> temperature <= TILAPIA_COOLEST - 1e-9': bound,
    'temperature > TILAPIA_WARMEST + 1e-9 -> temperature >= TILAPIA_WARMEST + 1e-9': bound,
    'fishMass >= from * (1 - 1e-9) -> fishMass > from * (1 - 1e-9)': bound,
    'fishMass <= to * (1 + 1e-9) -> fishMass < to * (1 + 1e-9)': bound,
  },
  'src/formulas/stock/stock-schedule.ts': {
    'steps > 0 -> true': 'Where the fish do not grow the target is their mass.',
    'steps > 0 -> steps >= 0': 'Where the fish do not grow the target is their mass.',
  },
};
