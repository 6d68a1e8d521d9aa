import { describe, expect, it } from 'vitest';
import { settlingReynolds, terminalReynolds } from '../../../src/formulas/settle/drag';

describe('a grain that hardly moves', () => {
  it('has a Reynolds number of 0 where nothing drives it, instead of none', () => {
    expect(terminalReynolds(0)).toBe(0);
  });

  it('has a Reynolds number of 0 where its velocity cubed is too small to be told from 0', () => {
    expect(settlingReynolds(Number.POSITIVE_INFINITY)).toBe(0);
  });

  it('follows Stokes’ Ar/18 and sqrt(24/ratio) to the last digits', () => {
    for (const archimedes of [1e-30, 1e-20, 1e-14]) {
      expect(terminalReynolds(archimedes) / (archimedes / 18)).toBeCloseTo(1, 13);
    }
    for (const ratio of [24e26, 24e30, 24e40]) {
      expect(settlingReynolds(ratio) / Math.sqrt(24 / ratio)).toBeCloseTo(1, 13);
    }
  });
});
