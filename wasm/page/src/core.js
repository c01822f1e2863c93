// The page's access to the library: the day's plan, and single calculations. The page itself calculates nothing.
import init, { Book, Plan, PourwrightError, calculate, rest } from '../pourwright/src/parts-web.js'
import { withNothing } from './nothing.js'

/** The compiled modules of the library, for workers too: the first part, and the rest once it is there. */
export const modules = { first: null, rest: null }

/** Loads the first part of the library, once it is compiled: plans and what the bench asks. */
export async function load(compiled) {
  const first = await compiled
  await init(first)
  modules.first = first
}

/** Loads the rest of the library, once it is compiled. */
export async function loadRest(compiled) {
  const second = await compiled
  await rest(second)
  modules.rest = second
}

/** Thrown by what needs the rest of the library while that is still loading. */
export class NotYet extends Error {}

/** The format that documents are written in here. */
export const FORMAT = 'pourwright/1.0'

/** The library's reply to `request`: `{ answer, faults }`, one of them empty. */
export function ask(request) {
  return refusable(() => ({ answer: calculate(request), faults: [] }))
}

const converted = new Map()

/** An amount of the book as a number in a unit; null if the book has none or it cannot be read. */
export function inUnit(amount, to, measures) {
  if (amount === undefined) return null
  const key = JSON.stringify([amount, to, measures])
  if (!converted.has(key)) {
    const { answer } = ask({ calculate: 'convert', amount, to, measures })
    converted.set(key, answer?.value ?? null)
  }
  return converted.get(key)
}

/** The faults of a book's text. Only in the text can a duplicate key be found. */
export function faultsOfBook(text) {
  return refusable(() => {
    new Book(text).free()
    return { faults: [] }
  }).faults
}

let held = {}

/** Plans that are open for requests, the latest first: the one that is shown, and the one that the day goes on from. */
let opened = []

/** Plans that are kept open. */
const KEPT_OPEN = 2

/** What plans of this visit were made of, and their quotes. */
const origins = new WeakMap()

/** The plan of a document, open for requests. */
function openPlan(document) {
  const known = opened.find((one) => one.document === document)
  const open = known?.open ?? (origins.has(document) ? opens(origins.get(document)) : Plan.from(document))
  keepOpen({ document, open })
  return open
}

const opens = ({ book, orders }) => bookOf(book).book.open(orders)

function keepOpen(one) {
  const all = [one, ...opened.filter((other) => other.document !== one.document)]
  for (const { open } of all.slice(KEPT_OPEN)) open.free()
  opened = all.slice(0, KEPT_OPEN)
}

/** The reply to a request about a plan, which leaves out book and plan. */
export function askPlan(document, request) {
  return refusable(() => ({ answer: openPlan(document).request(request), faults: [] }))
}

/** The faults of a book. */
export const bookFaultsOf = (book) => bookOf(book).faults

/**
 * Makes the plan of a day: `{ plan, bookFaults, ordersFaults }`. With `quoteFirst` only its quote is made, and the rest when
 * something of it is read.
 */
export function plan(book, orders, { quoteFirst = false } = {}) {
  const { faults: bookFaults } = bookOf(book)
  if (bookFaults.length) return { plan: null, bookFaults, ordersFaults: [] }
  const { plan = null, faults: ordersFaults } = (quoteFirst ? quoted : whole)({ book, orders })
  return { plan, bookFaults: [], ordersFaults }
}

const whole = (origin) =>
  refusable(() => {
    const open = opens(origin)
    const plan = open.document()
    origins.set(plan, origin)
    keepOpen({ document: plan, open })
    return { plan, faults: [] }
  })

function quoted(origin) {
  const { book, orders } = origin
  const { answer, faults } = refusable(() => ({
    answer: bookOf(book).book.request({ calculate: 'quote', orders }),
    faults: [],
  }))
  return answer ? { plan: planWhenRead(answer, origin), faults } : { faults: below(faults, '/orders') }
}

/** What the lines of a plan come to: of one whose steps nobody has looked at yet, all that is known. */
export const quoteOf = (plan) => origins.get(plan)?.quote ?? plan

/** The fields of a plan. */
export const PLAN_FIELDS =
  'format made_from shop day measures scale lines pots work steps clock parcels shelf stock cost proof water borrowed questions assumptions cautions'.split(
    ' ',
  )

/** A plan that is made when it is first read. */
function planWhenRead(quote, origin) {
  const plan = {}
  const read = (name) => {
    const whole = openPlan(plan).document()
    for (const one of PLAN_FIELDS) Object.defineProperty(plan, one, { value: whole[one], enumerable: true })
    return whole[name]
  }
  for (const name of PLAN_FIELDS)
    Object.defineProperty(plan, name, { get: () => read(name), enumerable: true, configurable: true })
  origins.set(plan, { ...origin, quote })
  return plan
}

/** The answer to a request to go on with a plan; with a book of its own if that has changed. */
export function goOn(document, asked) {
  const request = withNothing(document, asked)
  const { answer, faults } = request.book ? ask({ ...request, plan: document }) : askPlan(document, request)
  return sorted({ answer, faults })
}

/** A reply with its faults by document: those of the book, of the order list, and others. */
export function sorted({ answer = null, faults = [] }) {
  const [bookFaults, ordersFaults] = [below(faults, '/book'), below(faults, '/orders_now')]
  const others = faults.filter(({ path }) => !isBelow(path, '/book') && !isBelow(path, '/orders_now'))
  return { answer, bookFaults, ordersFaults, dayFaults: others }
}

const isBelow = (path, start) => path === start || path.startsWith(`${start}/`)

/** The faults below `start`, with their paths from there. */
const below = (faults, start) =>
  faults.filter(({ path }) => isBelow(path, start)).map((fault) => ({ ...fault, path: fault.path.slice(start.length) }))

/** The number of pots of a day; null if it cannot be planned. */
export function potsOf(book, orders) {
  const { answer } = ask({ calculate: 'plan', book, orders })
  return answer?.pots.length ?? null
}

/** Keeps the book that was read last: most changes are to the orders. */
function bookOf(document) {
  if (held.document !== document) {
    held.book?.free()
    held = { document, ...refusable(() => ({ book: new Book(document), faults: [] })) }
  }
  return held
}

function refusable(calculation) {
  try {
    return calculation()
  } catch (error) {
    if (!(error instanceof PourwrightError)) throw error
    if (error.code === 'not-ready') throw new NotYet(error.message)
    return { faults: error.faults }
  }
}
