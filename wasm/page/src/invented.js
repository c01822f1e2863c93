// Finds the entries of the book and the orders that are still the demo's, and so invented. Each entry is compared with the demo:
// one that the maker has changed or added is not invented, whatever a document says about itself.
import { demo } from './begin.js'
import { state } from './state.js'
import { say } from './words.js'

/** The parts that are compared, of the book and of the orders, each with its message of how many. */
const PARTS = [
  ['book', 'materials', 'invented.materials'],
  ['book', 'formulas', 'invented.formulas'],
  ['book', 'molds', 'invented.molds'],
  ['book', 'products', 'invented.products'],
  ['orders', 'lines', 'invented.lines'],
]

/** The demo; null until it is loaded, and if it cannot be. */
let known = null

/** Loads the demo to compare with. Without it the page works, and knows nothing to be invented. */
export async function lookForDemo() {
  known = await demo().catch(() => null)
}

const textsOf = (entries) => Object.values(entries ?? {}).map((entry) => JSON.stringify(entry))

/** The last counts of each part, and what they were of: a key in the orders leaves those of the book. */
const last = PARTS.map(() => ({}))

/** Of each part: the number of its entries, and of those that are the demo's. */
const counts = () =>
  PARTS.map(([of, part, words], at) => {
    const [own, theirs] = [state[of][part], known?.[of][part]]
    if (!last[at].counted || last[at].own !== own || last[at].theirs !== theirs) {
      const [texts, demo] = [textsOf(own), new Set(textsOf(theirs))]
      const count = texts.filter((text) => demo.has(text)).length
      last[at] = { own, theirs, counted: { of, words, all: texts.length, count } }
    }
    return last[at].counted
  })

/** Whether something of the documents is the demo's. */
export const isInvented = () => counts().some(({ count }) => count > 0)

/** Whether the documents are the demo's as they are: there is nothing of the maker's in them. */
export const isDemo = () =>
  known !== null && ['book', 'orders'].every((of) => JSON.stringify(state[of]) === JSON.stringify(known[of]))

/** What is invented, in words; empty if nothing is. */
export function inventedWords() {
  if (!isInvented()) return ''
  if (counts().every(({ of, all, count }) => of === 'orders' || count === all)) return say('invented.all')
  const some = counts().filter(({ count }) => count > 0)
  return say('invented.some', { what: some.map(({ words, count }) => say(words, { count })).join(', ') })
}
