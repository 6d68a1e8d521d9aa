import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** What is waited for may come late on a slow or busy machine; only its absence is a fault. */
const patience = 10 * 60_000;

/** The test files that take longest, from most of a minute of one processor down to some seconds. */
const longest = [
  'hosts/univer/every-input.test.ts',
  'command-line/file-safety.test.ts',
  'formulas/cut/cut-plan.test.ts',
  'workbooks/in-libreoffice.test.ts',
  'formulas/cut/cut-limits.test.ts',
  'workbooks/sample-workbooks.test.ts',
  'built-site.test.ts',
  'tools/build/written-pages.test.ts',
  'command-line/draw.test.ts',
  'task-pane/first-job/first-job.test.ts',
  'workbooks/sheet-faults.test.ts',
  'command-line/calc.test.ts',
  'command-line/recalc.test.ts',
  'workbooks/packet/packet.test.ts',
  'task-pane/convert-typed/same-results.test.ts',
  'workbooks/text-fits.test.ts',
  'workbench/moved-lines.browser.test.ts',
  'workbench/random-edits.browser.test.ts',
  'workbench/drafts.browser.test.ts',
  'site.browser.test.ts',
  'workbench/charts/charts.browser.test.ts',
  'workbench/live-calculation.browser.test.ts',
  'hosts/univer/calculation-turns.browser.test.ts',
  'task-pane/in-workbench.browser.test.ts',
  'workbench/hostile-files.browser.test.ts',
  'workbench/markup.browser.test.ts',
  'workbench/first-job.browser.test.ts',
  'workbench/workbench.browser.test.ts',
  'manual/site-pages.browser.test.ts',
  'workbench/text-in-view.browser.test.ts',
  'workbench/typing-across.browser.test.ts',
  'workbench/saving.browser.test.ts',
  'task-pane/pane.browser.test.ts',
  'workbench/kept-plans.browser.test.ts',
  'task-pane/drawings/drawings.browser.test.ts',
];

/**
 * Begins the longest test files first, so that no processor waits while another is still at one of them. Vitest itself
 * takes the largest files first, until it has seen once how long each takes.
 */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const paths = longest.map((name) => join(this.ctx.config.root, 'test', name));
    const missing = paths.filter((path) => !existsSync(path));
    if (missing.length > 0) throw new Error(`vitest.config.mts names files that are not there: ${missing.join(', ')}`);
    const places = new Map(paths.map((path, place) => [path, place]));
    const placeOf = ({ moduleId }: TestSpecification): number => places.get(join(moduleId)) ?? paths.length;
    return (await super.sort(files)).sort((one, other) => placeOf(one) - placeOf(other));
  }
}

export default defineConfig({
  test: {
    coverage: { include: ['src/formulas/**', 'src/units/**', 'src/functions/**'], reporter: ['text', 'html'] },
    reporters: ['default', './test/harness/outcome-reporter.ts'],
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        test: {
          name: 'unit',
          include: ['test/**/*.test.ts'],
          exclude: ['test/**/*.browser.test.ts'],
          // All processors work, and each loads the catalogue and the spreadsheet engine once for all its files.
          maxWorkers: availableParallelism(),
          isolate: false,
          // The engine makes many short-lived values; with room for them, a tenth less time goes into tidying up.
          execArgv: ['--max-semi-space-size=64'],
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
