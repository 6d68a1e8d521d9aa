import { readFileSync } from 'node:fs';
import { readWorkbook } from '../../workbooks/read-xlsx';

/** Each sample workbook as the plain data that reading it gives, so that the workbench opens it without the reader. */
export async function sampleData(
  samples: readonly (readonly [name: string, file: string])[],
): Promise<(readonly [path: string, content: string])[]> {
  const read = samples.map(
    async ([name, file]) =>
      [
        `sample-workbooks/${name.replace(/\.xlsx$/, '.json')}`,
        JSON.stringify(await readWorkbook(readFileSync(file))),
      ] as const,
  );
  return [['sample-workbooks/list.json', JSON.stringify(samples.map(([name]) => name))], ...(await Promise.all(read))];
}
