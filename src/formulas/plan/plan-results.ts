/**
 * A scenario's results, each by the formula of its own stage and the steady state of the farm.
 */

import { farmBalance, farmCarbonDioxide } from '../balance/farm-balance';
import { bedArea, bedDays, bedPlants } from '../bed/bed';
import { costRunning } from '../cost/cost';
import { filterArea, filterMedia } from '../filter/filter-size';
import { screenDays, screenPads } from '../filter/screen';
import { harvestGarden } from '../harvest/garden';
import { harvestValue } from '../harvest/harvest';
import { harvestNutrients } from '../harvest/nutrients';
import { harvestSlurry } from '../harvest/slurry';
import { loadCarbonDioxide } from '../load/load';
import { DAY, MONTH, YEAR } from '../numeric/time';
import { Refusal } from '../refusal';
import { settleDrums, settleOverflow } from '../settle/settle-drums';
import { tankTurnover } from '../tank/tank-volume';
import { waterBuffer } from '../water/alkali';
import { oxygenTime } from '../water/oxygen-time';
import { waterAmmonia } from '../water/water-ammonia';
import { waterOxygen } from '../water/water-oxygen';
import { type Farm, planFarm } from './plan-farm';
import { firstLimit } from './plan-limit';
import { durationOf, figure, levelOutcome, type Outcome, type Scenario, type ScenarioFactors } from './plan-scenario';

/** SI figures, or the word for why there is none; two results are always words. */
export type PlanResults = ReturnType<typeof planResults>;

/**
 * Every result of a scenario; pure and fast, so that a sample of a thousand scenarios can be calculated at once: call it
 * with a `Scenario` and `ScenarioFactors` whose figures are varied (see varying-inputs.ts in the catalogue).
 *
 * Oxygen and carbon dioxide are those of the whole system. What drums, pads and times need is for the flow that runs: the
 * pump's, or where none is given the flow needed. Pads needed are for one change a day. A year is 365 days, a month a
 * twelfth. Refuses oxygen in that is not above oxygen out, oxygen at power failure that is not above the floor, or
 * nutrients that are more than the solids.
 */
export function planResults(scenario: Scenario, factors: ScenarioFactors) {
  const farm = planFarm(scenario, factors);
  const { fishCount, fishMass, tankVolume } = scenario;
  const biomass = figure([fishCount, fishMass], (count, mass) => count * mass);
  return {
    biomass,
    stocking: figure([biomass, tankVolume], (mass, volume) => mass / volume),
    feed: farm.feed,
    solids: farm.solids,
    ammonia: farm.ammonia,
    oxygen: farm.oxygen,
    carbonDioxide: loadCarbonDioxide(farm.oxygen),
    flowNeeded: farm.flowNeeded,
    flowSetBy: farm.flowSetBy,
    turnover: durationOf([tankVolume, farm.flow], tankTurnover),
    ...levels(farm),
    ...settling(farm),
    ...nitrifying(farm),
    ...beds(farm),
    ...harvest(farm),
    oxygenTime: figure([tankVolume], (volume) => {
      refuseThinAir(scenario);
      return oxygenTime(volume, oxygenLeft(scenario), scenario.oxygenFloor, farm.oxygen, scenario.peakOxygenFactor);
    }),
    ...money(farm),
    firstLimit: firstLimit(farm) ?? 'not given',
  };
}

/** Oxygen in the tank when pump and air stop: as typed, but no more than the hottest water holds in balance with air. */
export function oxygenLeft({ oxygenAtPowerFailure, hottestWater, elevation, salinity }: Scenario): number {
  return Math.min(oxygenAtPowerFailure, waterOxygen(hottestWater, elevation, salinity));
}

/** Water that cannot hold the oxygen floor has no fish in it. */
function refuseThinAir(scenario: Scenario): void {
  const saturation = oxygenLeft(scenario);
  if (scenario.oxygenAtPowerFailure <= scenario.oxygenFloor || saturation > scenario.oxygenFloor) return;
  throw new Refusal(
    'hottestWater',
    'at this elevation and salinity it holds only {saturation} of oxygen in balance with air, not above the oxygen floor ({oxygenFloor}); give cooler water, or a lower floor',
    { figures: { saturation: { value: saturation, like: 'oxygenFloor' }, oxygenFloor: scenario.oxygenFloor } },
  );
}

/** Time constants until a level reaches nine tenths of its change, ln 10. */
const NINE_TENTHS = Math.LN10;

