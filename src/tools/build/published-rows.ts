import { readdirSync } from 'node:fs';
import Module from 'node:module';
import { resolve } from 'node:path';
import { buildSync } from 'esbuild';
import type { PublishedCheck } from '../../manual/published-checks';

/** The lists of a folder's files, in the order of their names; tests and types hold none. */
const listsIn = (folder: string): readonly string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.ts') && !/published-row|\.test\./.test(name))
    .sort();

/** The published figures that the tests hold the functions to, for the reference pages. */
export function publishedRows(folder: string): readonly PublishedCheck[] {
  const resolveDir = resolve(folder);
  const names = listsIn(folder);
  const imports = names.map((name, at) => `import * as list${at} from './${name}';`).join('\n');
  const { outputFiles } = buildSync({
    stdin: { contents: `${imports}\nexport const lists = [${names.map((_, at) => `list${at}`)}];`, resolveDir },
    bundle: true,
    write: false,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    packages: 'external',
    logLevel: 'error',
  });
  const path = resolve(folder, 'all.cjs');
  const lists = new Module(path) as Module & { _compile: (code: string, path: string) => void };
  lists._compile(outputFiles[0]?.text ?? '', path);
  return (lists.exports as { lists: readonly object[] }).lists.flatMap((list) => Object.values(list).flat());
}
