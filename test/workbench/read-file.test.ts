import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type ReadWorker, readIn } from '../../src/workbench/read-file';

const file = new Uint8Array([1, 2, 3]);

interface Read {
  readonly worker: ReadWorker;
  readonly answer: (data: unknown) => void;
  readonly stop: AbortController;
  readonly reading: Promise<unknown>;
}

/** A file given to a worker that does nothing by itself. */
function start(): Read {
  const worker: ReadWorker = { postMessage: vi.fn(), terminate: vi.fn(), onmessage: null, onerror: null };
  const stop = new AbortController();
  const reading = readIn(worker, file, stop.signal);
  return {
    worker,
    stop,
    reading,
    answer: (data) => worker.onmessage?.call(worker as Worker, { data } as MessageEvent),
  };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('the workbook comes from the worker, which then ends', async () => {
  const { worker, answer, reading } = start();
  expect(worker.postMessage).toHaveBeenCalledWith(file);
  const workbook = { sheets: [{ name: 'Sheet', cells: [] }] };
  answer({ workbook });
  await expect(reading).resolves.toBe(workbook);
  expect(worker.terminate).toHaveBeenCalledOnce();
  expect(vi.getTimerCount()).toBe(0);
});

test('what the reader refuses is said in its words', async () => {
  const { worker, answer, reading } = start();
  answer({ refused: 'the workbook has no sheets' });
  await expect(reading).rejects.toThrow(/^the workbook has no sheets$/);
  expect(worker.terminate).toHaveBeenCalledOnce();
});

test('a reader that does not end is ended after a minute', async () => {
  const { worker, reading } = start();
  const outcome = expect(reading).rejects.toThrow('longer than 60 s');
  await vi.advanceTimersByTimeAsync(59_999);
  expect(worker.terminate).not.toHaveBeenCalled();
  await vi.advanceTimersByTimeAsync(1);
  await outcome;
  expect(worker.terminate).toHaveBeenCalledOnce();
});

test('a reader is ended when the user stops it, and when its script does not run', async () => {
  const stopped = start();
  stopped.stop.abort();
  await expect(stopped.reading).rejects.toThrow('it was stopped');
  expect(stopped.worker.terminate).toHaveBeenCalledOnce();
  const broken = start();
  const event = { preventDefault: vi.fn() };
  broken.worker.onerror?.call(broken.worker as Worker, event as unknown as ErrorEvent);
  await expect(broken.reading).rejects.toThrow('reload the page');
  expect(event.preventDefault).toHaveBeenCalledOnce();
});
