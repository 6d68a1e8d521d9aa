import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { serveSite } from '../../../src/command-line/serve-site';
import { faultsOf } from '../../../src/tools/build/check-site';
import { checksums, releaseFiles, releaseZip, stepsFor } from '../../../src/tools/build/release';
import { isStartedAs } from '../../../src/tools/build/started-as';

const bytes = (text: string) => new TextEncoder().encode(text);

describe('the zip of a release', () => {
  const files = [
    { path: 'site/b.html', bytes: bytes('b'.repeat(500)) },
    { path: 'site/a.html', bytes: bytes('a') },
  ];

  test('holds its files, and is the same whenever and in whatever order it is made', () => {
    const zip = releaseZip(files);
    const unpacked = unzipSync(zip);
    expect(Object.keys(unpacked)).toEqual(['site/a.html', 'site/b.html']);
    expect(new TextDecoder().decode(unpacked['site/b.html'])).toBe('b'.repeat(500));
    const zone = process.env.TZ;
    process.env.TZ = 'Pacific/Auckland';
    const elsewhere = releaseZip([...files].reverse());
    process.env.TZ = zone;
    expect(elsewhere).toEqual(zip);
  });

  test('has a checksum of each file as sha256sum reads them', () => {
    expect(checksums(files)).toBe(
      files
        .map(({ path, bytes: content }) => `${createHash('sha256').update(content).digest('hex')}  ${path}\n`)
        .reverse()
        .join(''),
    );
  });

  test('says its address and version in the steps', () => {
    const steps = stepsFor('https://farm.example/silt', '1.2.3');
    expect(steps).toContain('Siltstead 1.2.3 for https://farm.example/silt');
    expect(steps).not.toContain('localhost:3000');
  });
});

describe('a release', () => {
  test('holds the site, samples, manifest, license and steps, each with its checksum', () => {
    const root = mkdtempSync(join(tmpdir(), 'release-'));
    const put = (folder: string, path: string, content: string | Uint8Array) => {
      const file = join(folder, path);
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, content);
    };
    for (const path of ['dist/index.html', 'dist/manifest.xml', 'sample-workbooks/US/a.xlsx', 'LICENSE'])
      put(root, path, path);
    const unpacked = unzipSync(releaseZip(releaseFiles('https://farm.example', '1.2.3', root)));
    const paths = ['LICENSE', 'README.txt', 'checksums.txt', 'manifest.xml', 'samples/US/a.xlsx'];
    expect(Object.keys(unpacked)).toEqual([...paths, 'site/index.html', 'site/manifest.xml']);
    const lines = new TextDecoder().decode(unpacked['checksums.txt']).trimEnd().split('\n');
    expect(lines).toHaveLength(6);
    for (const line of lines) {
      const [sum, path = ''] = line.split('  ');
      expect(createHash('sha256').update(unpacked[path]!).digest('hex'), path).toBe(sum);
    }
    rmSync(root, { recursive: true });
  });

  test('is made only by its own command, wherever the project lies', () => {
    expect(isStartedAs('release.ts', '/siltstead/src/tools/build/release.ts')).toBe(true);
    expect(isStartedAs('release.ts', '/siltstead-release.ts/node_modules/vitest/vitest.mjs')).toBe(false);
  });
});

describe('looking at a hosted site', () => {
  test('finds nothing wrong with the built site at the address that it was built for', async () => {
    const built = /"helpUrl":"(https:.*?)\/reference\//.exec(readFileSync('dist/functions.json', 'utf8'))![1]!;
    const server = await serveSite({ folder: 'dist', port: 4830, morePorts: 20 });
    const asked: string[] = [];
    const faults = await faultsOf(`${built}/`, (address) => {
      asked.push(address);
      return fetch(address.replace(`${built}/`, server.address));
    });
    await server.close();
    expect(faults).toEqual([]);
    expect(asked).toContain(`${built}/guide/index.html`);
  });

  test('finds nothing wrong with the built site but that it was built for another address', async () => {
    const server = await serveSite({ folder: 'dist', port: 4870, morePorts: 20 });
    const faults = await faultsOf(server.address);
    await server.close();
    expect(faults.filter((fault) => !/another address|build it again/.test(fault))).toEqual([]);
    expect(faults).toHaveLength(2);
  });

  test('names each file that is missing or has the wrong type', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'hosted-'));
    writeFileSync(join(folder, 'functions.json'), '<!doctype html>');
    const server = await serveSite({ folder, port: 4890, morePorts: 20 });
    const bare = (address: string) =>
      fetch(address).then(
        async (response) =>
          new Response(await response.text(), { status: response.status, headers: { 'content-type': 'text/html' } }),
      );
    const faults = await faultsOf(server.address, bare);
    await server.close();
    rmSync(folder, { recursive: true });
    expect(faults).toContain('workbench/workbench.js is answered with 404; copy it to the site.');
    expect(faults.join('\n')).toMatch(/functions\.json comes as text\/html/);
    expect(faults.join('\n')).toMatch(/Access-Control-Allow-Origin/);
    expect(faults.join('\n')).toMatch(/functions\.json is not JSON/);
  });
});
