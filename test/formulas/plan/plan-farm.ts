import type { Scenario, ScenarioFactors } from '../../../src/formulas/plan/plan-scenario';

export const DAY = 86400;
export const liters = 1e-3;
export const milligrams = 1e-3;
export const grams = 1e-3 / DAY;

/** Round figures, so that what follows from them can be worked by hand. */
export const factors: ScenarioFactors = {
  ammoniaFactor: 0.1,
  oxygenRatio: 1.25,
  swirlCapture: 0.4,
  radialCapture: 0.8,
  measuredOverflow: 0.003,
  alpha: 0.9,
  beta: 1,
};

/** 100 fish of 250 g at 2 % a day: 25 kg that eat 500 g of feed. */
export const farm: Scenario = {
  fishCount: 100,
  fishMass: 0.25,
  feedingRate: 0.02,
  feed: undefined,
  species: 'tilapia',
  protein: 0.4,
  temperature: 20,
  coldestWater: 20,
  hottestWater: 20,
  ph: 7.5,
  highestPh: 7.5,
  salinity: 0,
  elevation: 0,
  alkali: 'sodium bicarbonate',
  alkaliPurity: 1,
  tankVolume: 2,
  systemVolume: 2,
  waterOut: 0,
  sourceNitrate: 0,
  stockingLimit: 20,
  solidsShare: 0.25,
  settleableShare: 0.5,
  solidsDecay: 0,
  feedPhosphorus: 0.01,
  conversion: undefined,
  fishNitrogen: 0.027,
  fishPhosphorus: 0.0045,
  ammoniaLimit: 1 * milligrams,
  unionizedAmmoniaLimit: 0.05 * milligrams,
  carbonDioxideLimit: 20 * milligrams,
  solidsLimit: 20 * milligrams,
  oxygenIn: undefined,
  oxygenOut: undefined,
  oxygenAtPowerFailure: 6 * milligrams,
  oxygenFloor: 3 * milligrams,
  peakOxygenFactor: 1.5,
  removal: 0.5,
  degassing: undefined,
  passiveDenitrification: 0,
  pumpFlow: 0.04 / 60,
  airSupply: 0.1 / 3600,
  settler: 'swirl',
  drumDiameter: Math.sqrt(4 / Math.PI),
  drums: 1,
  overflowLimit: 0.003,
  medianSettling: 0.017,
  settlingSpread: 2.5,
  pads: 2,
  padArea: 0.5,
  padHolding: 0.25,
  padCapture: 0.5,
  media: 300,
  mediaVolume: 0.2,
  nitrification: 0.5 * grams,
  filterReserve: 0,
  bedArea: 10,
  bedCapture: 0.5,
  plantUptake: 0,
  crop: { feed: 50 * grams, plants: 25 },
  bedDepth: 0.3,
  bedHolding: 2,
  nitrogenShare: 0.03,
  phosphorusShare: 0.02,
  potassiumShare: 0.001,
  availableNitrogen: 0.5,
  slurrySolids: 0.02,
  gardenNeed: 0.01,
  phosphateNeed: 0.005,
  power: 100,
  powerPrice: 0.2 / 3.6e6,
  feedPrice: 2,
  nitrogenPrice: 2,
  phosphatePrice: undefined,
  potashPrice: undefined,
};

/** No drums, no pads, no separate biofilter: gravel beds do it all. */
export const smallFarm: Scenario = { ...farm, drums: 'none', pads: 'none', mediaVolume: 'none', media: 175 };

/** Nothing is built or bought. */
export const bare: Partial<Scenario> = {
  tankVolume: undefined,
  airSupply: undefined,
  pumpFlow: undefined,
  drums: undefined,
  pads: undefined,
  mediaVolume: undefined,
  bedArea: undefined,
};
