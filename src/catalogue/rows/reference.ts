import { Refusal } from '../../formulas/refusal';
import { nearest } from '../../units/nearest';
import type { MixedCell, Quantity } from '../argument';
import { type Coefficient, coefficients } from '../coefficients/all';
import { define } from '../define';
import { textReader } from '../readers';

const topics = [...new Set(coefficients.map((one) => one.topic))].sort();

function coefficientNamed(key: string): Coefficient {
  const folded = key.toLowerCase().replace(/\s+/g, ' ').trim();
  const found = coefficients.find((one) => one.key.toLowerCase() === folded);
  if (found) return found;
  const near = nearest(
    key,
    coefficients.map((one) => one.key),
  );
  throw new Refusal('key', `"${key.slice(0, 40)}" is not in the list; nearest are ${near.join(', ')}`);
}

function figure(one: Coefficient, si: number | undefined): MixedCell {
  return si === undefined ? '' : { kind: one.kind, si };
}

export const referenceRows = [
  define({
    name: 'REF.VALUE',
    summary: 'The low, typical or high value of a coefficient that this add-in uses, in the profile’s unit.',
    arguments: {
      key: { ...textReader('a name from REF.LIST'), meaning: 'name of the coefficient, from REF.LIST' },
      which: { choice: ['typical', 'low', 'high'], default: 'typical', meaning: 'low, typical or high' },
    },
    result: { quantity: true },
    compute: ({ key, which }): Quantity => {
      const one = coefficientNamed(key);
      const si = one[which];
      if (si === undefined) {
        throw new Refusal('which', `no ${which} value is published for ${one.key}; use typical`, {
          reason: 'unavailable',
        });
      }
      return { kind: one.kind, si };
    },
    sources: ['Each coefficient names its own: see REF.LIST'],
    example: { formula: '=SILT.REF.VALUE("metric","ammonia factor")', gives: '0.092' },
  }),
  define({
    name: 'REF.LIST',
    summary: 'Every coefficient and default in the add-in, with its source and how it is known.',
    arguments: { topic: { choice: topics, optional: true, meaning: 'family, such as LOAD; all of them if left out' } },
    result: {
      rows: {
        key: { text: true },
        low: { mixed: true },
        typical: { mixed: true },
        high: { mixed: true },
        unit: { text: true },
        source: { text: true },
        howKnown: { text: true },
      },
    },
    compute: ({ topic }, profile) =>
      coefficients
        .filter((one) => topic === undefined || one.topic === topic)
        .map((one) => ({
          key: one.key,
          low: figure(one, one.low),
          typical: figure(one, one.typical),
          high: figure(one, one.high),
          unit: profile.units[one.kind].symbol,
          source: one.source,
          howKnown: one.known,
        })),
    sources: ['Each row names its own'],
    example: { formula: '=SILT.REF.LIST("US","LOAD",TRUE)', gives: 'one row per coefficient' },
    unpublished: 'A list; the functions that use its figures are checked.',
  }),
];
