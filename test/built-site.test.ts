import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { catalogue } from '../src/catalogue/all';
import { type Call, isCall, readCall } from '../src/command-line/read-call';
import { functionsMetadata } from '../src/functions/metadata';
import { firstPlans } from '../src/tools/build/first-plans';
import { firstSample } from '../src/workbench/first-sample';
import { readWorkbook } from '../src/workbooks/read-xlsx';
import { spill } from './functions/call';
import { CellError } from './functions/cell-error';

/** What `npm run build` leaves in dist, taken as Excel takes it: classic scripts, one metadata file, pages. */
const file = (name: string) => readFileSync(`dist/${name}`, 'utf8');
const pages = () => readdirSync('dist').filter((name) => name.endsWith('.html'));

type Implementation = (...values: unknown[]) => unknown;
let built: ReadonlyMap<string, Implementation>;

beforeAll(() => {
  if (!existsSync('dist/functions.js')) throw new Error('dist is not built yet: npm run build');
  built = associated({}).functions;
});

/**
 * Runs the built script as a browser would, with nothing around it but a stand-in for Excel's global; and the script of the
 * search before it, unless the page is one that it has yet to be loaded into.
 */
function associated({ page }: { page?: object }) {
  const functions = new Map<string, Implementation>();
  const associate = (id: string, implementation: Implementation) => {
    functions.set(id, implementation);
  };
  const ErrorCode = { notAvailable: '#N/A' };
  const context = createContext({ CustomFunctions: { associate, Error: CellError, ErrorCode }, URL, ...page });
  if (page === undefined) runInContext(file('cut-plans.js'), context);
  runInContext(file('functions.js'), context);
  return { functions, context };
}

/** A typed call's answer, by whatever answers one call. */
function answer(call: Call, one: (name: string, values: readonly unknown[]) => unknown): unknown {
  return one(
    call.name,
    call.values.map((value) => (isCall(value) ? answer(value, one) : value)),
  );
}

test('only the manifest and the metadata hold the address of the site, which is localhost while developing', () => {
  const texts = readdirSync('dist', { recursive: true, encoding: 'utf8' }).filter((name) =>
    /\.\w*(js|json|html|xml|css|txt|manifest)$/.test(name),
  );
  const holding = texts.filter((name) => file(name).includes('localhost')).map((name) => name.replaceAll('\\', '/'));
  expect(texts.length).toBeGreaterThan(100);
  expect(holding.sort()).toEqual(['functions.json', 'manifest.xml', 'workbench/functions.json']);
});

test('the cut plans of the first sample are those that its formulas find, with the mark of the scripts that find them', async () => {
  const { script, plans } = JSON.parse(file('workbench/cut-plans.json')) as { script: string; plans: unknown[] };
  expect(
    createHash('sha256')
      .update(file('functions.js') + file('cut-plans.js'))
      .digest('hex'),
  ).toMatch(new RegExp(`^${script}`));
  expect(script).toHaveLength(16);
  expect(plans.length).toBeGreaterThan(0);
  expect(JSON.stringify(plans)).toBe(
    await firstPlans(await readWorkbook(readFileSync(`sample-workbooks/${firstSample}`))),
  );
});

