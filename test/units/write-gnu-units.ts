/**
 * Writes gnu-units.ts, the factors that the units are checked against, by asking GNU units for each of them:
 * node src/command-line/run.cjs ../../test/units/write-gnu-units
 */
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';

const length = 'm';
const volume = 'm^3';
const massRate = 'kg/s';
const flow = 'm^3/s';
const speed = 'm/s';
const density = 'kg/m^3';
const areal = 'kg/m^2';

/** Our symbol, the same unit as GNU units writes it, the SI unit asked for. */
const asked: readonly (readonly [string, string, string])[] = [
  ['m', 'meter', length],
  ['mm', 'millimeter', length],
  ['cm', 'centimeter', length],
  ['km', 'kilometer', length],
  ['µm', 'micrometer', length],
  ['in', 'inch', length],
  ['ft', 'foot', length],
  ['yd', 'yard', length],
  ['m2', 'm^2', 'm^2'],
  ['ft2', 'ft^2', 'm^2'],
  ['cm2', 'cm^2', 'm^2'],
  ['in2', 'in^2', 'm^2'],
  ['acre', 'acre', 'm^2'],
  ['ha', 'hectare', 'm^2'],
  ['L', 'liter', volume],
  ['mL', 'milliliter', volume],
  ['m3', 'm^3', volume],
  ['in3', 'in^3', volume],
  ['ft3', 'ft^3', volume],
  ['yd3', 'yd^3', volume],
  ['gal', 'gallon', volume],
  ['qt', 'quart', volume],
  ['pt', 'pint', volume],
  ['fl oz', 'floz', volume],
  ['imp gal', 'brgallon', volume],
  ['kg', 'kilogram', 'kg'],
  ['g', 'gram', 'kg'],
  ['mg', 'milligram', 'kg'],
  ['µg', 'microgram', 'kg'],
  ['t', 'tonne', 'kg'],
  ['lb', 'pound', 'kg'],
  ['oz', 'ounce', 'kg'],
  ['short ton', 'shortton', 'kg'],
  ['kg/d', 'kg/day', massRate],
  ['g/d', 'g/day', massRate],
  ['lb/d', 'lb/day', massRate],
  ['oz/d', 'oz/day', massRate],
  ['kg/h', 'kg/hour', massRate],
  ['g/h', 'g/hour', massRate],
  ['lb/h', 'lb/hour', massRate],
  ['kg/m3', 'kg/m^3', density],
  ['lb/gal', 'lb/gallon', density],
  ['lb/ft3', 'lb/ft^3', density],
  ['g/cm3', 'g/cm^3', density],
  ['SG', 'g/cm^3', density],
  ['L/min', 'liter/minute', flow],
  ['L/s', 'liter/second', flow],
  ['L/h', 'liter/hour', flow],
  ['m3/h', 'm^3/hour', flow],
  ['gpm', 'gallon/minute', flow],
  ['gph', 'gallon/hour', flow],
  ['ft3/s', 'ft^3/second', flow],
  ['cfm', 'ft^3/minute', flow],
  ['m/h', 'm/hour', speed],
  ['m/d', 'm/day', speed],
  ['m/s', 'm/s', speed],
  ['mm/s', 'mm/s', speed],
  ['cm/s', 'cm/s', speed],
  ['ft/s', 'ft/s', speed],
  ['ft/min', 'ft/minute', speed],
  ['in/min', 'in/minute', speed],
  ['gpm/ft2', 'gallon/minute/ft^2', speed],
  ['gpd/ft2', 'gallon/day/ft^2', speed],
  ['m3/m2/h', 'm^3/m^2/hour', speed],
  ['m3/m2/d', 'm^3/m^2/day', speed],
  ['mg/L', 'mg/liter', density],
  ['g/L', 'g/liter', density],
  ['µg/L', 'microgram/liter', density],
  ['ppm', '1|1000000 kg/liter', density],
  ['ppb', '1|1000000000 kg/liter', density],
  ['mg/L as CaCO3', 'mg/liter', density],
  ['meq/L', '1|2 millimole (calcium + carbon + 3 oxygen) g/mol / liter', density],
  ['dKH', '10 * (calcium + carbon + 3 oxygen) / (calcium + oxygen) * mg / liter', density],
  ['g/kg', 'g/kg', 'g/kg'],
  ['ppt', '1|1000', 'g/kg'],
  ['psu', 'g/kg', 'g/kg'],
  ['mPa·s', 'millipascal second', 'Pa s'],
  ['Pa·s', 'pascal second', 'Pa s'],
  ['cP', 'centipoise', 'Pa s'],
  ['Pa', 'pascal', 'Pa'],
  ['hPa', 'hectopascal', 'Pa'],
  ['kPa', 'kilopascal', 'Pa'],
  ['psi', 'psi', 'Pa'],
  ['bar', 'bar', 'Pa'],
  ['mbar', 'millibar', 'Pa'],
  ['atm', 'atm', 'Pa'],
  ['mmHg', 'mmHg', 'Pa'],
  ['inHg', 'inHg', 'Pa'],
  ['W', 'watt', 'W'],
  ['kW', 'kilowatt', 'W'],
  ['hp', 'horsepower', 'W'],
  ['g/m2', 'g/m^2', areal],
  ['kg/m2', 'kg/m^2', areal],
  ['oz/ft2', 'oz/ft^2', areal],
  ['lb/ft2', 'lb/ft^2', areal],
  ['lb/1000 ft2', 'lb/(1000 ft^2)', areal],
  ['oz/100 ft2', 'oz/(100 ft^2)', areal],
  ['kg/ha', 'kg/hectare', areal],
  ['lb/acre', 'lb/acre', areal],
  ['g/m2/d', 'g/m^2/day', 'kg/m^2/s'],
  ['g/ft2/d', 'g/ft^2/day', 'kg/m^2/s'],
  ['oz/ft2/d', 'oz/ft^2/day', 'kg/m^2/s'],
  ['lb/ft2/d', 'lb/ft^2/day', 'kg/m^2/s'],
  ['m2/m3', 'm^2/m^3', '1/m'],
  ['ft2/ft3', 'ft^2/ft^3', '1/m'],
  ['a kg', '1/kg', '1/kg'],
  ['a lb', '1/lb', '1/kg'],
  ['a kWh', '1/(kilowatt hour)', '1/J'],
  ['a Wh', '1/(watt hour)', '1/J'],
  ['a J', '1/J', '1/J'],
  ['degrees', 'degree', 'radian'],
  ['rad', 'radian', 'radian'],
  ['s', 'second', 's'],
  ['min', 'minute', 's'],
  ['minutes', 'minute', 's'],
  ['h', 'hour', 's'],
  ['hours', 'hour', 's'],
  ['d', 'day', 's'],
  ['days', 'day', 's'],
  ['weeks', 'week', 's'],
  ['months', '365|12 day', 's'],
  ['years', '365 day', 's'],
  ['%', '1|100', '1'],
];

