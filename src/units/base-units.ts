/**
 * The units that others are composed of, each as an exact ratio to SI.
 *
 * Sources: international yard and pound agreement of 1959 (inch 0.0254 m, pound 0.45359237 kg); US gallon 231 in3,
 * imperial gallon 4.54609 L, acre 4840 yd2, short ton 2000 lb (NIST Special Publication 811, appendix B); standard
 * gravity 9.80665 m/s2; conventional millimetre of mercury 13.5951 x 9.80665 Pa, inch of mercury 25.4 of those;
 * mechanical horsepower 550 ft lbf/s. A year is 365 days and a month a twelfth of it.
 */
export interface BaseUnit {
  readonly symbol: string;
  readonly numerator: number;
  readonly denominator: number;
  readonly dimensions: number;
}

/** Exponents of length, mass, time and angle in one number, so that multiplying units adds it. */
const dimensions = (length: number, mass = 0, time = 0, angle = 0) => length + 20 * mass + 400 * time + 8000 * angle;

const LENGTH = dimensions(1);
const AREA = dimensions(2);
const VOLUME = dimensions(3);
const MASS = dimensions(0, 1);
const TIME = dimensions(0, 0, 1);
const PRESSURE = dimensions(-1, 1, -2);
const ENERGY = dimensions(2, 1, -2);
const POWER = dimensions(2, 1, -3);
const ANGLE = dimensions(0, 0, 0, 1);

/** 45359237 x 980665: a pound-force in units of 1e-13 N. */
const POUND_FORCE = 44482216152605;

/** Symbol, numerator, denominator, dimensions; looked up in lower case, so the symbols must differ in lower case too. */
export const baseUnits: readonly (readonly [string, number, number, number])[] = [
  ['m', 1, 1, LENGTH],
  ['mm', 1, 1000, LENGTH],
  ['cm', 1, 100, LENGTH],
  ['km', 1000, 1, LENGTH],
  ['µm', 1, 1e6, LENGTH],
  ['in', 127, 5000, LENGTH],
  ['ft', 381, 1250, LENGTH],
  ['yd', 1143, 1250, LENGTH],
  ['ha', 10000, 1, AREA],
  ['acre', 40468564224, 1e7, AREA],
  ['L', 1, 1000, VOLUME],
  ['mL', 1, 1e6, VOLUME],
  ['gal', 473176473, 125e9, VOLUME],
  ['qt', 473176473, 5e11, VOLUME],
  ['pt', 473176473, 1e12, VOLUME],
  ['fl oz', 473176473, 16e12, VOLUME],
  ['imp gal', 454609, 1e8, VOLUME],
  ['kg', 1, 1, MASS],
  ['g', 1, 1000, MASS],
  ['mg', 1, 1e6, MASS],
  ['µg', 1, 1e9, MASS],
  ['t', 1000, 1, MASS],
  ['lb', 45359237, 1e8, MASS],
  ['oz', 45359237, 16e8, MASS],
  ['short ton', 90718474, 1e5, MASS],
  ['s', 1, 1, TIME],
  ['min', 60, 1, TIME],
  ['h', 3600, 1, TIME],
  ['d', 86400, 1, TIME],
  ['weeks', 604800, 1, TIME],
  ['months', 2628000, 1, TIME],
  ['years', 31536000, 1, TIME],
  ['Pa', 1, 1, PRESSURE],
  ['hPa', 100, 1, PRESSURE],
  ['kPa', 1000, 1, PRESSURE],
  ['bar', 1e5, 1, PRESSURE],
  ['mbar', 100, 1, PRESSURE],
  ['atm', 101325, 1, PRESSURE],
  ['psi', POUND_FORCE, 400000 * 127 * 127, PRESSURE],
  ['mmHg', 133322387415, 1e9, PRESSURE],
  ['inHg', 133322387415 * 127, 5e9, PRESSURE],
  ['cP', 1, 1000, PRESSURE + TIME],
  ['J', 1, 1, ENERGY],
  ['Wh', 3600, 1, ENERGY],
  ['kWh', 3.6e6, 1, ENERGY],
  ['W', 1, 1, POWER],
  ['kW', 1000, 1, POWER],
  ['hp', POUND_FORCE * 11 * 381, 25e13, POWER],
  ['degrees', Math.PI, 180, ANGLE],
  ['rad', 1, 1, ANGLE],
];

/** Other names in lower case; a plural s and the words milli, centi, kilo, micro are taken off before looking here. */
const names: Readonly<Record<string, string>> = {
  metre: 'm',
  meter: 'm',
  inch: 'in',
  inche: 'in',
  '"': 'in',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  yard: 'yd',
  um: 'µm',
  micron: 'µm',
  hectare: 'ha',
  ac: 'acre',
  litre: 'l',
  liter: 'l',
  ltr: 'l',
  gallon: 'gal',
  quart: 'qt',
  pint: 'pt',
  gram: 'g',
  gramme: 'g',
  ug: 'µg',
  mcg: 'µg',
  kilo: 'kg',
  tonne: 't',
  pound: 'lb',
  ounce: 'oz',
  'fluid ounce': 'fl oz',
  'imp gallon': 'imp gal',
  second: 's',
  sec: 's',
  minute: 'min',
  hour: 'h',
  hr: 'h',
  day: 'd',
  week: 'weeks',
  wk: 'weeks',
  month: 'months',
  mo: 'months',
  year: 'years',
  yr: 'years',
  pascal: 'pa',
  atmosphere: 'atm',
  watt: 'w',
  horsepower: 'hp',
  centipoise: 'cp',
  joule: 'j',
  '°': 'degrees',
  degree: 'degrees',
  deg: 'degrees',
  radian: 'rad',
};

const bases = new Map<string, BaseUnit>(
  baseUnits.map(([symbol, numerator, denominator, dimension]) => [
    symbol.toLowerCase(),
    { symbol, numerator, denominator, dimensions: dimension },
  ]),
);

const prefixes: Readonly<Record<string, string>> = { milli: 'm', centi: 'c', kilo: 'k', micro: 'µ' };

const symbols: ReadonlyMap<string, string> = new Map(Object.entries(names));

function findBase(word: string): BaseUnit | undefined {
  return bases.get(word) ?? bases.get(symbols.get(word) ?? '');
}

/** The base unit of a name in lower case, singular or plural, short or long. */
export function baseUnit(word: string): BaseUnit | undefined {
  const found = findBase(word) ?? (word.endsWith('s') ? findBase(word.slice(0, -1)) : undefined);
  if (found) return found;
  const [, prefix = '', stem = ''] = /^(milli|centi|kilo|micro)(.+)$/.exec(word) ?? [];
  const whole = stem === '' ? undefined : baseUnit(stem);
  return whole && bases.get(`${prefixes[prefix]}${whole.symbol.toLowerCase()}`);
}
