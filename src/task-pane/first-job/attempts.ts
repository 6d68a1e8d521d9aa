import { sentenceOf } from '../messages';
import { sentenceIn } from '../user-error';
import type { PaneContext } from '../view';
import type { Progress } from '../work';

/** Runs what the guide does, and says in the pane's message line what went wrong. */
export class Attempts {
  private readonly context: PaneContext;

  constructor(context: PaneContext) {
    this.context = context;
  }

  /** Undefined where it failed. */
  async attempt<T>(work: () => Promise<T>): Promise<T | undefined> {
    try {
      return await work();
    } catch (error) {
      this.context.notify('fault', sentenceIn(error) ?? sentenceOf(error));
      return undefined;
    }
  }

  /** The same for what may take long, with progress shown. */
  working<T>(title: string, job: (progress: Progress) => Promise<T>): Promise<T | undefined> {
    return this.context.work(title, (progress) => this.attempt(() => job(progress)));
  }
}
