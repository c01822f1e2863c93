// What is planned, when, and where. The plan that is worked by is kept while the orders change: then the library is asked how
// the day goes on from what is done. A day of ordinary size is planned at once, here. A larger one is planned in a worker: the
// page stays free, and shows the earlier plan until the new one is there. What looks like a slip is asked back first.
import { isOtherOpen } from './begin.js'
import { bookFaultsOf, goOn, modules, plan, potsOf } from './core.js'
import { addressOf } from './files.js'
import { change, state } from './state.js'
import { view } from './views.js'
import { say } from './words.js'
import { isSame, nowRequest } from './work.js'

/** Pieces of a day above which the page asks back. */
export const MANY_PIECES = 2000

/** A day with more than this is planned in a worker: pieces, lines, entries of a part of the book. */
const [PIECES, LINES, ENTRIES] = [1000, 60, 150]

/** Milliseconds that planning here may take; a worker is ended after the others. */
export const limits = { here: 500 }
const LONGEST = 30_000

/** The browser's note that a planning is under way. It stays if that does not end, even if the page is closed or killed. */
const NOTE = 'pourwright-planning'

/** The result of a planning that has none. `gone` is the answer of the day that goes on, without its plan. */
const NONE = { plan: null, base: null, gone: null, bookFaults: [], ordersFaults: [], dayFaults: [] }

/**
 * The day that was planned last: what it was planned from, and the result. `base` is the plan that is worked by, `plan` the
 * one that the present documents have; they are the same until a document changes. `status` is "done", "working", or the reason
 * why it is not planned: "asked" (it may be a slip), "unfinished" (an earlier visit did not finish it), "stopped", "slow",
 * "failed".
 */
let day = { book: null, orders: null, work: null, done: null, status: 'done', ...NONE }

/** The last plan of a day that is not begun, with what it was made from: it is still shown while the documents have faults. */
export let earlier = { plan: null, book: null, orders: null }

/** Whether the next planning is the first of this visit. */
let first = true

/** Milliseconds that the last day of ordinary size took: after a long one the next is planned in a worker. */
let took = 0

/** Whether the documents are others than those of the plan that is worked by. */
export function isChanged() {
  const { work } = state
  return work !== null && !(isSame(state.book, work.of.book) && isSame(state.orders, work.of.orders))
}

/** The plan of the day as far as it is known. Planned again only if a document has changed, or what is done before it did. */
export function planned() {
  const { book, orders, work } = state
  const done = isChanged() ? state.done : null
  if (day.book === book && day.orders === orders && day.work === work && day.done === done) return day
  if (day.work === work && done === null && day.done === null && day.plan && work !== null) {
    // Other objects that say the same.
    day = { ...day, book, orders }
    return day
  }
  const unfinished = first && noted()
  first = false
  const pieces = piecesOf(orders)
  if (pieces <= MANY_PIECES) state.sure = 0
  // Up to twice the number that was meant is no slip.
  const asked = pieces > MANY_PIECES && !(pieces <= 2 * state.sure)
  endPlanning()
  const base = day.work === work && work !== null ? day.base : null
  day = {
    ...NONE,
    book,
    orders,
    work,
    done,
    base,
    pieces,
    status: unfinished ? 'unfinished' : asked ? 'asked' : 'working',
  }
  if (isEmpty(orders) && !work) day = { ...day, status: 'done', bookFaults: bookFaultsOf(book) }
  else if (done === null && base) day = { ...day, status: 'done', plan: base }
  else if (day.status === 'asked') day.pots = aboutPots(book, orders, pieces)
  else if (day.status === 'working') make(isLarge(book, orders, pieces))
  return day
}

/** Whether an order list has no line yet. */
export const isEmpty = (orders) => Array.isArray(orders?.lines) && orders.lines.length === 0

/** Takes `work` as begun with the plan `base`. */
export function adopt(work, base) {
  day = {
    ...NONE,
    book: state.book,
    orders: state.orders,
    work,
    done: null,
    base,
    plan: base,
    pieces: day.pieces,
    status: 'done',
  }
}

/** Plans the day after all; by a press that means it, so for as long as it takes. */
export function planNow() {
  if (day.status === 'asked') state.sure = day.pieces
  day = { ...day, status: 'working' }
  make(isLarge(day.book, day.orders, day.pieces), Infinity)
  change()
}

/** Stops the planning that is under way. */
export function stopPlanning(status = 'stopped') {
  endPlanning()
  day = { ...day, status }
  change()
}

/** When no planning is under way. */
export async function settled() {
  while (day.status === 'working') await new Promise((done) => setTimeout(done, 5))
}

/** What there is to do: the documents to plan, or those of the plan that is worked by, and the request to go on from it. */
function job() {
  const { book, orders, work, done, base } = day
  if (work === null) return { book, orders, request: null }
  return { book: work.book ?? work.of.book, orders: work.orders, base, request: done && nowRequest() }
}

/** The planning that waits for the rest of the library. */
let waits = null

/** Makes the plan that has waited for the rest of the library, if it is still wanted; whether it was. */
export function makeWhatWaits() {
  const isWaiting = waits !== null && waits.day === day
  if (isWaiting) make(waits.large, waits.longest)
  waits = null
  return isWaiting
}

/** Whether a planning in this visit has come to its end, which the next of ordinary size will too. */
let isProven = false

