// Serves the page from what the first visit stored, so that it works offline. The build writes the list of files and the
// version, which changes with any of them. A new version waits until the page asks for it: no visit runs on parts of two.
const VERSION = '@VERSION@'
const FILES = ['@FILES@']

addEventListener('install', (event) => {
  // `reload` bypasses the browser's cache, so that what the server has is stored.
  const fresh = FILES.map((file) => new Request(file, { cache: 'reload' }))
  event.waitUntil(caches.open(VERSION).then((cache) => cache.addAll(fresh)))
})

addEventListener('message', ({ data }) => {
  if (data === 'now') skipWaiting()
})

addEventListener('activate', (event) => {
  const old = caches.keys().then((keys) => keys.filter((key) => key !== VERSION))
  event.waitUntil(old.then((keys) => Promise.all(keys.map((key) => caches.delete(key)))).then(() => clients.claim()))
})

addEventListener('fetch', (event) => {
  const { request } = event
  if (request.method !== 'GET' || new URL(request.url).origin !== location.origin) return
  const stored = caches.open(VERSION).then((cache) => cache.match(request, { ignoreSearch: true }))
  event.respondWith(stored.then((response) => response ?? fetch(request)))
})
