// Goes through one day at the bench and prints its log: node one-day.mjs core/examples/demo/one-day
//
// A color found by eye, a laminate mistaken, flake doubled, bad pieces and more orders at noon, too much salt, the record,
// and what the book learns. The folder has what a person wrote that day, the demo's book is next to it. The answers that
// change the book or the shelf bring JSON Patches, which a general library applies. `one_day.py` of the Python package
// prints the same lines.
import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'

import jsonpatch from 'fast-json-patch'
import init, { Book, Plan } from 'pourwright'

const [folder] = process.argv.slice(2)
const read = (name) => JSON.parse(readFileSync(resolve(folder, name), 'utf8'))

/** The document with a patch applied; the one given stays as it is. */
const patched = (document, patch) => jsonpatch.applyPatch(document, patch, true, false).newDocument

/** Prints what happened, as the file says it. */
function heading(document) {
  const { at, title, about } = document.ext
  console.log(`\n## ${at} ${title}\n\n${about}`)
  return document
}

/** Prints what was made of the answer. */
const closing = ({ ext }) => console.log(`\n${ext.then}`)

/** Prints an answer's sentences. */
const quote = (lines) => console.log(['', ...lines.map((line) => `- ${line}`)].join('\n'))

/** Prints an answer that is a page with columns. */
const page = (lines) => console.log(['\n```text', ...lines, '```'].join('\n'))

/** What changed when the day went on, and what cannot be made. */
const messages = ({ changes, not_made }) => [
  ...changes.map(({ message }) => message),
  ...not_made.map(({ pieces, order, because }) => `Not made: ${pieces} of order ${order}. ${because}`),
]

/** A line for each pot of a plan. */
const pots = (plan) =>
  plan.document().pots.map(({ pot, cup_name, stages }) => {
    const formulas = stages.map((stage) => stage.formulas.join(' + ')).join(', then ')
    const shots = stages.flatMap(({ draws }) => draws.map((draw) => `${draw.shots} × ${draw.mold}`)).join(', ')
    return `Pot ${pot}, ${cup_name}: ${formulas}. Shots: ${shots}.`
  })

/** The changes that the records of many days offer, and what to look at first. */
const learned = ({ changes, questions, confirmed, not_yet }) => [
  ...changes.map(({ what, before, after, why }) => `${what}: ${before ?? 'not stated'} becomes ${after}. ${why}`),
  ...questions.map(({ what, question }) => `To look at, ${what}: ${question}`),
  ...confirmed.map((one) => `As in the book: ${one}.`),
  ...not_yet.map((one) => `Not yet: ${one}`),
]

/** Asks a book for something, and frees it. */
function withBook(document, ask) {
  const book = new Book(document)
  try {
    return ask(book)
  } finally {
    book.free()
  }
}

/** The record of an earlier day, from what was noted then. */
function recordOf({ day, A }, orders, book) {
  const plan = withBook(book, (open) => open.open({ ...orders, day }))
  try {
    return plan.request({ calculate: 'record', actuals: { format: 'pourwright/1.0', pots: { A } } })
  } finally {
    plan.free()
  }
}

await init()
console.log(`# One day at the Tern Island workshop\n\n${read('orders.json').about}`)
const atFirst = read('../book.json')
let book = atFirst

const trial = heading(read('trial.json'))
const color = withBook(book, (open) => open.request(trial))
quote(color.text)
book = patched(book, color.write)
closing(trial)

const orders = heading(read('orders.json'))
const morning = withBook(book, (open) => open.open(orders))
quote(pots(morning))

const laminate = heading(read('laminate.json'))
const half = morning.request(laminate)
quote(messages(half))
const forenoon = Plan.from(half.plan)
quote(pots(forenoon))
closing(laminate)

const flake = heading(read('flake.json'))
const ways = forenoon.request(flake)
quote(ways.text)
book = patched(book, ways.write)
closing(flake)

// The plan's own book does not have the formula that was just saved: the request goes to the new book.
const noon = heading(read('noon.json'))
const rest = withBook(book, (open) => open.request({ ...noon, plan: forenoon.document() }))
quote(messages(rest))
const afternoon = Plan.from(rest.plan)
quote(pots(afternoon))
closing(noon)

const evening = heading(read('evening.json'))
const record = afternoon.request(evening)
page(record.text)
book = patched(book, record.write)
const tomorrow = patched({ format: 'pourwright/1.0', day: '2027-03-31', lines: [] }, record.shelf)
quote([`Changes to the book: ${record.write.length}. On tomorrow's shelf: ${tomorrow.shelf.length} jars.`])
closing(evening)

const earlier = heading(read('earlier.json'))
const records = earlier.days.map((day) => recordOf(day, earlier.orders, atFirst))
const answer = withBook(book, (open) => open.request({ calculate: 'learn', records: [...records, record] }))
quote(learned(answer))
const accepted = answer.changes.filter(({ questioned }) => !questioned)
const left = answer.changes.filter(({ questioned }) => questioned)
for (const { write } of accepted) book = patched(book, write)
withBook(book, () => {}) // what came of it is a book
const listed = (changes) => changes.map(({ what }) => what).join(', ')
quote([`Accepted: ${listed(accepted)}.`, `Left: ${listed(left)}.`])
closing(earlier)
for (const plan of [morning, forenoon, afternoon]) plan.free()
