import type { SheetHost } from '../../hosts/sheet-host';
import type { WorkbookData } from '../../hosts/workbook-model';
import type { Progress } from '../work';

/**
 * Adds sheets and names after the others, all or none. Hosts promise this too; if one leaves something behind when it
 * fails or is stopped, it is removed here, and what was there before is never changed.
 */
export async function insertSheets(
  host: SheetHost,
  workbook: WorkbookData,
  { step }: Pick<Progress, 'step'>,
): Promise<void> {
  const before = await sheetsAndNames(host);
  await step(0);
  // Hosts report errors with texts of their own; pressing Stop is not an error.
  let stop: { readonly by: unknown } | undefined;
  try {
    await host.insert(workbook, async (share) => {
      try {
        await step(share);
      } catch (error) {
        stop = { by: error };
        throw error;
      }
    });
  } catch (error) {
    const after = await sheetsAndNames(host);
    for (const { name } of workbook.names ?? []) {
      if (!before.names.has(name.toLowerCase()) && after.names.has(name.toLowerCase())) await host.removeName(name);
    }
    for (const { name } of [...workbook.sheets].reverse()) {
      if (!before.sheets.has(name.toLowerCase()) && after.sheets.has(name.toLowerCase())) await host.removeSheet(name);
    }
    throw stop === undefined ? error : stop.by;
  }
}

async function sheetsAndNames(host: SheetHost): Promise<Readonly<Record<'sheets' | 'names', ReadonlySet<string>>>> {
  const [sheets, names] = await Promise.all([host.sheets(), host.names()]);
  return {
    sheets: new Set(sheets.map((name) => name.toLowerCase())),
    names: new Set(names.map(({ name }) => name.toLowerCase())),
  };
}
