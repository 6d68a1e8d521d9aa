/** What the command line of `calc` asks for. */
export interface CalcRequest {
  readonly formulas: readonly string[];
  readonly json: boolean;
  readonly workbook: string | undefined;
}

/** Reads the command line; returns a text when something is wrong with it. */
export function readRequest(args: readonly string[]): CalcRequest | string {
  const formulas: string[] = [];
  let json = false;
  let workbook: string | undefined;
  let optionsEnded = false;
  for (let index = 0; index < args.length; index += 1) {
    const argument = args[index] ?? '';
    if (optionsEnded || !argument.startsWith('--')) formulas.push(argument);
    else if (argument === '--') optionsEnded = true;
    else if (argument === '--json') json = true;
    else if (argument.startsWith('--workbook=')) workbook = argument.slice('--workbook='.length);
    else if (argument === '--workbook') {
      index += 1;
      workbook = args[index];
      if (workbook === undefined) return '--workbook needs a file';
    } else if (argument === '--help') return '';
    else return `${argument} is not an option`;
  }
  return formulas.length === 0 ? 'give at least one formula' : { formulas, json, workbook };
}
