// What is kept: in the browser between visits, and in files. Nothing leaves this machine.
import { KEPT, change, state } from './state.js'

const KEY = 'pourwright'

/** What an earlier visit has left; null where there was none. */
export function kept() {
  const text = localStorage.getItem(KEY)
  if (text === null) return null
  const parts = JSON.parse(text)
  return Object.fromEntries(KEPT.filter((part) => part in parts).map((part) => [part, parts[part]]))
}

let waiting = 0

/** Keeps the parts of the state that have changed, soon: not at every key. */
export function keepSoon(parts) {
  if (KEPT.some((part) => part in parts)) waiting ||= setTimeout(keepNow, 200)
}

/** Keeps the state at once; a browser that refuses is told of on the page. */
export function keepNow() {
  clearTimeout(waiting)
  waiting = 0
  try {
    localStorage.setItem(KEY, JSON.stringify(Object.fromEntries(KEPT.map((part) => [part, state[part]]))))
  } catch (failure) {
    const notice = `This browser does not keep the page's data (${failure.name}): save the book and the orders as files.`
    if (state.notice !== notice) change({ notice })
  }
}

let turn = Promise.resolve()

/** Takes documents in from elsewhere, in the order in which they were asked for, so that the last one is what stands. */
export function takeIn(read) {
  change({ reading: state.reading + 1 })
  turn = turn
    .then(read)
    .catch((failure) => change({ notice: `That could not be read: ${failure.message}` }))
    .finally(() => change({ reading: state.reading - 1 }))
}

/** One of the page's own documents. */
export async function demo(name) {
  const response = await fetch(new URL(`../demo/${name}.json`, import.meta.url))
  if (!response.ok) throw new Error(`demo/${name}.json: ${response.status} ${response.statusText}`)
  return response.json()
}

/** Hands a document to the maker as a file. */
export function saveFile(name, document_) {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([JSON.stringify(document_, null, 2) + '\n'], { type: 'application/json' }))
  link.download = name
  link.click()
  URL.revokeObjectURL(link.href)
}
