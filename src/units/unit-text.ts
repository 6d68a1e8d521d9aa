import { baseUnit } from './base-units';

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
  mps: 'm/s',
};

/** Brings the many ways to write a unit into one: lower case, `/` for per, `m2` for square metres. */
export function tidyUnit(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/μ/g, 'µ')
    .replace(/\bu\.?s\.?(?= ?(?:gal|qt|quart|pint|pt|fl))|\(u\.?s\.?\)/g, '')
    .replace(/,(?=\d{3})/g, '')
    .replace(/([a-zµ])\.(?=[a-z])/g, '$1·')
    .replace(/([a-z])\.(?![a-z])/g, '$1')
    .replace(/\b(?:degrees?|deg)\b ?/g, '°')
    .replace(/° (?=[a-z])/g, '°')
    .replace(/\b(?:percent|per cent)\b/g, '%')
    .replace(/ ?\b(?:per|a|an|each)\b ?/g, '/')
    .replace(/ ?([/·]) ?/g, '$1')
    .replace(/\b(?:square|sq) ?([a-z]+)/g, '$12')
    .replace(/\b(?:cubic|cu) ?([a-z]+)/g, '$13')
    .replace(/\b([cm]?m)pa[· -]?s\b/g, '$1pa·s')
    .replace(/\bpa[ -]s\b/g, 'pa·s')
    .replace(/\bmpa·s\b/g, 'cp')
    .trim();
}

const cache = new Map<string, Measure | undefined>();

/** Composes a unit such as `lb/1000 ft2` from base units; undefined where a part of it is not known. */
export function composeUnit(text: string): Measure | undefined {
  if (cache.has(text)) return cache.get(text);
  const measure = compose(text);
  if (cache.size > 500) cache.clear();
  cache.set(text, measure);
  return measure;
}

function compose(text: string): Measure | undefined {
  const tidy = tidyUnit(text).replace(/[a-z]+/g, (word) =>
    Object.hasOwn(writtenOut, word) ? writtenOut[word]! : word,
  );
  if (tidy === '' || tidy.length > 60) return undefined;
  const parts = tidy.split(/([/·])/);
  let numerator = 1;
  let denominator = 1;
  let dimensions = 0;
  let symbol = '';
  for (let i = 0; i < parts.length; i += 2) {
    const part = parts[i]!;
    if (i === 0 && part === '') continue;
    const [, factor = '1', word, power = '1'] = /^(10+(?= ?[a-z]))? ?(.*?)\^?(-?[123])?$/.exec(part) ?? [];
    const base = word === undefined ? undefined : baseUnit(word);
    if (!base) return undefined;
    const exponent = Number(power) * (i > 0 && parts[i - 1] === '/' ? -1 : 1);
    const times = Math.abs(exponent);
    const up = base.numerator ** times * (times === 1 ? Number(factor) : Number(factor));
    const down = base.denominator ** times;
    numerator *= exponent > 0 ? up : down;
    denominator *= exponent > 0 ? down : up;
    dimensions += exponent * base.dimensions;
    symbol += `${i > 0 ? parts[i - 1] : ''}${factor === '1' ? '' : `${factor} `}${base.symbol}${power === '1' ? '' : power}`;
  }
  return { symbol, numerator, denominator, shift: 0, dimensions };
}
