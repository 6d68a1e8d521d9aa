import type { Page } from 'playwright-core';
import { expect, vi } from 'vitest';
import { pagePatience } from './browser';

/** Asks the page again and again until it agrees; a function that is awaited does not make `waitForFunction` wait. */
export async function until<Given = undefined>(
  page: Page,
  agrees: (given: Given) => Promise<boolean>,
  given?: Given,
): Promise<void> {
  // The page runs the function with what is given, as its own types cannot say.
  const ask = async () => expect(await page.evaluate(agrees as (given: unknown) => Promise<boolean>, given)).toBe(true);
  await vi.waitFor(ask, { timeout: pagePatience });
}
