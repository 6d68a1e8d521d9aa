/**
 * Writes the files of the site that are not compiled, in a thread of its own beside the bundler: posts them as
 * [path, content]. Started by written-pages.cjs with the address of the site.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parentPort } from 'node:worker_threads';
import type { WorkbookData } from '../../hosts/workbook-model';
import { siteAddressFiles, sitePages } from '../../manual/site-files';
import { firstSample } from '../../workbench/first-sample';
import { readWorkbook } from '../../workbooks/read-xlsx';
import { firstLook } from './first-look';
import { firstPlans } from './first-plans';
import { publishedRows } from './published-rows';
import { sampleData } from './sample-data';

const samplesFolder = 'sample-workbooks';

/** Each sample as its path under the folder and where it is. */
function samples(): (readonly [name: string, file: string])[] {
  return readdirSync(samplesFolder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.xlsx'))
    .map((name) => [name.replaceAll('\\', '/'), join(samplesFolder, name)] as const)
    .sort(([one], [other]) => (one < other ? -1 : 1));
}

/** The workbench's page with the first sheet in it, which a slow computer shows long before the spreadsheet is ready. */
function workbenchPage(sample: WorkbookData): string {
  const page = readFileSync(join('src', 'workbench', 'index.html'), 'utf8');
  const look = firstLook(sample);
  return page.replace('<!-- the first sheet -->', () => look);
}

async function writePages(site: string): Promise<void> {
  const pages = sitePages(publishedRows(join('test', 'published')));
  const data = await sampleData(samples());
  const sample = await readWorkbook(readFileSync(join(samplesFolder, firstSample)));
  const workbench = [
    ['workbench/index.html', workbenchPage(sample)],
    ['workbench/cut-plans.json', await firstPlans(sample)],
  ];
  parentPort?.postMessage([...siteAddressFiles(site), ...pages, ...data, ...workbench]);
}

void writePages(process.argv[2] ?? '');
