/**
 * Searches longer for a cut plan, at one effort after another, and finds the least effort that gives the shortest plan.
 */
import type { CutPlan } from '../../formulas/cut/cut-plan';
import { UserError } from '../user-error';
import type { Progress } from '../work';
import type { CutSearch } from './recognition';

/** What the worker is sent. */
export interface CutSearchOrder {
  readonly arguments: readonly unknown[];
  readonly effort: number;
}

/** What the worker answers. */
export type CutSearchAnswer =
  | {
      readonly effort: number;
      readonly sheets: number;
      readonly lengthUsed: number;
      /** The plan as the functions keep it, so that the page need not search again. */
      readonly plan?: readonly [name: string, plan: CutPlan];
    }
  | { readonly effort: number; readonly refused: string };

type Found = Extract<CutSearchAnswer, { readonly sheets: number }>;

/** A worker of the browser, or what stands in for one. */
export interface SearchWorker {
  readonly search: (order: CutSearchOrder) => Promise<CutSearchAnswer>;
  readonly end: () => void;
}

export interface LongerSearch {
  readonly before: Found;
  /** The shortest plan, of several the one that took the least effort; the one before where nothing was gained. */
  readonly best: Found;
}

const efforts = [4, 16, 64] as const;
const leastGain = 1e-9;
const lookEveryMs = 100;

/** Stops with the progress; the worker ends in any case. */
export async function searchLonger(
  { arguments: values, effort }: CutSearch,
  makeWorker: () => SearchWorker,
  { step }: Progress,
): Promise<LongerSearch> {
  const tried = [effort, ...efforts.filter((more) => more > effort)];
  const total = tried.reduce((sum, one) => sum + one, 0);
  const worker = makeWorker();
  try {
    const found: Found[] = [];
    let done = 0;
    for (const one of tried) {
      found.push(await answerTo({ arguments: values, effort: one }, worker, () => step(done / total)));
      done += one;
    }
    const [before, ...longer] = found;
    if (before === undefined) throw new UserError('There was nothing to search for.');
    return { before, best: longer.reduce((best, next) => (isShorter(next, best) ? next : best), before) };
  } finally {
    worker.end();
  }
}

function isShorter(one: Found, other: Found): boolean {
  if (one.sheets !== other.sheets) return one.sheets < other.sheets;
  return one.lengthUsed < other.lengthUsed * (1 - leastGain);
}

/** Waits for the answer and looks now and then whether to stop. */
async function answerTo(order: CutSearchOrder, worker: SearchWorker, look: () => Promise<void>): Promise<Found> {
  let timer: ReturnType<typeof setInterval> | undefined;
  const stopped = new Promise<never>((_, reject) => {
    timer = setInterval(() => void look().catch(reject), lookEveryMs);
  });
  try {
    const answer = await Promise.race([worker.search(order), stopped]);
    if ('refused' in answer) throw new UserError(answer.refused);
    return answer;
  } finally {
    clearInterval(timer);
  }
}
