/** Draws the add-in's icons in every size from their one source: `npm run icons`. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { findBrowser } from '../browser/find-browser';

/** The sizes, in pixels, that Excel asks for at its various scales. */
const iconSizes = [16, 20, 24, 32, 40, 48, 64, 80, 96, 128, 192, 512] as const;

const folder = join(process.cwd(), 'src/task-pane/icons');

async function drawIcons(): Promise<void> {
  const source = readFileSync(join(folder, 'drum.svg')).toString('base64');
  const browser = await chromium.launch({
    executablePath: await findBrowser(),
    chromiumSandbox: process.getuid?.() !== 0,
  });
  const page = await browser.newPage();
  for (const size of iconSizes) {
    await page.setViewportSize({ width: size, height: size });
    await page.setContent(
      `<body style="margin:0"><img style="display:block" width="${size}" src="data:image/svg+xml;base64,${source}">`,
    );
    await page.locator('img').evaluate((image: HTMLImageElement) => image.decode());
    writeFileSync(join(folder, `icon-${size}.png`), await page.screenshot({ omitBackground: true }));
  }
  await browser.close();
}

void drawIcons();
