import type { Browser, BrowserContext, Page } from 'playwright-core';
import { vi } from 'vitest';
import { type RunningServer, serveSite } from '../../src/command-line/serve-site';
import type { PieceSearchHolder } from '../../src/formulas/cut/lay-pieces-later';
import type { Block, SheetHost } from '../../src/hosts/sheet-host';
import type { ConditionColors } from '../../src/hosts/univer/condition-colors';
import type { Spreadsheet } from '../../src/hosts/univer/spreadsheet';
import type { ChartPanel } from '../../src/workbench/charts/chart-panel';
import { shortShare } from '../functions/short-searches';
import { pagePatience } from '../harness/browser';
import { until } from '../harness/until';

/** What the page leaves for tests. */
declare global {
  interface Window {
    workbench: {
      readonly host: SheetHost;
      readonly spreadsheet: Spreadsheet;
      readonly charts: ChartPanel;
      readonly conditions: ConditionColors;
    };
  }
}

/** Serves the site as `npm start` does, from what has been built. */
export function serveWorkbench(): Promise<RunningServer> {
  return serveSite({ folder: 'dist', port: 4710, morePorts: 20 });
}

export interface OpenPage {
  readonly page: Page;
  /** Every address that the page asked for. */
  readonly requests: readonly string[];
  /** What went wrong in the page. */
  readonly faults: readonly string[];
}

export interface OpenOptions {
  readonly dark?: boolean;
}

/**
 * Shortens every search for a cut plan in the pages of a context, as `withShortSearches` does outside of a page: most
 * tests change a drum only to see that something is calculated, and the search takes as long as opening the page.
 */
export function shortenSearches(context: BrowserContext): Promise<unknown> {
  return context.addInitScript((share) => {
    let search: PieceSearchHolder['siltsteadLayPieces'];
    Object.defineProperty(window, 'siltsteadLayPieces', {
      get: () => search,
      set: (whole: NonNullable<typeof search>) => {
        search = (pieces, options) => whole(pieces, { ...options, effort: share * options.effort });
      },
    });
  }, shortShare);
}

/** Opens the workbench in a page of its own and waits until it can be used. */
export async function openWorkbench(
  browser: Browser,
  address: string,
  { dark = false }: OpenOptions = {},
): Promise<OpenPage> {
  const context = await browser.newContext({
    viewport: { width: 1400, height: 800 },
    colorScheme: dark ? 'dark' : 'light',
    acceptDownloads: true,
    // Its own tests see to the copies that are kept for use without a network.
    serviceWorkers: 'block',
  });
  // A busy machine takes long to load a page; what never comes ends with the test's own time.
  context.setDefaultTimeout(150_000);
  await shortenSearches(context);
  const page = await context.newPage();
  const requests: string[] = [];
  const faults: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  await page.goto(`${address}workbench/`);
  await page.waitForSelector('body[data-ready]');
  return { page, requests, faults };
}

/** Does what opens another workbook, and lets go of changes that are not saved. */
export async function withoutSaving(page: Page, open: () => Promise<unknown>): Promise<void> {
  await open();
  const now = await page.waitForFunction(() => {
    if (document.querySelector('dialog.asked') !== null) return 'asked';
    return document.body.dataset.opening === undefined ? 'open' : undefined;
  });
  if ((await now.jsonValue()) === 'asked') await page.getByRole('button', { name: 'Open without saving' }).click();
  await page.waitForFunction(() => document.body.dataset.opening === undefined);
}

/** Opens a sample in place of what is open, without saving that. */
export function chooseSample(page: Page, path: string): Promise<void> {
  return withoutSaving(page, () => page.locator('#samples').selectOption(path));
}

/** Where the middle of a cell is on the page, for the standard sizes of a blank sheet. */
export async function cellPoint(page: Page, row: number, column: number): Promise<{ x: number; y: number }> {
  // The grid is by far the largest of the canvases; the others are those of the cell and formula editors.
  const box = await page.$$eval('#grid canvas', (canvases) =>
    canvases
      .map((canvas) => canvas.getBoundingClientRect())
      .reduce((one, other) => (other.width * other.height > one.width * one.height ? other : one))
      .toJSON(),
  );
  // The canvas starts with the row and column headings; cells of a blank sheet are 88 by 24 pixels.
  return { x: box.x + 46 + 88 * column + 44, y: box.y + 20 + 24 * row + 12 };
}

/** Clicks a cell and waits until it is the one that is selected. */
export async function clickCell(page: Page, row: number, column: number): Promise<void> {
  const { x, y } = await cellPoint(page, row, column);
  await page.mouse.click(x, y);
  await until(
    page,
    async ([down, across]) => {
      const { range } = await window.workbench.host.selection();
      return range.row === down && range.column === across;
    },
    [row, column] as const,
  );
}

/** Waits until the page has shown what it last did. */
export async function shown(page: Page): Promise<void> {
  await page.evaluate(
    () => new Promise<void>((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => resolve()))),
  );
}

/** Reads cells through the page's own door, once they satisfy `until`. */
export async function cells(
  page: Page,
  place: { sheet: string; row: number; column: number; rows: number; columns: number },
  until: (block: Block) => boolean = () => true,
): Promise<Block> {
  return vi.waitFor(
    async () => {
      const block = await page.evaluate(({ sheet, ...range }) => window.workbench.host.read({ sheet, range }), place);
      if (until(block)) return block;
      throw new Error(`the cells did not come to what was waited for: ${JSON.stringify(block.values)}`);
    },
    { timeout: pagePatience },
  );
}

/** A blank workbook in place of the sample that the page opens with. */
export async function openBlank(page: Page): Promise<void> {
  await page.evaluate(() => window.workbench.spreadsheet.open({ sheets: [{ name: 'Sheet 1', cells: [] }] }));
  await shown(page);
}
