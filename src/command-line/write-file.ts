import {
  chmodSync,
  existsSync,
  lstatSync,
  readdirSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmSync,
  type Stats,
  statSync,
} from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';

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
  EBUSY: 'another program has it open',
  EROFS: 'the disk can only be read',
  ENAMETOOLONG: 'its name is too long',
  ENOENT: 'there is no such folder',
};

/** As many as Linux follows. */
const mostLinks = 40;

/** Follows links to the file that they lead to, also one that is not there yet, so that writing keeps the links. */
function behindLinks(path: string): string | undefined {
  let at = path;
  for (let i = 0; i < mostLinks; i++) {
    if (!lstatSync(at, { throwIfNoEntry: false })?.isSymbolicLink()) return at;
    at = resolve(realpathSync(dirname(at)), readlinkSync(at));
  }
  return undefined;
}

/** Whether two paths lead to one file. */
export function isSameFile(one: string, other: string): boolean {
  if (one === other) return true;
  if (!existsSync(one) || !existsSync(other)) return false;
  const [is, was] = [statSync(one), statSync(other)];
  return is.ino === was.ino && is.dev === was.dev && is.ino !== 0;
}

/** A file of the user, and how it was typed. */
export interface UserFile {
  readonly path: string;
  readonly named: string;
}

/** Which file is at a path, or behind links there; each file that is written is another one. */
export function fileAt(path: string): string | undefined {
  const found = statSync(path, { throwIfNoEntry: false });
  return found && `${found.dev} ${found.ino}`;
}

interface Target {
  readonly path: string;
  /** The file that is there now. */
  readonly found: Stats | undefined;
}

function cannotWrite(named: string, thrown: unknown): CannotWrite {
  if (thrown instanceof CannotWrite) return thrown;
  const code = thrown instanceof Error && 'code' in thrown ? String(thrown.code) : '';
  return new CannotWrite(`${named} cannot be written: ${reasons[code] ?? (code || String(thrown))}`);
}

function findTarget({ path, named }: UserFile): Target {
  const target = behindLinks(path);
  if (target === undefined) throw new CannotWrite(`${named} is a link that leads to itself; give another name`);
  const found = statSync(target, { throwIfNoEntry: false });
  if (found === undefined) {
    if (!existsSync(dirname(target))) throw new CannotWrite(`${named} cannot be written: there is no such folder`);
    return { path: target, found };
  }
  if (found.isDirectory()) throw new CannotWrite(`${named} is a folder; give the name of a file`);
  if (!found.isFile()) throw new CannotWrite(`${named} is not an ordinary file`);
  // The folder's owner could still replace it, but a read-only file should stay.
  if ((found.mode & 0o222) === 0) throw new CannotWrite(`${named} is read-only; give another name`);
  return { path: target, found };
}

function targetOf(file: UserFile): Target {
  try {
    return findTarget(file);
  } catch (thrown) {
    throw cannotWrite(file.named, thrown);
  }
}

/** Refuses a file that cannot be written, or that the work reads itself, before any work is done. */
export function checkOutput(file: UserFile, inputs: readonly string[] = []): void {
  targetOf(file);
  const { path, named } = file;
  if (inputs.some((input) => isSameFile(path, input))) {
    throw new CannotWrite(`${named} is the input workbook; give the output another name`);
  }
}

/** Where a process writes until the file is whole. The name is short, so that a file may have the longest name. */
function partialOf(target: string, pid: number): string {
  return join(dirname(target), `.siltstead.${pid}.part`);
}

/** Removes what a process that was killed had written of a file. */
export function removePartial(path: string, pid: number): void {
  const target = behindLinks(path);
  if (target !== undefined) rmSync(partialOf(target, pid), { force: true });
}

/** No work takes as long as this, in milliseconds. */
const longAgo = 60 * 60_000;

/** Removes what earlier work, killed outright, had written of its files beside this one. */
function removeLeftovers(folder: string): void {
  for (const name of readdirSync(folder).filter((one) => /^\.siltstead\.\d+\.part$/.test(one))) {
    const path = join(folder, name);
    const found = statSync(path, { throwIfNoEntry: false });
    if (found !== undefined && Date.now() - found.mtimeMs > longAgo) rmSync(path, { force: true });
  }
}

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/**
 * Writes the whole file or nothing; an existing file stays until the new one is complete. If the work is interrupted
 * before that, nothing is written.
 */
export async function writeWhole(file: UserFile, bytes: string | Uint8Array): Promise<void> {
  const { path: target, found } = targetOf(file);
  const partial = partialOf(target, process.pid);
  const interruption = new AbortController();
  const interrupt = (): void => interruption.abort();
  // They stay: once the file is whole, the little that is left is not worth a message that it was not written.
  for (const signal of signals) process.on(signal, interrupt);
  try {
    removeLeftovers(dirname(target));
    await writeFile(partial, bytes, { flush: true, signal: interruption.signal });
    if (found !== undefined) chmodSync(partial, found.mode & 0o777);
    interruption.signal.throwIfAborted();
    renameSync(partial, target);
  } catch (thrown) {
    rmSync(partial, { force: true });
    if (interruption.signal.aborted) throw new CannotWrite(`${file.named} is not written: the work was interrupted`);
    throw cannotWrite(file.named, thrown);
  }
}
