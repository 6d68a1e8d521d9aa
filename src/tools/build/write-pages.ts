/**
 * Writes the files of the site that are not compiled, in a thread of its own beside the bundler: posts them as
 * [path, content]. Started by written-pages.cjs with the address of the site.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { parentPort } from 'node:worker_threads';
import { siteAddressFiles, sitePages } from '../../manual/site-files';
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

async function writePages(site: string): Promise<void> {
  const pages = sitePages(publishedRows(join('test', 'published')));
  const data = await sampleData(samples());
  parentPort?.postMessage([...siteAddressFiles(site), ...pages, ...data]);
}

void writePages(process.argv[2] ?? '');
