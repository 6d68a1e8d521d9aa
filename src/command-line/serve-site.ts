/** The one server of the built site: for `npm start`, for Excel, for tests and for measuring. */
import { createServer, type IncomingMessage, type RequestListener, type Server, type ServerResponse } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import { resolve } from 'node:path';
import compression from 'compression';
import serveStatic from 'serve-static';

/** Answers requests for the files of a folder and for nothing above it; any site may read them, as Excel does. */
export function siteListener(folder: string, isFar = false): RequestListener {
  // On one machine packing takes longer than the way.
  const compress = compression({ filter: isFar ? compression.filter : () => false });
  const files = serveStatic(resolve(folder), {
    fallthrough: false,
    dotfiles: 'deny',
    // Every answer is checked again for a newer one, so that a rebuilt site is seen at once.
    cacheControl: false,
    setHeaders: (response) => {
      response.setHeader('Cache-Control', 'no-cache');
      response.setHeader('Access-Control-Allow-Origin', '*');
      response.setHeader('X-Content-Type-Options', 'nosniff');
    },
  });
  return (request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, 405, 'only GET and HEAD');
    if (!isPlainPath(request)) return refuse(response, 400, 'not the address of a file');
    // The two packages declare their requests as those of Express, and use nothing but Node's own.
    const [asked, answer] = [request as Parameters<typeof files>[0], response as Parameters<typeof files>[1]];
    compress(asked as Parameters<typeof compress>[0], answer as Parameters<typeof compress>[1], () =>
      files(asked, answer, () => refuse(response, 404, 'no such file')),
    );
  };
}

/** Whether an address is written as that of a file: one slash between names, percent signs that can be read. */
function isPlainPath({ url = '' }: IncomingMessage): boolean {
  const [path = ''] = url.split('?');
  try {
    return path.startsWith('/') && !/\/\/|\\|\0/.test(decodeURIComponent(path));
  } catch {
    return false;
  }
}

function refuse(response: ServerResponse, status: number, reason: string): void {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' }).end(`${reason}\n`);
}

export interface RunningServer {
  /** The address of the site, with a slash at its end. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

export interface ServeOptions {
  readonly folder: string;
  readonly port: number;
  /** How many following ports to try if the wanted one is in use. */
  readonly morePorts?: number;
  /** Packs as for a network, for measuring what travels. */
  readonly isFar?: boolean;
  /** With a certificate, the site is served over https. */
  readonly certificate?: { readonly cert: Buffer; readonly key: Buffer };
}

/** Serves a folder to this machine only, at the wanted port or a free one after it. */
export async function serveSite({
  folder,
  port,
  morePorts = 0,
  isFar,
  certificate,
}: ServeOptions): Promise<RunningServer> {
  const listener = siteListener(folder, isFar);
  const server = certificate === undefined ? createServer(listener) : createSecureServer(certificate, listener);
  for (let wanted = port; ; wanted += 1) {
    try {
      const taken = await listen(server, wanted);
      return {
        address: `${certificate === undefined ? 'http' : 'https'}://localhost:${taken}/`,
        close: () =>
          new Promise((closed) => {
            server.close(() => closed());
            server.closeAllConnections();
          }),
      };
    } catch (thrown) {
      if (!(thrown instanceof Error && 'code' in thrown && thrown.code === 'EADDRINUSE')) throw thrown;
      if (wanted >= port + morePorts) throw new Error(`port ${wanted} is in use; stop the program that uses it`);
    }
  }
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, 'localhost', () => {
      server.off('error', reject);
      const address = server.address();
      resolve(typeof address === 'object' && address !== null ? address.port : port);
    });
  });
}
