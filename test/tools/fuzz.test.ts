import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fuzzLog } from '../../src/tools/fuzz/fuzz-log';
import { fuzzParts } from '../../src/tools/fuzz/fuzz-parts';
import { Random } from '../../src/tools/fuzz/random';

/** So many of each part that a run takes some seconds; `npm run fuzz` makes all of them. */
const counts: Readonly<Record<string, number>> = {
  calls: 5_000,
  ranges: 30,
  'cut plans': 2,
  'more cut plans': 1,
  files: 8,
  drawings: 20,
  'command lines': 500,
};

/** The machine may be slow or busy; the long run measures time, on a quiet one. */
const patience = 1000;

describe('random input', () => {
  it.each(fuzzParts.map((part) => ({ part, name: part.name })))('$name: nothing gets past', async ({ part, name }) => {
    const log = fuzzLog(undefined, patience);
    await part.run(20261129, counts[name] ?? 0, log);
    expect(log.faults).toEqual([]);
    expect(log.calls).toBeGreaterThanOrEqual(counts[name] ?? 1);
  });

  it('is the same for the same seed', () => {
    const [one, two] = [new Random(7), new Random(7)];
    expect(Array.from({ length: 100 }, () => one.next())).toEqual(Array.from({ length: 100 }, () => two.next()));
    expect(new Random(8).next()).not.toBe(new Random(7).next());
  });
});

describe('the log of a run', () => {
  it('holds the call that is running, and one fault of a sort', () => {
    const folder = mkdtempSync(join(tmpdir(), 'fuzz-log-'));
    const log = fuzzLog(join(folder, 'calls.log'));
    try {
      log.before({ name: 'CONE.ANGLE', values: ['US', undefined, -0] });
      expect(readFileSync(join(folder, 'calls.log'), 'utf8')).toMatch(/^1 .*"US","\(left out\)","0"/);
      log.fault({ name: 'CONE.ANGLE', values: [1] }, 'gives 1e300');
      log.fault({ name: 'CONE.ANGLE', values: [2] }, 'gives 2e300');
      expect(log.faults).toHaveLength(1);
    } finally {
      log.close();
      rmSync(folder, { recursive: true });
    }
  });
});
