import { readFileSync } from 'node:fs';
import type { WorkbookData } from '../../src/hosts/workbook-model';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import type { MemoryHost } from './memory-host';
import { hostOfData } from './workbook-host';

/** A sample workbook, such as `US/cone-cut-plan`, with the results that stand in it. */
export function sampleWorkbook(path: string): Promise<WorkbookData> {
  return readWorkbook(readFileSync(`sample-workbooks/${path}.xlsx`));
}

export async function sampleHost(path: string): Promise<MemoryHost> {
  return hostOfData(await sampleWorkbook(path));
}
