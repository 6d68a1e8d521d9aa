import { readFileSync } from 'node:fs';
import type { WorkbookData } from '../../src/hosts/workbook-model';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import type { MemoryHost } from './memory-host';
import { hostOfData } from './workbook-host';

const samples = new Map<string, Promise<WorkbookData>>();

/** A sample workbook, such as `US/cone-cut-plan`, with the results that stand in it; each file is read once. */
export function sampleWorkbook(path: string): Promise<WorkbookData> {
  const read = samples.get(path) ?? readWorkbook(readFileSync(`sample-workbooks/${path}.xlsx`)).then(frozen);
  samples.set(path, read);
  return read;
}

/** What tests share may not be changed by one of them. */
function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !ArrayBuffer.isView(value)) {
    for (const part of Object.values(value)) frozen(part);
    Object.freeze(value);
  }
  return value;
}

/** A sample as JSON, as which it gets into a page ten times faster than as an object. */
export async function sampleAsJson(path: string): Promise<string> {
  return JSON.stringify(await sampleWorkbook(path));
}

export async function sampleHost(path: string): Promise<MemoryHost> {
  return hostOfData(await sampleWorkbook(path));
}
