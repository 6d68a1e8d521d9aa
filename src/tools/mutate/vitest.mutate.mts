import { defineConfig } from 'vitest/config';

/** The tests that judge one part; those that recompute whole workbooks would take hours and say the same. */
export default defineConfig({
  test: {
    include: (process.env.MUTATE_TESTS ?? 'test/formulas/**/*.test.ts').split(','),
    exclude: ['test/**/*.browser.test.ts'],
    testTimeout: 60_000,
    server: { deps: { inline: ['maxrects-packer'] } },
  },
});
