/**
 * Keeps one whole version of the program on the device, so that it opens at a stairwell without any
 * network. It runs beside the page (a service worker) and is built last, when the files that it keeps
 * are known: their names, and what their bytes add up to.
 *
 * All files or none: a version of which anything is missing, torn, or in truth the welcome page of
 * somebody's network is thrown away, and the version before it stays. A version that is complete
 * waits until the page asks for it or no window is open any more: nothing changes in the middle of work.
 */

interface KeptVersion {
  readonly version: string;
  /** Of each file, by its address from the page's own: its SHA-256 in base 64. */
  readonly files: Readonly<Record<string, string>>;
}

/** Written in by the build. */
declare const KEPT_VERSION: KeptVersion;

/** The types know workers of any kind; this one serves a page. */
const own = self as unknown as ServiceWorkerGlobalScope;
const { version, files } = KEPT_VERSION;
const SCOPE = new URL('./', own.location.href);
/** Other programs of the same host, or this one under another path, have caches of their own. */
const FAMILY = `pitchboard ${SCOPE.pathname} `;
const NAME = FAMILY + version;
const PAGE = 'index.html';
/** Names with a hash of their content never mean anything else. */
const NEVER_CHANGES = /^assets\//;
/** Of the bytes as they came over the network; what is kept has been unpacked. */
const HEADERS_OF_TRANSFER = ['content-encoding', 'content-length'];

own.addEventListener('install', (event) => event.waitUntil(keepAll()));
own.addEventListener('activate', (event) => event.waitUntil(takeOver()));
own.addEventListener('message', (event) => {
  if (event.data === 'begin') void own.skipWaiting();
});
own.addEventListener('fetch', (event) => {
  const path = keptPath(event.request);
  if (path !== null) event.respondWith(answer(path, event.request));
});

async function keepAll(): Promise<void> {
  const cache = await caches.open(NAME);
  try {
    await Promise.all(Object.entries(files).map(([path, sum]) => keep(cache, path, sum)));
  } catch (error) {
    await caches.delete(NAME);
    throw error;
  }
}

async function keep(cache: Cache, path: string, sum: string): Promise<void> {
  const address = addressOf(path);
  const before = await caches.match(address);
  if (before !== undefined && (await sumOf(await before.clone().arrayBuffer())) === sum) {
    await cache.put(address, before);
    return;
  }
  // The page is asked for as a visitor would: some hosts send away whoever asks for its file by name.
  const asked = path === PAGE ? SCOPE.href : address;
  const response = await fetch(asked, { cache: NEVER_CHANGES.test(path) ? 'default' : 'no-cache' });
  const bytes = await response.arrayBuffer();
  if (!response.ok || (await sumOf(bytes)) !== sum) throw new Error(`${path} did not come as it was built`);
  const headers = new Headers(response.headers);
  for (const name of HEADERS_OF_TRANSFER) headers.delete(name);
  await cache.put(address, new Response(bytes, { headers }));
}

/** The version before stays: a window that is still open on it may ask for a part that it has not fetched yet. */
async function takeOver(): Promise<void> {
  const older = (await caches.keys()).filter((name) => name.startsWith(FAMILY) && name !== NAME);
  await Promise.all(older.slice(0, -1).map((name) => caches.delete(name)));
  await own.clients.claim();
}

/** @returns null for what is none of this program's files */
function keptPath({ method, mode, url }: Request): string | null {
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== SCOPE.origin || !pathname.startsWith(SCOPE.pathname)) return null;
  const path = pathname.slice(SCOPE.pathname.length);
  if (path === '' || path === PAGE) return mode === 'navigate' ? PAGE : null;
  return Object.hasOwn(files, path) || NEVER_CHANGES.test(path) ? path : null;
}

async function answer(path: string, request: Request): Promise<Response> {
  const address = addressOf(path);
  const cache = await caches.open(NAME);
  return (await cache.match(address)) ?? (await caches.match(address)) ?? fetch(request);
}

function addressOf(path: string): string {
  return new URL(path, SCOPE).href;
}

async function sumOf(bytes: ArrayBuffer): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return btoa(String.fromCharCode(...sum));
}
