// Serves the page from what the first visit stored, so that it works offline. The build writes the list of files and the
// version, which changes with any of them. A new version waits until the page asks for it: no visit runs on parts of two.
const VERSION = '@VERSION@'
const FILES = '@FILES@'.split(' ')

addEventListener('install', (event) => event.waitUntil(store()))

/** Stores all files of this version. Those that are named by their content are taken from where they are already. */
async function store() {
  const cache = await caches.open(VERSION)
  await Promise.all(
    FILES.map(async (file) => {
      const isByContent = file.startsWith('files/')
      const before = isByContent && (await caches.match(file, { ignoreVary: true }))
      if (before) return cache.put(file, before)
      // `reload` bypasses the browser's cache, so that what the server has is stored.
      return cache.add(new Request(file, { cache: isByContent ? 'default' : 'reload' }))
    }),
  )
}

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
  const stored = caches.open(VERSION).then((cache) => cache.match(request, { ignoreSearch: true, ignoreVary: true }))
  event.respondWith(stored.then((response) => response ?? fetch(request)))
})
