/** Finds a Chromium-based browser for the browser tests, or installs one where that is possible. */
import { existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { installDebian, isDebianRoot, waitForInstallation } from '../install/debian';

/** Names a browser for the tests by its path. */
export const browserVariable = 'SILTSTEAD_BROWSER';

/** The first opens a page in a third of the time that the whole browser takes. */
const commandNames = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'microsoft-edge-stable',
  'microsoft-edge',
];

const macApplications = ['Google Chrome', 'Chromium', 'Microsoft Edge'].map(
  (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
);

const windowsPrograms = ['Google\\Chrome\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe'];

function isFile(path: string): boolean {
  return existsSync(path) && statSync(path).isFile();
}

/** Where browsers are usually installed, best first. */
export function usualPlaces(platform: NodeJS.Platform, environment: NodeJS.ProcessEnv): readonly string[] {
  if (platform === 'darwin') return macApplications;
  if (platform === 'win32') {
    const roots = [environment.PROGRAMFILES, environment['PROGRAMFILES(X86)'], environment.LOCALAPPDATA];
    return roots.flatMap((root) => (root === undefined ? [] : windowsPrograms.map((program) => `${root}\\${program}`)));
  }
  const folders = (environment.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return commandNames.flatMap((name) => folders.map((folder) => join(folder, name)));
}

/** The browser that is named or installed; undefined where there is none. */
export function installedBrowser(
  platform: NodeJS.Platform = process.platform,
  environment: NodeJS.ProcessEnv = process.env,
): string | undefined {
  const named = environment[browserVariable];
  if (named !== undefined && named !== '') {
    if (!isFile(named)) throw new Error(`${browserVariable} names ${named}, which is not a file`);
    return named;
  }
  return usualPlaces(platform, environment).find(isFile);
}

const advice = `install Chromium, Chrome or Edge, or set ${browserVariable} to the path of one`;

/** The path of a browser. Installs Debian's Chromium where none is there and it may; fails and says what to do otherwise. */
export async function findBrowser(): Promise<string> {
  waitForInstallation();
  const found = installedBrowser();
  if (found !== undefined) return found;
  if (!isDebianRoot()) throw new Error(`no browser for the browser tests: ${advice}`);
  process.stderr.write('No browser found; installing Chromium for the browser tests.\n');
  try {
    installDebian('chromium-headless-shell', advice);
  } catch {
    // Older systems have the whole browser only.
    installDebian('chromium', advice);
  }
  const installed = installedBrowser();
  if (installed === undefined) throw new Error(`Chromium was installed but is not on the path; ${advice}`);
  return installed;
}
