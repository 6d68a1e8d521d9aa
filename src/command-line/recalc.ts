/** Recalculates the formulas of a workbook file: `npm run -s recalc -- IN.xlsx OUT.xlsx`. */
import { printSafely } from './print-safely';
import { checkInput, readInput } from './read-file';
import { userPath } from './user-path';
import { withinLimits } from './within-limits';
import { checkOutput, writeWhole } from './write-file';

const usage = `usage: npm run -s recalc -- [--values] IN.xlsx OUT.xlsx
  computes every formula of IN.xlsx and writes the results to OUT.xlsx; all else is copied as it is
  --values   writes the results without the formulas, and the drawings as pictures, for people and programs
             without the add-in
  exit code 0: done   3: done, but the formulas listed keep their old value   2: refused, nothing is written
`;

interface Request {
  readonly from: string;
  readonly to: string;
  readonly isValuesOnly: boolean;
}

/** Reads the command line; undefined where it is not understood. */
function readRequest(given: readonly string[]): Request | undefined {
  const end = given.indexOf('--');
  const [options, names] =
    end < 0
      ? [given.filter(isOption), given.filter((word) => !isOption(word))]
      : [
          given.slice(0, end).filter(isOption),
          [...given.slice(0, end).filter((word) => !isOption(word)), ...given.slice(end + 1)],
        ];
  const [from, to, ...more] = names;
  if (from === undefined || to === undefined || more.length > 0) return undefined;
  if (options.some((option) => option !== '--values')) return undefined;
  return { from, to, isValuesOnly: options.includes('--values') };
}

const isOption = (word: string): boolean => word.startsWith('--');

/** What can be refused without reading the workbook. */
function checkPaths({ from, to }: Request): void {
  checkInput(from);
  checkOutput({ path: userPath(to), named: to }, [userPath(from)]);
}

async function recalc({ from, to, isValuesOnly }: Request): Promise<void> {
  const { sourceFunctions } = await import('../hosts/univer/source-functions');
  const { recalculateFile } = await import('../workbooks/recalculate-file');
  const { bytes, formulas, kept } = await recalculateFile(await sourceFunctions(), readInput(from)).catch(
    (thrown: unknown) => {
      throw new Error(`${from}: ${thrown instanceof Error ? thrown.message : String(thrown)}`);
    },
  );
  await writeWhole({ path: userPath(to), named: to }, isValuesOnly ? await valuesOnly(bytes) : bytes);
  process.stdout.write(`${formulas - kept.length} of ${formulas} formulas computed\n`);
  for (const { sheet, cell, formula, why } of kept) {
    const shown = formula.length > 200 ? `${formula.slice(0, 200)}…` : formula;
    process.stderr.write(`'${sheet}'!${cell} keeps its old value: ${shown}: ${why}\n`);
  }
  process.exitCode = kept.length === 0 ? 0 : 3;
}

async function valuesOnly(bytes: Uint8Array): Promise<Uint8Array> {
  const { readWorkbook } = await import('../workbooks/read-xlsx');
  const { functionLibrary } = await import('../functions/function-library');
  const { dataReader } = await import('../hosts/data-reader');
  const { valuesOnlyCopy } = await import('../task-pane/values-only');
  return valuesOnlyCopy(bytes, dataReader(await readWorkbook(bytes)), functionLibrary);
}

async function main(): Promise<void> {
  // The engine writes to the console about formulas that it cannot read; here the list reports them instead.
  for (const method of ['log', 'info', 'warn', 'error', 'debug'] as const) console[method] = () => {};
  printSafely();
  const given = process.argv.slice(2);
  const request = readRequest(given);
  if (request === undefined) {
    process.stderr.write(usage);
    process.exitCode = given[0] === '--help' ? 0 : 2;
    return;
  }
  try {
    checkPaths(request);
    await withinLimits(request.from, () => recalc(request), { path: userPath(request.to), named: request.to });
  } catch (thrown) {
    process.stderr.write(`${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
    process.exitCode = 2;
  }
}

void main();
