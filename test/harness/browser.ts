import { type Browser, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';

/** How long a page is waited for; a slow or busy machine may need minutes for what a quick one does at once. */
export const pagePatience = 5 * 60_000;

/** The files that a process tests one after another share a browser, which ends with the process. */
let launched: Promise<Browser> | undefined;

/** The browser that was found for this run, without a page; it starts with the first file that asks for it. */
export function launchBrowser(): Promise<Browser> {
  launched ??= launch();
  return launched;
}

/** Closes the pages of a file, and their contexts with all that they keep. */
export async function closePages(browser: Browser | undefined): Promise<void> {
  await Promise.all(browser?.contexts().map((context) => context.close()) ?? []);
}

async function launch(): Promise<Browser> {
  const browser = await chromium.launch({
    executablePath: inject('browser'),
    // Chromium refuses its sandbox to root, which is who runs tests in a container.
    chromiumSandbox: process.getuid?.() !== 0,
    // As many browsers as processors are at work, so threads that compile and tidy up beside a page gain no time; waking
    // them and taking memory back from them costs a fifth of all processor time.
    args: ['--js-flags=--single-threaded'],
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
