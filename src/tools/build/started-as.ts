import { basename } from 'node:path';

/** Whether a file is itself the command that was started, and not one that a test or another command has loaded. */
export function isStartedAs(file: string, started = process.argv[1] ?? ''): boolean {
  return basename(started.replaceAll('\\', '/')) === file;
}
