import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, request, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { staticSite } from '../../src/command-line/static-site';

let folder: string;
let server: Server;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'siltstead-site-'));
  mkdirSync(join(folder, 'site/reference'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'above the site');
  writeFileSync(join(folder, 'site/functions.json'), '{"functions":[]}');
  writeFileSync(join(folder, 'site/reference/index.html'), '<!doctype html>');
  server = createServer(staticSite(join(folder, 'site')));
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
});

afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true });
});

interface Answer {
  readonly status: number | undefined;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: string;
}

/** Asks for a path exactly as it is written, which `fetch` would tidy up first. */
function ask(path: string, method = 'GET'): Promise<Answer> {
  const { port } = server.address() as AddressInfo;
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, path, method }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () => {
        resolve({ status: response.statusCode, headers: response.headers, body: Buffer.concat(parts).toString() });
      });
    });
    asked.on('error', reject);
    asked.end();
  });
}

describe('the served site', () => {
  test('hands functions.json to any site as JSON', async () => {
    const { status, headers, body } = await ask('/functions.json?v=2');
    expect([status, body]).toEqual([200, '{"functions":[]}']);
    expect(headers['content-type']).toMatch(/^application\/json/);
    expect(headers['access-control-allow-origin']).toBe('*');
  });

  test('answers a folder with its index page', async () => {
    expect(await ask('/reference/')).toMatchObject({ status: 200, body: '<!doctype html>' });
  });

  test('answers HEAD without a body', async () => {
    expect(await ask('/functions.json', 'HEAD')).toMatchObject({ status: 200, body: '' });
  });

  test.each(['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/reference/..%2f..%2fsecret.txt'])(
    'gives nothing above its folder: %s',
    async (path) => {
      const { status, body } = await ask(path);
      expect(status).toBe(404);
      expect(body).not.toContain('above');
    },
  );

  test.each(['/missing.js', '/reference', '/%', '/a%00b'])('says that it has no %s', async (path) => {
    expect(await ask(path)).toMatchObject({ status: 404, body: 'no such file\n' });
  });

  test('takes no other method', async () => {
    expect((await ask('/functions.json', 'POST')).status).toBe(405);
  });
});
