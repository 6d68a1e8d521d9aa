/** Computes the formulas of a workbook file anew: `npm run -s recalc -- IN.xlsx OUT.xlsx`. */
import { existsSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';

const usage = `usage: npm run -s recalc -- IN.xlsx OUT.xlsx
  computes every formula of IN.xlsx and writes the results to OUT.xlsx; all else is copied as it is
  exit code 0: done   3: done, but the formulas listed keep their old value   2: refused, nothing is written
`;

/** npm runs scripts in the project's folder; a relative path means the folder that the user is in. */
function userPath(path: string): string {
  return resolve(process.env.INIT_CWD ?? '.', path);
}

/** The file appears whole or not at all. */
function writeWhole(path: string, bytes: Uint8Array): void {
  const partial = `${path}.${process.pid}.part`;
  try {
    writeFileSync(partial, bytes);
    renameSync(partial, path);
  } catch (thrown) {
    rmSync(partial, { force: true });
    throw thrown;
  }
}

async function recalc(from: string, to: string): Promise<number> {
  const input = userPath(from);
  if (!existsSync(input)) throw new Error(`${from}: no such file`);
  const output = userPath(to);
  if (!existsSync(dirname(output))) throw new Error(`${to}: no such folder`);
  // The spreadsheet engine is slow to load, and not needed to refuse a path.
  const { sourceFunctions } = await import('../hosts/univer/source-functions');
  const { recalculateFile } = await import('../workbooks/recalculate-file');
  const { bytes, formulas, kept } = await recalculateFile(await sourceFunctions(), readFileSync(input)).catch(
    (thrown: unknown) => {
      throw new Error(`${from}: ${thrown instanceof Error ? thrown.message : String(thrown)}`);
    },
  );
  writeWhole(output, bytes);
  process.stdout.write(`${formulas - kept.length} of ${formulas} formulas computed\n`);
  for (const { sheet, cell, formula, why } of kept)
    process.stderr.write(`'${sheet}'!${cell} keeps its old value: ${formula}: ${why}\n`);
  return kept.length === 0 ? 0 : 3;
}

async function main(): Promise<void> {
  // The engine talks to the console about formulas that it cannot read; what it has to say comes out in the list here.
  for (const method of ['log', 'info', 'warn', 'error', 'debug'] as const) console[method] = () => {};
  const [from, to, ...more] = process.argv.slice(2);
  if (from === undefined || to === undefined || more.length > 0) {
    process.stderr.write(usage);
    process.exitCode = from === '--help' ? 0 : 2;
    return;
  }
  try {
    process.exitCode = await recalc(from, to);
  } catch (thrown) {
    process.stderr.write(`${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
    process.exitCode = 2;
  }
}

void main();
