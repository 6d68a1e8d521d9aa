import { type Kind, kindRows, kinds } from './kinds';
import { composeUnit, type Measure, tidyUnit } from './unit-text';

/** Units that mean something in one kind only; keyed by tidied text. */
type Named = Readonly<Record<string, Measure>>;

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
const degreeOfHardness = named('dKH', 1000.869, 56077.4);

/**
 * Molar masses 100.0869 g/mol (CaCO3) and 56.0774 g/mol (CaO): a milliequivalent is half a millimole of CaCO3, a German
 * degree of carbonate hardness 10 mg/L of CaO. Specific gravity is against 1000 kg/m3. The three salinities are one number.
 */
const namedUnits: Partial<Record<Kind, Named>> = {
  temperature: {
    '°c': celsius,
    c: celsius,
    celsius,
    '°celsius': celsius,
    centigrade: celsius,
    '°centigrade': celsius,
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
    ppm: partsPerMillion,
    'ppm as caco3': partsPerMillion,
    'ppm caco3': partsPerMillion,
    'meq/l': named('meq/L', 100.0869, 2000),
    dkh: degreeOfHardness,
    '°dkh': degreeOfHardness,
    '°kh': degreeOfHardness,
    kh: degreeOfHardness,
  },
  salinity: { 'g/kg': named('g/kg'), ppt: named('ppt'), psu: named('psu'), '‰': named('ppt') },
  density: { sg: named('SG', 1000), s·g: named('SG', 1000), 'specific gravity': named('SG', 1000) },
  share: { '%': named('%', 1, 100) },
};

const NONE = named('');

const dimensionsOf = new Map<Kind, number>();
for (const kind of kinds) {
  const measure = composeUnit(kindRows[kind].metric);
  if (measure && kind !== 'salinity') dimensionsOf.set(kind, measure.dimensions);
}
dimensionsOf.set('alkalinity', dimensionsOf.get('concentration')!);

/** Kinds that have no unit to choose or to write behind a number. */
export const unitless: ReadonlySet<Kind> = new Set(kinds.filter((kind) => kindRows[kind].metric === ''));

/** The units listed for a kind, its two profile units first. */
export function listedUnits(kind: Kind): readonly string[] {
  const { metric, US, also } = kindRows[kind];
  return [...new Set([metric, US, ...also])].filter((symbol) => symbol !== '');
}

/** The unit that a text names where a quantity of this kind is expected; undefined where it is no unit of the kind. */
export function unitOfKind(kind: Kind, text: string): Measure | undefined {
  const tidy = tidyUnit(text);
  if (tidy === '') return kindRows[kind].metric === '' ? NONE : undefined;
  const own = namedUnits[kind];
  if (own && Object.hasOwn(own, tidy)) return own[tidy];
  const composed = composeUnit(text);
  if (!composed || composed.dimensions !== dimensionsOf.get(kind)) return undefined;
  const listed = listedUnits(kind).find((symbol) => symbol === text || tidyUnit(symbol) === tidy);
  return { ...composed, symbol: listed ?? sameSize(kind, composed) ?? composed.symbol };
}

function sameSize(kind: Kind, unit: Measure): string | undefined {
  return listedUnits(kind).find((symbol) => {
    const other = composeUnit(symbol);
    return (
      other?.dimensions === unit.dimensions &&
      other.numerator * unit.denominator === unit.numerator * other.denominator &&
      !symbol.includes('m3/m2')
    );
  });
}

/** The first kind that lists the unit, or else that has its dimensions; undefined where nothing is measured in it. */
export function kindOfUnit(text: string): Kind | undefined {
  const tidy = tidyUnit(text);
  return (
    kinds.find((kind) => listedUnits(kind).some((symbol) => tidyUnit(symbol) === tidy)) ??
    kinds.find((kind) => !/^[cfk]$/.test(tidy) && unitOfKind(kind, text) !== undefined)
  );
}
