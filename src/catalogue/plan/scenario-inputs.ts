import type { Scenario } from '../../formulas/plan/plan-scenario';
import { alkalis } from '../../formulas/water/alkali';
import { fishKinds } from '../../formulas/water/water-species';
import { elevation, ph, salinity, temperature } from '../water-arguments';
import type { NamedInput } from './named-input';
import { cropInput, mediaInput, settlerInput } from './scenario-readers';

const share = { kind: 'share', above: 0, format: 'share' } as const;
const positive = { atLeast: 0 } as const;

/**
 * Every input of a scenario, in the order of the list. Coefficients and limits have defaults; equipment has none, and
 * `none` in its cell means that the stage is absent.
 *
 * To add one, write a row here and a line in `Scenario`, which formulas read: neither compiles without the other.
 * Names, units, defaults, bounds, number formats and lists of choices follow from the row.
 */
export const scenarioInputs = {
  fishCount: { kind: 'count', above: 0, meaning: 'fish in the tank' },
  fishMass: { kind: 'fish', above: 0, meaning: 'mass of one fish' },
  feedingRate: { ...share, meaning: 'share of body mass fed a day' },
  feed: { kind: 'daily', above: 0, meaning: 'feed a day; if not given, count × mass × rate' },
  species: { choice: fishKinds, meaning: 'species whose limits of temperature, pH and un-ionized ammonia apply' },
  protein: { ...share, default: 'coefficient', meaning: 'protein in the feed' },
  temperature: {
    ...temperature,
    default: 20,
    source: 'the temperature at which nitrification rates are stated',
    meaning: 'usual water temperature',
  },
  coldestWater: {
    ...temperature,
    as: 'temperature',
    meaning: 'coldest water of the year: nitrification is calculated for it',
  },
  hottestWater: {
    ...temperature,
    as: 'temperature',
    meaning: 'hottest water of the year: oxygen and un-ionized ammonia are calculated for it',
  },
  ph: { ...ph, name: 'pH', meaning: 'usual pH of the water' },
  highestPh: {
    ...ph,
    name: 'highest pH',
    as: 'ph',
    meaning: 'highest pH of the water: un-ionized ammonia is calculated for it',
  },
  salinity: { ...salinity, source: 'fresh water', meaning: 'practical salinity; 0 for fresh water' },
  elevation: { ...elevation, source: 'sea level', meaning: 'height above sea level' },
  alkali: {
    choice: alkalis,
    default: 'sodium bicarbonate',
    source: 'mild and easy to buy: common practice, no source',
    meaning: 'chemical name of the alkali that restores alkalinity',
  },
  alkaliPurity: { ...share, default: 'coefficient', meaning: 'share of pure alkali in the product you buy' },
  tankVolume: { kind: 'volume', ...positive, equipment: true, meaning: 'water in the fish tanks' },
  systemVolume: {
    kind: 'volume',
    ...positive,
    equipment: true,
    as: 'tankVolume',
    meaning: 'all the water that circulates, with the tank’s',
  },
  waterOut: {
    kind: 'volume',
    ...positive,
    default: 0,
    source: 'none: no water is let out unless you give it',
    meaning: 'water let out and replaced a day, besides slurry and evaporation',
  },
  sourceNitrate: {
    kind: 'concentration',
    ...positive,
    default: 0,
    source: 'none: test your own source water',
    meaning: 'nitrate as N in the water that replaces what is let out',
  },
  stockingLimit: {
    kind: 'stocking',
    above: 0,
    default: 'coefficient',
    decided: true,
    meaning: 'highest stocking allowed',
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
    meaning: 'share of the solids in the water that decays a day; can exceed 1',
  },
  feedPhosphorus: { kind: 'share', format: 'share', default: 'coefficient', meaning: 'phosphorus as P in the feed' },
  conversion: {
    kind: 'number',
    above: 0,
    atMost: 20,
    format: 'two',
    meaning: 'feed per gain in mass, dead fish included',
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
    meaning: 'highest total ammonia nitrogen allowed in the tank',
  },
  unionizedAmmoniaLimit: {
    kind: 'concentration',
    above: 0,
    name: 'un-ionized ammonia limit',
    species: ({ unionized }) => unionized,
    default: 'coefficient',
    decided: true,
    meaning: 'highest un-ionized ammonia nitrogen allowed in the tank',
  },
  carbonDioxideLimit: {
    kind: 'concentration',
    above: 0,
    species: ({ carbonDioxide }) => carbonDioxide,
    default: 'coefficient',
    decided: true,
    meaning: 'highest carbon dioxide allowed in the tank',
  },
  solidsLimit: {
    kind: 'concentration',
    above: 0,
    default: 'coefficient',
    decided: true,
    meaning: 'highest suspended solids allowed in the tank',
  },
  oxygenIn: { kind: 'concentration', above: 0, meaning: 'oxygen in water that enters the tank' },
  oxygenOut: { kind: 'concentration', above: 0, meaning: 'oxygen in water that leaves the tank' },
  oxygenAtPowerFailure: {
    kind: 'concentration',
    above: 0,
    default: 'coefficient',
    meaning: 'oxygen in the tank when pump and air stop',
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
      'share of the carbon dioxide above equilibrium with air that one pass removes; carbon dioxide is not checked without it',
  },
  passiveDenitrification: {
    kind: 'share',
    format: 'share',
    default: 'coefficient',
    meaning: 'share of the nitrogen fed that denitrifies in sludge and slime',
  },
  pumpFlow: { kind: 'flow', ...positive, equipment: true, meaning: 'flow through tank, drums and filter' },
  airSupply: { kind: 'transfer', ...positive, equipment: true, meaning: 'rated oxygen transfer of the aerators' },
  settler: settlerInput,
  drumDiameter: { kind: 'dimension', above: 0, meaning: 'inside diameter of a settling drum' },
  drums: { kind: 'count', whole: true, equipment: true, meaning: 'settling drums side by side' },
  overflowLimit: {
    kind: 'loading',
    above: 0,
    default: 'coefficient',
    decided: true,
    meaning: 'highest overflow rate allowed in a drum',
  },
  medianSettling: {
    kind: 'settling',
    above: 0,
    default: 'coefficient',
    meaning: 'settling velocity that half of the settleable solids exceed',
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
    meaning: 'share of the solids reaching the pads that they remove in one pass',
  },
  media: mediaInput,
  mediaVolume: { kind: 'bulk', ...positive, equipment: true, meaning: 'media of a separate biofilter' },
  nitrification: {
    kind: 'areal rate',
    above: 0,
    default: 'coefficient',
    meaning: 'nitrogen nitrified a day per unit of media surface at 20 °C',
  },
  filterReserve: {
    kind: 'share',
    format: 'share',
    atMost: 10,
    default: 'coefficient',
    decided: true,
    meaning: 'extra media beyond what the ammonia needs',
  },
  bedArea: { kind: 'area', ...positive, equipment: true, meaning: 'area of the plant beds' },
  bedCapture: {
    kind: 'share',
    format: 'share',
    default: 'coefficient',
    meaning: 'share of the solids in the whole flow that gravel beds remove in one pass',
  },
  plantUptake: {
    kind: 'areal rate',
    ...positive,
    default: 'coefficient',
    meaning: 'nitrogen that plants take up a day per unit of bed',
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
    meaning: 'share of nitrogen that plants can use this season',
  },
  slurrySolids: { ...share, default: 'coefficient', meaning: 'dry solids in the slurry drawn off, by mass' },
  gardenNeed: {
    kind: 'application',
    above: 0,
    default: 'coefficient',
    decided: true,
    meaning: 'nitrogen that the garden needs a year',
  },
  phosphateNeed: {
    kind: 'application',
    above: 0,
    default: 'coefficient',
    decided: true,
    meaning: 'P2O5 that the garden needs a year',
  },
  power: { kind: 'power', ...positive, meaning: 'power of pumps and air, day and night' },
  powerPrice: { kind: 'price of energy', format: 'price', ...positive, meaning: 'price of electricity' },
  feedPrice: { kind: 'price of mass', format: 'money', ...positive, meaning: 'price of feed' },
  nitrogenPrice: { kind: 'price of mass', format: 'money', ...positive, meaning: 'price of nitrogen in fertilizer' },
  phosphatePrice: { kind: 'price of mass', format: 'money', ...positive, meaning: 'price of P2O5 in fertilizer' },
  potashPrice: { kind: 'price of mass', format: 'money', ...positive, meaning: 'price of K2O in fertilizer' },
} as const satisfies Readonly<Record<keyof Scenario, NamedInput>>;

export type InputKey = keyof typeof scenarioInputs;

/** In the order of PLAN.INPUTS. */
export const inputKeys = Object.keys(scenarioInputs) as readonly InputKey[];
