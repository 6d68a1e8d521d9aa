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

/** What a file cannot be written for, in one sentence. */
export class CannotWrite extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'CannotWrite';
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOSPC: 'there is no room left on the disk',
  EDQUOT: 'there is no room left for you on the disk',
  EFBIG: 'it is larger than files may be there',
  EACCES: 'you may not write there',
  EPERM: 'you may not write there',
  EROFS: 'the disk can only be read',
  ENAMETOOLONG: 'its name is too long',
  ENOENT: 'there is no such folder',
};

/** Follows a link to the file that it stands for, so that the link stays a link. */
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
  const [a, b] = [one, other].map((path) => behindLink(path));
  if (a === b) return true;
  if (!existsSync(a!) || !existsSync(b!)) return false;
  const [is, was] = [statSync(a!), statSync(b!)];
  return is.ino === was.ino && is.dev === was.dev && is.ino !== 0;
}

/** Refuses a place that nothing can be written to, before any work is done; `named` is the path as it was typed. */
export function checkOutput(path: string, named: string): void {
  const target = behindLink(path);
  if (!existsSync(target)) {
    if (!existsSync(dirname(target))) throw new CannotWrite(`${named} cannot be written: there is no such folder`);
    return;
  }
  const found = statSync(target);
  if (found.isDirectory()) throw new CannotWrite(`${named} is a folder; give the name of a file`);
  if (!found.isFile()) throw new CannotWrite(`${named} is no ordinary file`);
  // The owner of the folder could replace it all the same, and whoever set it to read-only did not mean that.
  if ((found.mode & 0o222) === 0) throw new CannotWrite(`${named} is read-only; give another name`);
}

type WriteBytes = (path: string, bytes: string | Uint8Array) => void;

/** The file appears whole or not at all; what stood there before stays until then. */
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
