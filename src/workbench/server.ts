import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import type { PageFiles } from './build-page';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.xml': 'application/xml',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

/** Folders of the project that are served, by the first part of the address. */
const folders: Readonly<Record<string, string>> = { site: 'dist', 'sample-workbooks': 'sample-workbooks' };

function sampleList(): string {
  if (!existsSync('sample-workbooks')) return '[]';
  const names = readdirSync('sample-workbooks', { recursive: true, encoding: 'utf8' });
  return JSON.stringify(
    names
      .filter((name) => name.endsWith('.xlsx'))
      .map((name) => name.replaceAll('\\', '/'))
      .sort(),
  );
}

function fileIn(folder: string, path: string): Uint8Array | undefined {
  const file = normalize(join(folder, path));
  if (!file.startsWith(folder + sep) || !existsSync(file) || !statSync(file).isFile()) return undefined;
  return readFileSync(file);
}

function answer(page: PageFiles, path: string): Uint8Array | string | undefined {
  if (path === 'index.html') return readFileSync('src/workbench/index.html');
  if (path === 'workbench.css') return readFileSync('src/workbench/workbench.css');
  if (path === 'sample-workbooks/list.json') return sampleList();
  const built = page.get(path);
  if (built !== undefined) return built;
  const [first = '', ...rest] = path.split('/');
  const folder = folders[first];
  return folder === undefined ? undefined : fileIn(folder, rest.join('/'));
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject);
      const address = server.address();
      resolve(typeof address === 'object' && address !== null ? address.port : port);
    });
  });
}

export interface RunningServer {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Serves the workbench to this machine only, at the wanted port or the next free one. */
export async function serve(page: PageFiles, wantedPort: number): Promise<RunningServer> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname).slice(1);
    const body = request.method === 'GET' || request.method === 'HEAD' ? answer(page, path || 'index.html') : undefined;
    const type = types[extname(path || 'index.html')] ?? 'application/octet-stream';
    response.writeHead(body === undefined ? 404 : 200, {
      'content-type': body === undefined ? 'text/plain' : type,
      'cache-control': 'no-cache',
    });
    response.end(body ?? 'not here');
  });
  for (let port = wantedPort; ; port += 1) {
    try {
      const taken = await listen(server, port);
      return {
        address: `http://localhost:${taken}/`,
        close: () =>
          new Promise((resolve) => {
            server.close(() => resolve());
            server.closeAllConnections();
          }),
      };
    } catch (thrown) {
      if ((thrown as NodeJS.ErrnoException).code !== 'EADDRINUSE' || port >= wantedPort + 20) throw thrown;
    }
  }
}
