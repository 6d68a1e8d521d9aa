import type { Scenario } from '../../formulas/plan/plan-scenario';
import { alkalis } from '../../formulas/water/alkali';
import { fishKinds } from '../../formulas/water/water-species';
import { elevation, ph, salinity, temperature } from '../water-arguments';
import type { NamedInput } from './named-input';
import { cropInput, mediaInput, settlerInput } from './scenario-readers';

const share = { kind: 'share', above: 0, format: 'share' } as const;
const positive = { atLeast: 0 } as const;

/**
 * Everything that a scenario may say, in the order of the list. Coefficients and limits have defaults; equipment has
 * none, and `none` in its cell says that the stage is absent.
 *
 * Adding one is a row here and a line in `Scenario`, which says what formulas read: neither compiles without the other.
 * Names, units, defaults, bounds, number formats and lists of choices follow from the row.
 */
export const scenarioInputs = {
  fishCount: { kind: 'count', above: 0, meaning: 'fish in the tank' },
  fishMass: { kind: 'fish', above: 0, meaning: 'mass of one fish' },
  feedingRate: { ...share, meaning: 'share of body mass fed a day' },
  feed: { kind: 'daily', above: 0, meaning: 'feed a day; else by count, mass and rate' },
  species: { choice: fishKinds, meaning: 'whose limits of temperature, pH and un-ionized ammonia hold' },
  protein: { ...share, default: 'coefficient', meaning: 'protein in the feed' },
  temperature: {
    ...temperature,
    default: 20,
    source: 'the temperature at which nitrification is stated',
    meaning: 'of the water, usual',
  },
  coldestWater: {
    ...temperature,
    as: 'temperature',
    meaning: 'coldest that it gets: nitrification is figured at it',
  },
  hottestWater: {
    ...temperature,
    as: 'temperature',
    meaning: 'hottest that it gets: oxygen and un-ionized ammonia are figured at it',
  },
  ph: { ...ph, name: 'pH', meaning: 'of the water, usual' },
  highestPh: {
    ...ph,
    name: 'highest pH',
    as: 'ph',
    meaning: 'highest that it gets: un-ionized ammonia is figured at it',
  },
  salinity: { ...salinity, source: 'fresh water', meaning: 'practical salinity; 0 for fresh water' },
  elevation: { ...elevation, source: 'sea level', meaning: 'height above sea level' },
  alkali: {
    choice: alkalis,
    default: 'sodium bicarbonate',
    source: 'mild and easily had: common practice, no source',
    meaning: 'what restores alkalinity, by its chemical name',
  },
  alkaliPurity: { ...share, default: 'coefficient', meaning: 'share of the alkali in what is bought' },
  tankVolume: { kind: 'volume', ...positive, equipment: true, meaning: 'water with fish in it' },
  systemVolume: {
    kind: 'volume',
    ...positive,
    equipment: true,
    as: 'tankVolume',
    meaning: 'all the water that comes round, the tank’s included',
  },
  waterOut: {
    kind: 'volume',
    ...positive,
    default: 0,
    source: 'none: nothing is let out unless it is said',
    meaning: 'water let out a day and replaced, without slurry and evaporation',
  },
  sourceNitrate: {
    kind: 'concentration',
    ...positive,
    default: 0,
    source: 'none: read it off a test of your own source',
    meaning: 'nitrate as N in the water that replaces what is let out',
  },
  stockingLimit: {
    kind: 'stocking',
    above: 0,
    default: 'coefficient',
    decided: true,
    meaning: 'densest that fish may stand',
  },
  solidsShare: { ...share, default: 'coefficient', meaning: 'dry suspended solids per feed' },
  settleableShare: {
    kind: 'share',
    format: 'share',
    default: 'coefficient',
    meaning: 'share of solids that settles at all',
  },
  solidsDecay: {
    kind: 'number',
    atMost: 20,
    atLeast: 0,
    default: 'coefficient',
    meaning: 'share of the solids in the water that decays a day; may exceed 1',
  },
  feedPhosphorus: { kind: 'share', format: 'share', default: 'coefficient', meaning: 'phosphorus as P in the feed' },
  conversion: {
    kind: 'number',
    above: 0,
    atMost: 20,
    format: 'two',
    meaning: 'feed per gain in mass, dead fish counted in',
  },
  fishNitrogen: {
    kind: 'share',
    format: 'share',
    default: 'coefficient',
    meaning: 'nitrogen in the gain, of wet mass',
  },
  fishPhosphorus: {
    kind: 'share',
    format: 'share',
    default: 'coefficient',
    meaning: 'phosphorus as P in the gain, of wet mass',
  },
  ammoniaLimit: {
    kind: 'concentration',
    above: 0,
    species: ({ ammonia }) => ammonia,
    default: 'coefficient',
    decided: true,
    meaning: 'total ammonia nitrogen that the tank may hold',
  },
  unionizedAmmoniaLimit: {
    kind: 'concentration',
    above: 0,
    name: 'un-ionized ammonia limit',
    species: ({ unionized }) => unionized,
    default: 'coefficient',
    decided: true,
    meaning: 'un-ionized ammonia nitrogen that the tank may hold',
  },
  carbonDioxideLimit: {
    kind: 'concentration',
    above: 0,
    species: ({ carbonDioxide }) => carbonDioxide,
    default: 'coefficient',
    decided: true,
    meaning: 'carbon dioxide that the tank may hold',
  },
  solidsLimit: {
    kind: 'concentration',
    above: 0,
    default: 'coefficient',
    decided: true,
    meaning: 'suspended solids that the tank may hold',
  },
  oxygenIn: { kind: 'concentration', above: 0, meaning: 'oxygen in water that enters the tank' },
  oxygenOut: { kind: 'concentration', above: 0, meaning: 'oxygen in water that leaves the tank' },
  oxygenAtPowerFailure: {
    kind: 'concentration',
    above: 0,
    default: 'coefficient',
    meaning: 'oxygen kept in the tank, there when pump and air stop',
  },
  oxygenFloor: {
    kind: 'concentration',
    ...positive,
    species: ({ oxygenFloor }) => oxygenFloor,
    default: 'coefficient',
    decided: true,
    meaning: 'oxygen at which fish are in danger',
  },
  peakOxygenFactor: {
    kind: 'number',
    atLeast: 1,
    atMost: 10,
    default: 'coefficient',
    meaning: 'worst hour’s oxygen over the mean of the day',
  },
  removal: { ...share, default: 'coefficient', meaning: 'share of ammonia removed in one pass' },
  degassing: {
    ...share,
    meaning:
      'share of the carbon dioxide above that of air which one pass removes; without it carbon dioxide is not judged',
  },
  passiveDenitrification: {
    kind: 'share',
    format: 'share',
    default: 'coefficient',
    meaning: 'share of the nitrogen fed that is denitrified in sludge and slime',
  },
  pumpFlow: { kind: 'flow', ...positive, equipment: true, meaning: 'flow through tank, drums and filter' },
  airSupply: { kind: 'transfer', ...positive, equipment: true, meaning: 'oxygen transfer as the aerators are rated' },
  settler: settlerInput,
  drumDiameter: { kind: 'dimension', above: 0, meaning: 'inside diameter of a settling drum' },
  drums: { kind: 'count', whole: true, equipment: true, meaning: 'settling drums side by side' },
  overflowLimit: {
    kind: 'loading',
    above: 0,
    default: 'coefficient',
    decided: true,
    meaning: 'fastest that water may rise in a drum',
  },
  medianSettling: {
    kind: 'settling',
    above: 0,
    default: 'coefficient',
    meaning: 'velocity that half of what settles exceeds',
  },
  settlingSpread: {
    kind: 'number',
    atLeast: 1,
    atMost: 100,
    default: 'coefficient',
    meaning: 'geometric standard deviation of settling velocity',
  },
  pads: { kind: 'count', whole: true, equipment: true, meaning: 'filter pads' },
  padArea: { kind: 'area', above: 0, meaning: 'area of one pad' },
  padHolding: { kind: 'holding', above: 0, default: 'coefficient', meaning: 'dry solids that a pad holds' },
  padCapture: {
    ...share,
    default: 'coefficient',
    meaning: 'share of the solids reaching the pads that they take in a pass',
  },
  media: mediaInput,
  mediaVolume: { kind: 'bulk', ...positive, equipment: true, meaning: 'media of a separate biofilter' },
  nitrification: {
    kind: 'areal rate',
    above: 0,
    default: 'coefficient',
    meaning: 'nitrogen nitrified a day on a unit of media surface at 20 °C',
  },
  filterReserve: {
    kind: 'share',
    format: 'share',
    atMost: 10,
    default: 'coefficient',
    decided: true,
    meaning: 'media on top of what ammonia needs',
  },
  bedArea: { kind: 'area', ...positive, equipment: true, meaning: 'plant beds' },
  bedCapture: {
    kind: 'share',
    format: 'share',
    default: 'coefficient',
    meaning: 'share of solids that gravel beds take in a pass, their share of the flow included',
  },
  plantUptake: {
    kind: 'areal rate',
    ...positive,
    default: 'coefficient',
    meaning: 'nitrogen that plants take a day from a unit of bed',
  },
  crop: cropInput,
  bedDepth: { kind: 'dimension', above: 0, default: 'coefficient', meaning: 'depth of gravel in the beds' },
  bedHolding: { kind: 'bed holding', above: 0, default: 'coefficient', meaning: 'dry solids that gravel holds' },
  nitrogenShare: { kind: 'share', format: 'share', default: 'coefficient', meaning: 'nitrogen, of dry solids' },
  phosphorusShare: {
    kind: 'share',
    format: 'share',
    default: 'coefficient',
    meaning: 'phosphorus as P, of dry solids',
  },
  potassiumShare: { kind: 'share', format: 'share', default: 'coefficient', meaning: 'potassium as K, of dry solids' },
  availableNitrogen: {
    kind: 'share',
    format: 'share',
    default: 'coefficient',
    meaning: 'share of nitrogen that works this season',
  },
  slurrySolids: { ...share, default: 'coefficient', meaning: 'dry solids in what is drawn off, by mass' },
  gardenNeed: {
    kind: 'application',
    above: 0,
    default: 'coefficient',
    decided: true,
    meaning: 'nitrogen that the garden wants a year',
  },
  phosphateNeed: {
    kind: 'application',
    above: 0,
    default: 'coefficient',
    decided: true,
    meaning: 'P2O5 that the garden wants a year',
  },
  power: { kind: 'power', ...positive, meaning: 'of pumps and air, day and night' },
  powerPrice: { kind: 'price of energy', format: 'price', ...positive, meaning: 'of electricity' },
  feedPrice: { kind: 'price of mass', format: 'money', ...positive, meaning: 'of feed' },
  nitrogenPrice: { kind: 'price of mass', format: 'money', ...positive, meaning: 'of nitrogen in fertilizer' },
  phosphatePrice: { kind: 'price of mass', format: 'money', ...positive, meaning: 'of P2O5 in fertilizer' },
  potashPrice: { kind: 'price of mass', format: 'money', ...positive, meaning: 'of K2O in fertilizer' },
} as const satisfies Readonly<Record<keyof Scenario, NamedInput>>;

export type InputKey = keyof typeof scenarioInputs;

/** In the order of PLAN.INPUTS. */
export const inputKeys = Object.keys(scenarioInputs) as readonly InputKey[];
