// Storage in the browser between visits, and files. Nothing leaves this machine.
import { KEY, opened } from './begin.js'
import { KEPT, change, state } from './state.js'
import { say } from './words.js'

/**
 * Every change is stored twice. `localStorage` can be written while a page closes, and other tabs hear of it; but browsers
 * bring it to disk seconds later, and a crash loses those. So a transaction of IndexedDB stores the same text, which is
 * either whole or not there, and on disk when it is done. Both have a count of the changes: the larger one is the later.
 */
let disk = null

/** The count of the changes that are stored. */
let count = 0

/** The parts as they are in the store: those that differ from it are what this tab has changed. */
let stored = {}

/** What a text of the store holds: its count, and the parts. */
function readText(text) {
  const read = JSON.parse(text)
  if (typeof read !== 'object' || read === null) throw new TypeError(`it is ${text}`)
  const { count = 0, ...parts } = read
  return { count, parts: Object.fromEntries(KEPT.filter((part) => part in parts).map((part) => [part, parts[part]])) }
}

/** What an earlier visit or another tab has stored; null if nothing. */
function kept() {
  const text = localStorage.getItem(KEY)
  if (text === null) return null
  const read = readText(text)
  count = Math.max(count, read.count)
  return read.parts
}

/** What `read` gives, or why nothing can be read. */
function tried(read) {
  try {
    return { value: read() }
  } catch (failure) {
    return { value: null, failure }
  }
}

/** What an earlier visit has stored last, also if the browser was killed; null if nothing. One of the two stores is enough. */
export async function keptLast() {
  const text = await onDisk()
  const { value: there, failure: unreadThere } = tried(() => (text === undefined ? null : readText(text)))
  const { value: here, failure: unreadHere } = tried(kept)
  const failure = unreadHere ?? unreadThere
  if (failure && !there && !here) throw failure
  if (!there) return here
  // A tab that was closed at once may have ticked only on disk.
  if (here && count >= there.count) return { ...here, ...ticksOf(here, there.parts) }
  const parts = here ? { ...there.parts, ...ticksOf(there.parts, here) } : there.parts
  count = there.count
  localStorage.setItem(KEY, JSON.stringify({ count, ...parts }))
  return parts
}

/**
 * The ticks of two tabs, or of a tab and what is stored: none is lost if both work by the same plan, and of each item the later
 * tick counts; else those of the plan that was taken later.
 */
function ticksOf(one, other) {
  const parts = ({ work = null, workAt = 0, done = {} }) => ({ work, workAt, done })
  const [mine, theirs] = [parts(one), parts(other)]
  if (!isSameWork(mine.work, theirs.work)) return theirs.workAt > mine.workAt ? theirs : mine
  const merged = { ...theirs.done }
  for (const [id, tick] of Object.entries(mine.done)) {
    if (!(merged[id]?.at > tick.at)) merged[id] = tick
  }
  return { ...(theirs.workAt > mine.workAt ? theirs : mine), done: merged }
}

function isSameWork(one, other) {
  if (one === null || other === null) return false
  const plan = ({ orders, of, soFar, fix }) => JSON.stringify([orders, of, soFar, fix])
  return plan(one) === plan(other)
}

/** The clocks of two tabs: those that `other` has, with what this tab has started and stopped since it `had` some. */
function clocksOf(timers, had = [], other = []) {
  const isIn = (list) => (timer) => list.some(({ id, started }) => id === timer.id && started === timer.started)
  const stopped = had.filter((timer) => !isIn(timers)(timer))
  const begun = timers.filter((timer) => !isIn(had)(timer) && !isIn(other)(timer))
  return [...other.filter((timer) => !isIn(stopped)(timer)), ...begun]
}

/** The text on disk; undefined if there is none. Without IndexedDB there never is, and the page shows that. */
async function onDisk() {
  try {
    const { disk: there, text } = await opened
    disk = there
    return await text
  } catch (failure) {
    late = lateOnly(failure)
    state.unkept = late
    return undefined
  }
}

/** Why changes are not on disk at once; empty if they are. */
let late = ''

const lateOnly = ({ name }) => say('store.late', { why: name })

/** The text that is to be written to disk next, and whether one is being written. */
let [waits, writes] = [null, false]

/** Writes a text to disk, or a later one: one transaction at a time. */
async function toDisk(text, at) {
  if (!disk) return
  waits = { text, at }
  if (writes) return
  writes = true
  while (waits) {
    const now = waits
    waits = null
    try {
      await written(now)
      late = ''
      document.documentElement.dataset.stored = now.at
    } catch (failure) {
      late = lateOnly(failure)
    }
  }
  writes = false
  if (late) change({ unkept: late })
}

