// The records of days, in the browser's store. They have one of their own: there may be hundreds, and none is written again at
// each tick.
import { done } from './begin.js'
import { ask } from './core.js'
import { change, state } from './state.js'
import { say } from './words.js'

const NAME = 'pourwright-records'

/** The records, the latest first; null until they are read. */
let held = null

/** The reading of them; null before it begins. */
let reading = null

/** Why they cannot be stored; empty if they can. */
let failure = ''

let disk = null

async function open() {
  if (disk) return disk
  const opening = indexedDB.open(NAME, 1)
  opening.onupgradeneeded = () => opening.result.createObjectStore('records', { keyPath: 'id' })
  disk = await done(opening)
  disk.onversionchange = () => {
    disk.close()
    disk = null
  }
  return disk
}

const isLater = (one, other) => (`${other.record.day ?? ''} ${other.at}` < `${one.record.day ?? ''} ${one.at}` ? -1 : 1)

/** Reads the records. */
const readRecords = () => (reading ??= read())

async function read() {
  try {
    const store = (await open()).transaction('records').objectStore('records')
    held = (await done(store.getAll())).sort(isLater)
  } catch (refused) {
    held = []
    failure = say('record.unkept', { why: refused.name })
  }
  change()
}

/** The records, the latest first; none until they are read. */
export function records() {
  if (held === null) readRecords()
  return held ?? NONE
}

const NONE = []

/** Whether the records are read. */
export const areRead = () => held !== null

// Another tab may have stored some meanwhile.
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState !== 'visible' || held === null) return
  reading = null
  readRecords()
})

/** Why records are not stored; empty if they are. */
export const unkept = () => failure

/** Stores records, each `{ id, at, pots, record }`, in the place of those with the same ids. */
export async function keepRecords(entries) {
  await readRecords()
  const ids = new Set(entries.map(({ id }) => id))
  held = [...entries, ...held.filter(({ id }) => !ids.has(id))].sort(isLater)
  await write((store) => entries.forEach((entry) => store.put(entry)))
}

/** Takes a record out. */
export async function removeRecord(id) {
  held = held.filter((entry) => entry.id !== id)
  await write((store) => store.delete(id))
}

async function write(writing) {
  try {
    const transaction = (await open()).transaction('records', 'readwrite', { durability: 'strict' })
    writing(transaction.objectStore('records'))
    await new Promise((resolve, reject) => {
      transaction.oncomplete = resolve
      transaction.onabort = () => reject(transaction.error)
    })
    failure = ''
  } catch (refused) {
    failure = say('record.unkept', { why: refused.name })
  }
  change()
}

/**
 * Takes in the text of a file: one record, or a list of them. Returns what is wrong with it, by the library; empty if nothing is.
 */
export async function takeFile(text) {
  const read = JSON.parse(text)
  const list = Array.isArray(read) ? read : Array.isArray(read?.records) ? read.records : [read]
  const { faults = [] } = ask({ calculate: 'learn', records: list, book: state.book })
  const wrong = faults.filter(({ code }) => code !== 'learn-no-day')
  if (wrong.length) return wrong.map(({ path, message, help }) => `${path}: ${message} ${help}`)
  await readRecords()
  const known = new Set(held.map(({ record }) => JSON.stringify(record)))
  const entries = list
    .filter((record) => !known.has(JSON.stringify(record)))
    .map((record, at) => ({
      id: `file ${Date.now()} ${at}`,
      at: Date.now() + at,
      pots: record.pots.map(({ pot }) => pot),
      record,
    }))
  await keepRecords(entries)
  return []
}
