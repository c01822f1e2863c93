// What is kept: in the browser between visits, and in files. Nothing leaves this machine.
import { KEPT, change, state } from './state.js'

const KEY = 'pourwright'

/** The parts as they stand in the store: those that differ from it are what this tab has changed. */
let stand = {}

/** What an earlier visit, or another tab, has left; null where there was none. */
export function kept() {
  const text = localStorage.getItem(KEY)
  if (text === null) return null
  const parts = JSON.parse(text)
  if (typeof parts !== 'object' || parts === null) throw new TypeError(`it is ${text}`)
  return Object.fromEntries(KEPT.filter((part) => part in parts).map((part) => [part, parts[part]]))
}

/** What is in the store as far as it can be read: what cannot was told when the page began. */
function readable() {
  try {
    return kept() ?? {}
  } catch {
    return {}
  }
}

const own = (names) => Object.fromEntries(names.map((part) => [part, state[part]]))

/** Takes the state as it is for what is kept: from here on a change is one that this tab makes. */
export function begun() {
  stand = own(KEPT)
}

/** Takes over what another tab has kept; what this one has changed and not kept yet stays. */
export function follow() {
  const changed = changedHere()
  const theirs = Object.fromEntries(Object.entries(readable()).filter(([part]) => !changed.includes(part)))
  const parts = Object.keys(theirs).filter((part) => JSON.stringify(theirs[part]) !== JSON.stringify(state[part]))
  if (!parts.length) return
  const taken = Object.fromEntries(parts.map((part) => [part, theirs[part]]))
  Object.assign(stand, taken)
  change(taken)
}

const changedHere = () => KEPT.filter((part) => state[part] !== stand[part])

let waiting = 0

/** Keeps the parts of the state that have changed, soon: not at every key. */
export function keepSoon() {
  if (changedHere().length) waiting ||= setTimeout(keepNow, 200)
}

/** Keeps at once what this tab has changed, beside what others have; a browser that refuses is told of on the page. */
export function keepNow() {
  clearTimeout(waiting)
  waiting = 0
  const changed = own(changedHere())
  if (!Object.keys(changed).length) return
  let unkept = ''
  try {
    localStorage.setItem(KEY, JSON.stringify({ ...own(KEPT), ...readable(), ...changed }))
    Object.assign(stand, changed)
  } catch (failure) {
    unkept = `This browser does not keep the page's data (${failure.name}): save the book and the orders as files.`
  }
  if (state.unkept !== unkept) change({ unkept })
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
