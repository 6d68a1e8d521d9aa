import { readFileSync } from 'node:fs';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const source = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');

/** The rules whose outcome follows the theme and the width of a page. */
export const rulesOfLooks = ['color-contrast', 'target-size', 'scrollable-region-focusable'] as const;

/**
 * What axe finds on the page as it is shown, rules of WCAG 2.2 AA and good practice, as `rule: element`. A page that was
 * looked at by all rules in one theme and width needs only some of them in another.
 */
export async function axeFindings(page: Page, rules?: readonly string[]): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(source);
  const { passes, findings } = await page.evaluate(async (some) => {
    const results: AxeResults = await (window as unknown as { axe: typeof import('axe-core') }).axe.run({
      resultTypes: ['violations'],
      // A rule of WCAG 2.2 that axe leaves off.
      rules: { 'target-size': { enabled: true } },
      ...(some === undefined ? {} : { runOnly: [...some] }),
    });
    const findings = results.violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html }) => `${id}: ${html.slice(0, 200)}`),
    );
    // All that axe knows of the page would take longer to get out of it than to find.
    return { passes: results.passes.length, findings };
  }, rules);
  if (passes === 0) throw new Error('axe has looked at nothing');
  return findings;
}
