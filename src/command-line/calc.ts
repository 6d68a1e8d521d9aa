/** Computes cell formulas from the command line: `npm run -s calc -- '=SILT.CONE.PATTERN("US",22.5,4,9.25)'`. */
import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { openHeadless } from '../hosts/univer/headless';
import { sourceFunctions } from '../hosts/univer/source-functions';
import type { WorkbookData } from '../hosts/workbook-model';
import { calcOutput } from './calc-output';
import { type CalcRequest, readRequest } from './calc-request';

const usage = `usage: npm run -s calc -- [--json] [--workbook FILE.xlsx] FORMULA...
  FORMULA        such as '=SILT.CONE.PATTERN("US",22.5,4,9.25)'; the = may be left out
  --workbook     makes the sheets and names of a workbook available
  --json         prints one array with a value or an error for each formula
`;

/** npm runs scripts in the project's folder; a relative path means the folder that the user is in. */
function userPath(path: string): string {
  const fromUser = resolve(process.env.INIT_CWD ?? '.', path);
  return existsSync(fromUser) ? fromUser : resolve(path);
}

async function openWorkbook(path: string): Promise<WorkbookData> {
  const file = userPath(path);
  if (!existsSync(file)) throw new Error(`${path}: no such file`);
  const { readWorkbook } = await import('../workbooks/read-xlsx');
  return readWorkbook(readFileSync(file)).catch((thrown: unknown) => {
    throw new Error(`${path}: ${thrown instanceof Error ? thrown.message : String(thrown)}`);
  });
}

async function calculate(request: CalcRequest): Promise<number> {
  const workbook = request.workbook === undefined ? undefined : await openWorkbook(request.workbook);
  const host = await openHeadless(await sourceFunctions(), workbook);
  const typed = request.formulas.map((formula) => `=${formula.trim().replace(/^=/, '')}`);
  const output = calcOutput(request.formulas, await host.evaluate(typed, workbook?.activeSheet), request.json);
  process.stdout.write(output.stdout);
  process.stderr.write(output.stderr);
  return output.exitCode;
}

async function main(): Promise<void> {
  // The engine talks to the console about formulas that it cannot read; what it has to say comes out as an error here.
  for (const method of ['log', 'info', 'warn', 'error', 'debug'] as const) console[method] = () => {};
  const request = readRequest(process.argv.slice(2));
  if (typeof request === 'string') {
    process.stderr.write(request === '' ? usage : `${request}\n${usage}`);
    process.exitCode = request === '' ? 0 : 2;
    return;
  }
  try {
    process.exitCode = await calculate(request);
  } catch (thrown) {
    process.stderr.write(`${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
    process.exitCode = 2;
  }
}

void main();
