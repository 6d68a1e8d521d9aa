import { HostError } from '../sheet-host';
import { run } from './run';

export function readSheets(): Promise<readonly string[]> {
  return run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load('items/name');
    await context.sync();
    return worksheets.items.map(({ name }) => name);
  });
}

export function addSheet(name: string): Promise<void> {
  return run(async (context) => {
    await refuseTaken(context, [name]);
    context.workbook.worksheets.add(name);
    await context.sync();
  });
}

export function removeSheet(name: string): Promise<void> {
  return run(async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(name);
    sheet.load('name');
    await context.sync();
    if (sheet.isNullObject) throw new HostError('missing', `There is no sheet called ${name} any more.`);
    sheet.delete();
    await context.sync();
  });
}

/** Refuses sheet names that are in use, in capitals or not. */
export async function refuseTaken(context: Excel.RequestContext, names: readonly string[]): Promise<void> {
  const found = names.map((name) => context.workbook.worksheets.getItemOrNullObject(name));
  for (const sheet of found) sheet.load('name');
  await context.sync();
  const taken = found.find((sheet) => !sheet.isNullObject);
  if (taken !== undefined) {
    throw new HostError('taken', `A sheet called ${taken.name} already exists; rename it, then try again.`);
  }
}
