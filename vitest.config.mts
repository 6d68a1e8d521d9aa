import { defineConfig } from 'vitest/config';

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
          testTimeout: 30_000,
          // The script that its package names for Node says that it is a module and is not one.
          server: { deps: { inline: ['maxrects-packer'] } },
        },
      },
      {
        test: {
          name: 'browser',
          include: ['test/**/*.browser.test.ts'],
          globalSetup: './test/harness/browser-setup.ts',
          // One page at a time: two pages side by side on a small machine make each other late.
          fileParallelism: false,
          // Machines differ in speed: what is waited for may come late, and only its absence is a fault.
          expect: { poll: { timeout: 60_000 } },
          testTimeout: 180_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
