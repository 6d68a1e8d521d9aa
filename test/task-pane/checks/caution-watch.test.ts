import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { FunctionLibrary } from '../../../src/functions/function-library';
import type { SheetHost } from '../../../src/hosts/sheet-host';
import { watchCautions } from '../../../src/task-pane/checks/caution-watch';
import type { UnitsWatch } from '../../../src/task-pane/units-watch';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const functionLibrary = { catalogue: [] } as unknown as FunctionLibrary;
const units = { refresh: async () => undefined, now: () => ({}) } as unknown as UnitsWatch;

/** A workbook whose cells take so many milliseconds to read. */
function slowHost(readMs: number) {
  let changed: () => void = () => undefined;
  const readUsed = vi.fn(async () => {
    await new Promise((resolve) => setTimeout(resolve, readMs));
    return [];
  });
  const onCellsChanged = async (listener: () => void) => {
    changed = listener;
    return () => undefined;
  };
  const host = { readUsed, names: async () => [], onCellsChanged } as unknown as SheetHost;
  return { host, readUsed, change: () => changed() };
}

it.each([
  ['a small workbook a quarter of a second after a change', 10, 250],
  ['a workbook that takes a second three seconds after a change', 1000, 3000],
])('searches %s', async (_, readMs, waited) => {
  const { host, readUsed, change } = slowHost(readMs);
  const watch = watchCautions(host, functionLibrary, units);
  watch.follow(() => undefined);
  await vi.advanceTimersByTimeAsync(readMs + 100);
  expect(watch.now().isCurrent).toBe(true);
  expect(readUsed).toHaveBeenCalledTimes(1);
  change();
  expect(watch.now().isCurrent).toBe(false);
  await vi.advanceTimersByTimeAsync(waited - 20);
  expect(readUsed).toHaveBeenCalledTimes(1);
  await vi.advanceTimersByTimeAsync(150);
  expect(readUsed).toHaveBeenCalledTimes(2);
});

it('waits while the spreadsheet calculates, says so, and keeps what it found before', async () => {
  const { host, readUsed, change } = slowHost(10);
  let isCalculating = true;
  const watch = watchCautions(
    { ...host, name: 'Excel', isCalculating: async () => isCalculating },
    functionLibrary,
    units,
  );
  watch.follow(() => undefined);
  await vi.advanceTimersByTimeAsync(1000);
  expect(readUsed).not.toHaveBeenCalled();
  const fault = expect.stringMatching(/^Excel is still calculating; the checks follow when it is done\./);
  expect(watch.now()).toEqual({ isCurrent: false, findings: [], fault });
  isCalculating = false;
  change();
  await vi.advanceTimersByTimeAsync(1000);
  expect(watch.now()).toEqual({ isCurrent: true, findings: [] });
});
