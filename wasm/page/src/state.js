// What the page knows, in one object; whoever changes it says so by `change`, and all of the page follows at once.

export const state = {
  /** The shop's book and the day's order list: documents of the library. */
  book: null,
  orders: null,
  /** The text of a book that is no JSON, while it is mended. */
  bookText: null,
  /** What has been done, by the id of the step: the words it was done by, and the mass that was measured. */
  done: {},
  /** What was ticked, the last one last: its id, the clocks that it stopped, and the one that it started. */
  ticked: [],
  /** The day of the order list when the first of these was ticked. */
  tickedOn: null,
  /** Clocks that run, or have run out and wait to be seen. */
  timers: [],
  /** The documents before the last that were opened, with their ticks and clocks. */
  before: null,
  /** The order line that was removed last, with its place, while it can be put back. */
  removed: null,
  /** Which scale is shown: "us" or "metric". */
  scale: 'us',
  /** Minutes that a degassing is held, as the maker wrote it; empty: the clock counts up. */
  hold: '',
  /** The pot that is looked at by itself: a formula and an amount, or one of the day's. */
  one: { formulas: [], base: '', of: null, poured: {}, cup: '', trace: '' },
  /** The piece whose salt is looked at. */
  salt: { product: '', salt: '', at: null },
  /** What is weighed for the book: of what, with which spoon, and the weighings as they were written. */
  calibrate: { kind: 'drop', material: '', spoon: '', rows: [] },
  /** Something that the maker should know of a file that was opened, or of what an earlier visit has left. */
  notice: '',
  /** Why the browser keeps nothing, while it does not. */
  unkept: '',
  /** How many documents are being taken in from elsewhere. */
  reading: 0,
}

/** The parts that are kept between visits. */
export const KEPT = 'book orders bookText done ticked tickedOn timers before scale hold one salt calibrate'.split(' ')

const listeners = []

/** Has `listener` called after each change. */
export function onChange(listener) {
  listeners.push(listener)
}

/** Changes the state: `parts` replace what stood there. Without any, what hangs on the time of day is drawn anew. */
export function change(parts = {}) {
  Object.assign(state, parts)
  for (const listener of listeners) listener(parts)
}

/** A copy of `document` in which `value` stands at `path` (a list of keys); undefined takes it away. */
function withValue(document, [key, ...rest], value) {
  const copy = Array.isArray(document) ? [...document] : { ...document }
  const below = rest.length ? withValue(copy[key] ?? {}, rest, value) : value
  if (below !== undefined) copy[key] = below
  else if (Array.isArray(copy)) copy.splice(key, 1)
  else delete copy[key]
  return copy
}

/** What stands at `path` of `document`. */
export function valueAt(document, path) {
  return path.reduce((below, key) => below?.[key], document)
}

/** Writes a value into the book. */
export function editBook(path, value) {
  change({ book: withValue(state.book, path, value) })
}

/** Writes a value into the order list. */
export function editOrders(path, value) {
  change({ orders: withValue(state.orders, path, value) })
}

/** Whether these are the demo's documents, or others that say that they are invented. */
export function isInvented() {
  return [state.book.about, state.orders.about].some((about) => /invented/i.test(about ?? ''))
}
