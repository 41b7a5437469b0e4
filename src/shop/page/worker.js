// Keeps the page itself on the phone, so that it opens without the workshop. Requests to /api/ are never kept and never answered from here.
const KEPT = 'page-1';

self.addEventListener('install', (event) => {
  event.waitUntil(
    (async () => {
      const addresses = await (await fetch('/pages.json', { cache: 'no-store' })).json();
      const cache = await caches.open(KEPT);
      await cache.addAll(addresses.map((address) => new Request(address, { cache: 'no-store' })));
      await self.skipWaiting();
    })(),
  );
});

self.addEventListener('activate', (event) => {
  event.waitUntil(self.clients.claim());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { pathname, origin } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin || pathname.startsWith('/api/'))
    return;
  event.respondWith(fromCopy(request, pathname));
});

/** The copy, at once and whole; a newer one is fetched meanwhile for the next time the page is opened. */
async function fromCopy(request, pathname) {
  const cache = await caches.open(KEPT);
  const copy = await cache.match(pathname);
  const newer = fetch(request.mode === 'navigate' ? pathname : request).then(async (answer) => {
    if (answer.ok) await cache.put(pathname, answer.clone());
    return answer;
  });
  if (copy === undefined) return newer;
  newer.catch(() => {});
  return copy;
}
