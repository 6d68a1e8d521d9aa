import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { closePages, launchBrowser } from './harness/browser';
import { cells, chooseSample, withoutSaving } from './workbench/open-workbench';

/** A server that knows files and nothing else, as the simplest hosts do, with the site in a folder of its own. */
const prefix = '/x/y/';
const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};
const folder = mkdtempSync(join(tmpdir(), 'site-'));
const asked: { readonly path: string; readonly status: number }[] = [];
const outside: string[] = [];
const faults: string[] = [];
/** Files of a version to come, which the server gives in place of those of dist. */
const nextVersion = new Map<string, string>();
let server: Server;
let site: string;
let browser: Browser;
let context: BrowserContext;

const siteFiles = (): string[] =>
  readdirSync('dist', { recursive: true, encoding: 'utf8' })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => statSync(join('dist', name)).isFile())
    .sort();

beforeAll(async () => {
  server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    const name = path.startsWith(prefix) ? path.slice(prefix.length) : '../none';
    const file = join('dist', name.endsWith('/') || name === '' ? `${name}index.html` : name);
    const isThere = existsSync(file) && statSync(file).isFile();
    asked.push({ path, status: isThere ? 200 : 404 });
    response.writeHead(isThere ? 200 : 404, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
    response.end(isThere ? (nextVersion.get(name) ?? readFileSync(file)) : '');
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  site = `http://127.0.0.1:${(server.address() as AddressInfo).port}${prefix}`;
  browser = await launchBrowser();
  context = await browser.newContext({ acceptDownloads: true, viewport: { width: 1400, height: 800 } });
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) => console.error(`policy: ${event.violatedDirective}`));
  });
  context.on('request', (request) => {
    if (!request.url().startsWith(site) && !/^(data|blob):/.test(request.url())) outside.push(request.url());
  });
  context.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
});

afterAll(async () => {
  await closePages(browser);
  server?.close();
  rmSync(folder, { recursive: true });
});

