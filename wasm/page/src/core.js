// The page's way to the library: the day's plan, and any calculation by itself. No sum is done outside it.
import init, { Book, PourwrightError, calculate } from '../pourwright/src/web.js'

export const load = init

/** The format that documents are written in here. */
export const FORMAT = 'pourwright/1.0'

/** What the library says to `request`: `{ answer, faults }`, one of them empty. */
export function ask(request) {
  return refusable(() => ({ answer: calculate(request), faults: [] }))
}

const converted = new Map()

/** The number that an amount of the book is in a unit; null where the book states none, or none that can be read. */
export function inUnit(amount, to, measures) {
  if (amount === undefined) return null
  const key = JSON.stringify([amount, to, measures])
  if (!converted.has(key)) {
    const { answer } = ask({ calculate: 'convert', amount, to, measures })
    converted.set(key, answer?.value ?? null)
  }
  return converted.get(key)
}

/** The faults of a book, read from its text, in which keys that stand twice are found too. */
export function faultsOfBook(text) {
  return refusable(() => {
    new Book(text).free()
    return { faults: [] }
  }).faults
}

let held = {}
let made = {}

/** The plan of a day: `{ plan, bookFaults, ordersFaults }`; made anew only where the documents are others than before. */
export function plan(book, orders) {
  if (made.book === book && made.orders === orders) return made.result
  made = { book, orders, result: planAnew(book, orders) }
  return made.result
}

function planAnew(book, orders) {
  const read = bookOf(book)
  if (read.faults.length) return { plan: null, bookFaults: read.faults, ordersFaults: [] }
  const result = refusable(() => ({ plan: read.book.plan(orders), faults: [] }))
  return { plan: result.plan ?? null, bookFaults: [], ordersFaults: result.faults }
}

/** A book stays read until another one comes: most changes of a day are to its orders. */
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
