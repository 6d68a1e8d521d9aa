import type { HostFunction } from '../hosts/univer/function-set';
import { calculateWorkbook, valuesOnly } from './calculate';
import { readyMade, readyProfiles } from './sheets/ready-made';
import { writeWorkbook } from './write-xlsx';

export interface GeneratedFile {
  /** Below the folder of sample workbooks: `US/cone-cut-plan.xlsx`. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** Makes every sample workbook in both profiles, each cell with its result. `values` leaves out the formulas. */
export async function generateWorkbooks(
  functions: readonly HostFunction[],
  wanted: (path: string) => boolean = () => true,
  content: 'formulas' | 'values' = 'formulas',
): Promise<readonly GeneratedFile[]> {
  const files: GeneratedFile[] = [];
  for (const profile of readyProfiles)
    for (const { id, build } of readyMade) {
      const path = `${profile}/${id}.xlsx`;
      if (!wanted(path)) continue;
      const calculated = await calculateWorkbook(functions, build(profile));
      files.push({ path, bytes: await writeWorkbook(content === 'values' ? valuesOnly(calculated) : calculated) });
    }
  return files;
}