/** The addresses that a page names, as its browser reads them. */
async function linksOf(page: Page): Promise<string[]> {
  return page.$$eval('[href], [src]', (elements) =>
    elements.map((element) => {
      const { href, src } = element as HTMLAnchorElement & HTMLImageElement;
      return String(href ?? src).replace(/#.*/, '');
    }),
  );
}

async function openWorkbench(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${site}workbench/`);
  await page.waitForSelector('body[data-ready]');
  return page;
}

/** Presses something that saves a file, and gives what was saved. */
async function saved(page: Page, press: () => Promise<void>): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

describe('the site in a folder of a server that knows only files', () => {
  test('has every file that one of its pages links to', () => {
    const pages = siteFiles().filter((name) => name.endsWith('.html') && !/^(task-pane|workbench\/)/.test(name));
    expect(pages).toContain('index.html');
    for (const name of pages) {
      const source = readFileSync(join('dist', name), 'utf8');
      for (const [, address = ''] of source.matchAll(/\s(?:href|src)="([^"]*)"/g)) {
        expect(address, name).not.toMatch(/^(\/|https?:|javascript:)/);
        if (address.startsWith('#')) continue;
        const target = new URL(address, `http://site/${name}`).pathname.slice(1);
        expect(existsSync(join('dist', target)), `${name} leads to ${address}`).toBe(true);
      }
    }
  });

  test('leads from its first page to a workbench that computes, and every request is answered', async () => {
    const page = await context.newPage();
    await page.goto(site);
    await page.getByRole('link', { name: 'Open the workbench' }).click();
    await page.waitForSelector('body[data-ready]');
    await page.evaluate(() =>
      window.workbench.host.write([
        { sheet: 'Drums', row: 60, column: 0, cells: [['=SILT.CONE.ANGLE("US",22.5,4,9.25)']] },
      ]),
    );
    await cells(
      page,
      { sheet: 'Drums', row: 60, column: 0, rows: 1, columns: 1 },
      ({ values }) => Math.abs(Number(values[0]![0]) - 45) < 1e-9,
    );
    for (const link of await linksOf(page)) expect(link.startsWith(site), link).toBe(true);
    // Everything is kept once the service worker is active.
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.close();
    expect(asked.filter(({ status }) => status !== 200)).toEqual([]);
    expect(outside).toEqual([]);
    expect(faults).toEqual([]);
  });

  test('keeps at most 3 MB as it travels, and nothing that Excel loads', async () => {
    const page = await context.newPage();
    await page.goto(`${site}support.html`);
    const kept = await page.evaluate(async () => {
      const names = await caches.keys();
      const requests = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
      return requests.flat().map(({ url }) => url);
    });
    await page.close();
    const names = kept.map((url) => new URL(url).pathname.slice(prefix.length));
    expect(names).toContain('workbench/index.html');
    expect(names.filter((name) => /^[^/]*\.(js|json|xml|css)$/.test(name)).sort()).toEqual(['offline.js', 'site.css']);
    expect(names.filter((name) => /task-pane\.html|^manifest/.test(name))).toEqual([]);
    const bytes = names.map((name) => gzipSync(readFileSync(join('dist', name))).length);
    expect(bytes.reduce((sum, one) => sum + one, 0)).toBeLessThanOrEqual(3_000_000);
  });

  test('stays at its version until the user updates, and then changes every file at once', async () => {
    const [page, other] = [await openWorkbench(), await openWorkbench()];
    const file = 'support.html';
    const kept = () => page.evaluate(async (name) => (await fetch(`../${name}`)).text(), file);
    const before = await kept();
    nextVersion.set(file, before.replace('<h1>Help</h1>', '<h1>Help, revised</h1>'));
    const script = readFileSync('dist/service-worker.js', 'utf8');
    nextVersion.set(
      'service-worker.js',
      script.replace(
        /("support\.html","?revision"?:")[0-9a-f]{16}|(url":"support\.html","revision":")[0-9a-f]{16}/,
        '$1$2revised-revised-',
      ),
    );
    expect(nextVersion.get('service-worker.js')).not.toBe(script);
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await page.waitForSelector('#update:not([hidden])');
    expect(await kept()).toBe(before);
    await page.click('#update-now');
    await page.getByText('Another page of the workbench is open').waitFor();
    expect(await kept()).toBe(before);
    await other.close();
    await Promise.all([page.waitForEvent('load'), page.click('#update-now')]);
    await page.waitForSelector('body[data-ready]');
    expect(await kept()).toContain('Help, revised');
    await page.close();
  });

  test('opens, computes, saves, opens again and draws with the server gone', async () => {
    const reader = await context.newPage();
    await reader.goto(`${site}reference/cone.pattern.html`);
    await reader.close();
    await new Promise<void>((closed) => {
      server.close(() => closed());
      server.closeAllConnections();
    });
    asked.length = 0;
    const page = await openWorkbench();
    await chooseSample(page, 'metric/cone-cut-plan.xlsx');
    const place = { sheet: 'Drums', row: 4, column: 0, rows: 1, columns: 1 };
    await cells(page, place, ({ values }) => values[0]![0] !== '');
    await page.evaluate(() =>
      window.workbench.host.write([{ sheet: 'Drums', row: 4, column: 0, cells: [['Written offline']] }]),
    );
    const workbook = await saved(page, () => page.click('#save'));
    const file = join(folder, 'again.xlsx');
    writeFileSync(file, workbook.bytes);
    await chooseSample(page, 'US/water-book.xlsx');
    await withoutSaving(page, () => page.setInputFiles('#open', file));
    await page.waitForFunction(() => document.getElementById('title')?.textContent?.includes('again.xlsx'));
    await cells(page, place, ({ values }) => values[0]![0] === 'Written offline');
    await page.evaluate(() =>
      window.workbench.host.select({ sheet: 'Patterns', range: { row: 4, column: 1, rows: 1, columns: 1 } }),
    );
    await page.locator('#pane figcaption', { hasText: 'cone pattern' }).waitFor();
    const pdf = await saved(page, () => page.getByRole('button', { name: 'Save PDF' }).click());
    expect(pdf.bytes.subarray(0, 5).toString()).toBe('%PDF-');
    const dxf = await saved(page, () => page.getByRole('button', { name: 'Save DXF' }).click());
    expect(dxf.bytes.toString()).toContain('SECTION');
    await page.goto(`${site}reference/cone.pattern.html`);
    await expect.poll(() => page.textContent('h1')).toBe('SILT.CONE.PATTERN');
    // A reference page that was not looked at says why it is not there.
    await page.goto(`${site}reference/cone.angle.html`);
    expect(await page.textContent('body')).toContain('was not opened before');
    await page.goto(`${site}guide/cut.html`);
    expect(await page.textContent('h1')).toBe('Lay the pieces on sheets');
    await page.click('a[rel=next]');
    await page.getByRole('heading', { name: 'Buy what you need' }).waitFor();
    await page.close();
    expect(asked).toEqual([]);
    expect(faults.filter((fault) => !/ERR_CONNECTION|status of 503/.test(fault))).toEqual([]);
  });
});
