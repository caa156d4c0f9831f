/**
 * A small server for a built shop: the files of one folder, and nothing outside it. `npm start` and the browser
 * tests use it, so both see the same headers, and a missing page answers 404 as it will on a real host.
 */
import { createReadStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, resolve, sep } from 'node:path';
import { pipeline } from 'node:stream/promises';

const contentTypes: Readonly<Record<string, string>> = {
  '.avif': 'image/avif',
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
};

/** A server that listens: its address without path and slash, and how to stop it at once. */
export interface RunningServer {
  readonly origin: string;
  readonly port: number;
  readonly close: () => Promise<void>;
}

type Target =
  | { readonly kind: 'file'; readonly path: string; readonly size: number; readonly changedMs: number }
  | { readonly kind: 'redirect'; readonly to: string }
  | { readonly kind: 'none' };

/** The file that a decoded request path names; none where nothing is there or the path leads out of the folder. */
async function findTarget(folder: string, pathname: string): Promise<Target> {
  const path = resolve(folder, `.${pathname}`);
  if (path !== folder && !path.startsWith(folder + sep)) return { kind: 'none' };
  if (pathname.includes('\\') || pathname.includes('\0')) return { kind: 'none' };
  const found = await stat(path).catch(() => undefined);
  if (found?.isDirectory()) {
    const index = await stat(join(path, 'index.html')).catch(() => undefined);
    if (!index?.isFile()) return { kind: 'none' };
    if (!pathname.endsWith('/')) return { kind: 'redirect', to: `${pathname}/` };
    return { kind: 'file', path: join(path, 'index.html'), size: index.size, changedMs: index.mtimeMs };
  }
  if (!found?.isFile() || pathname.endsWith('/')) return { kind: 'none' };
  return { kind: 'file', path, size: found.size, changedMs: found.mtimeMs };
}

/** The same on a host where the folder lies below the path `base`, to which the host's root leads. */
async function findBelow(base: string, folder: string, pathname: string): Promise<Target> {
  if (base === '') return findTarget(folder, pathname);
  if (pathname === '/' || pathname === base) return { kind: 'redirect', to: `${base}/` };
  if (!pathname.startsWith(`${base}/`)) return { kind: 'none' };
  const target = await findTarget(folder, pathname.slice(base.length));
  return target.kind === 'redirect' ? { ...target, to: `${base}${target.to}` } : target;
}

async function sendNotFound(folder: string, request: IncomingMessage, response: ServerResponse) {
  const page = await readFile(join(folder, '404.html')).catch(() => undefined);
  const body = page ?? 'Not found\n';
  response.writeHead(404, {
    'content-type': contentTypes[page === undefined ? '.txt' : '.html'],
    'content-length': body.length,
    'cache-control': 'no-cache',
  });
  response.end(request.method === 'HEAD' ? undefined : body);
}

async function sendFile(file: Target & { kind: 'file' }, request: IncomingMessage, response: ServerResponse) {
  const etag = `"${file.size.toString(36)}-${Math.round(file.changedMs).toString(36)}"`;
  response.setHeader('etag', etag);
  // Names under _astro carry a digest of their content, so they never change; all else is asked for again.
  const lasting = file.path.includes(`${sep}_astro${sep}`);
  response.setHeader('cache-control', lasting ? 'public, max-age=31536000, immutable' : 'no-cache');
  if (request.headers['if-none-match'] === etag) {
    response.writeHead(304).end();
    return;
  }
  response.setHeader(
    'content-type',
    contentTypes[extname(file.path).toLowerCase()] ?? 'application/octet-stream',
  );
  response.setHeader('content-length', file.size);
  response.writeHead(200);
  if (request.method === 'HEAD') response.end();
  else await pipeline(createReadStream(file.path), response);
}

async function answer(folder: string, base: string, request: IncomingMessage, response: ServerResponse) {
  response.setHeader('x-content-type-options', 'nosniff');
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { allow: 'GET, HEAD' }).end();
    return;
  }
  const [rawPath = '/', query] = (request.url ?? '/').split('?', 2);
  let pathname: string;
  try {
    pathname = decodeURIComponent(rawPath);
  } catch {
    response.writeHead(400, { 'content-type': 'text/plain; charset=utf-8' }).end('Malformed address\n');
    return;
  }
  const target = await findBelow(base, folder, pathname);
  if (target.kind === 'file') await sendFile(target, request, response);
  else if (target.kind === 'none') await sendNotFound(folder, request, response);
  else {
    // One leading slash only: `//host/` would lead to another site.
    const location = encodeURI(target.to.replace(/^\/+/, '/')) + (query === undefined ? '' : `?${query}`);
    // Browsers keep a lasting one, and tomorrow another shop may lie at this root.
    response.writeHead(pathname === '/' ? 302 : 301, { location }).end();
  }
}

function listen(server: Server, host: string, port: number): Promise<void> {
  return new Promise((settle, fail) => {
    server.once('error', fail);
    server.listen(port, host, () => {
      server.off('error', fail);
      settle();
    });
  });
}

/**
 * Serves `folder` on `host`, at `port` or, where that is taken, one of the next 20; port 0 is any free one.
 * `base` is a path such as `/shop` below which it lies. `onTaken` hears each port that was taken. Rejects when none of them is free or the host cannot be bound.
 */
export async function serveFolder(
  folder: string,
  { host = '127.0.0.1', port = 0, base = '', onTaken = (_port: number) => {} } = {},
): Promise<RunningServer> {
  const root = resolve(folder);
  const server = createServer((request, response) => {
    // A visitor who leaves in the middle of a file is no fault; a file that vanished ends the connection.
    answer(root, base, request, response).catch(() => response.destroy());
  });
  for (let tried = 0; ; tried += 1) {
    try {
      await listen(server, host, port === 0 ? 0 : port + tried);
      break;
    } catch (error) {
      const taken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
      if (!taken || tried === 20) throw error;
      onTaken(port + tried);
    }
  }
  const address = server.address() as AddressInfo;
  return {
    origin: `http://${address.family === 'IPv6' ? `[${host}]` : host}:${address.port}`,
    port: address.port,
    close: () =>
      new Promise((settle) => {
        server.close(() => settle());
        server.closeAllConnections();
      }),
  };
}
