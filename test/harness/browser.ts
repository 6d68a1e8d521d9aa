import { type Browser, chromium } from 'playwright-core';
import { inject } from 'vitest';

/** Starts the browser that was found for this run. */
export function launchBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: inject('browser'),
    // Chromium refuses its sandbox to root, which is who runs tests in a container.
    chromiumSandbox: process.getuid?.() !== 0,
  });
}
