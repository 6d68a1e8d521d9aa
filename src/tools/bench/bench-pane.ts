import type { Browser, Page } from 'playwright-core';
import { siteListener } from '../../command-line/serve-site';
import { textTable } from '../../command-line/text-table';
import { inBrowser, whileServing } from './bench-browser';
import { timesRow } from './bench-wanted';

const openings = 7;

/** What is typed letter by letter into the finder. */
const questions = ['how many drums', 'ammonia', 'when may i pick', 'pump stops', 'e', 'cone pattern'];

declare global {
  interface Window {
    /** When the pane could first be used, on the page's own clock. */
    paneUsable?: number;
  }
}

/** Runs in the page: records when a view can first be used, with its controls painted. */
function watchPane(): void {
  const watch = new MutationObserver(() => {
    const panel = document.querySelector('#pane [role=tabpanel]:not([hidden])');
    if (!panel?.querySelector('button, input, select')) return;
    watch.disconnect();
    requestAnimationFrame(() =>
      setTimeout(() => {
        window.paneUsable = performance.now();
      }),
    );
  });
  watch.observe(document, { childList: true, subtree: true });
}

/** Milliseconds from the arrival of the last of the pane's scripts to its first usable view. */
async function firstView(page: Page): Promise<number> {
  await page.waitForFunction(() => window.paneUsable !== undefined);
  return page.evaluate(() => {
    const loaded = performance.getEntriesByType('resource') as PerformanceResourceTiming[];
    const scripts = loaded.filter(({ name }) => /(?:task-pane|functions)\.js$/.test(name));
    return (window.paneUsable ?? NaN) - Math.max(...scripts.map(({ responseEnd }) => responseEnd));
  });
}

/** Milliseconds that the finder needs for each letter: to search, and to show and lay out the results. */
async function keystrokes(page: Page): Promise<readonly number[]> {
  await page.getByRole('tab', { name: 'Functions' }).click();
  // Before the texts of the functions are loaded, there is little to search.
  await page.waitForFunction(() => document.querySelector('.function-summary')?.textContent);
  return page.evaluate((asked) => {
    const sought = document.querySelector<HTMLInputElement>('#pane input[type=search]');
    if (sought === null) throw new Error('the Functions view has no search box');
    return asked.flatMap((question) => {
      sought.value = '';
      return [...question].map((letter) => {
        const start = performance.now();
        sought.value += letter;
        sought.dispatchEvent(new Event('input', { bubbles: true }));
        // Reading its place makes the browser lay out the page.
        document.body.getBoundingClientRect();
        return performance.now() - start;
      });
    });
  }, questions);
}

async function openPane(browser: Browser, site: string): Promise<Page> {
  // A context of its own has an empty cache.
  const context = await browser.newContext({ viewport: { width: 350, height: 720 } });
  const page = await context.newPage();
  // No Excel is around the page, so its library is replaced by an empty file and no network is needed.
  await page.route('https://**', (route) => route.fulfill({ contentType: 'text/javascript', body: '' }));
  await page.addInitScript(watchPane);
  await page.goto(`${site}task-pane.html`);
  return page;
}

/** How soon the pane can be used, and how fast its finder answers. */
export function paneTable(): Promise<string> {
  return whileServing(siteListener('dist'), (site) =>
    inBrowser(async (browser) => {
      const views: number[] = [];
      const letters: number[] = [];
      for (let i = 0; i < openings; i++) {
        const page = await openPane(browser, site);
        views.push(await firstView(page));
        letters.push(...(await keystrokes(page)));
        await page.context().close();
      }
      return textTable(
        ['pane', 'ms, median', 'slowest', 'wanted of the median'],
        [
          timesRow('first usable view after its scripts arrive', views, { below: 300 }),
          timesRow('finder, a letter typed', letters, { below: 16 }),
        ],
      );
    }),
  );
}
