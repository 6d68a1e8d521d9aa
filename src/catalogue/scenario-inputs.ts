import { alkalis } from '../formulas/alkali';
import { fishKinds } from '../formulas/water-species';
import type { NamedInputs } from './named-input';
import { cropInput, mediaInput, settlerInput } from './scenario-readers';
import { elevation, ph, salinity, temperature } from './water-arguments';

const share = { kind: 'share', above: 0 } as const;
const positive = { atLeast: 0 } as const;

/**
 * Everything that a scenario may say, in the order of the list. Coefficients and limits have defaults; equipment has
 * none, and `none` in its cell says that the stage is absent.
 */
export const scenarioInputs = {
  fishCount: { kind: 'count', above: 0, meaning: 'fish in the tank' },
  fishMass: { kind: 'fish', above: 0, meaning: 'mass of one fish' },
  feedingRate: { ...share, meaning: 'share of body mass fed a day' },
  feed: { kind: 'daily', above: 0, meaning: 'feed a day, in place of or against count, mass and feeding rate' },
  species: { choice: fishKinds, meaning: 'whose limits of temperature, pH and un-ionised ammonia hold' },
  protein: { ...share, default: 'protein', meaning: 'protein in the feed' },
  temperature: {
    ...temperature,
    default: 20,
    source: 'the temperature at which nitrification is stated',
    meaning: 'of the water, usual',
  },
  coldestWater: {
    ...temperature,
    as: 'temperature',
    meaning: 'coldest that the water gets: nitrification is figured at it',
  },
  hottestWater: {
    ...temperature,
    as: 'temperature',
    meaning: 'hottest that the water gets: oxygen and un-ionised ammonia are figured at it',
  },
  ph: { ...ph, name: 'pH', meaning: 'of the water, usual' },
  highestPh: {
    ...ph,
    name: 'highest pH',
    as: 'ph',
    meaning: 'highest that pH gets: un-ionised ammonia is figured at it',
  },
  salinity: { ...salinity, source: 'fresh water' },
  elevation: { ...elevation, source: 'sea level' },
  alkali: {
    choice: alkalis,
    default: 'sodium bicarbonate',
    source: 'mild and easily had: common practice, no source',
    meaning: 'what restores alkalinity, by its chemical name',
  },
  alkaliPurity: { ...share, default: 'alkali purity', meaning: 'share of the alkali in what is bought' },
  tankVolume: { kind: 'volume', ...positive, equipment: true, meaning: 'water with fish in it' },
  densestStocking: { kind: 'stocking', above: 0, default: 'densest stocking', meaning: 'densest that fish may stand' },
  solidsShare: { ...share, default: 'solids share', meaning: 'dry suspended solids per feed' },
  settleableShare: { kind: 'share', default: 'settleable share', meaning: 'share of solids that settles at all' },
  ammoniaLimit: {
    kind: 'concentration',
    above: 0,
    default: 'ammonia limit',
    meaning: 'total ammonia nitrogen that the tank may hold',
  },
  solidsLimit: {
    kind: 'concentration',
    above: 0,
    default: 'solids limit',
    meaning: 'suspended solids that the tank may hold',
  },
  oxygenIn: { kind: 'concentration', above: 0, meaning: 'oxygen in water that enters the tank' },
  oxygenOut: { kind: 'concentration', above: 0, meaning: 'oxygen in water that leaves the tank' },
  oxygenAtStop: {
    kind: 'concentration',
    above: 0,
    default: 'oxygen at stop',
    meaning: 'oxygen kept in the tank, there when pump and air stop',
  },
  oxygenFloor: {
    kind: 'concentration',
    ...positive,
    default: 'oxygen floor',
    meaning: 'oxygen at which fish are in danger',
  },
  oxygenPeak: {
    kind: 'number',
    atLeast: 1,
    atMost: 10,
    default: 'oxygen peak',
    meaning: 'worst hour’s oxygen over the mean of the day',
  },
  removal: { ...share, default: 'removal', meaning: 'share of ammonia taken out in one pass' },
  pumpFlow: { kind: 'flow', ...positive, equipment: true, meaning: 'flow through tank, drums and filter' },
  airSupply: { kind: 'transfer', ...positive, equipment: true, meaning: 'oxygen transfer as the aerators are rated' },
  settler: settlerInput,
  drumDiameter: { kind: 'dimension', above: 0, meaning: 'inside diameter of a settling drum' },
  drums: { kind: 'count', whole: true, equipment: true, meaning: 'settling drums side by side' },
  overflowLimit: {
    kind: 'loading',
    above: 0,
    default: 'overflow limit',
    meaning: 'fastest that water may rise in a drum',
  },
  medianSettling: {
    kind: 'settling',
    above: 0,
    default: 'median settling',
    meaning: 'velocity that half of what settles exceeds',
  },
  settlingSpread: {
    kind: 'number',
    atLeast: 1,
    atMost: 100,
    default: 'settling spread',
    meaning: 'geometric standard deviation of settling velocity',
  },
  pads: { kind: 'count', whole: true, equipment: true, meaning: 'filter pads' },
  padArea: { kind: 'area', above: 0, meaning: 'area of one pad' },
  padHolding: { kind: 'holding', above: 0, default: 'pad holding', meaning: 'dry solids that a pad holds' },
  padCapture: { ...share, default: 'pad capture', meaning: 'share that pads take of what the settler passes on' },
  media: mediaInput,
  mediaVolume: { kind: 'bulk', ...positive, equipment: true, meaning: 'media of a separate biofilter' },
  nitrification: {
    kind: 'areal rate',
    above: 0,
    default: 'nitrification',
    meaning: 'nitrogen nitrified a day on a unit of media surface at 20 °C',
  },
  filterReserve: {
    kind: 'share',
    atMost: 10,
    default: 'filter reserve',
    meaning: 'media on top of what ammonia needs',
  },
  bedArea: { kind: 'area', ...positive, equipment: true, meaning: 'plant beds' },
  crop: cropInput,
  bedDepth: { kind: 'dimension', above: 0, default: 'bed depth', meaning: 'depth of gravel in the beds' },
  bedHolding: { kind: 'bed holding', above: 0, default: 'bed holding', meaning: 'dry solids that gravel holds' },
  nitrogenShare: { kind: 'share', default: 'nitrogen share', meaning: 'nitrogen, of dry solids' },
  phosphorusShare: { kind: 'share', default: 'phosphorus share', meaning: 'phosphorus as P, of dry solids' },
  potassiumShare: { kind: 'share', default: 'potassium share', meaning: 'potassium as K, of dry solids' },
  availableNitrogen: {
    kind: 'share',
    default: 'available nitrogen',
    meaning: 'share of nitrogen that works this season',
  },
  slurrySolids: { ...share, default: 'slurry solids', meaning: 'dry solids in what is drawn off, by mass' },
  gardenNeed: {
    kind: 'application',
    above: 0,
    default: 'garden need',
    meaning: 'nitrogen that the garden wants a year',
  },
  phosphateNeed: {
    kind: 'application',
    above: 0,
    default: 'phosphate need',
    meaning: 'P2O5 that the garden wants a year',
  },
  power: { kind: 'power', ...positive, meaning: 'electrical power of pumps and air, day and night' },
  powerPrice: { kind: 'price of energy', ...positive, meaning: 'price of electricity' },
  feedPrice: { kind: 'price of mass', ...positive, meaning: 'price of feed' },
  nitrogenPrice: { kind: 'price of mass', ...positive, meaning: 'price of nitrogen in fertiliser' },
  phosphatePrice: { kind: 'price of mass', ...positive, meaning: 'price of P2O5 in fertiliser' },
  potashPrice: { kind: 'price of mass', ...positive, meaning: 'price of K2O in fertiliser' },
} as const satisfies NamedInputs;
