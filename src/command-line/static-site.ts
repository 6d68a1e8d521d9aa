import { createReadStream, type Stats, statSync } from 'node:fs';
import type { IncomingMessage, RequestListener, ServerResponse } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  '.xml': 'text/xml; charset=utf-8',
};

/** Answers requests for the files of a folder and for nothing above it; any site may read them, as Excel does. */
export function staticSite(folder: string): RequestListener {
  const root = resolve(folder);
  return (request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, 405, 'only GET and HEAD');
    const path = pathOf(request);
    const file = path === undefined ? undefined : join(root, path.endsWith('/') ? `${path}index.html` : path);
    const found = file?.startsWith(root + sep) ? statOf(file) : undefined;
    if (file === undefined || !found?.isFile()) return refuse(response, 404, 'no such file');
    response.writeHead(200, {
      'Content-Type': types[extname(file)] ?? 'application/octet-stream',
      'Content-Length': found.size,
      'Access-Control-Allow-Origin': '*',
      'Cache-Control': 'no-cache',
      'X-Content-Type-Options': 'nosniff',
    });
    if (request.method === 'HEAD') response.end();
    else createReadStream(file).pipe(response);
  };
}

/** The path that is asked for, its percent signs read; undefined where it is not written as a path is. */
function pathOf(request: IncomingMessage): string | undefined {
  try {
    const path = decodeURIComponent(new URL(request.url ?? '', 'http://localhost').pathname);
    return path.includes('\0') ? undefined : path;
  } catch {
    return undefined;
  }
}

function statOf(file: string): Stats | undefined {
  return statSync(file, { throwIfNoEntry: false });
}

function refuse(response: ServerResponse, status: number, reason: string): void {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' }).end(`${reason}\n`);
}
