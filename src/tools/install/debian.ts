import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Whether packages of Debian may be installed here. */
export function isDebianRoot(): boolean {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/etc/os-release')) return false;
  const release = readFileSync('/etc/os-release', 'utf8');
  // Ubuntu's browser package only points to a snap.
  return /^ID(?:_LIKE)?=.*debian/m.test(release) && !/^ID="?ubuntu/m.test(release);
}

function run(command: string, args: readonly string[], advice: string): void {
  process.stderr.write(`${command} ${args.join(' ')}\n`);
  const { status, error } = spawnSync(command, args, {
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  if (status !== 0) throw new Error(`${command} failed${error === undefined ? '' : `: ${error.message}`}; ${advice}`);
}

const lock = join(tmpdir(), 'siltstead-install.lock');

/** Waits for a process that installs: a program is on the path some time before all that it needs is there. */
export function waitForInstallation(): void {
  if (existsSync(lock)) spawnSync('flock', [lock, 'true']);
}

/**
 * Installs a package of Debian; where that fails, says what to do instead. Tests in two processes may want the same one:
 * the second waits until the first is done, because apt-get does not wait for all that it locks.
 */
export function installDebian(packageName: string, advice: string): void {
  run('flock', [lock, 'apt-get', 'update', '-qq'], advice);
  run('flock', [lock, 'apt-get', 'install', '-y', '-qq', '--no-install-recommends', packageName], advice);
}
