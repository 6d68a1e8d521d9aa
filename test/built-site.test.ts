import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { catalogue } from '../src/catalogue/all';
import { functionsMetadata } from '../src/functions/metadata';
import { spill } from './functions/call';
import { CellError } from './functions/cell-error';

/** What `npm run build` leaves in dist, taken as Excel takes it: one classic script, one metadata file, pages. */
const file = (name: string) => readFileSync(`dist/${name}`, 'utf8');
const pages = () => readdirSync('dist').filter((name) => name.endsWith('.html'));

beforeAll(() => {
  if (!existsSync('dist/functions.js')) throw new Error('dist is not built yet: npm run build');
});

/** Runs the built script as a browser would, with nothing around it but a stand-in for Excel's global. */
function associated(): ReadonlyMap<string, (...values: unknown[]) => unknown> {
  const functions = new Map<string, (...values: unknown[]) => unknown>();
  const associate = (id: string, implementation: (...values: unknown[]) => unknown) => {
    functions.set(id, implementation);
  };
  runInContext(file('functions.js'), createContext({ CustomFunctions: { associate, Error: CellError } }));
  return functions;
}

describe('the functions script', () => {
  test('associates every function of the metadata before it ends, and no other', () => {
    const metadata = JSON.parse(file('functions.json')) as { functions: { id: string }[] };
    expect([...associated().keys()].sort()).toEqual(metadata.functions.map(({ id }) => id).sort());
    expect(metadata.functions).toHaveLength(catalogue.length);
  });

  test('answers as the sources do', () => {
    const arguments_ = ['US', 22.5, 0, 9.25] as const;
    expect(associated().get('CONE.ANGLE')!(...arguments_)).toEqual(spill('CONE.ANGLE', ...arguments_));
    expect(associated().get('WATER.DENSITY')!('metric', 20)).toEqual(spill('WATER.DENSITY', 'metric', 20));
    expect(associated().get('CONE.ANGLE')!('metric', [[500], [600]], 100, 200)).toEqual(
      spill('CONE.ANGLE', 'metric', [[500], [600]], 100, 200),
    );
  });

  test('refuses with the message of the sources', () => {
    const call = associated().get('CONE.ANGLE')!;
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

  test('is one file without evaluation of text, and within 60 kB as it travels', () => {
    expect(file('functions.js')).not.toMatch(/\beval\(|new Function\(|\bimport\(/);
    expect(gzipSync(file('functions.js'), { level: 9 }).length).toBeLessThanOrEqual(60_000);
  });
});

describe('the metadata', () => {
  test('is the catalogue’s own, within 100 kB', () => {
    const built = file('functions.json');
    const site = /"helpUrl":"(https:\/\/[^/"]+)/.exec(built)![1]!;
    expect(built).toBe(JSON.stringify(functionsMetadata(site)));
    expect(Buffer.byteLength(built)).toBeLessThanOrEqual(100_000);
  });

  test('leads from every function to a page that is there', () => {
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

  test('load the functions right behind Excel’s library and before any other script', () => {
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
