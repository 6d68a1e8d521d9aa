import type { DefinedName } from '../workbook-model';
import { run } from './run';

/** The names of the whole workbook. */
export function readNames(): Promise<readonly DefinedName[]> {
  return run(async (context) => {
    const { names } = context.workbook;
    names.load('items/name,items/formula,items/comment');
    await context.sync();
    return names.items.map((item) => ({
      name: item.name,
      refersTo: String(item.formula).replace(/^=/, ''),
      ...(item.comment ? { comment: item.comment } : {}),
    }));
  });
}

/** Sets a name and replaces its old meaning. */
export function setName(name: DefinedName): Promise<void> {
  return run(async (context) => {
    await putName(context, name);
    await context.sync();
  });
}

/** Queues the setting of a name. */
export async function putName(context: Excel.RequestContext, { name, refersTo, comment }: DefinedName): Promise<void> {
  const { names } = context.workbook;
  const existing = names.getItemOrNullObject(name);
  existing.load('name');
  await context.sync();
  if (existing.isNullObject) names.add(name, `=${refersTo}`, comment ?? '');
  else {
    existing.formula = `=${refersTo}`;
    if (comment !== undefined) existing.comment = comment;
  }
}

export function removeName(name: string): Promise<void> {
  return run(async (context) => {
    const existing = context.workbook.names.getItemOrNullObject(name);
    existing.load('name');
    await context.sync();
    if (!existing.isNullObject) existing.delete();
    await context.sync();
  });
}
