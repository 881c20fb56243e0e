// Lets the page for recording be opened again where there is no connection. It keeps that page and what it is made of, and
// nothing else; everything comes from the server while the server answers.
const KEPT = 'vanewright-record-1';
const PAGE = /^campaigns\/drafts\/[0-9a-f-]{36}\/record$/;
const PART = /^(css|js|images|webjars)\//;

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  // Beside this script, whatever prefix the service lies under.
  const root = new URL('.', self.location).href;
  const path = new URL(url.pathname, url).href.replace(root, '');
  const wanted = PAGE.test(path) || PART.test(path);
  if (request.method !== 'GET' || url.origin !== self.location.origin || !wanted) return;
  event.respondWith(answer(request));
});

async function answer(request) {
  const kept = await caches.open(KEPT);
  try {
    const fresh = await fetch(request);
    // A redirect leads to the sign-in, which is not the page.
    if (fresh.ok && !fresh.redirected) await kept.put(request, fresh.clone());
    return fresh;
  } catch (error) {
    const before = await kept.match(request, { ignoreSearch: request.mode === 'navigate' });
    if (before) return before;
    throw error;
  }
}
