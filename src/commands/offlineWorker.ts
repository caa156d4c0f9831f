/** The worker of the workroom's page, as a function that needs nothing around it: its text goes to the browser. */

interface WorkerEvent {
  readonly request: Request;
  readonly waitUntil: (work: Promise<unknown>) => void;
  readonly respondWith: (answer: Promise<Response>) => void;
}

/** What a service worker knows as `self`, as far as it is used. */
interface WorkerScope {
  readonly addEventListener: (name: string, act: (event: WorkerEvent) => void) => void;
  readonly skipWaiting: () => Promise<void>;
  readonly clients: { readonly claim: () => Promise<void> };
  readonly caches: CacheStorage;
  readonly fetch: typeof fetch;
  readonly location: { readonly origin: string };
}

/**
 * Keeps `files` in the store `name`, drops the stores of older versions, and answers for these files alone: the page
 * from the network where there is one, so that prices are those of today, its parts as kept.
 */
export function offlineWorker(worker: WorkerScope, name: string, files: readonly string[]): void {
  const [page = ''] = files;
  const ours = 'bevelbook-workroom-';

  async function keep(): Promise<void> {
    const store = await worker.caches.open(name);
    await store.addAll(files.map((file) => new Request(file, { cache: 'reload' })));
    await worker.skipWaiting();
  }

  async function tidy(): Promise<void> {
    const names = await worker.caches.keys();
    const old = names.filter((one) => one.startsWith(ours) && one !== name);
    await Promise.all(old.map((one) => worker.caches.delete(one)));
    await worker.clients.claim();
  }

  const kept = async (file: string) => (await worker.caches.open(name)).match(file);

  async function freshPage(request: Request): Promise<Response> {
    const fresh = await worker.fetch(request).catch(() => null);
    const known = fresh?.ok ? undefined : await kept(page);
    return known ?? fresh ?? Response.error();
  }

  const keptPart = async (file: string, request: Request) => (await kept(file)) ?? worker.fetch(request);

  worker.addEventListener('install', (event) => event.waitUntil(keep()));
  worker.addEventListener('activate', (event) => event.waitUntil(tidy()));
  worker.addEventListener('fetch', (event) => {
    const { origin, pathname } = new URL(event.request.url);
    if (event.request.method !== 'GET' || origin !== worker.location.origin) return;
    if (pathname === page) event.respondWith(freshPage(event.request));
    else if (files.includes(pathname)) event.respondWith(keptPart(pathname, event.request));
  });
}
