import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningServer, serveFolder } from '../../src/commands/serve.ts';

let parent: string;
let server: RunningServer;

beforeAll(async () => {
  parent = mkdtempSync(join(tmpdir(), 'bevelbook-serve-'));
  const site = join(parent, 'site');
  mkdirSync(join(site, 'frames'), { recursive: true });
  mkdirSync(join(site, '_astro'));
  mkdirSync(join(site, 'empty'));
  mkdirSync(join(parent, 'site-private'));
  writeFileSync(join(site, 'index.html'), '<h1>Home</h1>');
  writeFileSync(join(site, 'frames', 'index.html'), '<h1>Frames</h1>');
  writeFileSync(join(site, '404.html'), '<h1>Not here</h1>');
  writeFileSync(join(site, '_astro', 'island.Xy12.js'), 'export {};');
  writeFileSync(join(site, 'Größe 1.svg'), '<svg/>');
  writeFileSync(join(parent, 'secret.txt'), 'secret');
  writeFileSync(join(parent, 'site-private', 'secret.txt'), 'secret');
  server = await serveFolder(site);
});

afterAll(async () => {
  await server?.close();
  rmSync(parent, { recursive: true, force: true });
});

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, unknown>>;
  readonly body: string;
}

/** Sends the path as it is written: fetch would tidy `..` away before the server saw it. */
function ask(path: string, method = 'GET', headers: Record<string, string> = {}): Promise<Answer> {
  return new Promise((settle, fail) => {
    const call = request({ host: '127.0.0.1', port: server.port, path, method, headers }, (response) => {
      let body = '';
      response.on('data', (chunk) => {
        body += chunk;
      });
      response.on('end', () => settle({ status: response.statusCode ?? 0, headers: response.headers, body }));
    });
    call.on('error', fail);
    call.end();
  });
}

describe('serveFolder', () => {
  it('answers a folder with its index and the right type', async () => {
    const answer = await ask('/frames/?from=home');
    expect(answer).toMatchObject({ status: 200, body: '<h1>Frames</h1>' });
    expect(answer.headers['content-type']).toBe('text/html; charset=utf-8');
  });

  it('sends a folder without its slash to the address with it, the query kept', async () => {
    const answer = await ask('/frames?from=home');
    expect(answer).toMatchObject({ status: 301, headers: { location: '/frames/?from=home' } });
  });

  it('serves below a path as a host does, to which its root leads', async () => {
    const below = await serveFolder(join(parent, 'site'), { base: '/some/shop' });
    const get = (path: string) => fetch(`${below.origin}${path}`, { redirect: 'manual' });
    const page = await get('/some/shop/frames/');
    expect([page.status, await page.text()]).toEqual([200, '<h1>Frames</h1>']);
    expect([(await get('/frames/')).status, (await get('/some/shopping/')).status]).toEqual([404, 404]);
    const ways = ['/', '/some/shop', '/some/shop/frames?x=1'];
    expect(await Promise.all(ways.map(async (way) => (await get(way)).headers.get('location')))).toEqual([
      '/some/shop/',
      '/some/shop/',
      '/some/shop/frames/?x=1',
    ]);
    await below.close();
  });

  it('never redirects to another site', async () => {
    const answer = await ask('//frames');
    expect(answer.headers['location'] ?? '/').toMatch(/^\/(?!\/)/);
  });

  it('decodes names that are not plain ASCII', async () => {
    expect(await ask('/Gr%C3%B6%C3%9Fe%201.svg')).toMatchObject({
      status: 200,
      headers: { 'content-type': 'image/svg+xml' },
    });
  });

  it.each(['/nothing', '/nothing/', '/index.html/', '/empty', '/empty/'])(
    'answers %s, where nothing is, with the page for that and status 404',
    async (path) => {
      expect(await ask(path)).toMatchObject({ status: 404, body: '<h1>Not here</h1>' });
    },
  );

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/frames/..%2f..%2fsecret.txt',
    '/..%5csecret.txt',
    '/../site-private/secret.txt',
    '/..%2fsite-private/secret.txt',
    '/index.html%00.svg',
  ])('keeps what lies outside its folder to itself: %s', async (path) => {
    const answer = await ask(path);
    expect(answer.status).toBe(404);
    expect(answer.body).not.toContain('secret');
  });

  it('calls an address that cannot be decoded malformed', async () => {
    expect((await ask('/%ff')).status).toBe(400);
  });

  it('lets named-by-content files be kept for ever and has all others asked for again', async () => {
    expect((await ask('/_astro/island.Xy12.js')).headers['cache-control']).toContain('immutable');
    const page = await ask('/');
    expect(page.headers['cache-control']).toBe('no-cache');
    const again = await ask('/', 'GET', { 'if-none-match': String(page.headers['etag']) });
    expect(again).toMatchObject({ status: 304, body: '' });
  });

  it('answers HEAD without a body and refuses to be written to', async () => {
    expect(await ask('/', 'HEAD')).toMatchObject({
      status: 200,
      body: '',
      headers: { 'content-length': '13' },
    });
    expect((await ask('/', 'POST')).status).toBe(405);
  });

  it('takes the next port where one is taken, and says which was', async () => {
    const taken: number[] = [];
    const second = await serveFolder(join(parent, 'site'), {
      port: server.port,
      onTaken: (port) => taken.push(port),
    });
    expect(taken[0]).toBe(server.port);
    expect(second.port).toBe(server.port + taken.length);
    await second.close();
  });
});
