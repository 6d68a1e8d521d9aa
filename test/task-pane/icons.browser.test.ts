import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { closePages, launchBrowser } from '../harness/browser';

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launchBrowser();
  page = await browser.newPage();
});
afterAll(() => closePages(browser));

const folder = 'src/task-pane/icons';
const dataUrl = (name: string, type: string) =>
  `data:${type};base64,${readFileSync(`${folder}/${name}`).toString('base64')}`;

/** The mean difference a pixel and channel, of 255, between two images drawn at the same size. */
function difference(urls: readonly string[], size: number): Promise<number> {
  return page.evaluate(
    async ({ urls, size }) => {
      const drawn = await Promise.all(
        urls.map(async (url) => {
          const image = new Image(size, size);
          image.src = url;
          await image.decode();
          const canvas = new OffscreenCanvas(size, size).getContext('2d')!;
          canvas.drawImage(image, 0, 0, size, size);
          return canvas.getImageData(0, 0, size, size).data;
        }),
      );
      const total = drawn[0]!.reduce((sum, value, i) => sum + Math.abs(value - drawn[1]![i]!), 0);
      return total / drawn[0]!.length;
    },
    { urls, size },
  );
}

// Browsers soften edges each in their own way; a different drawing differs by tens.
test.each([16, 20, 24, 32, 40, 48, 64, 80, 96, 128])(
  'the icon of %i pixels is drawn from the one source',
  async (size) => {
    const urls = [dataUrl('drum.svg', 'image/svg+xml'), dataUrl(`icon-${size}.png`, 'image/png')];
    expect(await difference(urls, size)).toBeLessThan(4);
  },
);

test('the comparison notices a different drawing', async () => {
  const blank = 'data:image/svg+xml,<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"/>';
  expect(await difference([dataUrl('icon-128.png', 'image/png'), blank], 128)).toBeGreaterThan(20);
});
