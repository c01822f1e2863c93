// The page's access to the library: the day's plan, and single calculations. The page itself calculates nothing.
import init, { Book, PourwrightError, calculate } from '../pourwright/src/web.js'

export const load = init

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
let made = {}

/** The last plan that could be made, open for requests. */
let opened = null

/** The reply to a request about the last plan, which leaves out book and plan. */
export function askPlan(request) {
  return refusable(() => ({ answer: opened.request(request), faults: [] }))
}

/** The plan of a day: `{ plan, bookFaults, ordersFaults }`. Made again only if a document has changed. */
export function plan(book, orders) {
  if (made.book === book && made.orders === orders) return made.result
  made = { book, orders, result: makePlan(book, orders) }
  return made.result
}

function makePlan(book, orders) {
  const read = bookOf(book)
  if (read.faults.length) return { plan: null, bookFaults: read.faults, ordersFaults: [] }
  const { open, faults } = refusable(() => ({ open: read.book.open(orders), faults: [] }))
  if (!open) return { plan: null, bookFaults: [], ordersFaults: faults }
  opened?.free()
  opened = open
  return { plan: open.document(), bookFaults: [], ordersFaults: [] }
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
    if (error instanceof PourwrightError) return { faults: error.faults }
    throw error
  }
}
