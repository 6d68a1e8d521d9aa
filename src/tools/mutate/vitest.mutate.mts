import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The short files first, because most changes are noticed by one of them. */
class ShortestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).reverse();
  }
}

/** The tests that judge one part; those that recompute whole workbooks would take hours and say the same. */
export default defineConfig({
  test: {
    include: (process.env.MUTATE_TESTS ?? 'test/formulas/**/*.test.ts').split(','),
    // The sheets of many random banks would take minutes a change, and judge the search for a cut plan.
    exclude: ['test/**/*.browser.test.ts', 'test/functions/sheets-of-banks.test.ts'],
    // What the files share is loaded once for each change, by a worker that ends with it.
    isolate: false,
    maxWorkers: 1,
    sequence: { sequencer: ShortestFirst },
    testTimeout: 10 * 60_000,
    server: { deps: { inline: ['maxrects-packer'] } },
  },
});
