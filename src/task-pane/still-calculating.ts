import type { SheetHost } from '../hosts/sheet-host';
import { UserError } from './user-error';

/** That cells can still show old results, and what happens or what to do; undefined if they are all calculated. */
export async function stillCalculating(
  { isCalculating, name }: Pick<SheetHost, 'isCalculating' | 'name'>,
  then: string,
): Promise<string | undefined> {
  if (!(await isCalculating?.())) return undefined;
  // A workbook that is calculated only when asked stays in this state until then.
  return `${name} is still calculating; ${then}. If it calculates only when asked, press F9.`;
}

/** Waits until cells show their results, so that nothing old is saved; refuses if the host cannot be waited for. */
export async function waitForResults(host: SheetHost): Promise<void> {
  await host.settled?.();
  const sentence = await stillCalculating(host, 'save again when it is done');
  if (sentence !== undefined) throw new UserError(sentence);
}