/** One transaction: what another tab has written later stays, and its ticks in any case. */
function written({ text, at }) {
  const transaction = disk.transaction('state', 'readwrite', { durability: 'strict' })
  const store = transaction.objectStore('state')
  const before = store.get('all')
  before.onsuccess = () => {
    // The page could not read a broken text at its start either: it is written over.
    const there = tried(() => (before.result === undefined ? null : readText(before.result))).value
    const own = readText(text).parts
    const last = there && there.count > at ? there : { count: at, parts: own }
    const parts = there ? { ...last.parts, ...ticksOf(own, there.parts) } : own
    store.put(JSON.stringify({ count: last.count, ...parts }), 'all')
    store.put(last.count, 'count')
  }
  return new Promise((resolve, reject) => {
    transaction.oncomplete = resolve
    transaction.onabort = () => reject(transaction.error)
  })
}

/** The store, empty if it cannot be read: the page has reported that at its start. */
const readable = () => tried(kept).value ?? {}

const own = (names) => Object.fromEntries(names.map((part) => [part, state[part]]))

/** Takes the present state as stored: from here on, changes are those of this tab. */
export function begun() {
  stored = own(KEPT)
}

/** The parts that tabs share item by item. */
const SHARED = ['work', 'workAt', 'done', 'timers']

/** Ticks and clocks of this tab and of what is stored, together. */
const sharedWith = (there) => ({
  ...ticksOf(own(SHARED), there),
  timers: clocksOf(state.timers, stored.timers, there.timers),
})

const differs = (part, one, other) => JSON.stringify(one[part]) !== JSON.stringify(other[part])

/** Takes over what another tab has stored; what this tab has changed and not stored yet stays. */
export function follow() {
  const changed = changedHere()
  const there = readable()
  if (!Object.keys(there).length) return
  const together = sharedWith(there)
  const theirs = Object.entries(there).filter(([part]) => !SHARED.includes(part) && !changed.includes(part))
  const all = { ...Object.fromEntries(theirs), ...together }
  const taken = Object.fromEntries(Object.entries(all).filter(([part]) => differs(part, all, state)))
  for (const part of Object.keys(all)) {
    // What the store lacks of this tab is stored again.
    const value = part in taken ? taken[part] : state[part]
    stored[part] = differs(part, all, there) ? there[part] : value
  }
  if (Object.keys(taken).length || changedHere().length) change(taken)
}

const changedHere = () => KEPT.filter((part) => state[part] !== stored[part])

let waiting = 0

/** Stores the changed parts as soon as the change is drawn. */
export function keepSoon() {
  if (changedHere().length) waiting ||= setTimeout(keepNow)
}

/** Stores at once what this tab has changed, with what others have; the page shows it if the browser refuses. */
export function keepNow() {
  clearTimeout(waiting)
  waiting = 0
  const changed = own(changedHere())
  if (!Object.keys(changed).length) return
  let unkept = late
  let together = {}
  try {
    const there = readable()
    const parts = { ...own(KEPT), ...there, ...changed }
    // Another tab may have ticked meanwhile.
    together = Object.keys(there).length ? sharedWith(there) : own(SHARED)
    Object.assign(parts, together)
    count += 1
    const text = JSON.stringify({ count, ...parts })
    toDisk(text, count)
    localStorage.setItem(KEY, text)
    Object.assign(stored, changed, own(SHARED))
  } catch (failure) {
    unkept = say('store.refused', { why: failure.name })
  }
  const news = Object.fromEntries(
    SHARED.filter((part) => part in together && differs(part, together, state)).map((part) => [part, together[part]]),
  )
  Object.assign(stored, news)
  if (Object.keys(news).length || state.unkept !== unkept) change({ ...news, unkept })
}

let turn = Promise.resolve()

/** Reads documents in the order in which they were requested, so that the last one stays. */
export function takeIn(read) {
  change({ reading: state.reading + 1 })
  turn = turn
    .then(read)
    .catch((failure) => change({ notice: say('store.unreadable', { why: failure.message }) }))
    .finally(() => change({ reading: state.reading - 1 }))
}

/** Saves a document as a file. */
export function saveFile(name, document_) {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([JSON.stringify(document_, null, 2) + '\n'], { type: 'application/json' }))
  link.download = name
  link.click()
  URL.revokeObjectURL(link.href)
}
