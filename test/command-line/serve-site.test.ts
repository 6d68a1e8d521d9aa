import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, request, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { siteListener } from '../../src/command-line/serve-site';

const longScript = 'answer(42);\n'.repeat(2_000);

let folder: string;
let server: Server;
/** Packs as for a network. */
let far: Server;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'siltstead-site-'));
  mkdirSync(join(folder, 'site/reference'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'above the site');
  writeFileSync(join(folder, 'site/functions.json'), '{"functions":[]}');
  writeFileSync(join(folder, 'site/reference/index.html'), '<!doctype html>');
  writeFileSync(join(folder, 'site/long.js'), longScript);
  server = createServer(siteListener(join(folder, 'site')));
  far = createServer(siteListener(join(folder, 'site'), true));
  for (const one of [server, far]) await new Promise<void>((ready) => one.listen(0, '127.0.0.1', ready));
});

afterAll(() => {
  server.close();
  far.close();
  rmSync(folder, { recursive: true });
});

interface Answer {
  readonly status: number | undefined;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly bytes: Buffer;
  readonly body: string;
}

/** Asks for a path exactly as it is written, which `fetch` would tidy up first. */
function ask(path: string, headers: Record<string, string> = {}, method = 'GET', from = server): Promise<Answer> {
  const { port } = from.address() as AddressInfo;
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, path, method, headers }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () => {
        const bytes = Buffer.concat(parts);
        resolve({ status: response.statusCode, headers: response.headers, bytes, body: bytes.toString() });
      });
    });
    asked.on('error', reject);
    asked.end();
  });
}

describe('the served site', () => {
  test('serves functions.json to any site as JSON', async () => {
    const { status, headers, body } = await ask('/functions.json?v=2');
    expect([status, body]).toEqual([200, '{"functions":[]}']);
    expect(headers['content-type']).toMatch(/^application\/json/);
    expect(headers['access-control-allow-origin']).toBe('*');
  });

  test('answers a folder with its index page', async () => {
    expect(await ask('/reference/')).toMatchObject({ status: 200, body: '<!doctype html>' });
  });

  test('answers HEAD without a body', async () => {
    expect(await ask('/functions.json', {}, 'HEAD')).toMatchObject({ status: 200, body: '' });
  });

  test.each(['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/reference/..%2f..%2fsecret.txt'])(
    'gives nothing above its folder: %s',
    async (path) => {
      const { status, body } = await ask(path);
      expect(status).toBe(404);
      expect(body).not.toContain('above');
    },
  );

  test.each(['/missing.js', '/constructor', '/toString', '/__proto__', '/reference/missing'])(
    'says that it has no %s',
    async (path) => {
      expect(await ask(path)).toMatchObject({ status: 404, body: 'no such file\n' });
    },
  );

  test.each(['/%', '/%E0%A4%A', '//', '//example', '/a%00b', '/a%5Cb', '/a%2F%2Fb', '*'])(
    'refuses an address that is none, and lives on: %s',
    async (path) => {
      expect(await ask(path)).toMatchObject({ status: 400, body: 'not the address of a file\n' });
      expect(await ask('/functions.json')).toMatchObject({ status: 200 });
    },
  );

  test('redirects from a folder’s name to the folder, so that relative addresses work', async () => {
    const { status, headers } = await ask('/reference');
    expect([status, headers.location]).toEqual([301, '/reference/']);
  });

  test('compresses text as for a network only where it is to be measured, as that takes longer than the way', async () => {
    const headers = { 'accept-encoding': 'gzip' };
    const packed = await ask('/long.js', headers, 'GET', far);
    expect(packed).toMatchObject({ status: 200, headers: { 'content-encoding': 'gzip' } });
    expect(packed.bytes.length).toBeLessThan(longScript.length / 10);
    expect(gunzipSync(packed.bytes).toString()).toBe(longScript);
    const plain = await ask('/long.js', headers);
    expect(plain).toMatchObject({ status: 200, body: longScript });
    expect(plain.headers['content-encoding']).toBeUndefined();
  });

  test('says when nothing has changed', async () => {
    const { headers } = await ask('/long.js');
    expect((await ask('/long.js', { 'if-none-match': String(headers.etag) })).status).toBe(304);
  });

  test('refuses other methods', async () => {
    expect((await ask('/functions.json', {}, 'POST')).status).toBe(405);
  });
});
