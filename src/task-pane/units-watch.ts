import type { SheetHost } from '../hosts/sheet-host';
import { noUnits, readWorkbookUnits, type WorkbookUnits } from './workbook-units';

/** The workbook's units as last read, for all views. */
export interface UnitsWatch {
  readonly now: () => WorkbookUnits;
  /** The profile to hand to functions: what SiltUnits says, or metric where there is none. */
  readonly profileText: () => string;
  /** Reads them again; rejects if the host cannot. */
  readonly refresh: () => Promise<WorkbookUnits>;
  /** Calls back after they changed; returns a function that stops it. */
  readonly onChanged: (listener: (units: WorkbookUnits) => void) => () => void;
}

export function watchUnits(host: SheetHost | undefined): UnitsWatch {
  let now = noUnits;
  const listeners = new Set<(units: WorkbookUnits) => void>();
  return {
    now: () => now,
    profileText: () => (now.units?.profile === undefined ? 'metric' : now.units.text),
    refresh: async () => {
      if (host === undefined) return now;
      const before = JSON.stringify(now);
      now = await readWorkbookUnits(host);
      if (JSON.stringify(now) !== before) for (const listener of listeners) listener(now);
      return now;
    },
    onChanged: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