/** Temperatures, each in °C. */
const temperatures: readonly (readonly [string, string])[] = [
  ['68 °F', 'tempF(68)'],
  ['32 °F', 'tempF(32)'],
  ['-40 °F', 'tempF(-40)'],
  ['0 °F', 'tempF(0)'],
  ['98.6 °F', 'tempF(98.6)'],
  ['293.15 K', '293.15 K'],
  ['0 K', '0 K'],
  ['25 °C', 'tempC(25)'],
];

const ask = (have: string, want: string) =>
  execFileSync('units', ['--terse', '--digits', '15', have, want], { encoding: 'utf8' }).trim().split('\n')[0]!;

const version = execFileSync('units', ['--version'], { encoding: 'utf8' }).split('\n')[0];
const lines = asked.map(
  ([unit, have, want]) => `  [${[unit, have, want].map((text) => `'${text}'`).join(', ')}, ${ask(have, want)}],`,
);
const warm = temperatures.map(([text, have]) => `  ['${text}', ${ask(have, 'tempC')}],`);

writeFileSync(
  join('test', 'units', 'gnu-units.ts'),
  `/** Computed by ${version}, \`units --terse --digits 15 HAVE WANT\`; written by write-gnu-units.ts. */

/** Our unit, the unit asked for as GNU units writes it, the SI unit, the factor. */
export const gnuUnits: readonly (readonly [unit: string, have: string, want: string, factor: number])[] = [
${lines.join('\n')}
];

/** A temperature as we read it and in °C. */
export const gnuTemperatures: readonly (readonly [text: string, celsius: number])[] = [
${warm.join('\n')}
];
`,
);
