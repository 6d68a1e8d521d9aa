import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { serveSite } from '../../../src/command-line/serve-site';
import { faultsOf } from '../../../src/tools/build/check-site';
import { checksums, releaseZip, stepsFor } from '../../../src/tools/build/release';

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

describe('looking at a hosted site', () => {
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