describe('the functions script', () => {
  test('associates every function of the metadata before it ends, and no other', () => {
    const metadata = JSON.parse(file('functions.json')) as { functions: { id: string }[] };
    expect([...built.keys()].sort()).toEqual(metadata.functions.map(({ id }) => id).sort());
    expect(metadata.functions).toHaveLength(catalogue.length);
  });

  test.each(catalogue.map(({ name, example }) => [name, example.formula]))(
    'answers as the source of %s does',
    (_, formula) => {
      const call = readCall(formula);
      expect(answer(call, (name, values) => built.get(name)!(...values))).toEqual(
        answer(call, (name, values) => spill(name, ...values)),
      );
    },
  );

  test('refuses with the message of the sources', () => {
    const call = built.get('CONE.ANGLE')!;
    const refused = (make: () => unknown) => {
      try {
        return make();
      } catch (thrown) {
        return String(thrown);
      }
    };
    const message = refused(() => spill('CONE.ANGLE', 22.5, 22.5, 4, 9.25));
    expect(message).toContain('not a profile');
    expect(refused(() => call(22.5, 22.5, 4, 9.25))).toBe(message);
  });

  test('is one file without evaluation of text, and within 80 kB as it travels', () => {
    expect(file('functions.js')).not.toMatch(/\beval\(|new Function\(|\bimport\(/);
    expect(gzipSync(file('functions.js'), { level: 9 }).length).toBeLessThanOrEqual(80_000);
  });

  // One piece shows as well that the search is loaded and asked, and there is little to search.
  const order = ['US', spill('CONE.PATTERN', 'US', 22.5, 4, 9.25), 96, 48, 0.25] as const;

  /** A page of Excel that has run only the functions' script; scripts that it adds are noted, and loaded when told. */
  function pageWithoutSearch() {
    const added: { src: string; onload: () => void; onerror: () => void; remove: () => void }[] = [];
    const document = {
      currentScript: null,
      baseURI: 'https://farm.example/task-pane.html',
      createElement: () => ({ remove: () => added.pop() }),
      head: { append: (script: (typeof added)[number]) => added.push(script) },
    };
    class HTMLScriptElement {}
    const { functions, context } = associated({ page: { document, HTMLScriptElement } });
    return { added, context, sheets: (): unknown => functions.get('CUT.SHEETS')!(...order) };
  }

  test('loads the search for cut plans once, when the first plan is asked for, and then answers at once', async () => {
    const { added, context, sheets } = pageWithoutSearch();
    expect(added).toEqual([]);
    const answers = [sheets(), sheets()];
    expect(added.map(({ src }) => src)).toEqual(['https://farm.example/cut-plans.js']);
    runInContext(file('cut-plans.js'), context);
    added[0]!.onload();
    const expected = spill('CUT.SHEETS', ...order);
    for (const found of await Promise.all(answers)) expect(found).toEqual(expected);
    expect(sheets()).toEqual(expected);
    expect(added).toHaveLength(1);
  });

  test('says in the cell that the search did not load, and tries again at the next calculation', async () => {
    const { added, context, sheets } = pageWithoutSearch();
    const first = sheets();
    added[0]!.onerror();
    await expect(first).rejects.toMatchObject({
      code: '#N/A',
      message: 'cut-plans.js, which searches for cut plans, did not load; check that its site can be reached',
    });
    const second = sheets();
    expect(added).toHaveLength(1);
    runInContext(file('cut-plans.js'), context);
    added[0]!.onload();
    expect(await second).toEqual(spill('CUT.SHEETS', ...order));
  });
});

describe('the workbench', () => {
  test('shares its pane with Excel, which loads at most 90 kB for it besides the formulas in the functions’ script', () => {
    expect(gzipSync(file('task-pane.js'), { level: 9 }).length).toBeLessThanOrEqual(90_000);
  });

  test('needs for its first cell at most 1.6 MB of scripts as they travel', () => {
    const named = Array.from(file('workbench/index.html').matchAll(/<script src="([^"]+)"/g), ([, name]) => name!);
    expect(named).toEqual(['first-look.js']);
    // The first script asks for the functions and then for the workbench.
    for (const name of ['functions.js', 'workbench.js']) expect(file('workbench/first-look.js')).toContain(`"${name}"`);
    const scripts = [...named, 'functions.js', 'workbench.js'].map(
      (name) => gzipSync(file(`workbench/${name}`), { level: 9 }).length,
    );
    expect(scripts.reduce((sum, size) => sum + size)).toBeLessThanOrEqual(1_600_000);
  });

  test('asks for the first sample before any script has run', () => {
    expect(file('workbench/index.html')).toContain(
      `href="../sample-workbooks/${firstSample.replace('.xlsx', '.json')}"`,
    );
  });
});

describe('the metadata', () => {
  test('is the catalogue’s own, within 125 kB', () => {
    const built = file('functions.json');
    const site = /"helpUrl":"(https:\/\/[^/"]+)/.exec(built)![1]!;
    expect(built).toBe(JSON.stringify(functionsMetadata(site)));
    expect(Buffer.byteLength(built)).toBeLessThanOrEqual(125_000);
  });

  test('leads from every function to a page that exists', () => {
    for (const { helpUrl } of functionsMetadata('.').functions)
      expect(existsSync(`dist/${helpUrl}`), helpUrl).toBe(true);
  });
});

describe('the pages', () => {
  test('state a policy that allows neither scripts nor styles inside the page, nor evaluation of text', () => {
    expect(pages()).toContain('task-pane.html');
    for (const name of pages()) {
      const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(file(name))?.[1];
      expect(policy, name).toContain("default-src 'none'");
      expect(policy, name).not.toMatch(/unsafe-(inline|eval)/);
      expect(file(name), name).not.toMatch(/<script(?![^>]*\ssrc=)|<style|\sstyle=|\son\w+=/);
    }
  });

  test('load nothing that is not in the site, but for Excel’s own library', () => {
    for (const name of pages()) {
      for (const [, address] of file(name).matchAll(/(?:src|href)="([^"#]+)/g)) {
        if (address!.startsWith('https://appsforoffice.microsoft.com/')) continue;
        expect(existsSync(`dist/${address}`), `${name}: ${address}`).toBe(true);
      }
    }
  });

  test('load the functions right after Excel’s library and before any other script', () => {
    const scripts = [...file('task-pane.html').matchAll(/<script([^>]*)src="([^"]+)"([^>]*)>/g)];
    expect(scripts[0]![2]).toContain('office.js');
    expect(scripts[1]![2]).toBe('functions.js');
    expect(`${scripts[1]![1]}${scripts[1]![3]}`).not.toMatch(/defer|async|module/);
  });
});

describe('the manifest of the site', () => {
  test('names files that the site has', () => {
    const site = /<AppDomain>([^<]+)</.exec(file('manifest.xml'))![1]!;
    const addresses = [...file('manifest.xml').matchAll(/DefaultValue="(https:[^"]+)"/g)].map(
      ([, address]) => address!,
    );
    expect(addresses.length).toBeGreaterThan(10);
    for (const address of addresses) {
      expect(address.startsWith(`${site}/`), address).toBe(true);
      expect(existsSync(`dist${address.slice(site.length)}`), address).toBe(true);
    }
  });
});

describe('the licenses of the site', () => {
  test('are our own and that of every package in its scripts', () => {
    const texts = file('licenses.txt').split(`\n${'-'.repeat(72)}\n\n`);
    const packages = texts.map((text) => text.slice(0, text.indexOf('\n')));
    expect(packages).toContain('siltstead');
    // What the pane and its export writers are known to import.
    expect(packages).toContain('@borgar/fx');
    expect(packages).toContain('@tarikjabiri/dxf');
    for (const text of texts) expect(text).toMatch(/copyright/i);
  });
});
