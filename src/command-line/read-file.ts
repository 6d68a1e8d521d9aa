import { readFileSync, statSync } from 'node:fs';
import { checkSize } from '../workbooks/reading/file-size';
import { userPath } from './user-path';

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  ENOTDIR: 'no such file',
  EACCES: 'you are not allowed to read it',
  EPERM: 'you are not allowed to read it',
  EIO: 'the disk cannot read it',
  ELOOP: 'it is a link that leads to itself',
};

/** Does something with a file of the user; an error names the file as typed and says why in a sentence. */
function reading<T>(named: string, work: (path: string) => T): T {
  try {
    return work(userPath(named));
  } catch (thrown) {
    const code = thrown instanceof Error && 'code' in thrown ? String(thrown.code) : '';
    throw new Error(`${named}: ${reasons[code] ?? (thrown instanceof Error ? thrown.message : String(thrown))}`);
  }
}

/** Refuses what is no file or too large a file, before any work is done. */
export function checkInput(named: string): void {
  reading(named, (path) => {
    const found = statSync(path);
    if (found.isDirectory()) throw new Error('it is a folder; give the name of a file');
    // A device could give bytes without end.
    if (!found.isFile()) throw new Error('it is not an ordinary file');
    checkSize(found.size);
  });
}

/** The bytes of a file of the user. */
export function readInput(named: string): Uint8Array {
  checkInput(named);
  return reading(named, (path) => readFileSync(path));
}
