import { make, makeButton, replace } from './dom';
import { type Notify, sentenceOf } from './messages';
import { nextTurn } from './next-turn';

/**
 * Long work calls this between pieces: it shows progress, lets the page respond, and throws Stopped when the user
 * stops it.
 */
export interface Progress {
  /** `share` from 0 to 1. Cheap to call often: it yields at most every few hundredths of a second. */
  readonly step: (share: number) => Promise<void>;
  /** After this the work can no longer be stopped, because it must not be left half done. */
  readonly finishing: () => void;
}

export type Work = <T>(title: string, job: (progress: Progress) => Promise<T>) => Promise<T | undefined>;

/** Thrown by work that was stopped. */
class Stopped extends Error {
  constructor() {
    super('stopped');
    this.name = 'Stopped';
  }
}

/** Work shorter than this shows nothing. */
const patienceMs = 250;
/** The page responds at least this often. */
const sliceMs = 40;

export interface WorkPlace {
  readonly element: HTMLElement;
  readonly work: Work;
}

/** The place where progress appears. One piece of work runs at a time; the next one is refused. */
export function createWork(notify: Notify): WorkPlace {
  const element = make('div', { class: 'work-place', role: 'status' });
  let running: string | undefined;
  const work: Work = async (title, job) => {
    if (running !== undefined) {
      notify('note', `${running} is still running; wait for it or stop it, then try again.`);
      return undefined;
    }
    running = title;
    const shown = showLater(element, title);
    try {
      return await job(shown.progress);
    } catch (error) {
      if (error instanceof Stopped) notify('note', `${title}: stopped, nothing was changed.`);
      else notify('fault', sentenceOf(error));
      return undefined;
    } finally {
      running = undefined;
      shown.end();
    }
  };
  return { element, work };
}

function showLater(element: HTMLElement, title: string): { readonly progress: Progress; readonly end: () => void } {
  let stopped = false;
  let last = performance.now();
  const bar = make('progress', { max: '1', 'aria-label': title });
  const stop = makeButton('Stop', () => {
    stopped = true;
    stop.disabled = true;
  });
  const timer = setTimeout(() => {
    replace(element, make('div', { class: 'work' }, make('span', {}, title), bar, stop));
  }, patienceMs);
  return {
    progress: {
      step: async (share) => {
        if (stopped) throw new Stopped();
        if (performance.now() - last < sliceMs) return;
        bar.value = share;
        await nextTurn();
        last = performance.now();
        if (stopped) throw new Stopped();
      },
      finishing: () => {
        if (stopped) throw new Stopped();
        stop.disabled = true;
      },
    },
    end: () => {
      clearTimeout(timer);
      replace(element);
    },
  };
}
