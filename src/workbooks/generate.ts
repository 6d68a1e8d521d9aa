import type { HostFunction } from '../hosts/univer/function-set';
import { calculateWorkbook, valuesOnly } from './calculate';
import { checkYourExcel } from './sheets/check-your-excel';
import { readyMade, readyProfiles } from './sheets/ready-made';
import { writeWorkbook } from './write-xlsx';

export interface GeneratedFile {
  /** Below the folder of sample workbooks: `US/cone-cut-plan.xlsx`. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** Makes every sample workbook in both profiles, and the one that checks an Excel, each cell with its result. `values` leaves out the formulas. */
export async function generateWorkbooks(
  functions: readonly HostFunction[],
  wanted: (path: string) => boolean = () => true,
  content: 'formulas' | 'values' = 'formulas',
): Promise<readonly GeneratedFile[]> {
  const files: GeneratedFile[] = [];
  const workbooks = readyProfiles.flatMap((profile) =>
    readyMade.map(({ id, build }) => ({ path: `${profile}/${id}.xlsx`, build: () => build(profile) })),
  );
  for (const { path, build } of [...workbooks, { path: 'check-your-excel.xlsx', build: checkYourExcel }]) {
    if (!wanted(path)) continue;
    const calculated = await calculateWorkbook(functions, build());
    files.push({ path, bytes: await writeWorkbook(content === 'values' ? valuesOnly(calculated) : calculated) });
  }
  return files;
}
