import type { SheetHost } from '../sheet-host';
import { excelHost } from './excel-host';

/** The Excel that this page stands in; undefined where the page was opened on its own or in another program. */
export async function findExcel(): Promise<SheetHost | undefined> {
  if (typeof Office === 'undefined' || typeof Office.onReady !== 'function') return undefined;
  try {
    const { host } = await Office.onReady();
    return host === Office.HostType.Excel ? excelHost() : undefined;
  } catch {
    // An office.js that fails outside Office says so by rejecting.
    return undefined;
  }
}