function levels(farm: Farm) {
  const { balance, scenario } = farm;
  const { degassing, highestPh, hottestWater, salinity, systemVolume } = scenario;
  const { ammonia, nitrate, solids, flow, out } = balance;
  const rise = nitrate.out + nitrate.rising - nitrate.source;
  return {
    solidsInTank: levelOutcome(solids.level),
    ammoniaInTank: levelOutcome(ammonia.level),
    unionizedAmmonia: figure([levelOutcome(ammonia.level), highestPh], (level, ph) =>
      waterAmmonia(level, ph, hottestWater, salinity),
    ),
    carbonDioxideInTank:
      degassing === undefined ? 'not given' : levelOutcome(farmCarbonDioxide(farm, flow, ammonia.nitrified, degassing)),
    nitrateInTank: levelOutcome(nitrate.level),
    nitrateRisePerDay: figure([systemVolume], (volume) => (rise * DAY) / volume),
    nitrateRiseTime: durationOf([systemVolume], (volume) => (NINE_TENTHS * volume) / out),
  };
}

function settling(farm: Farm) {
  const { scenario, flow, balance } = farm;
  const { drums, drumDiameter, overflowLimit, pads, padArea, padHolding } = scenario;
  const absent = drums === 'none' ? 'none' : 0;
  const { solids } = balance;
  return {
    drumsNeeded: figure([absent, flow, drumDiameter], (_, through, diameter) =>
      settleDrums(through, diameter, overflowLimit),
    ),
    overflowRate: figure([flow, drumDiameter, drums], settleOverflow),
    solidsCaptured: solids.drums,
    solidsToPads: solids.pads,
    solidsToBeds: solids.beds,
    padsNeeded: figure([pads === 'none' ? 'none' : 0, padArea], (_, area) =>
      screenPads(solidsOnPads(farm), area, padHolding, DAY),
    ),
    padChangeInterval: durationOf([pads, padArea], (count, area) => screenDays(solids.pads, count * area, padHolding)),
  };
}

/** The solids that the pads remove or, if none are given, would remove. */
function solidsOnPads(farm: Farm): number {
  if (farm.scenario.pads !== undefined) return farm.balance.solids.pads;
  const withPads = { ...farm, sinks: { ...farm.sinks, pads: farm.scenario.padCapture } };
  return farmBalance(withPads, farm.balance.flow).solids.pads;
}

function nitrifying({ scenario, factors, feed, nitrification, balance }: Farm) {
  const { protein, filterReserve, media, alkali, alkaliPurity } = scenario;
  const { ammonia, nitrate } = balance;
  const mediaSurface = filterArea(feed, protein, nitrification, filterReserve, factors.ammoniaFactor);
  // Nitrate that is denitrified or taken up gives back half of the alkalinity that nitrifying it used.
  const unbuffered = ammonia.nitrified - (nitrate.denitrified + nitrate.plants) / 2;
  return {
    mediaSurface: figure([mediaSurface], (surface) => surface),
    mediaVolume: figure([mediaSurface], (surface) => filterMedia(surface, media)),
    alkaliPerDay: waterBuffer(Math.max(0, unbuffered), alkali, alkaliPurity),
  };
}

function beds({ scenario, feed, balance }: Farm) {
  const { bedArea: given, crop, bedDepth, bedHolding } = scenario;
  const absent = given === 'none' ? 'none' : 0;
  const area = figure([absent], () => bedArea(feed, crop.feed));
  return {
    bedArea: area,
    plants: figure([area, crop.plants], bedPlants),
    bedCleaningInterval: durationOf([given], (laid) => bedDays(balance.solids.beds, laid * bedDepth, bedHolding)),
  };
}

/** Nutrients in a year's solids from the settler, and their worth; a nutrient without a price counts as 0. */
function harvest({ scenario, balance }: Farm) {
  const { nitrogenShare, phosphorusShare, potassiumShare, nitrogenPrice, phosphatePrice, potashPrice } = scenario;
  const dry = balance.solids.drums;
  const { nitrogen, phosphate, potash } = harvestNutrients(
    dry * YEAR,
    nitrogenShare,
    phosphorusShare,
    potassiumShare,
    'element',
  );
  const garden = harvestGarden(dry * YEAR, {
    nitrogenNeed: scenario.gardenNeed,
    nitrogen: nitrogenShare,
    available: scenario.availableNitrogen,
    phosphorus: phosphorusShare,
    phosphateNeed: scenario.phosphateNeed,
    basis: 'element',
  });
  const priced = nitrogenPrice ?? phosphatePrice ?? potashPrice;
  const value: Outcome = figure([priced], () =>
    harvestValue(nitrogen, phosphate, potash, nitrogenPrice ?? 0, phosphatePrice ?? 0, potashPrice ?? 0),
  );
  return {
    slurryPerDay: harvestSlurry(dry * DAY, scenario.slurrySolids),
    nitrogenPerYear: nitrogen,
    phosphatePerYear: phosphate,
    potashPerYear: potash,
    gardenArea: garden.area,
    harvestValuePerYear: value,
  };
}

/** The motor runs day and night. */
function money({ scenario, feed }: Farm) {
  const { power, powerPrice, feedPrice } = scenario;
  return {
    powerCostPerMonth: figure([power, powerPrice], (watts, price) => costRunning(watts, DAY, price) / 12),
    feedCostPerMonth: figure([feedPrice], (price) => feed * MONTH * price),
  };
}
