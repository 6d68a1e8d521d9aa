import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { build } from 'esbuild';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { functionsMetadata } from '../../src/functions/metadata';

const site = 'https://pane.test/';

/** As strict as the built pages', and nothing from elsewhere. */
const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; base-uri 'none'; form-action 'none'";

export interface OpenedPane {
  readonly page: Page;
  /** Whatever the browser complained about: errors of scripts, breaches of the policy, requests to elsewhere. */
  readonly complaints: string[];
}

let bundled: Promise<Readonly<Record<string, string>>> | undefined;

/** The pane's scripts by their addresses, bundled from the sources as they are; a view's own load when it is looked at. */
function bundle(): Promise<Readonly<Record<string, string>>> {
  bundled ??= build({
    entryPoints: { 'task-pane': 'test/task-pane/pane-page.ts' },
    bundle: true,
    splitting: true,
    minifyWhitespace: true,
    write: false,
    outdir: '/',
    format: 'esm',
    target: 'es2022',
  }).then(({ outputFiles }) => Object.fromEntries(outputFiles.map(({ path, text }) => [`/${basename(path)}`, text])));
  return bundled;
}

/** Opens the pane's own page, at the width that a pane has, without a server. */
export async function openPane(browser: Browser, options: BrowserContextOptions = {}): Promise<OpenedPane> {
  const scripts = await bundle();
  const markup = readFileSync('src/task-pane/task-pane.html', 'utf8')
    .replace(/<script src="(?:https:|functions)[^>]*><\/script>/g, '')
    .replace('<script src="task-pane.js"', '<script type="module" src="task-pane.js"');
  const files: Readonly<Record<string, readonly [type: string, body: string]>> = {
    '/task-pane.html': ['text/html', markup],
    '/task-pane.css': ['text/css', readFileSync('src/task-pane/task-pane.css', 'utf8')],
    '/drawings.css': ['text/css', readFileSync('src/task-pane/drawings.css', 'utf8')],
    '/functions.json': ['application/json', JSON.stringify(functionsMetadata())],
  };
  const context = await browser.newContext({ viewport: { width: 350, height: 720 }, ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error.stack)));
  await page.route(/.*/, (route) => {
    const address = new URL(route.request().url());
    const script = scripts[address.pathname];
    const own = script === undefined ? files[address.pathname] : (['text/javascript', script] as const);
    const file = address.origin === new URL(site).origin ? own : undefined;
    if (file === undefined) {
      if (address.pathname !== '/favicon.ico') complaints.push(`asked for ${address}`);
      return route.fulfill({ status: 404 });
    }
    const [contentType, body] = file;
    return route.fulfill({ contentType, body, headers: { 'content-security-policy': policy } });
  });
  await page.goto(`${site}task-pane.html`);
  await page.waitForFunction(() => 'paneTest' in window);
  return { page, complaints };
}

/** Long work in the page that goes on only as far as the test lets it. */
export interface HeldWork {
  /** Lets it go on to the next place where it lets the page breathe. */
  readonly goOn: () => Promise<void>;
  /** Lets it run to its end. */
  readonly release: () => Promise<void>;
}

/** Makes every piece of work stop each time it lets the page breathe, however fast the machine is. */
export async function holdWork(page: Page): Promise<HeldWork> {
  await page.evaluate(() => {
    const waiting: (() => void)[] = [];
    const plain = { setTimeout: window.setTimeout, now: performance.now };
    let clock = 0;
    // So that each step finds its share of time used up.
    performance.now = () => {
      clock += 1000;
      return clock;
    };
    window.setTimeout = ((call: () => void, ms?: number) =>
      ms === 0 ? waiting.push(call) : plain.setTimeout.call(window, call, ms)) as typeof setTimeout;
    const release = (): void => {
      window.setTimeout = plain.setTimeout;
      performance.now = plain.now;
      for (const call of waiting.splice(0)) call();
    };
    Object.assign(window, { heldWork: { goOn: () => waiting.shift()?.(), release } });
  });
  const call = (name: keyof HeldWork) =>
    page.evaluate((which) => (window as unknown as { heldWork: Record<string, () => void> }).heldWork[which]?.(), name);
  return { goOn: () => call('goOn'), release: () => call('release') };
}
