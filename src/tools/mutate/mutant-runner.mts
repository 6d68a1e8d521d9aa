import { configureGlobal } from 'fast-check';
import { inject, type RunnerTestCase, type RunnerTestFile, type RunnerTestSuite, TestRunner } from 'vitest';
import { watchModules } from './as-loaded';
import { endWithParent } from './end-with-parent';
import { mutationSwitch, processorTime } from './mutation-switch';
import { type TestRun, type TrialEvent, type TrialOrder, writeEvent } from './trial-log';

declare module 'vitest' {
  interface ProvidedContext {
    readonly trialOrder: TrialOrder;
  }
}

/** A test as it can be run again, and how often it has been run with a change and has failed. */
interface Trial extends TestRun {
  readonly run: () => Promise<void>;
  tried: number;
  failed: number;
}

/**
 * Either runs all tests once and notes what each of them reaches; or loads them and runs them again and again in one
 * process, for each change those that reach it, until one fails.
 */
export default class MutantRunner extends TestRunner {
  private readonly order = inject('trialOrder');
  private readonly switch = mutationSwitch(this.order.sites);
  private readonly restore = watchModules();
  private readonly files: RunnerTestFile[] = [];
  private readonly ran: TestRun[] = [];

  onCollected(files: RunnerTestFile[]): void {
    this.files.push(...files);
  }

  async runTask(test: RunnerTestCase): Promise<void> {
    if (this.order.tests !== undefined) return;
    this.restore();
    const before = processorTime();
    const hits = await this.switch.counted(() => runTest(test));
    this.ran.push({ id: test.id, took: processorTime() - before, hits });
  }

  override async onAfterRunFiles(): Promise<void> {
    super.onAfterRunFiles();
    const { tests, files, mutants } = this.order;
    if (this.files.length < files) return;
    if (tests === undefined) this.tell({ is: 'measured', tests: this.ran, whileLoading: this.switch.whileLoading() });
    else await this.judge(this.trials(tests), mutants);
  }

  private tell(event: TrialEvent): void {
    writeEvent(this.order.log, event);
  }

  private trials(tests: readonly TestRun[]): readonly Trial[] {
    const byId = new Map(this.files.flatMap(testsIn).map((test) => [test.id, test]));
    return tests.map((test) => ({
      ...test,
      run: () => runTest(byId.get(test.id) as RunnerTestCase),
      tried: 0,
      failed: 0,
    }));
  }

  private async judge(trials: readonly Trial[], mutants: readonly string[]): Promise<void> {
    endWithParent();
    this.tell({ is: 'started', process: process.pid });
    // The same verdicts in each run; and what an example that fails could be shortened to is not asked.
    configureGlobal({ seed: 1, endOnFailure: true });
    Error.stackTraceLimit = 0;
    let fresh = true;
    for (const mutant of mutants) {
      if (!(await this.tryMutant(mutant, trials, fresh))) return;
      fresh = false;
      // So that messages to the main process are sent between one change and the next.
      await new Promise((resolve) => setImmediate(resolve));
    }
  }

  /** Returns whether what is loaded is still as it was; if not, another process goes on. */
  private async tryMutant(mutant: string, all: readonly Trial[], fresh: boolean): Promise<boolean> {
    const trials = all.filter((trial) => mutant in trial.hits).sort((a, b) => timePerFailure(a) - timePerFailure(b));
    const hits = trials.reduce((sum, trial) => sum + (trial.hits[mutant] ?? 0), 0);
    this.tell({ is: 'trying', mutant, took: trials.reduce((sum, { took }) => sum + took, 0) });
    for (const trial of trials) {
      this.restore();
      trial.tried += 1;
      const outcome = await this.switch.tried(mutant, hits, trial.took, trial.run);
      if (outcome === 'passes') continue;
      trial.failed += 1;
      this.restore();
      const sound = await succeeds(trial.run);
      // A test that also fails without the change may fail by what an earlier change has left behind.
      if (sound || fresh) this.tell({ is: 'judged', mutant, verdict: outcome === 'endless' ? 'endless' : 'killed' });
      else this.tell({ is: 'left', mutant });
      return sound;
    }
    this.tell({ is: 'judged', mutant, verdict: 'survived' });
    return true;
  }
}

/** By it the tests are tried first that are quick, or notice much. */
function timePerFailure({ took, tried, failed }: Trial): number {
  return (took * (tried + 1)) / (failed + 1);
}

function testsIn(suite: RunnerTestSuite): readonly RunnerTestCase[] {
  return suite.tasks.flatMap((task) => (task.type === 'suite' ? testsIn(task) : task.type === 'test' ? [task] : []));
}

async function runTest(test: RunnerTestCase): Promise<void> {
  // Each run would wait for a signal that is never given, and none of them would be forgotten.
  test.context.signal.addEventListener = () => undefined;
  await TestRunner.getTestFn(test)();
}

function succeeds(run: () => Promise<void>): Promise<boolean> {
  return run().then(
    () => true,
    () => false,
  );
}
