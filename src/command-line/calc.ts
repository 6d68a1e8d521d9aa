/** Computes cell formulas from the command line: `npm run -s calc -- '=SILT.CONE.PATTERN("US",22.5,4,9.25)'`. */
import { sourceFunctions } from '../hosts/univer/source-functions';
import type { WorkbookData } from '../hosts/workbook-model';
import { type CalcOutput, calcOutput } from './calc-output';
import { type CalcRequest, readRequest } from './calc-request';
import { plainResults } from './plain-calls';
import { printSafely } from './print-safely';
import { checkInput, readInput } from './read-file';
import { withinLimits } from './within-limits';

const usage = `usage: npm run -s calc -- [--json] [--workbook FILE.xlsx] FORMULA...
  FORMULA        such as '=SILT.CONE.PATTERN("US",22.5,4,9.25)'; the = may be left out
  --workbook     makes the sheets and names of a workbook available
  --json         prints one array with a value or an error for each formula
`;

async function openWorkbook(path: string): Promise<WorkbookData> {
  const { readWorkbook } = await import('../workbooks/read-xlsx');
  return readWorkbook(readInput(path)).catch((thrown: unknown) => {
    throw new Error(`${path}: ${thrown instanceof Error ? thrown.message : String(thrown)}`);
  });
}

const asTyped = (formula: string): string => `=${formula.trim().replace(/^=/, '')}`;

function print({ stdout, stderr, exitCode }: CalcOutput): void {
  process.stdout.write(stdout);
  process.stderr.write(stderr);
  process.exitCode = exitCode;
}

async function calculate({ formulas, json, workbook: path }: CalcRequest): Promise<void> {
  // The engine is slow to load; calls of the add-in's functions with constants alone do without it.
  const workbook = path === undefined ? undefined : await openWorkbook(path);
  const { openHeadless } = await import('../hosts/univer/headless');
  const host = await openHeadless(await sourceFunctions(), workbook);
  print(calcOutput(formulas, await host.evaluate(formulas.map(asTyped), workbook?.activeSheet), json));
}

async function runRequest(request: CalcRequest): Promise<void> {
  const { formulas, json, workbook } = request;
  if (workbook === undefined) {
    const results = plainResults(formulas.map(asTyped), await sourceFunctions());
    return results === undefined ? calculate(request) : print(calcOutput(formulas, results, json));
  }
  checkInput(workbook);
  return withinLimits(workbook, () => calculate(request));
}

async function main(): Promise<void> {
  // The engine writes to the console about formulas that it cannot read; here the result carries the error instead.
  for (const method of ['log', 'info', 'warn', 'error', 'debug'] as const) console[method] = () => {};
  printSafely();
  const request = readRequest(process.argv.slice(2));
  if (typeof request === 'string') {
    process.stderr.write(request === '' ? usage : `${request}\n${usage}`);
    process.exitCode = request === '' ? 0 : 2;
    return;
  }
  try {
    await runRequest(request);
  } catch (thrown) {
    process.stderr.write(`${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
    process.exitCode = 2;
  }
}

void main();
