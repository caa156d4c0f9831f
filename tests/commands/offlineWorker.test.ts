import { beforeEach, expect, it } from 'vitest';
import { offlineWorker } from '../../src/commands/offlineWorker.ts';

type Listener = (event: unknown) => void;
const FILES = ['/workroom/', '/_astro/a.js'];
const ORIGIN = 'https://shop.example';

let listeners: Map<string, Listener>;
let stores: Map<string, Map<string, string>>;
let network: (path: string) => Promise<Response>;

/** A worker's scope with stores in memory, started as the page starts it. */
function start(name: string): void {
  listeners = new Map();
  const pathOf = (request: Request | string) =>
    typeof request === 'string' ? request : new URL(request.url).pathname;
  const open = async (store: string) => {
    const held = stores.get(store) ?? new Map<string, string>();
    stores.set(store, held);
    const match = async (file: string) => (held.has(file) ? new Response(held.get(file)) : undefined);
    const addAll = async (requests: readonly { readonly url: string }[]) => {
      for (const { url } of requests) held.set(new URL(url).pathname, `kept ${name}`);
    };
    return { match, addAll };
  };
  const scope = {
    addEventListener: (event: string, act: Listener) => listeners.set(event, act),
    skipWaiting: async () => undefined,
    clients: { claim: async () => undefined },
    caches: { open, keys: async () => [...stores.keys()], delete: async (one: string) => stores.delete(one) },
    fetch: (request: Request) => network(pathOf(request)),
    location: { origin: ORIGIN },
  };
  offlineWorker(scope as unknown as Parameters<typeof offlineWorker>[0], name, FILES);
}

async function fire(event: string): Promise<void> {
  const work: Promise<unknown>[] = [];
  listeners.get(event)?.({ waitUntil: (one: Promise<unknown>) => work.push(one) });
  await Promise.all(work);
}

/** What the worker answers; null where it leaves the request alone. */
async function ask(path: string, init: RequestInit = {}): Promise<string | null> {
  const answers: Promise<Response>[] = [];
  const request = new Request(path.startsWith('/') ? ORIGIN + path : path, init);
  listeners.get('fetch')?.({ request, respondWith: (given: Promise<Response>) => answers.push(given) });
  const [response] = await Promise.all(answers);
  return response?.text() ?? null;
}

const REAL = globalThis.Request;
beforeEach(() => {
  stores = new Map();
  network = async (path) => new Response(`fresh ${path}`);
  // In a worker a path alone is an address.
  globalThis.Request = class extends REAL {
    constructor(input: RequestInfo | URL, init?: RequestInit) {
      super(typeof input === 'string' && input.startsWith('/') ? ORIGIN + input : input, init);
    }
  };
  return () => {
    globalThis.Request = REAL;
  };
});

it('answers for the page and its parts, and leaves everything else alone', async () => {
  start('bevelbook-workroom-1');
  await fire('install');
  expect(await ask('/workroom/')).toBe('fresh /workroom/');
  expect(await ask('/_astro/a.js')).toBe('kept bevelbook-workroom-1');
  expect(await ask('/frames/')).toBeNull();
  expect(await ask('https://elsewhere.example/workroom/')).toBeNull();
  expect(await ask('/workroom/', { method: 'POST' })).toBeNull();
});

it('shows the kept page without a network, and when the server only has an error', async () => {
  start('bevelbook-workroom-1');
  await fire('install');
  network = () => Promise.reject(new TypeError('offline'));
  expect(await ask('/workroom/')).toBe('kept bevelbook-workroom-1');
  network = async () => new Response('busy', { status: 503 });
  expect(await ask('/workroom/')).toBe('kept bevelbook-workroom-1');
});

it('keeps nothing but the files that it was given, and drops older versions of its own alone', async () => {
  start('bevelbook-workroom-1');
  await fire('install');
  stores.set('of another program', new Map());
  start('bevelbook-workroom-2');
  await fire('install');
  await fire('activate');
  await ask('/frames/');
  expect([...stores.keys()].sort()).toEqual(['bevelbook-workroom-2', 'of another program']);
  expect([...(stores.get('bevelbook-workroom-2')?.keys() ?? [])]).toEqual(FILES);
});
