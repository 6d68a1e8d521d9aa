/**
 * A cut plan that is at hand is not searched for again. The tests show which plan was used by giving it a length that no
 * search would find.
 */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { BuiltPlans } from '../../src/workbench/kept-plans';
import { cells } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();

/** E5 of the plan, the length used of the last sheet; 96 in is a whole sheet. */
const lengthUsed = { sheet: 'Cut plan', row: 4, column: 4, rows: 1, columns: 1 };
const inch = 0.0254;

const builtPlans = async (): Promise<BuiltPlans> => (await fetch(`${site.address}workbench/cut-plans.json`)).json();

function marked({ script, plans }: BuiltPlans, length: number): BuiltPlans {
  return {
    script,
    plans: plans.map(([name, plan]) => [name, { ...plan, sheets: { ...plan.sheets, lengthUsed: length } }]),
  };
}

/** Opens the first sample with these plans from the site, and these in the browser's store. */
async function opened(page: Page, fromSite: BuiltPlans | undefined, stored?: BuiltPlans): Promise<number> {
  await page.route('**/workbench/cut-plans.json', (route) =>
    fromSite === undefined ? route.fulfill({ status: 404 }) : route.fulfill({ json: fromSite }),
  );
  await page.goto(`${site.address}privacy.html`);
  await page.evaluate((text) => {
    if (text === undefined) localStorage.clear();
    else localStorage.setItem('siltstead cut plans', text);
  }, stored && JSON.stringify(stored));
  await page.goto(`${site.address}workbench/`);
  await page.waitForSelector('body[data-ready]');
  const { values } = await cells(page, lengthUsed, (block) => Number(block.values[0]?.[0]) > 0);
  return Number(values[0]?.[0]);
}

test('plans come from the build, are kept when the page is left, those of changed cells too, and are searched for if lost', async () => {
  const built = await builtPlans();
  const context = await site.browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  expect(await opened(page, marked(built, 11 * inch))).toBeCloseTo(11, 9);
  await page.evaluate(() =>
    window.workbench.host.write([
      {
        sheet: 'Cut plan',
        row: 4,
        column: 7,
        cells: [['=SILT.CUT.SHEETS(SiltUnits,SILT.CONE.PATTERN(SiltUnits,20,4,7,2,0.5),96,48)']],
      },
    ]),
  );
  await cells(page, { ...lengthUsed, column: 11 }, (block) => Number(block.values[0]?.[0]) > 0);
  await page.goto(`${site.address}privacy.html`);
  const stored = JSON.parse(
    (await page.evaluate(() => localStorage.getItem('siltstead cut plans'))) ?? '{}',
  ) as BuiltPlans;
  expect(stored.script).toBe(built.script);
  expect(stored.plans.map(([name]) => name)).toContain(built.plans[0]?.[0]);
  expect(stored.plans).toHaveLength(built.plans.length + 1);
  expect(await opened(page, { script: built.script, plans: [] }, marked(stored, 12 * inch))).toBeCloseTo(12, 9);
  const found = Number(built.plans[0]?.[1].sheets.lengthUsed) / inch;
  expect(await opened(page, { script: built.script, plans: [] })).toBeCloseTo(found, 9);
  await context.close();
});
