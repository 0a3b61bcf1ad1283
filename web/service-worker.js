// Keeps the pages on this device, so that they open without a signal. The server writes two lines before this: BUILD, the name of this
// build, and SHELL, the addresses of all pages, styles and scripts. Readings are not kept here but in the device's database.

const KEPT = `longsummer-${BUILD}`;
const here = address => new URL(address, self.registration.scope).href;

/** A page that answers with another, such as a sign-in, is not kept in its place. */
async function keep(cache, address) {
  const response = await fetch(new Request(here(address), { cache: 'reload' }));
  if (!response.ok || response.redirected) throw new Error(`${address} was not given`);
  await cache.put(here(address), response);
}

async function keepAll() {
  const cache = await caches.open(KEPT);
  await Promise.all(SHELL.map(address => keep(cache, address)));
  await self.skipWaiting();
}

async function dropOlder() {
  const names = await caches.keys();
  await Promise.all(names.filter(name => name.startsWith('longsummer-') && name !== KEPT).map(name => caches.delete(name)));
  await self.clients.claim();
}

async function answer(request) {
  const cache = await caches.open(KEPT);
  const kept = await cache.match(request.url.replace(/[?#].*$/, '').replace(/index\.html$/, ''));
  return kept ?? fetch(request);
}

self.addEventListener('install', event => event.waitUntil(keepAll()));
self.addEventListener('activate', event => event.waitUntil(dropOlder()));

self.addEventListener('fetch', event => {
  const { request } = event;
  const scope = self.registration.scope;
  if (request.method !== 'GET' || !request.url.startsWith(scope)) return;
  const path = request.url.slice(scope.length);
  const sticker = path.match(/^u\/([^/?#]+)/);
  if (sticker) {
    event.respondWith(Response.redirect(here(`visit/?unit=${sticker[1]}`), 302));
  } else if (path === '' && request.mode === 'navigate') {
    event.respondWith(fetch(request).catch(() => Response.redirect(here('phone/'), 302)));
  } else if (!path.startsWith('api/')) {
    event.respondWith(answer(request));
  }
});
