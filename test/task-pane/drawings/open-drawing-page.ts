import { readFileSync } from 'node:fs';
import { build } from 'esbuild';
import type { BrowserContext, Page } from 'playwright-core';

const site = 'https://drawing.test/';

/** As strict as the built pages'. */
const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; base-uri 'none'; form-action 'none'";

/** Opens the page that a drawing is handed over to, with a code behind `#`, bundled from the sources as they are. */
export async function openDrawingPage(context: BrowserContext, code: string): Promise<Page> {
  const { outputFiles } = await build({
    entryPoints: ['src/task-pane/drawing-page.ts'],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2022',
  });
  const files: Readonly<Record<string, readonly [type: string, body: string]>> = {
    '/drawing.html': ['text/html', readFileSync('src/task-pane/drawing.html', 'utf8')],
    '/task-pane.css': ['text/css', readFileSync('src/task-pane/task-pane.css', 'utf8')],
    '/drawings.css': ['text/css', readFileSync('src/task-pane/drawings.css', 'utf8')],
    '/drawing.js': ['text/javascript', outputFiles[0]!.text],
  };
  const page = await context.newPage();
  await page.route(/.*/, (route) => {
    const address = new URL(route.request().url());
    const file = `${address.origin}/` === site ? files[address.pathname] : undefined;
    if (file === undefined) return route.fulfill({ status: 404 });
    return route.fulfill({ contentType: file[0], body: file[1], headers: { 'content-security-policy': policy } });
  });
  await page.goto(`${site}drawing.html#${code}`);
  return page;
}
