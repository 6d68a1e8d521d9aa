/** Takes the pictures of the README from the present workbench: `npm run pictures`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { serveSite } from '../../command-line/serve-site';
import type { Place } from '../../hosts/sheet-host';
import { findBrowser } from '../browser/find-browser';

interface Picture {
  readonly file: string;
  readonly sample: string;
  /** What is selected: a sheet and one cell, counted from 0. */
  readonly cell: readonly [sheet: string, row: number, column: number];
  /** Text in the caption of the drawing to wait for. */
  readonly caption: string;
}

const pictures: readonly Picture[] = [
  { file: 'workbench', sample: 'US/cone-cut-plan', cell: ['Patterns', 4, 1], caption: 'Fern: cone pattern' },
  { file: 'cut-plan', sample: 'US/cone-cut-plan', cell: ['Cut plan', 7, 0], caption: 'Cut plan' },
  { file: 'scenarios', sample: 'US/stocking-scenarios', cell: ['Compare', 4, 3], caption: ': train' },
];

const folder = join('src', 'manual', 'pictures');

/** Milliseconds after which nothing moves any more once the drawing is there. */
const toRest = 1_500;

async function takePicture(page: Page, { file, sample, cell, caption }: Picture): Promise<void> {
  await openSample(page, sample);
  const [sheet, row, column] = cell;
  const place: Place = { sheet, range: { row, column, rows: 1, columns: 1 } };
  // The page has its sheet host under this name.
  await page.evaluate(`workbench.host.select(${JSON.stringify(place)})`);
  await page.locator('#pane figcaption', { hasText: caption }).waitFor();
  await keep(page, file);
}

async function keep(page: Page, file: string): Promise<void> {
  await page.mouse.move(0, 0);
  await page.waitForTimeout(toRest);
  const bytes = await page.screenshot();
  writeFileSync(join(folder, `${file}.png`), bytes);
  process.stdout.write(`${file}.png ${Math.round(bytes.length / 1024)} kB\n`);
}

/** A tape’s readings of a drum, by the labels of the guide. */
const readings = [
  ['A name for the drum', 'Alder'],
  ['What it held', 'cooking oil'],
  ['Inside diameter', '22 1/2'],
  ['Drain bore', '4'],
  ['Water above', '18 1/2'],
] as const;

/** The guided first job at its third step, the piece to mark and cut. */
async function takeFirstJob(page: Page): Promise<void> {
  await openSample(page, 'US/cone-cut-plan');
  await page.locator('#first-job').click();
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  for (const [label, text] of readings) await page.getByRole('textbox', { name: label }).first().fill(text);
  for (const step of ['Check', 'Pattern']) {
    await page.getByRole('button', { name: `Next: ${step}` }).click();
    await page.getByRole('heading', { name: new RegExp(`\\. ${step}$`) }).waitFor();
  }
  await page.locator('.step figure svg').waitFor();
  await keep(page, 'first-job');
}

/** Opens a sample in place of what is open; the workbench may ask about changes that nobody made by hand. */
async function openSample(page: Page, sample: string): Promise<void> {
  await page.selectOption('#samples', `${sample}.xlsx`);
  const state = await page.waitForFunction(() => {
    if (document.querySelector('dialog.asked') !== null) return 'asked';
    return document.body.dataset.opening === undefined ? 'open' : undefined;
  });
  if ((await state.jsonValue()) === 'asked') await page.getByRole('button', { name: 'Open without saving' }).click();
  await page.waitForFunction(
    (name) => document.getElementById('title')?.textContent === name && document.body.dataset.opening === undefined,
    `${fileOf(sample)}.xlsx`,
  );
}

function fileOf(sample: string): string {
  return sample.split('/').at(-1) ?? sample;
}

async function takePictures(): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const server = await serveSite({ folder: 'dist', port: 4650, morePorts: 20 });
  const browser = await chromium.launch({
    executablePath: await findBrowser(),
    chromiumSandbox: process.getuid?.() !== 0,
  });
  try {
    const page = await browser.newPage({ viewport: { width: 1480, height: 830 }, colorScheme: 'light' });
    await page.goto(`${server.address}workbench/`);
    await page.waitForSelector('body[data-ready]');
    for (const picture of pictures) await takePicture(page, picture);
    await takeFirstJob(page);
  } finally {
    await browser.close();
    await server.close();
  }
}

takePictures().catch((thrown: unknown) => {
  process.stderr.write(`${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
});
