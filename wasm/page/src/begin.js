// Begins what every visit waits for, while the script of the page, which is longer, is still read: the library, the demo, what an
// earlier visit has stored, and whether other tabs are open. The build makes it a file of its own, which the page imports.
import { loaded } from './files.js'

/** The name of what the browser stores of this page, in both of its stores. */
export const KEY = 'pourwright'

/** The compiled module with the part of the library that a first visit needs. */
export const compiled = compile('first')

/** That with the rest: at once if it is needed too, else after the first. */
export const compiledRest = isFirstVisit() ? compiled.then(() => compile('rest')) : compile('rest')

/** Whether no earlier visit has stored anything, as far as can be seen at once. */
function isFirstVisit() {
  try {
    return localStorage.getItem(KEY) === null
  } catch {
    return true
  }
}

async function compile(part) {
  const response = await loaded(part)
  // A browser compiles while it loads only what has the right type, which not every server sends.
  const typed = response.headers.get('content-type') === 'application/wasm'
  return typed ? WebAssembly.compileStreaming(response) : WebAssembly.compile(await response.arrayBuffer())
}

let loadedDemo = null

/** The documents of the demo: `book`, `orders`, and the request `correct` of a pot that was poured wrong. */
export function demo() {
  loadedDemo ??= loaded('demo').then((response) => response.json())
  // After a failure it is loaded again.
  loadedDemo.catch(() => {
    loadedDemo = null
  })
  return loadedDemo
}

demo()

/** The result of a request to the browser's store. */
export const done = (request) =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })

/** The browser's store on disk, and a promise of the text in it: undefined if there is none. */
export const opened = openDisk()

async function openDisk() {
  const opening = indexedDB.open(KEY, 1)
  opening.onupgradeneeded = () => opening.result.createObjectStore('state')
  const disk = await done(opening)
  // Another tab or a later version may want to delete or change it.
  disk.onversionchange = () => disk.close()
  const text = done(disk.transaction('state').objectStore('state').get('all'))
  text.catch(() => {})
  return { disk, text }
}

/**
 * Whether another tab of the page is open. Each holds a lock for as long as it lives; a browser that has none, over plain http,
 * knows of no other tab.
 */
export const isOtherOpen = lookForOthers()

async function lookForOthers() {
  const { locks } = navigator
  if (!locks) return false
  // The name that tabs of earlier versions know, too.
  const name = `${KEY}-planning`
  const isHeld = async () => (await locks.query()).held.some((lock) => lock.name === name)
  let isOther = await isHeld()
  // The page that this one replaces lets go a moment later.
  for (let times = 0; isOther && times < 5; times += 1) {
    await new Promise((done) => setTimeout(done, 20))
    isOther = await isHeld()
  }
  locks.request(name, { mode: 'shared' }, () => new Promise(() => {}))
  return isOther
}

// Who awaits one of them reports why there is none.
for (const one of [compiled, compiledRest, opened, isOtherOpen]) one.catch(() => {})
