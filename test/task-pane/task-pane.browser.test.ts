import { existsSync, readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { siteListener } from '../../src/command-line/serve-site';
import { closePages, launchBrowser } from '../harness/browser';

/** Microsoft's own office.js, as its package ships it, in the place of the one on its delivery network. */
const officeLibrary = 'https://appsforoffice.microsoft.com/lib/1/hosted/';
const officeFolder = 'node_modules/@microsoft/office-js/dist/';

let browser: Browser;
let server: Server;
let page: Page;
const complaints: string[] = [];
const outside: string[] = [];

beforeAll(async () => {
  server = createServer(siteListener('dist'));
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  browser = await launchBrowser();
  page = await browser.newPage();
  const site = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  await page.route(/.*/, (route) => {
    const address = route.request().url();
    if (address.startsWith(site)) return route.continue();
    const file = officeFolder + new URL(address).pathname.replace('/lib/1/hosted/', '');
    if (address.startsWith(officeLibrary) && existsSync(file)) {
      return route.fulfill({ body: readFileSync(file), contentType: 'text/javascript' });
    }
    outside.push(address);
    return route.abort();
  });
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(`${site}/task-pane.html`);
});

afterAll(async () => {
  await closePages(browser);
  server?.close();
});

test('the pane loads with the real office.js under its own content security policy', async () => {
  expect(await page.evaluate(() => typeof Office.onReady)).toBe('function');
  expect(complaints).toEqual([]);
});

test('the functions script is loaded when office.js is ready', async () => {
  const ready = await page.evaluate(() => Office.onReady().then(({ host }) => String(host)));
  expect(ready).toBe('null');
});

test('the page requests files only from its own site and Excel’s library', () => {
  expect(outside).toEqual([]);
});

test('outside Excel the pane says so and stays usable', async () => {
  await page.getByText('This page has no spreadsheet beside it').waitFor();
  await page.getByRole('tab', { name: 'Functions' }).click();
  await page.getByRole('searchbox').fill('density of water');
  await page.locator('[data-function="WATER.DENSITY"]').click();
  await page.getByLabel('units', { exact: true }).selectOption('metric');
  await page.getByRole('textbox', { name: /^temperature\b/ }).fill('20');
  // Kell 1975 gives 998.206 kg/m3 at 20 °C.
  await page.locator('.figure-result', { hasText: '998.20' }).waitFor();
  expect(complaints).toEqual([]);
});
