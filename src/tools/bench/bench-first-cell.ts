import type { Browser, BrowserContext } from 'playwright-core';
import { serveSite } from '../../command-line/serve-site';
import { textTable } from '../../command-line/text-table';
import { inBrowser } from './bench-browser';
import { timesRow } from './bench-wanted';

/**
 * Drums!L6, the height of a cone at 45 degrees for the second drum: half of 21.75 in less 4 in. It is filled by a spill of
 * the row above, of which an opened workbook keeps no old result.
 */
const named = { sheet: 'Drums', range: { row: 5, column: 11, rows: 1, columns: 1 }, height: 8.875 };
const openings = 10;

interface Conditions {
  readonly name: string;
  /** Bits a second and milliseconds; undefined leaves the connection as it is. */
  readonly network?: { readonly bits: number; readonly latency: number };
  /** How many times slower the processor is made. */
  readonly slower: number;
  /** Milliseconds of the median, cold and warm. */
  readonly wanted: { readonly cold: number; readonly warm: number };
}

const wanted = { cold: 2500, warm: 1500 };
const conditions: readonly Conditions[] = [
  { name: 'as this machine is', slower: 1, wanted },
  { name: '10 Mbit/s, 40 ms, processor 4 times slower', network: { bits: 10e6, latency: 40 }, slower: 4, wanted },
];

/** What the page marks once it is on the screen. */
const marks = { look: 'first look computed', grid: 'grid computed' } as const;
type Times = { readonly [mark in keyof typeof marks]: number };

/**
 * Milliseconds from asking for the page until the named cell shows its right number, calculated in the page: in the plain
 * table that comes first, and in the grid.
 */
async function firstCells(context: BrowserContext, address: string, { network, slower }: Conditions): Promise<Times> {
  const page = await context.newPage();
  const tools = await context.newCDPSession(page);
  await tools.send('Network.enable');
  if (network !== undefined) {
    const bytes = network.bits / 8;
    const speeds = { latency: network.latency, downloadThroughput: bytes, uploadThroughput: bytes };
    await tools.send('Network.emulateNetworkConditions', { offline: false, ...speeds });
  }
  await tools.send('Emulation.setCPUThrottlingRate', { rate: slower });
  // Not asked while the page starts, which would slow it down.
  await page.goto(`${address}workbench/`, { waitUntil: 'commit' });
  await page.waitForSelector('body[data-ready]', { state: 'attached', timeout: 120_000 });
  const { look, grid, inLook, inGrid } = await page.evaluate(
    async ({ place: { sheet, range }, names }) => {
      const time = (name: string): number => performance.getEntriesByName(name)[0]?.startTime ?? Number.NaN;
      const table = document.querySelector('#first-look table[data-computed]');
      const cell = table?.querySelector(`[data-row="${range.row}"] > [data-column="${range.column}"]`);
      const { values } = await window.workbench.host.read({ sheet, range });
      return { look: time(names.look), grid: time(names.grid), inLook: cell?.textContent, inGrid: values[0]?.[0] };
    },
    { place: named, names: marks },
  );
  await page.close();
  if (inLook !== named.height.toFixed(2) || Math.abs(Number(inGrid) - named.height) > 1e-9)
    throw new Error(`the first cell is ${inLook} in the first look and ${inGrid} in the grid`);
  return { look, grid };
}

/** Opens a light page of the site and waits until all files are kept. */
async function filesKept(context: BrowserContext, address: string): Promise<void> {
  const page = await context.newPage();
  await page.goto(`${address}privacy.html`);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.close();
}

/** Rows of the table: the first look and the grid, cold and warm. */
async function measured(browser: Browser, address: string, given: Conditions): Promise<(readonly string[])[]> {
  const open = () => browser.newContext({ viewport: { width: 1280, height: 800 } });
  const times: { readonly cold: Times[]; readonly warm: Times[] } = { cold: [], warm: [] };
  for (let i = 0; i < openings; i++) {
    // A context of its own has kept nothing; the same one has everything once the page has kept its files for use
    // without a network.
    const context = await open();
    times.cold.push(await firstCells(context, address, given));
    await filesKept(context, address);
    times.warm.push(await firstCells(context, address, given));
    await context.close();
  }
  return (['look', 'grid'] as const).flatMap((mark) =>
    (['cold', 'warm'] as const).map((cache) => {
      const title = `${marks[mark]}: ${given.name}, ${cache}`;
      return timesRow(
        title,
        times[cache].map((one) => one[mark]),
        { atMost: given.wanted[cache] },
      );
    }),
  );
}

/** Time from opening the workbench to the first computed cell, over a fast and a slow connection and machine. */
export async function firstCellTable(): Promise<string> {
  const server = await serveSite({ folder: 'dist', port: 4770, morePorts: 20, isFar: true });
  try {
    return await inBrowser(async (browser) => {
      const rows: (readonly string[])[] = [];
      for (const given of conditions) rows.push(...(await measured(browser, server.address, given)));
      return textTable(['first cell of the workbench', 'ms, median of 10', 'slowest', 'wanted'], rows);
    });
  } finally {
    await server.close();
  }
}
