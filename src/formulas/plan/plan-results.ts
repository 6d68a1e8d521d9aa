/**
 * A scenario's results, each by the formula of its own stage.
 */

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
import { settleDrums, settleOverflow } from '../settle/settle-drums';
import { tankTurnover } from '../tank/tank-volume';
import { waterBuffer } from '../water/alkali';
import { oxygenTime } from '../water/oxygen-time';
import { planLimit } from './plan-limit';
import { figure, lasting, type Outcome, type Scenario, type ScenarioFactors } from './plan-scenario';
import { planTrain, type Train } from './plan-train';

/** SI, a figure or why there is none; two are words. */
export type PlanResults = ReturnType<typeof planResults>;

/**
 * Everything that a scenario comes to.
 *
 * Oxygen and carbon dioxide are those of the whole system. What drums, pads and times need is for the flow that runs: the
 * pump's, or where none is given the flow needed. Pads needed are for one change a day. A year is 365 days, a month a
 * twelfth. Cannot take oxygen in that is not above oxygen out, oxygen at power failure that is not above the floor, or nutrients
 * that are more than the solids.
 */
export function planResults(scenario: Scenario, factors: ScenarioFactors) {
  const train = planTrain(scenario, factors);
  const { fishCount, fishMass, tankVolume } = scenario;
  const biomass = figure([fishCount, fishMass], (count, mass) => count * mass);
  return {
    biomass,
    stocking: figure([biomass, tankVolume], (mass, volume) => mass / volume),
    feed: train.feed,
    solids: train.solids,
    ammonia: train.ammonia,
    oxygen: train.oxygen,
    carbonDioxide: loadCarbonDioxide(train.oxygen),
    flowNeeded: train.flowNeeded,
    flowSetBy: train.flowSetBy,
    turnover: figure([tankVolume, train.flow], tankTurnover),
    ...settling(scenario, train),
    ...nitrifying(scenario, train, factors),
    ...beds(scenario, train),
    ...harvest(scenario, train),
    oxygenTime: figure([tankVolume], (volume) =>
      oxygenTime(volume, scenario.oxygenAtPowerFailure, scenario.oxygenFloor, train.oxygen, scenario.peakOxygenFactor),
    ),
    ...money(scenario, train),
    firstLimit: planLimit(scenario, factors).first?.stage ?? 'not given',
  };
}

function settling(scenario: Scenario, { flow, captured, passedOn, onPads }: Train) {
  const { drums, drumDiameter, overflowLimit, pads, padArea, padHolding } = scenario;
  const absent = drums === 'none' ? 'none' : 0;
  return {
    drumsNeeded: figure([absent, flow, drumDiameter], (_, through, diameter) =>
      settleDrums(through, diameter, overflowLimit),
    ),
    overflowRate: figure([flow, drumDiameter, drums], settleOverflow),
    solidsCaptured: captured,
    solidsPassedOn: passedOn,
    padsNeeded: figure([pads === 'none' ? 'none' : 0, padArea], (_, area) => screenPads(onPads, area, padHolding, DAY)),
    padChangeInterval: lasting([pads, padArea], (count, area) => screenDays(onPads, count * area, padHolding)),
  };
}

function nitrifying(scenario: Scenario, train: Train, { ammoniaFactor }: ScenarioFactors) {
  const { protein, filterReserve, media, alkali, alkaliPurity } = scenario;
  const mediaSurface = filterArea(train.feed, protein, train.nitrification, filterReserve, ammoniaFactor);
  return {
    mediaSurface: figure([mediaSurface], (surface) => surface),
    mediaVolume: figure([mediaSurface], (surface) => filterMedia(surface, media)),
    alkaliPerDay: waterBuffer(train.ammonia, alkali, alkaliPurity),
  };
}

function beds({ bedArea: given, crop, bedDepth, bedHolding }: Scenario, { feed, onBeds }: Train) {
  const absent = given === 'none' ? 'none' : 0;
  const area = figure([absent], () => bedArea(feed, crop.feed));
  return {
    bedArea: area,
    plants: figure([area, crop.plants], bedPlants),
    bedCleaningInterval: lasting([given], (laid) => bedDays(onBeds, laid * bedDepth, bedHolding)),
  };
}

/** What the solids drawn off by the settler hold in a year. */
function nutrientsPerYear({ nitrogenShare, phosphorusShare, potassiumShare }: Scenario, { captured }: Train) {
  return harvestNutrients(captured * YEAR, nitrogenShare, phosphorusShare, potassiumShare, 'element');
}

function harvest(scenario: Scenario, train: Train) {
  const { nitrogen, phosphate, potash } = nutrientsPerYear(scenario, train);
  const garden = harvestGarden(train.captured * YEAR, {
    nitrogenNeed: scenario.gardenNeed,
    nitrogen: scenario.nitrogenShare,
    available: scenario.availableNitrogen,
    phosphorus: scenario.phosphorusShare,
    phosphateNeed: scenario.phosphateNeed,
    basis: 'element',
  });
  return {
    slurryPerDay: harvestSlurry(train.captured * DAY, scenario.slurrySolids),
    nitrogenPerYear: nitrogen,
    phosphatePerYear: phosphate,
    potashPerYear: potash,
    gardenArea: garden.area,
  };
}

/** The motor runs day and night. A nutrient without a price counts for nothing; without any, the value is not given. */
function money(scenario: Scenario, train: Train) {
  const { power, powerPrice, feedPrice, nitrogenPrice, phosphatePrice, potashPrice } = scenario;
  const priced = nitrogenPrice ?? phosphatePrice ?? potashPrice;
  const { nitrogen, phosphate, potash } = nutrientsPerYear(scenario, train);
  return {
    powerCostPerMonth: figure([power, powerPrice], (watts, price) => costRunning(watts, DAY, price) / 12),
    feedCostPerMonth: figure([feedPrice], (price) => train.feed * MONTH * price),
    harvestValuePerYear: figure([priced], () =>
      harvestValue(nitrogen, phosphate, potash, nitrogenPrice ?? 0, phosphatePrice ?? 0, potashPrice ?? 0),
    ) as Outcome,
  };
}
