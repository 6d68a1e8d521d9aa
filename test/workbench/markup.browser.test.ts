import { readFileSync } from 'node:fs';
import { DOMParser } from '@xmldom/xmldom';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readDxf } from '../drawing/read-dxf';
import { launchBrowser } from '../harness/browser';
import { type OpenPage, openWorkbench, serveWorkbench, withoutSaving } from './open-workbench';

/** Would run, and ask another machine, wherever it was taken for markup. */
const nasty = '<img src=x onerror=hacked()>';
/** Would end a text and begin something else in a drawing file. */
const breaking = `${nasty}"]]><script>hacked()</script>\n0\nLINE\n) /JS (hacked())`;

let browser: Browser;
let server: Awaited<ReturnType<typeof serveWorkbench>>;
let open: OpenPage;
let page: Page;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveWorkbench()]);
  open = await openWorkbench(browser, server.address);
  page = open.page;
  await page.evaluate(() =>
    Object.assign(window, { hacked: () => document.documentElement.setAttribute('data-hacked', '') }),
  );
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

async function saved(button: string): Promise<Buffer> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return readFileSync(await download.path());
}

/** Nothing became an element, ran, or asked any other machine. */
async function nothingGotThrough(): Promise<void> {
  expect(await page.locator('img[src="x"], script:not([src])').count()).toBe(0);
  expect(await page.evaluate(() => document.documentElement.hasAttribute('data-hacked'))).toBe(false);
  expect(open.requests.filter((url) => !url.startsWith(server.address) && !/^(data|blob):/.test(url))).toEqual([]);
  expect(open.faults).toEqual([]);
}

test('text of cells is text in the pane, the lines above the grid, and every drawing file', async () => {
  await page.evaluate(
    ([name, size]) =>
      window.workbench.host.write([
        { sheet: 'Drums', row: 4, column: 0, cells: [[name ?? '']] },
        { sheet: 'Drums', row: 5, column: 2, cells: [[size ?? '']] },
      ]),
    [breaking, nasty],
  );
  await page.locator('#caution-line', { hasText: nasty }).waitFor();
  await page.locator('#tab-checks').click();
  await page.locator('.findings li', { hasText: nasty }).first().waitFor();
  await page.locator('#tab-drawings').click();
  await page.evaluate(() =>
    window.workbench.host.select({ sheet: 'Patterns', range: { row: 4, column: 1, rows: 1, columns: 1 } }),
  );
  await page.locator('figcaption', { hasText: nasty }).waitFor();

  const svg = new DOMParser().parseFromString((await saved('Save SVG')).toString(), 'image/svg+xml');
  expect(['script', 'img', 'image', 'foreignObject'].flatMap((tag) => [...svg.getElementsByTagName(tag)])).toEqual([]);
  const { layers } = readDxf((await saved('Save DXF')).toString());
  expect(layers).toEqual(expect.arrayContaining(['cut']));
  expect((await saved('Save PDF')).toString('latin1')).not.toMatch(/\/(?:JS|JavaScript|Launch|OpenAction)\b/);
  await nothingGotThrough();
});

test('names of sheets and files are text', async () => {
  await page.evaluate((name) => window.workbench.host.addSheet(name), nasty);
  await page.evaluate(
    (name) =>
      window.workbench.host.write([
        { sheet: name, row: 0, column: 0, cells: [['=SILT.UNIT.READ("US","dimension","<b>4</b> in")']] },
      ]),
    nasty,
  );
  await page.locator('#tab-checks').click();
  await page
    .getByRole('button', { name: `Go to ${nasty}!A1` })
    .first()
    .waitFor();
  const bytes = [...readFileSync('sample-workbooks/US/water-book.xlsx')];
  await withoutSaving(page, () =>
    page.evaluate(
      ([content, name]) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([new Uint8Array(content)], `${name}.xlsx`));
        window.dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, cancelable: true }));
      },
      [bytes, nasty] as const,
    ),
  );
  expect(await page.textContent('#title')).toBe(`${nasty}.xlsx`);
  expect(await page.title()).toContain(nasty);
  await nothingGotThrough();
});
