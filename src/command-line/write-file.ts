import {
  existsSync,
  lstatSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, resolve } from 'node:path';

/** Why a file cannot be written, in one sentence. */
export class CannotWrite extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'CannotWrite';
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOSPC: 'there is no room left on the disk',
  EDQUOT: 'your disk quota is used up',
  EFBIG: 'the file is too large for that disk',
  EACCES: 'you are not allowed to write there',
  EPERM: 'you are not allowed to write there',
  EROFS: 'the disk can only be read',
  ENAMETOOLONG: 'its name is too long',
  ENOENT: 'there is no such folder',
};

/** Follows a link to its file, so that writing keeps the link. */
function behindLink(path: string): string {
  try {
    if (!lstatSync(path).isSymbolicLink()) return path;
    return existsSync(path) ? realpathSync(path) : resolve(dirname(path), readlinkSync(path));
  } catch {
    return path;
  }
}

/** Whether two paths lead to one file. */
export function isSameFile(one: string, other: string): boolean {
  const [a, b] = [behindLink(one), behindLink(other)];
  if (a === b) return true;
  if (!existsSync(a) || !existsSync(b)) return false;
  const [is, was] = [statSync(a), statSync(b)];
  return is.ino === was.ino && is.dev === was.dev && is.ino !== 0;
}

/** Refuses a path that cannot be written, before any work is done; `named` is the path as typed. */
export function checkOutput(path: string, named: string): void {
  const target = behindLink(path);
  if (!existsSync(target)) {
    if (!existsSync(dirname(target))) throw new CannotWrite(`${named} cannot be written: there is no such folder`);
    return;
  }
  const found = statSync(target);
  if (found.isDirectory()) throw new CannotWrite(`${named} is a folder; give the name of a file`);
  if (!found.isFile()) throw new CannotWrite(`${named} is not an ordinary file`);
  // The folder's owner could still replace it, but a read-only file should stay.
  if ((found.mode & 0o222) === 0) throw new CannotWrite(`${named} is read-only; give another name`);
}

type WriteBytes = (path: string, bytes: string | Uint8Array) => void;

/** Writes the whole file or nothing; an existing file stays until the new one is complete. */
export function writeWhole(
  path: string,
  named: string,
  bytes: string | Uint8Array,
  write: WriteBytes = (file, content) => writeFileSync(file, content, { flush: true }),
): void {
  checkOutput(path, named);
  const target = behindLink(path);
  const partial = `${target}.${process.pid}.part`;
  let interrupted: NodeJS.Signals | undefined;
  const wait = (signal: NodeJS.Signals): void => {
    interrupted = signal;
  };
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  for (const signal of signals) process.on(signal, wait);
  try {
    write(partial, bytes);
    renameSync(partial, target);
  } catch (thrown) {
    rmSync(partial, { force: true });
    const code = thrown instanceof Error && 'code' in thrown ? String(thrown.code) : '';
    throw new CannotWrite(`${named} cannot be written: ${reasons[code] ?? (code || String(thrown))}`);
  } finally {
    for (const signal of signals) process.off(signal, wait);
    if (interrupted !== undefined) process.kill(process.pid, interrupted);
  }
}
