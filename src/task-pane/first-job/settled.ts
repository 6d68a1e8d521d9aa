import type { SheetHost } from '../../hosts/sheet-host';

/** How long to wait between questions to a host that only says whether it is at work, and how often to ask. */
const [pauseMs, mostPauses] = [100, 100];

/** Resolves once the sheets have calculated what was written. */
export async function settled(host: SheetHost): Promise<void> {
  if (host.settled !== undefined) return host.settled();
  for (let i = 0; i < mostPauses && (await host.isCalculating?.()) === true; i++) {
    await new Promise((resolve) => setTimeout(resolve, pauseMs));
  }
}
