import { resolve } from 'node:path';

/** npm runs scripts in the project's folder; a relative path means the folder that the user is in. */
export function userPath(path: string): string {
  return resolve(process.env.INIT_CWD ?? '.', path);
}
