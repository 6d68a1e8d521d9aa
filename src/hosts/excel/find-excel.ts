import type { SheetHost } from '../sheet-host';
import { excelHost } from './excel-host';
import { startWithWorkbook } from './startup';

/** The Excel around this page; undefined if the page was opened alone or in another program. */
export async function findExcel(): Promise<SheetHost | undefined> {
  if (typeof Office === 'undefined' || typeof Office.onReady !== 'function') return undefined;
  try {
    const { host } = await Office.onReady();
    if (host !== Office.HostType.Excel) return undefined;
    const excel = excelHost();
    // A workbook that was made before the add-in was loaded here.
    void excel.names().then(startWithWorkbook, () => undefined);
    return excel;
  } catch {
    // Outside Office, office.js rejects.
    return undefined;
  }
}
