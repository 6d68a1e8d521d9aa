import type { Equipment, Scenario } from '../../../src/formulas/plan/plan-scenario';
import { alkalis } from '../../../src/formulas/water/alkali';
import { DAY, farm, grams, milligrams } from '../plan/plan-farm';

/** The same numbers for the same seed on every machine: a multiplicative congruential generator (Park and Miller 1988). */
export function randomNumbers(seed: number): () => number {
  let state = seed % 2147483647;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** Any farm that a scenario may say, with stages that are absent, not given or of any size. */
export function randomFarm(random: () => number): Scenario {
  const between = (low: number, high: number) => low + (high - low) * random();
  const over = (low: number, high: number) => low * (high / low) ** random();
  const pick = <T>(...from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;
  const stage = (low: number, high: number): Equipment => {
    const what = random();
    if (what < 0.15) return undefined;
    return what < 0.3 ? 'none' : over(low, high);
  };
  const whole = (low: number, high: number): Equipment => {
    const size = stage(low, high);
    return typeof size === 'number' ? Math.ceil(size) : size;
  };
  const sometimes = (value: number): number | undefined => (random() < 0.5 ? undefined : value);
  const coldest = between(5, 25);
  const tankVolume = stage(0.2, 50);
  return {
    ...farm,
    fishCount: over(10, 5000),
    fishMass: over(0.01, 2),
    feedingRate: over(0.003, 0.05),
    protein: between(0.25, 0.5),
    temperature: coldest,
    coldestWater: coldest,
    hottestWater: coldest + between(0, 10),
    highestPh: sometimes(between(6.5, 8.8)),
    elevation: between(0, 2500),
    alkali: pick(...alkalis),
    tankVolume,
    systemVolume: typeof tankVolume === 'number' ? tankVolume * between(1, 2) : tankVolume,
    waterOut: pick(0, over(0.01, 10)),
    sourceNitrate: pick(0, between(0, 10) * milligrams),
    solidsShare: between(0.04, 0.7),
    settleableShare: pick(0, 1, between(0, 1)),
    solidsDecay: pick(0, over(0.01, 2)),
    conversion: sometimes(between(0.8, 2.5)),
    ammoniaLimit: over(0.2, 3) * milligrams,
    solidsLimit: over(5, 80) * milligrams,
    removal: between(0.1, 0.9),
    degassing: sometimes(between(0.1, 0.9)),
    passiveDenitrification: pick(0, between(0, 0.3)),
    pumpFlow: pick<Equipment>(undefined, 'none', over(1e-5, 0.05), over(1e-4, 0.01)),
    settler: pick<Scenario['settler']>('swirl', 'radial', 'mixed', 'ideal', 0, 1, random()),
    drums: whole(1, 12),
    drumDiameter: pick(undefined, between(0.3, 1.5)),
    medianSettling: over(0.002, 0.1),
    settlingSpread: between(1, 6),
    pads: whole(1, 12),
    padCapture: between(0.1, 1),
    mediaVolume: stage(0.01, 20),
    nitrification: over(0.2, 1) * grams,
    bedArea: stage(0.5, 100),
    bedCapture: pick(0, between(0, 1)),
    plantUptake: pick(0, over(0.1, 1) * grams),
    slurrySolids: over(0.005, 0.2),
    oxygenIn: undefined,
    oxygenOut: undefined,
    feed: sometimes(over(0.05, 50) / DAY),
  };
}
