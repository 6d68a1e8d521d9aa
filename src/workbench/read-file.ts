import type { WorkbookData } from '../hosts/workbook-model';
import { part } from './page-parts';

/** What the worker answers. */
export type ReadAnswer = { readonly workbook: WorkbookData } | { readonly refused: string };

/** A worker of the browser, or what stands in for one. */
export type ReadWorker = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

/** The largest file within the limits takes a few seconds. */
const longestSeconds = 60;

/** A quick file shows no line that comes and goes. */
const quietMs = 400;

/**
 * Reads a workbook's file in a worker, so that no file can block the page. A line says meanwhile what is being read, and
 * its button stops it.
 */
export async function readFile(name: string, file: Uint8Array): Promise<WorkbookData> {
  const line = part('reading');
  part('reading-text').textContent = `${name} is being read.`;
  const showing = setTimeout(() => (line.hidden = false), quietMs);
  const stop = new AbortController();
  part('reading-stop').onclick = () => stop.abort();
  try {
    return await readIn(new Worker('read-file.js'), file, stop.signal);
  } finally {
    clearTimeout(showing);
    line.hidden = true;
  }
}

/** Reads a file in a worker, which ends with its answer, after the longest time, or when it is stopped. */
export async function readIn(worker: ReadWorker, file: Uint8Array, stop: AbortSignal): Promise<WorkbookData> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  try {
    const answer = await new Promise<ReadAnswer>((resolve) => {
      const refuse = (refused: string): void => resolve({ refused });
      worker.onmessage = ({ data }: MessageEvent<ReadAnswer>) => resolve(data);
      worker.onerror = (event) => {
        event.preventDefault();
        refuse('the script that reads files does not run; reload the page and open the file again');
      };
      stop.addEventListener('abort', () => refuse('it was stopped; nothing was opened'));
      timer = setTimeout(
        () => refuse(`reading it takes longer than ${longestSeconds} s and was stopped; make the workbook smaller`),
        longestSeconds * 1_000,
      );
      worker.postMessage(file);
    });
    if ('refused' in answer) throw new Error(answer.refused);
    return answer.workbook;
  } finally {
    clearTimeout(timer);
    worker.terminate();
  }
}
