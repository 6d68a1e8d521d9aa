/** Finds a Chromium-based browser for the browser tests, or installs one where that is possible. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Names a browser for the tests by its path. */
export const browserVariable = 'SILTSTEAD_BROWSER';

const commandNames = [
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

function isDebianRoot(): boolean {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/etc/os-release')) return false;
  const release = readFileSync('/etc/os-release', 'utf8');
  // Ubuntu's package of that name is only a pointer to a snap.
  return /^ID(?:_LIKE)?=.*debian/m.test(release) && !/^ID="?ubuntu/m.test(release);
}

function run(command: string, args: readonly string[]): void {
  process.stderr.write(`${command} ${args.join(' ')}\n`);
  const { status, error } = spawnSync(command, args, {
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  if (status !== 0) throw new Error(`${command} failed${error === undefined ? '' : `: ${error.message}`}; ${advice}`);
}

const advice = `install Chromium, Chrome or Edge, or set ${browserVariable} to the path of one`;

/** The path of a browser. Installs Debian's Chromium where none is there and it may; fails and says what to do otherwise. */
export async function findBrowser(): Promise<string> {
  const found = installedBrowser();
  if (found !== undefined) return found;
  if (!isDebianRoot()) throw new Error(`no browser for the browser tests: ${advice}`);
  process.stderr.write('No browser found; installing Chromium for the browser tests.\n');
  run('apt-get', ['update', '-qq']);
  run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium']);
  const installed = installedBrowser();
  if (installed === undefined) throw new Error(`Chromium was installed but is not on the path; ${advice}`);
  return installed;
}
