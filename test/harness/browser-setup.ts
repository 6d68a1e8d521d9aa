import { existsSync } from 'node:fs';
import type { TestProject } from 'vitest/node';
import { findBrowser } from '../../src/tools/browser/find-browser';

declare module 'vitest' {
  interface ProvidedContext {
    /** The path of the browser that browser tests drive. */
    browser: string;
  }
}

/** Finds or installs the browser once for all browser tests; where there is none, the whole run fails and says why. */
export async function setup(project: TestProject): Promise<void> {
  if (!existsSync('dist/functions.js')) throw new Error('dist is not built yet: npm run build');
  project.provide('browser', await findBrowser());
}
