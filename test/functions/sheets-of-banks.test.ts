import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call, spill } from './call';
import { withShortSearches } from './short-searches';

withShortSearches();

describe('sheets of random banks', () => {
  it('are as many as CUT.SHEETS counts for the same rows and gap, in 80 banks', () => {
    const rarely = { min: 0, max: 3 };
    let withGap = 0;
    fc.assert(
      fc.property(
        fc.record({
          drums: fc.integer({ min: 1, max: 6 }),
          diameter: fc.integer({ min: 200, max: 620 }),
          bottom: fc.integer({ min: 30, max: 120 }),
          height: fc.integer({ min: 100, max: 300 }),
          pieces: fc.integer({ min: 1, max: 3 }),
          lap: fc.constantFrom(0, 3),
          gap: fc.integer(rarely).map((part) => part * 4),
          sheet: fc.constantFrom([2000, 1000], [2440, 1220], [1800, 900]),
        }),
        ({ drums, diameter, bottom, height, pieces, lap, gap, sheet }) => {
          const [length, width] = sheet;
          const row = spill('CONE.PATTERN', 'metric', diameter, bottom, height, pieces, lap)[0];
          const rows = Array.from({ length: drums }, () => row);
          const inputs = [
            ...[
              ['drums', drums],
              ['drum diameter', diameter],
              ['drum height', 2000],
              ['cone bottom', bottom],
            ],
            ...[
              ['cone height', height],
              ['pieces', pieces],
              ['lap', lap],
              ['gap', gap],
            ],
            ...[
              ['sheet length', length],
              ['sheet width', width],
            ],
          ];
          const sheets = spill('PLAN.PARTS', 'metric', inputs).find(([item]) => item === 'sheet for cones');
          expect(sheets?.[1]).toBe(call('CUT.SHEETS', 'metric', rows, length, width, gap));
          if (gap > 0) withGap++;
        },
      ),
      { numRuns: 80, seed: 3 },
    );
    expect(withGap).toBeGreaterThan(40);
  });
});
