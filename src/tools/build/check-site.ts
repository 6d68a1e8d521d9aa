/**
 * Checks whether a hosted site has what Excel and browsers need: `npm run check-site --
 * https://farm.example/siltstead`.
 */

import { isStartedAs } from './started-as';

type Fetch = (address: string, options?: RequestInit) => Promise<Response>;

interface Expected {
  readonly path: string;
  readonly type: RegExp;
}

const expected: readonly Expected[] = [
  { path: 'index.html', type: /^text\/html/ },
  { path: 'workbench/index.html', type: /^text\/html/ },
  { path: 'workbench/workbench.js', type: /^(text|application)\/javascript/ },
  { path: 'workbench/workbench.css', type: /^text\/css/ },
  { path: 'service-worker.js', type: /^(text|application)\/javascript/ },
  { path: 'site.webmanifest', type: /^application\/(manifest\+json|json)/ },
  { path: 'task-pane.html', type: /^text\/html/ },
  { path: 'functions.js', type: /^(text|application)\/javascript/ },
  { path: 'cut-plans.js', type: /^(text|application)\/javascript/ },
  { path: 'functions.json', type: /^application\/json/ },
  { path: 'manifest.xml', type: /^(text|application)\/xml/ },
  { path: 'icons/icon-32.png', type: /^image\/png/ },
  { path: 'reference/index.html', type: /^text\/html/ },
  { path: 'guide/index.html', type: /^text\/html/ },
  { path: 'daily/index.html', type: /^text\/html/ },
  { path: 'daily/daily.js', type: /^(text|application)\/javascript/ },
  { path: 'sample-workbooks/list.json', type: /^application\/json/ },
];

/** The faults of a site, one sentence each; empty if it has none. */
export async function faultsOf(address: string, get: Fetch = fetch): Promise<readonly string[]> {
  const site = address.replace(/\/+$/, '');
  const faults: string[] = [];
  for (const { path, type } of expected) {
    const response = await get(`${site}/${path}`).catch((thrown: unknown) => String(thrown));
    if (typeof response === 'string') {
      faults.push(`${path} cannot be fetched: ${response}`);
      continue;
    }
    if (!response.ok) faults.push(`${path} is answered with ${response.status}; copy it to the site.`);
    else faults.push(...(await faultsOfFile(site, path, type, response)));
  }
  return faults;
}

async function faultsOfFile(site: string, path: string, type: RegExp, response: Response): Promise<readonly string[]> {
  const faults: string[] = [];
  const given = response.headers.get('content-type') ?? 'no type';
  if (!type.test(given)) faults.push(`${path} comes as ${given}; it must match ${type.source}.`);
  const body = await response.text();
  if (path === 'functions.json') {
    if (response.headers.get('access-control-allow-origin') !== '*') {
      faults.push('functions.json must come with the header Access-Control-Allow-Origin: *');
    }
    if (!isJson(body)) faults.push('functions.json is not JSON; is another page sent in its place?');
    else if (!body.includes(`"${site}/`)) faults.push(`functions.json was built for another address than ${site}.`);
  }
  if (path === 'manifest.xml') {
    const others = [...body.matchAll(/(?:DefaultValue=|<AppDomain>)"?(https:\/\/[^"<]+)/g)].map(([, one = '']) => one);
    const strange = others.find((one) => one !== site && !one.startsWith(`${site}/`) && new URL(one).origin !== site);
    if (strange !== undefined) faults.push(`manifest.xml names ${strange}, which is not of ${site}; build it again.`);
  }
  return faults;
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

async function main(): Promise<void> {
  const address = process.argv[2] ?? '';
  if (!/^https?:\/\//.test(address)) {
    process.stderr.write('Give the address of the site: npm run check-site -- https://farm.example/siltstead\n');
    process.exitCode = 2;
    return;
  }
  const faults = await faultsOf(address);
  process.stdout.write(faults.length === 0 ? 'All is well.\n' : `${faults.join('\n')}\n`);
  process.exitCode = faults.length === 0 ? 0 : 1;
}

if (isStartedAs('check-site.ts')) void main();
