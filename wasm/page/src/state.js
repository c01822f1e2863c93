// The state of the page in one object. Every change goes through `change`, after which the page is drawn again.

export const state = {
  /** The shop's book and the day's order list: documents of the library. */
  book: null,
  orders: null,
  /** The text of a book that is not JSON, until it is fixed. */
  bookText: null,
  /** The plan that is worked by, from the first tick on: see `work`; and when it last became another. */
  work: null,
  workAt: 0,
  /**
   * What has been done, by the id of the item: its amount in words, when, and the clocks that it stopped and started. `reading` is
   * what the thermometer or the gauge showed, `poured` what went in of a material if it was another amount within tolerance, as
   * the library reads it. What was skipped is `skipped` and has no words: it is not
   * done; a heat that was skipped has both, as the pot counts as hot. What was taken back has a time alone.
   */
  done: {},
  /** Good pieces as counted at the bench: by the id of the first step of the plan that shoots them, by shape; "" for like cavities. */
  good: {},
  /** The bench: whether the whole pot is shown instead of one step, and the other way to measure the item that is due. */
  bench: { whole: false, way: null },
  /** Whether single keys of the keyboard are shortcuts at the bench. */
  shortcuts: true,
  /** What the thermometer showed last, by the id of the heat. */
  readings: {},
  /** The day of the order list at the first tick. */
  tickedOn: null,
  /** Clocks that run, or are over and not stopped yet. */
  timers: [],
  /** The documents before those that were opened last, with their ticks and clocks. */
  before: null,
  /** The changes of book and orders, and those that were undone: see `edits`. */
  edits: { done: [], undone: [] },
  /** The pieces of a day that are meant, however many; 0 if that was not asked. */
  sure: 0,
  /** The scale shown first: "us" or "metric". */
  scale: 'us',
  /** The code of the language that was chosen; empty for the browser's. */
  language: '',
  /** Minutes that a degassing is held, as written; if empty, the clock counts up. */
  hold: '',
  /** The pot of the view "One pot": formulas and an amount, or one of the day's. */
  one: { formulas: [], base: '', of: null, poured: {}, cup: '', trace: '', hot: '', refused: [] },
  /** The piece of the view "Salt". */
  salt: { product: '', salt: '', at: null },
  /** The form for the book: the part that is shown, the entry that is open, and whether a shop is begun from nothing. */
  form: { part: 'formulas', open: null, start: false },
  /** The size for gloves: whether it is on, and the pixels of a millimeter as the maker has set them by the ruler. */
  gloves: { on: false, mm: null },
  /** A calibration: its kind, material and spoon, and the weighings as written. */
  calibrate: { kind: 'drop', material: '', spoon: '', rows: [] },
  /**
   * The view "Color": the steps of the card; target and sample as they were read; the trial of the cup with its log, the drops
   * that are played with, colorants left out; strengths of the book before this cup's were accepted.
   */
  color: {
    steps: ['90 %'],
    target: null,
    seen: null,
    start: '',
    formulas: [],
    log: [],
    play: null,
    out: [],
    close: '',
    taken: '',
    before: {},
    save: '',
    piece: '',
    series: '',
  },
  /**
   * The day's events: the part that is shown; the notes for the record, by plan and pot; the trial; what was learned up to which
   * day; the leftovers that wait for the next day's list.
   */
  day: {
    part: 'record',
    pot: '',
    notes: {},
    trial: { start: '', formulas: [], log: [], spoon: '', save: '', notes: '' },
    learned: {},
    shelf: [],
  },
  /** A message about a file that was opened, or about the data of an earlier visit. */
  notice: '',
  /** Why the browser stores nothing; empty if it does. */
  unkept: '',
  /** Why the screen may go dark while a clock runs; empty if it stays on. */
  sleeps: '',
  /** Whether a new version of the page waits. */
  update: false,
  /** The number of documents being read. */
  reading: 0,
  /** The number of times that documents were opened: what was shown before is then no earlier plan of theirs. */
  opened: 0,
}

/** The parts that are stored between visits. */
export const KEPT =
  'book orders edits bookText work workAt done good bench shortcuts readings tickedOn timers before sure scale language hold one salt calibrate color form gloves day'.split(
    ' ',
  )

const listeners = []

/** Calls `listener` after each change. */
export function onChange(listener) {
  listeners.push(listener)
}

/**
 * Changes the state: `parts` replace the present ones. Without any, the page is drawn again as clocks run. `settle` is called
 * before it is drawn.
 */
export function change(parts = {}, settle = () => {}) {
  Object.assign(state, parts)
  settle()
  for (const listener of listeners) listener(parts)
}

/** A copy of `document` with `value` at `path` (a list of keys); undefined removes it. */
export function withValue(document, [key, ...rest], value) {
  if (key === undefined) return value
  const copy = Array.isArray(document) ? [...document] : { ...document }
  const below = rest.length ? withValue(copy[key] ?? {}, rest, value) : value
  if (below !== undefined) copy[key] = below
  else if (Array.isArray(copy)) copy.splice(key, 1)
  else delete copy[key]
  return copy
}

/** The value at `path` of `document`. */
export function valueAt(document, path) {
  return path.reduce((below, key) => below?.[key], document)
}

/** The scale of a book: that of its measures. */
export const scaleOf = (book) => (String(book?.measures).startsWith('us') ? 'us' : 'metric')
