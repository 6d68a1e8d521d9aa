import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { installedBrowser, usualPlaces } from '../../../src/tools/browser/find-browser';

const folder = mkdtempSync(join(tmpdir(), 'browser-'));
const chrome = join(folder, 'google-chrome');
writeFileSync(chrome, '#!/bin/sh\n');
chmodSync(chrome, 0o755);
afterAll(() => rmSync(folder, { recursive: true }));

describe('the browser for the tests', () => {
  it('is the one that the environment names', () => {
    expect(installedBrowser('linux', { SILTSTEAD_BROWSER: chrome, PATH: '' })).toBe(chrome);
  });

  it('must exist if it is named', () => {
    const missing = join(folder, 'missing');
    expect(() => installedBrowser('linux', { SILTSTEAD_BROWSER: missing })).toThrow(`names ${missing}`);
  });

  it('is an installed one otherwise', () => {
    expect(installedBrowser('linux', { PATH: `/nowhere:${folder}` })).toBe(chrome);
    expect(installedBrowser('linux', { PATH: '/nowhere' })).toBeUndefined();
  });

  it('is searched where each system installs it', () => {
    expect(usualPlaces('darwin', {})).toContain('/Applications/Chromium.app/Contents/MacOS/Chromium');
    expect(usualPlaces('win32', { PROGRAMFILES: 'C:\\Program Files' })).toContain(
      'C:\\Program Files\\Microsoft\\Edge\\Application\\msedge.exe',
    );
  });
});
