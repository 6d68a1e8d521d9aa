import { describe, expect, it } from 'vitest';
import { idealParts, measuredParts, mixedParts, type SolidsParts } from '../../../src/formulas/balance/settling-parts';
import { solidsBalance } from '../../../src/formulas/balance/solids-balance';
import { settleCapture } from '../../../src/formulas/settle/settle-capture';
import { refusalOf } from '../refusal-of';

const median = 0.01;
const none = { pads: 0, beds: 0, decay: 0, out: 0 };
const level = (parts: SolidsParts, sinks = none) => solidsBalance(1, 1, parts, sinks).level;
const firstPass = ({ shares, taken }: SolidsParts) => shares.reduce((sum, share, i) => sum + share * taken[i]!, 0);

/** The balance by midpoints over twenty deviations, with what one drum takes at z times the overflow rate. */
function byMidpoints(spread: number, z0: number, take: (z: number) => number, sinks: typeof none): number {
  const deviation = Math.log(spread);
  const steps = 20_000;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const x = -12 + (24 * (i + 0.5)) / steps;
    const passed = (1 - take(z0 * Math.exp(deviation * x))) * (1 - sinks.pads) * (1 - sinks.beds);
    sum += Math.exp(-0.5 * x * x) / (1 - passed + sinks.decay + sinks.out);
  }
  return (sum * 24) / steps / Math.sqrt(2 * Math.PI);
}

describe('solids as parts', () => {
  it.each([1, 1.2, 2.5, 4, 6])('are captured in the first pass as SETTLE.CAPTURE says, at a spread of %s', (spread) => {
    for (const overflow of [0.0005, 0.003, 0.02, 0.2]) {
      for (const [mixing, parts] of [
        [1, mixedParts],
        ['ideal', idealParts],
      ] as const) {
        const share = settleCapture({ overflow, median, spread, mixing, settleable: 0.7, inLine: 1 });
        expect(firstPass(parts({ median, spread, settleable: 0.7 })(overflow)) / share).toBeCloseTo(1, 6);
      }
    }
  });

  it('all settle in an ideal drum whose overflow rate is that of solids that are all alike', () => {
    const { shares, taken } = idealParts({ median, spread: 1, settleable: 0.7 })(median);
    expect(firstPass({ shares, taken })).toBeCloseTo(0.7, 12);
  });

  it('sum to all the solids', () => {
    for (const spread of [1, 1.5, 6]) {
      for (const parts of [mixedParts, idealParts]) {
        const { shares } = parts({ median, spread, settleable: 0.6 })(0.003);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 8);
      }
    }
  });

  it('of a measured share r are r over what settles, which is the larger of r and the settleable share', () => {
    expect(measuredParts(0.371, 0.45)).toEqual({ shares: [0.45, 0.55], taken: [0.371 / 0.45, 0] });
    expect(measuredParts(0.779, 0.45)).toEqual({ shares: [0.779, 1 - 0.779], taken: [1, 0] });
    expect(measuredParts(0, 0)).toEqual({ shares: [1], taken: [0] });
  });

  it('are refused at a spread above 6, where nobody has measured what decides', () => {
    for (const parts of [mixedParts, idealParts]) {
      const refusal = refusalOf(() => parts({ median, spread: 6.01, settleable: 1 }));
      expect(refusal).toMatchObject({ argument: 'spread', figures: { widest: { value: 6, like: 'spread' } } });
      expect(parts({ median, spread: 6, settleable: 1 })(0.003).shares.length).toBeGreaterThan(3);
    }
  });
});

describe('the level of the tank, to 1e-6', () => {
  // Well mixed, nothing else: mean of 1 + v0/v, which is 1 + v0/median exp(s2/2) for a log-normal.
  it.each([1, 2.5, 6])(
    'is that of the closed form where one mixed drum is all there is, at a spread of %s',
    (spread) => {
      const parts = mixedParts({ median, spread, settleable: 1 })(0.03);
      expect(level(parts) / (1 + 3 * Math.exp(Math.log(spread) ** 2 / 2))).toBeCloseTo(1, 6);
    },
  );

  it.each([1.3, 2.5, 4, 6])('is that of twenty thousand midpoints, at a spread of %s', (spread) => {
    for (const z of [0.05, 1, 30]) {
      for (const sinks of [
        none,
        { ...none, pads: 0.5 },
        { ...none, decay: 1e-4, out: 1e-5 },
        { ...none, beds: 0.01 },
      ]) {
        const mixed = level(mixedParts({ median, spread, settleable: 1 })(median / z), sinks);
        expect(mixed / byMidpoints(spread, z, (at) => at / (1 + at), sinks)).toBeCloseTo(1, 6);
        const ideal = level(idealParts({ median, spread, settleable: 1 })(median / z), sinks);
        expect(ideal / byMidpoints(spread, z, (at) => Math.min(1, at), sinks)).toBeCloseTo(1, 6);
      }
    }
  });
});
