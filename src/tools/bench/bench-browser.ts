import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type Browser, chromium } from 'playwright-core';
import { findBrowser } from '../browser/find-browser';

/** Starts a browser for one piece of work and ends it. */
export async function inBrowser<T>(work: (browser: Browser) => Promise<T>): Promise<T> {
  const browser = await chromium.launch({
    executablePath: await findBrowser(),
    // Chromium refuses its sandbox to root, and benches in a container run as root.
    chromiumSandbox: process.getuid?.() !== 0,
  });
  try {
    return await work(browser);
  } finally {
    await browser.close();
  }
}

/** Serves pages to this machine for one piece of work. */
export async function whileServing<T>(listener: RequestListener, work: (site: string) => Promise<T>): Promise<T> {
  const server = createServer(listener);
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  try {
    return await work(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  } finally {
    server.close();
    server.closeAllConnections();
  }
}

/** The middle one of some figures. */
export function median(figures: readonly number[]): number {
  const sorted = [...figures].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
