import { readFileSync } from 'node:fs';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const source = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');

/** What axe finds on the page as it is shown, rules of WCAG 2.2 AA and good practice, as `rule: element`. */
export async function axeFindings(page: Page): Promise<readonly string[]> {
  await page.evaluate(source);
  const { violations } = await page.evaluate(
    (): Promise<AxeResults> => (window as unknown as { axe: typeof import('axe-core') }).axe.run(),
  );
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 200)}`));
}
