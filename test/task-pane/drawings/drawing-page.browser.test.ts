import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import { handOver } from '../../../src/task-pane/drawings/hand-over';
import type { DrawingRequest } from '../../../src/task-pane/drawings/request';
import { readPdf } from '../../drawing/read-pdf';
import { closePages, launchBrowser } from '../../harness/browser';
import { axeFindings } from '../axe';
import { openDrawingPage } from './open-drawing-page';

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => closePages(browser));
afterEach(() => page?.context().close());

async function show(code: string): Promise<void> {
  page = await openDrawingPage(await browser.newContext(), code);
}

function patterns(): DrawingRequest {
  const row = functionLibrary.catalogue.find(({ name }) => name === 'CONE.PATTERN')!;
  const adapted = functionLibrary.adapt(row, (_, message) => new Error(message));
  const rows = [24, 20].map((top) => adapted('US', top, 4, 9)[0] as (number | string)[]);
  return { what: 'patterns', units: 'US', rows, names: ['<i>Fern</i>', 'Moss'] };
}

test('a request in the address is drawn and saved, names from cells never markup', async () => {
  await show(await handOver(patterns()));
  await page.locator('figure svg').nth(1).waitFor();
  expect(await page.locator('h2').allTextContents()).toEqual([
    '<i>Fern</i>: cone pattern, cut 1',
    'Moss: cone pattern, cut 1',
  ]);
  expect(await axeFindings(page)).toEqual([]);
  await page.getByLabel('Size').selectOption('Fitted to one page');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save PDF' }).click(),
  ]);
  const pages = await readPdf(readFileSync((await download.path())!));
  expect(pages).toHaveLength(2);
});

test.each([
  ['', 'This page shows a drawing from the Siltstead task pane'],
  ['<script>', 'did not arrive complete'],
  ['AAAA', 'did not arrive complete'],
])('the code “%s” draws nothing and says why', async (code, sentence) => {
  await show(code);
  await page.getByText(sentence).waitFor();
  expect(await page.locator('svg').count()).toBe(0);
});

test('a row whose numbers do not agree is refused in a sentence', async () => {
  const request = patterns();
  if (request.what !== 'patterns') throw new Error(request.what);
  await show(await handOver({ ...request, units: 'metric' }));
  await page.getByText('row 1 was not made with metric').waitFor();
});

test('another drawing in the same window replaces the first', async () => {
  await show(await handOver(patterns()));
  await page.locator('figure svg').first().waitFor();
  const drum = await handOver({ what: 'drum', units: 'metric', figures: { drumDiameter: 570, depth: 600 } });
  await page.evaluate((code) => {
    location.hash = code;
  }, drum);
  await page.getByRole('heading', { name: 'Settling drum in section' }).waitFor();
});
