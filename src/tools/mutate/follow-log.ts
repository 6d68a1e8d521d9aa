import { readEvents, type TrialEvent } from './trial-log';

/** A change that is tried for longer than this and so many times what its tests take without it hangs, ms. */
const HANGS = 60_000;
const HANGS_FACTOR = 15;
const INTERVAL = 1000;

/**
 * Passes on what a process writes into its log, and ends it if it hangs. A change in which the process ended is
 * endless. The result ends the following.
 */
export function followLog(log: string, seen: (event: TrialEvent) => void): () => void {
  let read = 0;
  let processId = 0;
  let trying: { mutant: string; until: number } | undefined;
  const readOn = () => {
    for (const event of readEvents(log).slice(read)) {
      read += 1;
      if (event.is === 'started') processId = event.process;
      trying = undefined;
      if (event.is === 'trying')
        trying = { mutant: event.mutant, until: Date.now() + HANGS + HANGS_FACTOR * event.took };
      seen(event);
    }
  };
  const timer = setInterval(() => {
    readOn();
    if (trying !== undefined && Date.now() > trying.until) process.kill(processId, 'SIGKILL');
  }, INTERVAL);
  return () => {
    clearInterval(timer);
    readOn();
    if (trying !== undefined) seen({ is: 'judged', mutant: trying.mutant, verdict: 'endless' });
  };
}
