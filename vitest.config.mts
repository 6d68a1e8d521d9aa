import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** What is waited for may come late on a slow or busy machine; only its absence is a fault. */
const patience = 10 * 60_000;

export default defineConfig({
  test: {
    coverage: { include: ['src/formulas/**', 'src/units/**', 'src/functions/**'], reporter: ['text', 'html'] },
    reporters: ['default', './test/harness/outcome-reporter.ts'],
    projects: [
      {
        test: {
          name: 'unit',
          include: ['test/**/*.test.ts'],
          exclude: ['test/**/*.browser.test.ts'],
          // All processors work, and each loads the catalogue and the spreadsheet engine once for all its files.
          maxWorkers: availableParallelism(),
          isolate: false,
          testTimeout: patience,
          hookTimeout: patience,
          // The script that its package names for Node says that it is a module and is not one.
          server: { deps: { inline: ['maxrects-packer'] } },
        },
      },
      {
        test: {
          name: 'browser',
          include: ['test/**/*.browser.test.ts'],
          globalSetup: './test/harness/browser-setup.ts',
          // After the unit tests, and two pages at a time: a page and its browser keep about one processor busy.
          sequence: { groupOrder: 1 },
          maxWorkers: 2,
          isolate: false,
          expect: { poll: { timeout: patience / 2 } },
          testTimeout: patience,
          hookTimeout: patience,
        },
      },
    ],
  },
});
