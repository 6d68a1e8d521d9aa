import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { serveSite } from '../../command-line/serve-site';
import { textTable } from '../../command-line/text-table';
import type { SheetHost } from '../../hosts/sheet-host';
import type { ConditionColors } from '../../hosts/univer/condition-colors';
import type { Spreadsheet } from '../../hosts/univer/spreadsheet';
import type { CellData, WorkbookData } from '../../hosts/workbook-model';
import type { ChartPanel } from '../../workbench/charts/chart-panel';
import { unitsNames, unitsSheet } from '../../workbooks/sheets/units-sheet';
import { inBrowser } from './bench-browser';
import { timesRow } from './bench-wanted';

declare global {
  interface Window {
    workbench: {
      readonly host: SheetHost;
      readonly spreadsheet: Spreadsheet;
      readonly charts: ChartPanel;
      readonly conditions: ConditionColors;
    };
  }
}

const rounds = 3;
const samples = 'sample-workbooks';

function largestSample(): { readonly path: string; readonly bytes: number } {
  const files = readdirSync(samples, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.xlsx'));
  const sized = files.map((path) => ({ path: path.replaceAll('\\', '/'), bytes: statSync(join(samples, path)).size }));
  return sized.reduce((one, other) => (other.bytes > one.bytes ? other : one));
}

async function openWorkbench(browser: Browser, address: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1400, height: 800 } });
  await page.goto(`${address}workbench/`);
  await page.waitForSelector('body[data-ready]');
  await settled(page);
  return page;
}

/** Waits until nothing is being computed any more. */
function settled(page: Page): Promise<unknown> {
  return page.evaluate(async () => {
    const [sheet = ''] = await window.workbench.host.sheets();
    return window.workbench.spreadsheet.evaluate(sheet, '=1');
  });
}

/** Milliseconds from choosing a sample to the results of its formulas in their cells; refuses results that are errors. */
async function openSample(page: Page, path: string): Promise<number> {
  const milliseconds = await page.evaluate(async (wanted) => {
    const { api } = window.workbench.spreadsheet;
    const list = document.getElementById('samples') as HTMLSelectElement;
    const start = performance.now();
    const applied = new Promise<number>((resolve) => {
      const listening = api.getFormula().calculationResultApplied(() => {
        listening.dispose();
        resolve(performance.now() - start);
      });
    });
    list.value = wanted;
    list.dispatchEvent(new Event('change'));
    return applied;
  }, path);
  await settled(page);
  const blocks = await page.evaluate(() => window.workbench.host.readUsed());
  const formulas = blocks.flatMap((block) => block.formulas.flat()).filter((formula) => formula?.includes('SILT.'));
  const faults = blocks.flatMap(({ values }) => values.flat()).filter((value) => typeof value === 'object');
  if (formulas.length === 0 || faults.length > 0) throw new Error(`${path} does not compute: ${faults.length} errors`);
  return milliseconds;
}

const inputs = 2000;

/** A workbook under US with many typed girths, in, and the diameter of each. */
function typedWorkbook(): WorkbookData {
  const cells = Array.from({ length: inputs }, (_, row): CellData[] => [
    { row, column: 0, value: 60 + row / 100 },
    { row, column: 1, formula: `=SILT.TANK.GIRTH(SiltUnits,A${row + 1})` },
  ]);
  return { sheets: [{ name: 'Drums', cells: cells.flat() }, unitsSheet('US')], names: unitsNames };
}

/**
 * Milliseconds from asking for other units until the typed numbers have been found, listed and converted and the last
 * diameter is 25.4 times as many mm as it was in.
 */
async function convertInputs(page: Page): Promise<number> {
  await page.evaluate((workbook) => window.workbench.spreadsheet.open(workbook), typedWorkbook());
  await settled(page);
  await page.locator('#tab-units').click();
  await page.locator('.banner .profile', { hasText: /^US$/ }).waitFor();
  await page.getByRole('radio', { name: /^Metric/ }).check();
  const place = { sheet: 'Drums', range: { row: inputs - 1, column: 1, rows: 1, columns: 1 } };
  return page.evaluate(
    async ({ convert, place, ratio }) => {
      const until = async (isSo: () => boolean | Promise<boolean>): Promise<void> => {
        while (!(await isSo())) await new Promise(requestAnimationFrame);
      };
      const button = (words: string) =>
        [...document.querySelectorAll('button')].find(({ textContent }) => textContent === words);
      const press = (words: string): void => {
        const pressed = button(words);
        if (pressed === undefined) throw new Error(`the pane has no button ${words}`);
        pressed.click();
      };
      const diameter = async () => Number((await window.workbench.host.read(place)).values[0]?.[0]);
      const wanted = (await diameter()) * ratio;
      const start = performance.now();
      press('Change units');
      await until(() => button(convert) !== undefined);
      press(convert);
      await until(async () => Math.abs((await diameter()) / wanted - 1) < 1e-9);
      return performance.now() - start;
    },
    { convert: `Change units and convert ${inputs}`, place, ratio: 25.4 },
  );
}

/** How long the workbench takes to open a sample and to convert what was typed. */
export async function workbenchTable(): Promise<string> {
  const server = await serveSite({ folder: 'dist', port: 4750, morePorts: 20 });
  const { path, bytes } = largestSample();
  try {
    return await inBrowser(async (browser) => {
      const [starts, opened, converted]: [number[], number[], number[]] = [[], [], []];
      for (let i = 0; i < rounds; i++) {
        const start = performance.now();
        const page = await openWorkbench(browser, server.address);
        starts.push(performance.now() - start);
        opened.push(await openSample(page, path));
        converted.push(await convertInputs(page));
        await page.close();
      }
      return textTable(
        ['workbench', 'ms, median', 'slowest', 'wanted of the median'],
        [
          timesRow('page with its first sample, recalculated', starts, {}),
          timesRow(`largest sample, ${path} (${(bytes / 1000).toFixed(0)} kB), recalculated`, opened, { below: 6000 }),
          timesRow(`${inputs.toLocaleString('en-US')} input cells found, converted, recalculated`, converted, {
            below: 2000,
          }),
        ],
      );
    });
  } finally {
    await server.close();
  }
}
