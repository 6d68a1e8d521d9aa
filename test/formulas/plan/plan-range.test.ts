/** Bands, chances and drivers of samples whose percentiles and shares are known beforehand. */
import { describe, expect, it } from 'vitest';
import { bandOf, chances, driversOf } from '../../../src/formulas/plan/plan-range';
import { type PlanResults, planResults } from '../../../src/formulas/plan/plan-results';
import {
  draws,
  type Sample,
  sampleFarm,
  type Uncertain,
  type UncertainFarm,
} from '../../../src/formulas/plan/plan-sample';
import type { Scenario } from '../../../src/formulas/plan/plan-scenario';
import { DAY, factors, farm } from './plan-farm';

const nothing: Sample = { figures: new Map(), words: new Map(), first: new Map(), strata: new Map(), refused: 0 };

/** A sample in which a result has these figures, each so many times; what is left of the draws was refused. */
function sampleOf(
  result: keyof PlanResults,
  ...figures: readonly (readonly [figure: number, times: number])[]
): Sample {
  const all = figures.flatMap(([figure, times]) => Array.from({ length: times }, () => figure));
  const refused = draws - all.length;
  const column = Float64Array.from([...all, ...Array.from({ length: refused }, () => Number.NaN)]);
  return { ...nothing, figures: new Map([[result, column]]), refused };
}

const shareOfSolids: Uncertain = {
  name: 'solids share',
  range: { low: 0.2, typical: 0.25, high: 0.4 },
  put: ({ scenario }, figure) => {
    scenario.solidsShare = figure;
  },
};
const holding: Uncertain = {
  name: 'pad holding',
  range: { low: 0.2, typical: 0.25, high: 0.3 },
  put: ({ scenario }, figure) => {
    scenario.padHolding = figure;
  },
};
const oxygenIn: Uncertain = {
  name: 'oxygen in',
  range: { low: 0.004, typical: 0.008, high: 0.01 },
  put: ({ scenario }, figure) => {
    scenario.oxygenIn = figure;
  },
};

function uncertainFarm(uncertain: readonly Uncertain[], change: Partial<Scenario> = {}): UncertainFarm {
  return { scenario: { ...farm, ...change }, factors, uncertain, follows: [] };
}

function drive(uncertain: readonly Uncertain[], sample: Sample, result: keyof PlanResults = 'solids') {
  const all = uncertainFarm(uncertain);
  return driversOf(all, planResults(all.scenario, all.factors), sample, result);
}

describe('a band', () => {
  it('leaves out a tenth of the draws at each end, of those that were not refused', () => {
    expect(bandOf(sampleOf('feed', [0, 200], [5, 624], [9, 200]), 'feed')).toEqual({ low: 0, high: 9 });
    expect(bandOf(sampleOf('feed', [0, 50], [5, 700], [9, 50]), 'feed')).toEqual({ low: 5, high: 5 });
    expect(bandOf(sampleOf('feed', [9, 200], [0, 200], [5, 300]), 'feed')).toEqual({ low: 0, high: 9 });
  });

  it('of whole figures ends at figures of draws, the next ones outward, and of others between two of them', () => {
    // Of 1,024 draws the ends are 0.3 of the way from the 103rd to the 104th, and 0.7 from the 921st to the 922nd.
    expect(bandOf(sampleOf('padsNeeded', [7, 103], [8, 818], [11, 103]), 'padsNeeded')).toEqual({ low: 7, high: 11 });
    const between = bandOf(sampleOf('feed', [6.5, 103], [8, 818], [11, 103]), 'feed');
    expect(between).toEqual({ low: expect.closeTo(6.95, 9), high: expect.closeTo(10.1, 9) });
    const endless = sampleOf('drumsNeeded', [2, 103], [4, 818], [Number.POSITIVE_INFINITY, 103]);
    expect(bandOf(endless, 'drumsNeeded')).toEqual({ low: 2, high: 'never' });
  });

  it('is not there where every draw was refused', () => {
    expect(bandOf(sampleOf('feed'), 'feed')).toBeUndefined();
  });

  it('ends in a word where a tenth and more of the draws have none', () => {
    const rises = { ...sampleOf('solidsInTank', [1, 824], [Number.POSITIVE_INFINITY, 200]) };
    expect(bandOf(rises, 'solidsInTank')).toEqual({ low: 1, high: 'never' });
    const worded = { ...rises, words: new Map([['solidsInTank', 'rises'] as const]) };
    expect(bandOf(worded, 'solidsInTank')).toEqual({ low: 1, high: 'rises' });
  });
});

