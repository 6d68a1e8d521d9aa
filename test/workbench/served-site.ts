import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import type { RunningServer } from '../../src/command-line/serve-site';
import { closePages, launchBrowser } from '../harness/browser';
import { serveWorkbench } from './open-workbench';

/** A browser and the served site, for all tests of a file. */
export interface ServedSite {
  readonly browser: Browser;
  readonly address: string;
}

/** Starts a browser and serves the site before the tests of the file that calls it, and ends both after them. */
export function servedSite(): ServedSite {
  let browser: Browser;
  let server: RunningServer;
  beforeAll(async () => {
    [browser, server] = await Promise.all([launchBrowser(), serveWorkbench()]);
  });
  afterAll(async () => {
    await closePages(browser);
    await server?.close();
  });
  return {
    get browser() {
      return browser;
    },
    get address() {
      return server.address;
    },
  };
}
