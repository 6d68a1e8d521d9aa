import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { hostile } from '../workbooks/hostile-table';
import { cells, type OpenPage, openWorkbench, withoutSaving } from './open-workbench';
import { servedSite } from './served-site';

const folder = mkdtempSync(join(tmpdir(), 'hostile-'));

const site = servedSite();
let open: OpenPage;
let page: Page;

beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
  page = open.page;
  await type(10.5);
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const height = { sheet: 'Drums', row: 4, column: 6, rows: 1, columns: 1 };
const angle = { sheet: 'Patterns', row: 4, column: 1, rows: 1, columns: 1 };

async function type(inches: number): Promise<void> {
  await page.evaluate(
    (value) => window.workbench.host.write([{ sheet: 'Drums', row: 4, column: 6, cells: [[value]] }]),
    inches,
  );
}

/** The wall's angle that the sheet computes from the height. */
async function computed(): Promise<number> {
  await page.evaluate(() => window.workbench.spreadsheet.settled());
  const [[value] = []] = (await cells(page, angle)).values;
  return Number(value);
}

/** The page says one sentence about the file and keeps what was open, unsaved work included. */
async function refused(name: string, sentence: RegExp): Promise<void> {
  await page.evaluate(() => {
    document.getElementById('notice')!.textContent = '';
  });
  const before = await page.evaluate(() => window.workbench.host.sheets());
  await withoutSaving(page, () => page.setInputFiles('#open', join(folder, name)));
  const said = (await page.textContent('#notice')) ?? '';
  expect(said).toMatch(sentence);
  expect(said.startsWith(`${name}: `)).toBe(true);
  expect(said.length).toBeLessThan(300);
  expect(await page.evaluate(() => window.workbench.host.sheets())).toEqual(before);
  expect(await page.textContent('#title')).toBe('cone-cut-plan.xlsx, not saved');
  expect(await page.inputValue('#samples')).toBe('US/cone-cut-plan.xlsx');
  expect(open.faults).toEqual([]);
}

test.each(hostile)('a file with %s is refused, and the work stays', async (_, make, sentence) => {
  writeFileSync(join(folder, 'from elsewhere.xlsx'), make());
  await refused('from elsewhere.xlsx', new RegExp(sentence.source.replace(/^\^/, '').replace(/\$$/, '')));
});

test('a file that is larger than memory is refused before it is read', async () => {
  writeFileSync(join(folder, 'large.xlsx'), '');
  truncateSync(join(folder, 'large.xlsx'), 20e9);
  await refused('large.xlsx', /the file is larger than 64 MB/);
});

test('after them all, a file that is never read to its end blocks no calculation, and can be stopped', async () => {
  await page.route('**/read-file.js', (route) =>
    route.fulfill({ contentType: 'text/javascript', body: 'onmessage = () => { for (;;); };' }),
  );
  writeFileSync(join(folder, 'endless.xlsx'), 'anything');
  await page.setInputFiles('#open', join(folder, 'endless.xlsx'));
  await page.getByRole('button', { name: 'Open without saving' }).click();
  const stop = page.getByRole('button', { name: 'Stop' });
  await stop.waitFor();
  expect(await page.textContent('#reading-text')).toBe('endless.xlsx is being read.');
  const [[now] = []] = (await cells(page, height)).values;
  const before = await computed();
  await type(Number(now) + 0.25);
  await expect.poll(computed).toBeGreaterThan(before);
  await stop.click();
  await page.waitForFunction(() => document.body.dataset.opening === undefined);
  expect(await page.textContent('#notice')).toBe('endless.xlsx: it was stopped; nothing was opened');
  expect(await page.locator('#reading').isVisible()).toBe(false);
  expect(await page.textContent('#title')).toBe('cone-cut-plan.xlsx, not saved');
  await page.unroute('**/read-file.js');
});
