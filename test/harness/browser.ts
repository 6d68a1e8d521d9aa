import { type Browser, chromium } from 'playwright-core';
import { inject } from 'vitest';

/** How long a page is waited for; a slow or busy machine may need minutes for what a quick one does at once. */
export const pagePatience = 5 * 60_000;

/** Starts the browser that was found for this run. */
export async function launchBrowser(): Promise<Browser> {
  const browser = await chromium.launch({
    executablePath: inject('browser'),
    // Chromium refuses its sandbox to root, which is who runs tests in a container.
    chromiumSandbox: process.getuid?.() !== 0,
    timeout: pagePatience,
  });
  browser.on('context', (context) => context.setDefaultTimeout(pagePatience));
  return browser;
}
