import { shuffle } from './shuffle';

/**
 * One column of a Latin hypercube: the numbers 0 to count - 1 in an order that the name alone decides, so that the same
 * name gives the same column on every machine and a further column changes no other. Stratum k stands for (k + 1/2) /
 * count of the distribution.
 *
 * Source: McKay, Beckman and Conover, Technometrics 21:239 (1979).
 */
export function strataOf(name: string, count: number): Uint16Array {
  const random = generator(seedOf(name));
  const strata = Uint16Array.from({ length: count }, (_, at) => at);
  shuffle(strata, random);
  return strata;
}

/** A 32-bit number from a name, by the hash of Fowler, Noll and Vo (FNV-1a). */
function seedOf(name: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < name.length; at += 1) hash = Math.imul(hash ^ name.charCodeAt(at), 0x01000193);
  return hash >>> 0;
}

/** Numbers from 0 to 1 that look random, by a 32-bit counter whose value is mixed (as in SplitMix, Steele et al. 2014). */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 0x100000000;
  };
}
