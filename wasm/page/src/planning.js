// When the day is planned, and where. A day of ordinary size is planned at once, here. A larger one is planned in a worker:
// the page stays free, and shows the earlier plan until the new one is there. What looks like a slip is asked back first.
import { module, plan, potsOf, took } from './core.js'
import { change, state } from './state.js'

/** Pieces of a day above which the page asks back. */
export const MANY_PIECES = 2000

/** A day with more than this is planned in a worker: pieces, lines, entries of a part of the book. */
const [PIECES, LINES, ENTRIES] = [1000, 60, 150]

/** Milliseconds: planning here may take the first; a worker is ended after the second. */
const [SLOW, LONGEST] = [500, 30_000]

/** The browser's note that a planning is under way. It stays if that does not end, even if the page is closed or killed. */
const NOTE = 'pourwright-planning'

/**
 * The day that was planned last: its documents and the result. `status` is "done", "working", or the reason why it is not
 * planned: "asked" (it may be a slip), "unfinished" (an earlier visit did not finish it), "stopped", "slow", "failed".
 */
let day = { book: null, orders: null, status: 'done', plan: null, bookFaults: [], ordersFaults: [] }

const NONE = { plan: null, bookFaults: [], ordersFaults: [] }

/** Whether the next planning is the first of this visit. */
let first = true

/** Whether a day of ordinary size took long: the next one is planned in a worker. */
let slow = false

/** The plan of a day as far as it is known. Planned again only if a document has changed. */
export function planned(book, orders) {
  if (day.book === book && day.orders === orders) return day
  const unfinished = first && noted()
  first = false
  const pieces = piecesOf(orders)
  if (pieces <= MANY_PIECES) state.sure = 0
  // Up to twice the number that was meant is no slip.
  const asked = pieces > MANY_PIECES && !(pieces <= 2 * state.sure)
  end()
  day = { book, orders, ...NONE, pieces, status: unfinished ? 'unfinished' : asked ? 'asked' : 'working' }
  if (day.status === 'asked') day.pots = aboutPots(book, orders, pieces)
  else if (day.status === 'working') make(isLarge(book, orders, pieces))
  return day
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
  end()
  day = { ...day, status }
  change()
}

/** When no planning is under way, for programs. */
export async function settled() {
  while (day.status === 'working') await new Promise((done) => setTimeout(done, 5))
}

function make(large, longest = LONGEST) {
  note(true)
  if (large && typeof Worker === 'function') return send(longest)
  const begun = performance.now()
  const result = plan(day.book, day.orders)
  finish(result, performance.now() - begun)
}

function finish(result, took_ms) {
  note(false)
  if (!isLargeBySize(day)) slow = took_ms > SLOW
  day = { ...day, ...result, status: 'done' }
}

let worker = null
let count = 0
let timeout = 0

/** Ends a planning that is under way: what it would answer is no longer asked. */
function end() {
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
    if (result.plan) took(result.plan)
    finish({ ...NONE, ...result }, performance.now() - begun)
    change()
  }
  worker.onerror = (event) => {
    event.preventDefault()
    fail(event.message ?? 'the browser could not start it')
  }
  if (longest < Infinity) timeout = setTimeout(() => stopPlanning('slow'), longest)
  worker.postMessage({ id, module, book: JSON.stringify(day.book), orders: JSON.stringify(day.orders) })
}

const newWorker = () => new Worker(new URL('./plan-worker.js', import.meta.url), { type: 'module' })

const listOf = (value) => (Array.isArray(value) ? value : [])

/** The pieces of a line; what is not a number counts nothing, and is a fault. */
function piecesOfLine(line) {
  const of = line?.packs === undefined ? line?.pieces : line.packs * (line.pack_of ?? 1)
  return Number.isFinite(of) && of > 0 ? of : 0
}

const piecesOf = (orders) => listOf(orders?.lines).reduce((sum, line) => sum + piecesOfLine(line), 0)

const isLarge = (book, orders, pieces) => slow || isLargeBySize({ book, orders, pieces })

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

/** Notes in the browser that a planning is under way; a browser that stores nothing has no note to come back to. */
function note(on) {
  try {
    if (on) localStorage.setItem(NOTE, 'under way')
    else localStorage.removeItem(NOTE)
  } catch {
    // The page reports at each change that nothing is stored.
  }
}

function noted() {
  try {
    return localStorage.getItem(NOTE) !== null
  } catch {
    return false
  }
}