function make(large, longest = LONGEST) {
  // A day that is begun goes on by the rest of the library.
  if (state.work !== null && !modules.rest) {
    waits = { day, large, longest }
    return
  }
  const isHere = !large || typeof Worker !== 'function'
  // A note takes the disk's time, at each key.
  if (!isHere || !isProven) note(true)
  if (!isHere) return send(longest)
  const begun = performance.now()
  const result = here(job())
  finish(result, performance.now() - begun)
}

/** Plans in the page. */
function here({ book, orders, base = null, request }) {
  const made = base
    ? { plan: base, bookFaults: [], ordersFaults: [] }
    : plan(book, orders, { quoteFirst: view() === 'orders' })
  if (!made.plan) return { ...made, base: null }
  if (!request) return { ...made, base: made.plan }
  const { answer, ...faults } = goOn(made.plan, request)
  if (!answer) return { base: made.plan, ...faults }
  const { plan: rest, ...gone } = answer
  return { base: made.plan, plan: rest ?? made.plan, gone, ...faults }
}

function finish(result, took_ms) {
  note(false)
  isProven = true
  if (!isLargeBySize(day)) took = took_ms
  day = { ...day, ...NONE, base: day.base, ...result, status: 'done' }
  if (day.plan && !day.work) earlier = { plan: day.plan, book: day.book, orders: day.orders }
}

let worker = null
let count = 0
let timeout = 0

/** Ends a planning that is under way: its answer is no longer wanted, or the page is about to be loaded again. */
export function endPlanning() {
  if (day.status !== 'working') return
  stopWorker()
  note(false)
}

function stopWorker() {
  clearTimeout(timeout)
  worker?.terminate()
  worker = null
}

function send(longest) {
  const begun = performance.now()
  worker ??= newWorker()
  count += 1
  const id = count
  const fail = (words) => {
    stopWorker()
    day = { ...day, status: 'failed', failure: words }
    note(false)
    change()
  }
  worker.onmessage = ({ data: { id: answered, failure, ...result } }) => {
    if (answered !== id) return
    clearTimeout(timeout)
    if (failure) return fail(failure)
    finish({ ...NONE, ...result }, performance.now() - begun)
    change()
  }
  worker.onerror = (event) => {
    event.preventDefault()
    fail(event.message ?? say('page.noWorker'))
  }
  if (longest < Infinity) timeout = setTimeout(() => stopPlanning('slow'), longest)
  const { book, orders, base = null, request } = job()
  worker.postMessage({ id, modules, book: JSON.stringify(book), orders: JSON.stringify(orders), base, request })
}

const newWorker = () => new Worker(addressOf('worker'), { type: 'module' })
const listOf = (value) => (Array.isArray(value) ? value : [])

/** The pieces of a line; what is not a number counts nothing, and is a fault. */
function piecesOfLine(line) {
  const of = line?.packs === undefined ? line?.pieces : line.packs * (line.pack_of ?? 1)
  return Number.isFinite(of) && of > 0 ? of : 0
}

const piecesOf = (orders) => listOf(orders?.lines).reduce((sum, line) => sum + piecesOfLine(line), 0)

/** Whether a day is planned in a worker; one that goes on is as large as the day that was begun. */
function isLarge(book, orders, pieces) {
  const begun = state.work?.of.orders
  const isLargeBegun = begun && isLargeBySize({ book, orders: begun, pieces: piecesOf(begun) })
  return took > limits.here || isLargeBegun || isLargeBySize({ book, orders, pieces })
}

function isLargeBySize({ book, orders, pieces }) {
  const entries = ['formulas', 'materials', 'products', 'molds'].map((part) => Object.keys(book?.[part] ?? {}).length)
  return pieces > PIECES || listOf(orders?.lines).length > LINES || Math.max(...entries) > ENTRIES
}

/** The line that orders the most, counted from 1, and its pieces. */
export function largestLine(orders) {
  const pieces = listOf(orders?.lines).map((line) => piecesOfLine(line))
  const most = Math.max(...pieces)
  return { number: pieces.indexOf(most) + 1, pieces: most }
}

/** An estimate of the pots of a day, from those of a few hundred pieces of its largest line; null if there is none. */
function aboutPots(book, orders, pieces) {
  const { number } = largestLine(orders)
  const { packs, pack_of, ...line } = orders.lines[number - 1]
  const few = 500
  const pots = potsOf(book, { format: orders.format, lines: [{ ...line, pieces: few }] })
  return pots && Math.ceil((pots * pieces) / few)
}

let isNoted = false

/** Notes in the browser that a planning is under way; a browser that stores nothing has no note to come back to. */
function note(on) {
  if (!on && !isNoted) return
  isNoted = on
  try {
    if (on) localStorage.setItem(NOTE, 'under way')
    else localStorage.removeItem(NOTE)
  } catch {
    // The page reports at each change that nothing is stored.
  }
}

/** Whether another tab is open: a note is then about its planning, which is under way. */
let isOther = false

/** Looks for other tabs, before the first planning. Where none can be seen, every note is taken for that of an earlier visit. */
export async function lookForOthers() {
  isOther = await isOtherOpen
}

function noted() {
  try {
    return !isOther && localStorage.getItem(NOTE) !== null
  } catch {
    return false
  }
}
