import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with one plain line, so that the outcome can be read at a glance: `tests: 12 passed, 0 failed`. */
export default class OutcomeReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandledErrors: readonly unknown[]): void {
    const count = { passed: 0, failed: unhandledErrors.length, skipped: 0 };
    for (const module of modules) {
      const tests = [...module.children.allTests()];
      for (const test of tests) {
        const { state } = test.result();
        if (state === 'passed') count.passed += 1;
        else if (state === 'failed') count.failed += 1;
        else count.skipped += 1;
      }
      // A file or a group of tests that does not even load has no test to blame.
      if (module.state() === 'failed' && !tests.some((test) => test.result().state === 'failed')) count.failed += 1;
    }
    const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : '';
    const line = `tests: ${count.passed} passed, ${count.failed} failed${skipped}`;
    // The default reporter words its own summary while the run ends; this comes after it.
    process.once('exit', () => process.stdout.write(`${line}\n`));
  }
}
