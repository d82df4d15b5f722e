/* global self, caches */
/* What the app is made of, kept on the device so that a reload without network still opens it. Nothing of the api is ever
   kept here: an answer about a dog is either the server's or marked as not yet sent by the page itself. */
const PARTS = self.__PARTS;
const KEPT = `cotyla-${self.__VERSION}`;
/** A network that neither answers nor fails is given up on. */
const PATIENCE_MS = 4000;

self.addEventListener('install', (event) => event.waitUntil(caches.open(KEPT).then((kept) => kept.addAll(PARTS))));

// An older set goes only when no page uses it any more: a record that is being written is never reloaded under somebody's hands.
self.addEventListener('activate', (event) =>
  event.waitUntil(caches.keys().then((names) => Promise.all(names.filter((name) => name !== KEPT).map((name) => caches.delete(name))))),
);

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin || pathname.startsWith('/api')) return;
  if (request.mode === 'navigate') event.respondWith(page(request));
  else if (PARTS.includes(pathname)) event.respondWith(caches.match(request).then((part) => part ?? fetch(request)));
});

async function page(request) {
  try {
    return await fetch(request.url, { credentials: 'same-origin', redirect: 'manual', signal: AbortSignal.timeout(PATIENCE_MS) });
  } catch {
    return caches.match('/');
  }
}
