import { keptPlans } from '../../formulas/cut/cut-plan';
import { openHeadless } from '../../hosts/univer/headless';
import { sourceFunctions } from '../../hosts/univer/source-functions';
import type { WorkbookData } from '../../hosts/workbook-model';

/** The cut plans that a workbook needs, as the functions keep them, so that a page that opens it finds them ready. */
export async function firstPlans(workbook: WorkbookData): Promise<string> {
  keptPlans.clear();
  const calculated = await openHeadless(await sourceFunctions(), workbook);
  calculated.dispose();
  return JSON.stringify([...keptPlans]);
}
