import { type Browser, chromium, type Page } from 'playwright-core';
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

/**
 * Shows a page in the widest of the usual letters, which a computer with few fonts takes; where that font is lacking, the
 * letters are set apart as far.
 */
export async function inWideLetters(page: Page): Promise<void> {
  await page.evaluate(() => {
    const { style } = document.documentElement;
    if (document.fonts.check('14px "DejaVu Sans"', 'a')) style.setProperty('font-family', '"DejaVu Sans"');
    else style.setProperty('letter-spacing', '0.07em');
  });
}
