import { describe, expect, it } from 'vitest';
import { type Kind, kinds } from '../../src/units/kinds';
import { readProfile } from '../../src/units/profile';
import { Unreadable } from '../../src/units/unreadable';

function changed(text: string): Partial<Record<Kind, string>> {
  const profile = readProfile(text);
  const plain = readProfile(profile.name);
  return Object.fromEntries(
    kinds
      .filter((kind) => profile.units[kind].symbol !== plain.units[kind].symbol)
      .map((kind) => [kind, profile.units[kind].symbol]),
  );
}

describe('a profile', () => {
  it('does not care about case and spacing', () => {
    for (const text of ['US', 'us', ' Us ', 'U.S.']) expect(readProfile(text).name).toBe('US');
    for (const text of ['metric', 'METRIC', '\u00a0Metric']) expect(readProfile(text).name).toBe('metric');
  });

  it('gives each kind its unit', () => {
    const { units } = readProfile('US');
    expect(units.dimension.symbol).toBe('in');
    expect(units.volume.symbol).toBe('gal');
    expect(units.loading.symbol).toBe('gpm/ft2');
    expect(units.application.symbol).toBe('lb/1000 ft2');
    expect(units['price of mass'].symbol).toBe('a lb');
    expect(units.share.symbol).toBe('');
    expect(readProfile('metric').units.alkalinity.symbol).toBe('mg/L as CaCO3');
  });

  it('holds the same units in its index', () => {
    const profile = readProfile('US, flow L/min');
    for (const kind of kinds) expect(profile.index.get(kind)).toBe(profile.units[kind]);
  });

  it('is read once and then remembered', () => {
    expect(readProfile('US, flow L/s')).toBe(readProfile('US, flow L/s'));
  });

  it.each<[string, Partial<Record<Kind, string>>]>([
    ['US, flow L/min, temperature C', { flow: 'L/min', temperature: '°C' }],
    ['us,FLOW l/MIN ,Temperature  c', { flow: 'L/min', temperature: '°C' }],
    ['US, FLOW L/MIN, TEMPERATURE C', { flow: 'L/min', temperature: '°C' }],
    ['METRIC, VOLUME ML', { volume: 'mL' }],
    ['US; flow = L/min; volume: litres', { flow: 'L/min', volume: 'L' }],
    ['metric, air flow cfm', { 'air flow': 'cfm' }],
    ['US, bed holding kg/m3', { 'bed holding': 'kg/m3' }],
    ['US, areal rate lb/ft2/d', { 'areal rate': 'lb/ft2/d' }],
    ['metric, application lb/1,000 sq ft', { application: 'lb/1000 ft2' }],
    ['US, price of mass a kg', { 'price of mass': 'a kg' }],
    ['US, price of mass kg', { 'price of mass': 'a kg' }],
    ['US, volume imp gal', { volume: 'imp gal' }],
    ['US, loading gal/min/ft2', {}],
    ['metric, flow gallons per minute', { flow: 'gpm' }],
    ['metric, temperature °F,', { temperature: '°F' }],
    ['metric, flow m3/min', { flow: 'm3/min' }],
    ['metric, flow gpm, flow gpm', { flow: 'gpm' }],
  ])('%s changes the kinds that it names', (text, expected) => {
    expect(changed(text)).toEqual(expected);
  });

  it.each([
    ['US, daily kg/d', 'kg'],
    ['US, mass kg', 'kg'],
    ['US, transfer kg/h', 'kg'],
    ['US, mass kg, daily kg/day, transfer kg/h', 'kg'],
    ['US, daily g/d', 'g'],
    ['metric, daily oz/d', 'oz'],
    ['metric, mass short ton', 'short ton'],
  ])('%s sets mass, daily and transfer together', (text, mass) => {
    expect(changed(text)).toEqual({ mass, daily: `${mass}/d`, transfer: `${mass}/h` });
    const { units } = readProfile(text);
    expect(units.daily.scale * 86400).toBeCloseTo(units.mass.scale, 12);
    expect(units.transfer.scale * 3600).toBeCloseTo(units.mass.scale, 12);
  });
});

describe('a profile that is refused', () => {
  it.each<[unknown, string]>([
    [22.5, '22.5 is not a profile; put "US", "metric" or the cell SiltUnits first'],
    [0, '0 is not a profile; put "US", "metric" or the cell SiltUnits first'],
    [true, 'TRUE is not a profile; put "US", "metric" or the cell SiltUnits first'],
    [null, 'blank is not a profile; put "US", "metric" or the cell SiltUnits first'],
    [
      '',
      'blank is not a profile; put "US", "metric" or the cell SiltUnits first; exceptions may follow, as in "US, flow L/min, temperature C"',
    ],
    [
      'imperial',
      'imperial is not a profile; put "US", "metric" or the cell SiltUnits first; exceptions may follow, as in "US, flow L/min, temperature C"',
    ],
    [
      'US flow L/min',
      'US flow L/min is not a profile; put "US", "metric" or the cell SiltUnits first; exceptions may follow, as in "US, flow L/min, temperature C"',
    ],
    ['US, flow kg', 'kg is a mass; give a flow (L/min, gpm, L/s, L/h, m3/h, gph or ft3/s)'],
    ['US, flow', 'flow needs a unit after it; give a flow in L/min, gpm, L/s, L/h, m3/h, gph or ft3/s'],
    ['US, daily kg/h', 'kg/h is not a unit for daily in a profile; give kg/d, lb/d, g/d, oz/d, t/d or short ton/d'],
    [
      'US, transfer kg/d',
      'kg/d is not a unit for transfer in a profile; give kg/h, lb/h, g/h, oz/h, t/h or short ton/h',
    ],
    [
      'US, mass kg, daily g/d',
      'the profile has mass in kg and in g; keep one of them; mass, daily and transfer share one mass unit',
    ],
    ['US, flow L/min, flow L/s', 'the profile has flow in L/min and in L/s; keep one of them'],
    ['US, share %', 'share has no unit to choose; leave it out of the profile'],
    ['US, days h', 'days has no unit to choose; leave it out of the profile'],
  ])('%s says what is allowed', (given, message) => {
    expect(() => readProfile(given)).toThrow(new Unreadable(message));
  });

  it('names the kinds that are most like an unknown one', () => {
    expect(() => readProfile('US, flwo gpm')).toThrow(/^flwo gpm is not an exception to a profile; .* such as flow, /);
    expect(() => readProfile('US, airflow cfm')).toThrow(/such as air flow, /);
    expect(() => readProfile('US, flow furlongs')).toThrow(/^furlongs is not a unit that is read here; give a flow \(/);
  });
});
