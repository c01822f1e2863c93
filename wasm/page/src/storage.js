// Storage in the browser between visits, and files. Nothing leaves this machine.
import { KEPT, change, state } from './state.js'

const KEY = 'pourwright'

/** The parts as they are in the store: those that differ from it are what this tab has changed. */
let stored = {}

/** What an earlier visit or another tab has stored; null if nothing. */
export function kept() {
  const text = localStorage.getItem(KEY)
  if (text === null) return null
  const parts = JSON.parse(text)
  if (typeof parts !== 'object' || parts === null) throw new TypeError(`it is ${text}`)
  return Object.fromEntries(KEPT.filter((part) => part in parts).map((part) => [part, parts[part]]))
}

/** The store, empty if it cannot be read: the page has reported that at its start. */
function readable() {
  try {
    return kept() ?? {}
  } catch {
    return {}
  }
}

const own = (names) => Object.fromEntries(names.map((part) => [part, state[part]]))

/** Takes the present state as stored: from here on, changes are those of this tab. */
export function begun() {
  stored = own(KEPT)
}

/** Takes over what another tab has stored; what this tab has changed and not stored yet stays. */
export function follow() {
  const changed = changedHere()
  const theirs = Object.fromEntries(Object.entries(readable()).filter(([part]) => !changed.includes(part)))
  const parts = Object.keys(theirs).filter((part) => JSON.stringify(theirs[part]) !== JSON.stringify(state[part]))
  if (!parts.length) return
  const taken = Object.fromEntries(parts.map((part) => [part, theirs[part]]))
  Object.assign(stored, taken)
  change(taken)
}

const changedHere = () => KEPT.filter((part) => state[part] !== stored[part])

let waiting = 0

/** Stores the changed parts soon, not at every key. */
export function keepSoon() {
  if (changedHere().length) waiting ||= setTimeout(keepNow, 200)
}

/** Stores at once what this tab has changed, with what others have; the page shows it if the browser refuses. */
export function keepNow() {
  clearTimeout(waiting)
  waiting = 0
  const changed = own(changedHere())
  if (!Object.keys(changed).length) return
  let unkept = ''
  try {
    localStorage.setItem(KEY, JSON.stringify({ ...own(KEPT), ...readable(), ...changed }))
    Object.assign(stored, changed)
  } catch (failure) {
    unkept = `This browser does not store the page's data (${failure.name}): save the book and the orders as files.`
  }
  if (state.unkept !== unkept) change({ unkept })
}

let turn = Promise.resolve()

/** Reads documents in the order in which they were requested, so that the last one stays. */
export function takeIn(read) {
  change({ reading: state.reading + 1 })
  turn = turn
    .then(read)
    .catch((failure) => change({ notice: `This could not be read: ${failure.message}` }))
    .finally(() => change({ reading: state.reading - 1 }))
}

/** A document of the demo. */
export async function demo(name) {
  const response = await fetch(new URL(`../demo/${name}.json`, import.meta.url))
  if (!response.ok) throw new Error(`demo/${name}.json: ${response.status} ${response.statusText}`)
  return response.json()
}

/** Saves a document as a file. */
export function saveFile(name, document_) {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([JSON.stringify(document_, null, 2) + '\n'], { type: 'application/json' }))
  link.download = name
  link.click()
  URL.revokeObjectURL(link.href)
}
