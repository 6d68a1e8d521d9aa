import { baseUnit } from './base-units';
import { tidyText } from './text';

/** A unit as an exact ratio to SI: si = (value + shift) * numerator / denominator. */
export interface Measure {
  readonly symbol: string;
  readonly numerator: number;
  readonly denominator: number;
  readonly shift: number;
  /** Exponents of length, mass, time and angle, packed in one number. */
  readonly dimensions: number;
}

/** Abbreviations written out, in lower case; each is replaced where it stands alone. */
const writtenOut: Readonly<Record<string, string>> = {
  gpm: 'gal/min',
  gph: 'gal/h',
  gpd: 'gal/d',
  cfm: 'ft3/min',
  cfs: 'ft3/s',
  lpm: 'l/min',
  lph: 'l/h',
  lps: 'l/s',
  fpm: 'ft/min',
  fps: 'ft/s',
  cc: 'cm3',
};

/** Each step brings one of the many ways to write a unit to `mg/l`, `ft2`, `°f`, `%`. The order matters. */
const steps: readonly (readonly [RegExp, string])[] = [
  [/\bu\.?s\.? ?(?=gal|qt|quart|pint|pt|fl)|\(u\.?s\.?\)/g, ''],
  [/\b(?:imperial|imp|uk)\b\.? ?(?=gal)|\b(?=gal\w*\.? ?\((?:imp|uk))/g, 'imp '],
  [/\((?:imp|imperial|uk)\.?\)/g, ''],
  [/,(?=\d{3})/g, ''],
  [/\b(?:square|sq)[. ]*([a-z]+)/g, '$12'],
  [/\b(?:cubic|cu)[. ]*([a-z]+)/g, '$13'],
  [/\b(?:degrees?|deg)\b\.? ?|\bdeg(?=[fc]\b)/g, '°'],
  [/° (?=[a-z])/g, '°'],
  [/([a-zµ])\.(?=[a-z])/g, '$1·'],
  [/([a-z]\d?)\.(?![a-z])/g, '$1'],
  [/\b(?:percent|per cent|pct)\b/g, '%'],
  [/\bkilowatt[ -]?hours?\b/g, 'kwh'],
  [/ ?\b(?:per|an?)\b ?/g, '/'],
  [/\/\(([a-z]+)(\d?)[· ]([a-z]+)\)/g, '/$1$2/$3'],
  [/ ?([/·]) ?/g, '$1'],
  [/ (?=[a-zµ]+\^?-\d)/g, '·'],
  [/\bmpa[· -]?s\b/g, 'cp'],
  [/\bpa[ -]s\b/g, 'pa·s'],
  [/^1\//, '/'],
];

/** In exact case these name a million times what they name in lower case, so they are not read at all. */
const millions = /^(?:M[Llg]$|MPa)/;

const tidied = new Map<string, string>();

/** Brings a unit to one spelling, in lower case: `/` for per, `ft2` for square feet. */
export function tidyUnit(text: string): string {
  let tidy = tidied.get(text);
  if (tidy !== undefined) return tidy;
  tidy = tidyText(text);
  if (!millions.test(tidy)) {
    tidy = tidy.toLowerCase();
    for (const [pattern, replacement] of steps) tidy = tidy.replace(pattern, replacement);
  }
  if (tidied.size > 1000) tidied.clear();
  tidied.set(text, tidy.trim());
  return tidy.trim();
}

const composed = new Map<string, Measure | undefined>();

/** Composes a tidied unit such as `lb/1000 ft2` from base units; undefined where a part of it is not known. */
export function composeUnit(tidy: string): Measure | undefined {
  if (composed.has(tidy)) return composed.get(tidy);
  const measure = compose(tidy);
  if (composed.size > 1000) composed.clear();
  composed.set(tidy, measure);
  return measure;
}

/** A power of ten, a name, an exponent: `1000 ft2`, `m^-3`. */
const factorPattern = /^(10+(?= ?[a-z]))? ?(\D+?)\^?(-?[123])?$/;

const inShort: ReadonlyMap<string, string> = new Map(Object.entries(writtenOut));

function compose(tidy: string): Measure | undefined {
  const parts = tidy.replace(/\b[a-z]+\b/g, (word) => inShort.get(word) ?? word).split(/([/·])/);
  let numerator = 1;
  let denominator = 1;
  let dimensions = 0;
  let symbol = '';
  for (const [i, part] of parts.entries()) {
    // Every second part is the sign between two units.
    if (i % 2 === 1) continue;
    if (i === 0 && parts[0] === '' && parts.length > 1) continue;
    const [, factor, name = '', power = '1'] = factorPattern.exec(part) ?? [];
    const base = baseUnit(name);
    if (!base) return undefined;
    const sign = i > 0 && parts[i - 1] === '/' ? -1 : 1;
    const exponent = Number(power) * sign;
    const up = base.numerator ** Math.abs(exponent);
    const down = base.denominator ** Math.abs(exponent);
    numerator *= (exponent > 0 ? up : down) * (factor && sign > 0 ? Number(factor) : 1);
    denominator *= (exponent > 0 ? down : up) * (factor && sign < 0 ? Number(factor) : 1);
    dimensions += exponent * base.dimensions;
    symbol += `${parts[i - 1] ?? ''}${factor ? `${factor} ` : ''}${base.symbol}${power === '1' ? '' : power}`;
  }
  return { symbol, numerator, denominator, shift: 0, dimensions };
}
