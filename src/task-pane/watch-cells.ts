import type { SheetHost } from '../hosts/sheet-host';
import { debounced } from './debounced';

/** Calls back when cells have stopped changing for a while; returns a function that stops it. */
export function watchCells(host: SheetHost, changed: () => void, restMs: number): () => void {
  const rested = debounced(changed, restMs);
  const watching = host.onCellsChanged(rested);
  return () => {
    rested.cancel();
    watching.then((stop) => stop()).catch(() => undefined);
  };
}