describe('the chances of the stages', () => {
  it('are shares of the draws that were not refused', () => {
    const first = new Map([
      ['air', 181],
      ['pads', 543],
    ]);
    const of = chances({ ...nothing, first, refused: draws - 724 });
    expect([...of]).toEqual([
      ['air', 0.25],
      ['pads', 0.75],
    ]);
  });
});

describe('a sample of a farm', () => {
  it('has the mean and the ends of its one triangle: 0.2, 0.25 and 0.4 of 500 g of feed', () => {
    const all = uncertainFarm([shareOfSolids]);
    const { figures, refused, first } = sampleFarm(all, planResults(all.scenario, factors));
    const solids = figures.get('solids')!.map((figure) => (figure * DAY) / 0.5);
    const mean = solids.reduce((sum, one) => sum + one, 0) / draws;
    expect(mean).toBeCloseTo((0.2 + 0.25 + 0.4) / 3, 5);
    // Half a stratum of the 1,024 lies beyond the outermost draws; at an end the share grows by the square.
    expect(Math.min(...solids)).toBeCloseTo(0.2 + Math.sqrt((0.5 / draws) * 0.2 * 0.05), 9);
    expect(Math.max(...solids)).toBeCloseTo(0.4 - Math.sqrt((0.5 / draws) * 0.2 * 0.15), 9);
    expect(refused).toBe(0);
    expect([...first.values()].reduce((sum, one) => sum + one, 0)).toBe(draws);
  });

  it('counts the draws that are refused, and has no figure of theirs', () => {
    // Below oxygen out lies (6 - 4)2 / ((10 - 4)(8 - 4)) = 1/6 of the triangle of oxygen in.
    const all = uncertainFarm([oxygenIn], { oxygenIn: 0.008, oxygenOut: 0.006 });
    const { figures, refused, first } = sampleFarm(all, planResults(all.scenario, factors));
    expect(Math.abs(refused - draws / 6)).toBeLessThan(1);
    expect(figures.get('feed')!.filter(Number.isNaN)).toHaveLength(refused);
    expect([...first.values()].reduce((sum, one) => sum + one, 0)).toBe(draws - refused);
  });

  it('has a word where a draw has no figure, and ranks it above all', () => {
    const all = uncertainFarm([shareOfSolids], { pads: 'none', bedArea: 'none' });
    const { figures, words } = sampleFarm(all, planResults(all.scenario, factors));
    expect(words.get('solidsInTank')).toBe('rises');
    expect(new Set(figures.get('solidsInTank'))).toEqual(new Set([Number.POSITIVE_INFINITY]));
    expect(words.has('feed')).toBe(false);
  });

  it('does not take a fault for a refusal', () => {
    const broken: Uncertain = {
      ...holding,
      put: ({ scenario }) => {
        scenario.alkali = 'chalk' as Scenario['alkali'];
      },
    };
    const all = uncertainFarm([broken]);
    expect(() => sampleFarm(all, planResults(all.scenario, factors))).toThrow(TypeError);
  });
});

