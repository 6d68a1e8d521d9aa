import { type Kind, kindRows, kinds } from './kinds';
import { composeUnit, type Measure, tidyUnit } from './unit-text';

const named = (symbol: string, numerator = 1, denominator = 1, shift = 0): Measure => ({
  symbol,
  numerator,
  denominator,
  shift,
  dimensions: 0,
});

const celsius = named('°C');
const fahrenheit = named('°F', 5, 9, -32);
const kelvin = named('K', 1, 1, -273.15);
const partsPerMillion = named('ppm', 1, 1000);
const asCarbonate = named('mg/L as CaCO3', 1, 1000);
const carbonateHardness = named('dKH', 1000.869, 56077.4);
const specificGravity = named('SG', 1000);
const perThousand = named('ppt');

/**
 * Units that mean something in one kind only, by tidied text.
 *
 * A milliequivalent is half a millimole of CaCO3 (100.0869 g/mol), a German degree of carbonate hardness 10 mg/L of CaO
 * (56.0774 g/mol). A specific gravity is against 1000 kg/m3. The three salinities are one number. Parts per million are
 * of dilute water, 1 kg/L.
 */
const namedUnits: Partial<Record<Kind, Readonly<Record<string, Measure>>>> = {
  temperature: {
    '°c': celsius,
    c: celsius,
    celsius,
    '°celsius': celsius,
    centigrade: celsius,
    '°f': fahrenheit,
    f: fahrenheit,
    fahrenheit,
    '°fahrenheit': fahrenheit,
    k: kelvin,
    kelvin,
    kelvins: kelvin,
  },
  concentration: { ppm: partsPerMillion, ppb: named('ppb', 1, 1e6) },
  alkalinity: {
    'mg/l as caco3': asCarbonate,
    'mg/l caco3': asCarbonate,
    'mg caco3/l': asCarbonate,
    'mg/l': asCarbonate,
    ppm: partsPerMillion,
    'ppm as caco3': partsPerMillion,
    'ppm caco3': partsPerMillion,
    'meq/l': named('meq/L', 100.0869, 2000),
    dkh: carbonateHardness,
    '°dkh': carbonateHardness,
    '°kh': carbonateHardness,
  },
  salinity: { 'g/kg': named('g/kg'), ppt: perThousand, psu: named('psu'), '‰': perThousand },
  density: { sg: specificGravity, s·g: specificGravity, 'specific gravity': specificGravity },
  share: { '%': named('%', 1, 100) },
};

const dimensionsOf = new Map<Kind, number | undefined>();
for (const kind of kinds) {
  const measure = composeUnit(tidyUnit(kindRows[kind].metric));
  if (measure && kind !== 'salinity') dimensionsOf.set(kind, measure.dimensions);
}
dimensionsOf.set('alkalinity', dimensionsOf.get('concentration'));

const bareNumber = named('');

/** True for kinds that have no unit to choose or to write after a number. */
export function isUnitless(kind: Kind): boolean {
  return kindRows[kind].metric === '';
}

/** The units listed for a kind, its two profile units first. */
export function listedUnits(kind: Kind): readonly string[] {
  const { metric, US, also } = kindRows[kind];
  return [...new Set([metric, US, ...also])].filter((symbol) => symbol !== '');
}

/** The unit that a text names where a quantity of this kind is expected; undefined where it is no unit of the kind. */
export function unitOfKind(kind: Kind, text: string): Measure | undefined {
  const tidy = tidyUnit(text);
  if (tidy === '') return isUnitless(kind) ? bareNumber : undefined;
  const own = namedUnits[kind];
  if (own && Object.keys(own).includes(tidy)) return own[tidy];
  const composed = composeUnit(tidy);
  return composed?.dimensions === dimensionsOf.get(kind) ? composed : undefined;
}

/** The symbol that lists and headings use for a unit of the kind: a listed one of the same size before its own. */
export function symbolOfKind(kind: Kind, text: string, unit: Measure): string {
  const tidy = tidyUnit(text);
  const listed = listedUnits(kind);
  return (
    listed.find((symbol) => tidyUnit(symbol) === tidy) ??
    listed.find((symbol) => {
      const other = unitOfKind(kind, symbol);
      if (other === undefined) return false;
      return other.shift === unit.shift && other.numerator * unit.denominator === unit.numerator * other.denominator;
    }) ??
    unit.symbol
  );
}

/** The first kind that lists the unit, or else that has its dimensions; undefined where nothing is measured in it. */
export function kindOfUnit(text: string): Kind | undefined {
  const tidy = tidyUnit(text);
  if (tidy === '' || /^[cfk]$/.test(tidy)) return undefined;
  return (
    kinds.find((kind) => listedUnits(kind).some((symbol) => tidyUnit(symbol) === tidy)) ??
    kinds.find((kind) => unitOfKind(kind, text) !== undefined)
  );
}
