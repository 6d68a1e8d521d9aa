/** Writes the sample workbooks again: `npm run workbooks`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { userPath } from '../../command-line/user-path';
import { sourceFunctions } from '../../hosts/univer/source-functions';
import { generateWorkbooks } from '../../workbooks/generate';

const usage = `usage: npm run workbooks -- [--values] [--to FOLDER] [PART OF A NAME]
  --values   results without formulas, for programs that do not know the add-in
  --to       another folder than sample-workbooks
`;

async function main(): Promise<void> {
  for (const method of ['log', 'info', 'warn', 'error', 'debug'] as const) console[method] = () => {};
  const given = process.argv.slice(2);
  if (given.includes('--help')) {
    process.stdout.write(usage);
    return;
  }
  const to = given.indexOf('--to');
  const folder = to < 0 ? 'sample-workbooks' : userPath(given[to + 1] ?? '.');
  const part = given.find((word, index) => !word.startsWith('--') && (to < 0 || index !== to + 1)) ?? '';
  const content = given.includes('--values') ? 'values' : 'formulas';
  for (const { path, bytes } of await generateWorkbooks(
    await sourceFunctions(),
    (name) => name.includes(part),
    content,
  )) {
    const file = join(folder, path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, bytes);
    process.stdout.write(`${file}\n`);
  }
}

main().catch((thrown: unknown) => {
  process.stderr.write(`${thrown instanceof Error ? thrown.stack : String(thrown)}\n`);
  process.exitCode = 1;
});
