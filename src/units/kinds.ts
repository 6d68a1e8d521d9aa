/**
 * What each kind of quantity is measured in: the whole table of units that the worksheet functions read and give.
 *
 * Every kind has one SI base that formulas use: m, m2, m3, kg, kg/s, kg/m3, m3/s, m/s, Pa·s, Pa, W, kg/m2, kg/m2/s,
 * 1/m, price a kg, price a joule, rad, s. Temperature is in °C, salinity in g/kg, alkalinity in kg/m3 as CaCO3,
 * shares run from 0 to 1, dates are serial numbers.
 */
interface KindRow {
  readonly metric: string;
  readonly US: string;
  /** Further units that stand in lists and messages; any other unit of the same dimensions is read too. */
  readonly also: readonly string[];
}

const row = (metric: string, US: string, ...also: readonly string[]): KindRow => ({ metric, US, also });

const table = {
  dimension: row('mm', 'in', 'cm', 'm', 'ft', 'yd'),
  run: row('m', 'ft', 'mm', 'cm', 'in', 'km'),
  particle: row('mm', 'mm', 'µm', 'in'),
  area: row('m2', 'ft2', 'cm2', 'in2', 'acre', 'ha'),
  volume: row('L', 'gal', 'mL', 'm3', 'in3', 'ft3', 'yd3', 'qt', 'imp gal'),
  bulk: row('L', 'ft3', 'm3', 'yd3', 'gal'),
  mass: row('kg', 'lb', 'g', 'oz', 't', 'short ton'),
  fish: row('g', 'oz', 'kg', 'lb'),
  portion: row('g', 'oz', 'mg', 'kg', 'lb'),
  daily: row('kg/d', 'lb/d', 'g/d', 'oz/d'),
  transfer: row('kg/h', 'lb/h', 'g/h'),
  stocking: row('kg/m3', 'lb/gal', 'lb/ft3'),
  flow: row('L/min', 'gpm', 'L/s', 'L/h', 'm3/h', 'gph', 'ft3/s'),
  'air flow': row('L/min', 'cfm', 'm3/h'),
  loading: row('m/h', 'gpm/ft2', 'm/d', 'mm/s', 'm3/m2/h', 'm3/m2/d', 'gpd/ft2'),
  velocity: row('m/s', 'ft/s', 'ft/min'),
  settling: row('mm/s', 'ft/min', 'cm/s', 'm/h', 'in/min'),
  concentration: row('mg/L', 'mg/L', 'ppm', 'g/L', 'µg/L'),
  alkalinity: row('mg/L as CaCO3', 'mg/L as CaCO3', 'meq/L', 'dKH', 'ppm'),
  salinity: row('g/kg', 'g/kg', 'ppt', 'psu'),
  temperature: row('°C', '°F', 'K'),
  density: row('kg/m3', 'lb/ft3', 'g/cm3', 'SG'),
  viscosity: row('mPa·s', 'mPa·s', 'cP', 'Pa·s'),
  pressure: row('kPa', 'psi', 'bar', 'atm', 'mmHg', 'inHg'),
  power: row('W', 'W', 'kW', 'hp'),
  holding: row('g/m2', 'oz/ft2', 'kg/m2', 'lb/ft2'),
  'bed holding': row('kg/m3', 'lb/ft3', 'g/L'),
  'areal rate': row('g/m2/d', 'g/m2/d', 'oz/ft2/d', 'lb/ft2/d', 'g/ft2/d'),
  application: row('g/m2', 'lb/1000 ft2', 'kg/ha', 'lb/acre', 'oz/100 ft2'),
  surface: row('m2/m3', 'ft2/ft3'),
  'price of mass': row('a kg', 'a lb'),
  'price of energy': row('a kWh', 'a kWh'),
  angle: row('degrees', 'degrees', 'rad'),
  minutes: row('minutes', 'minutes', 's', 'h', 'd'),
  hours: row('hours', 'hours', 's', 'min', 'd'),
  days: row('days', 'days', 'min', 'h', 'months'),
  months: row('months', 'months', 'h', 'd', 'years'),
  share: row('', '', '%'),
  count: row('', ''),
  money: row('', ''),
  number: row('', ''),
  date: row('', ''),
  choice: row('', ''),
} satisfies Record<string, KindRow>;

export type Kind = keyof typeof table;

export const kindRows: Readonly<Record<Kind, KindRow>> = table;

export const kinds = Object.keys(table) as readonly Kind[];

export function isKind(text: string): text is Kind {
  return (kinds as readonly string[]).includes(text);
}