describe('the drivers of a result', () => {
  const measured = () => {
    const all = uncertainFarm([holding, shareOfSolids]);
    return sampleFarm(all, planResults(all.scenario, factors));
  };

  it('are led by the one that it hangs on, with the result at its ends; what changes nothing has no share', () => {
    const { ranked, together } = drive([holding, shareOfSolids], measured());
    const [solids, pads] = ranked;
    expect(ranked.map(({ uncertain }) => uncertain.name)).toEqual(['solids share', 'pad holding']);
    expect((solids!.atLow as number) * DAY).toBeCloseTo(0.5 * 0.2, 12);
    expect((solids!.atHigh as number) * DAY).toBeCloseTo(0.5 * 0.4, 12);
    // Within a stratum of 1/32 the result is not quite one figure.
    expect(solids!.share).toBeGreaterThan(0.99);
    expect(pads!.share).toBe(0);
    expect(together).toBeCloseTo(1 - solids!.share, 12);
  });

  it('have a share too if only one of their ends changes the result', () => {
    const range = { low: 0.25, typical: 0.25, high: 0.4 };
    const oneSided = { ...shareOfSolids, range };
    const mirrored = { ...shareOfSolids, range: { ...range, low: 0.1, high: 0.25 } };
    expect(drive([oneSided], measured()).ranked[0]!.share).toBeGreaterThan(0.99);
    expect(drive([mirrored], measured()).ranked[0]!.share).toBeGreaterThan(0.99);
  });

  it('rank by what they move where none explains anything', () => {
    const same = sampleOf('solids', [1, draws]);
    const little = { ...shareOfSolids, name: 'little', range: { low: 0.24, typical: 0.25, high: 0.26 } };
    const much = { ...shareOfSolids, name: 'much', range: { low: 0.1, typical: 0.25, high: 0.4 } };
    for (const order of [
      [little, much, holding],
      [holding, much, little],
    ]) {
      const { ranked } = drive(order, same);
      expect(ranked.map(({ uncertain }) => uncertain.name)).toEqual(['much', 'little', 'pad holding']);
    }
  });

  it('move nothing that can be measured where an end has a word or is refused', () => {
    const decay: Uncertain = {
      name: 'solids decay',
      range: { low: 0, typical: 0.1, high: 0.2 },
      put: ({ scenario }, figure) => {
        scenario.solidsDecay = figure;
      },
    };
    const all = uncertainFarm([decay, oxygenIn, shareOfSolids], {
      ...{ pads: 'none', bedArea: 'none', solidsDecay: 0.1, oxygenIn: 0.008, oxygenOut: 0.006 },
    });
    const same = sampleOf('solidsInTank', [1, draws]);
    const { ranked } = driversOf(all, planResults(all.scenario, factors), same, 'solidsInTank');
    const [, byDecay, byOxygen] = ranked;
    expect(byDecay!.atLow).toBe('rises');
    expect(byDecay!.atHigh).toBeTypeOf('number');
    expect(byOxygen!.atLow).toBeUndefined();
    // What moves it comes before them, though it was named last.
    expect(ranked.map(({ uncertain }) => uncertain.name)).toEqual(['solids share', 'solids decay', 'oxygen in']);
  });

  it.each<[string, number, readonly (readonly [number, number])[]]>([
    ['do not differ', 0, [[5, draws]]],
    ['are all 0', 0, [[0, draws]]],
    [
      'differ by a rounding of a million',
      0,
      [
        [1e6, 500],
        [1e6 * (1 + 1e-14), 524],
      ],
    ],
    [
      'differ by a rounding',
      0,
      [
        [5, 500],
        [5 * (1 + 1e-14), 524],
      ],
    ],
    [
      'differ by a rounding below zero',
      0,
      [
        [-5, 500],
        [-5 * (1 + 1e-14), 524],
      ],
    ],
    [
      'are one number or a word',
      0,
      [
        [5, 500],
        [Number.POSITIVE_INFINITY, 524],
      ],
    ],
    ['were refused but for one number', 0, [[5, 500]]],
    [
      'differ',
      1,
      [
        [5, 500],
        [6, 524],
      ],
    ],
    [
      'differ by a billionth',
      1,
      [
        [5, 500],
        [5 * (1 + 1e-9), 524],
      ],
    ],
    [
      'differ in two of all',
      1,
      [
        [-3, 1],
        [3, 1],
        [Number.POSITIVE_INFINITY, 1022],
      ],
    ],
  ])('leave to all of them together what none explains, unless the draws %s', (_, together, figures) => {
    // Solids do not hang on what pads hold.
    expect(drive([holding], sampleOf('solids', ...figures)).together).toBe(together);
  });
});
