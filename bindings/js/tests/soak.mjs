// Makes plans, records and requests through one book, and checks that memory stays where it was:
// node --expose-gc soak.mjs ROUNDS. The rounds are those of tests/soak/soak.c.
import assert from 'node:assert/strict'

import init, { Book, Plan } from 'pourwright'
import { book as document, orders as demo, refused, watchMemory } from './support.mjs'

const CYCLE = 64
const LINES = 60
/** Most that memory may grow after the first tenth, in kB: the module's, and, collected, the process's and its heap's. */
const GROWTH = { module: 512, heap: 1024, resident: 32 * 1024 }
const PRODUCTS = ['dusk finger', 'reed paddle', 'ember grub', 'night stick', 'dusk stick, salted']

const moduleMemory = watchMemory()
await init()
const rounds = Number(process.argv[2]) - (Number(process.argv[2]) % CYCLE)
assert.ok(rounds >= 16 * CYCLE && globalThis.gc, `Usage: node --expose-gc soak.mjs ROUNDS, at least ${16 * CYCLE}`)

const book = new Book(document)
const done = { plans: 0, refused: 0, records: 0, requests: 0 }

/** A day of `count` lines, different in each round. */
function day(round, count) {
  const lines = Array.from({ length: count }, (_, line) => ({
    order: String(line),
    product: PRODUCTS[(round + line) % 5],
    pieces: 1 + ((7 * round + line) % 60),
  }))
  return { format: 'pourwright/1.0', lines }
}

const SLIP = day(0, 1)
SLIP.lines[0].pieces = 100_000

function planOnce(round) {
  const orders = day(round, round % CYCLE === 0 ? LINES : 1 + (round % 3))
  const text = JSON.stringify(orders)
  const refuse = (code, ...call) => {
    assert.equal(refused(() => book.open(...call)).code, code)
    done.refused++
  }
  switch (round % 8) {
    case 2:
      return refuse('not-json', text.slice(0, round % text.length))
    case 3:
      orders.lines[0].product = 'x'
      return refuse('unknown-name', orders)
    case 4:
      return readPlan(book.open(demo), round)
    case 5:
      return refuse('not-json', { ...orders, '\ud800': 1 })
    case 6:
      return refuse('budget-pots', orders, { pots: 0 })
    case 7:
      return refuse('plan-stopped', SLIP, {}, () => true)
    default:
      return readPlan(book.open(text), round)
  }
}

function readPlan(plan, round) {
  const record = (pots) => plan.request({ calculate: 'record', actuals: { format: 'pourwright/1.0', pots } })
  assert.equal(record({}).calculate, 'record')
  refused(() => record({ '?': {} }))
  assert.ok((round % 2 === 0 ? plan.sheet() : plan.notes()).length > 100)
  if (round % 16 === 4) Plan.from(plan.document()).free()
  plan.free()
  done.plans++
  done.records++
}

const ASKED = [
  { calculate: 'formula', formulas: ['dusk', 'plain'], base_amount: '1 1/2 cup' },
  { calculate: 'cost', formulas: ['dusk', 'plain'], base_amount: '1 1/2 cup' },
  { calculate: 'convert', amount: '1 1/4 cup', to: 'mL' },
  // refused
  { calculate: 'formula', formulas: ['dusk', 'plane'] },
  { calculate: 'convert', amount: '6 oz', to: 'g' },
  '{"calculate":"formula","formulas":[',
]

function requestOnce(round) {
  const asked = () => book.request(ASKED[round % 6])
  if (round % 6 < 3) asked()
  else refused(asked)
  done.requests++
}

/** Memory in kB. */
function memory() {
  globalThis.gc()
  const { rss, heapUsed } = process.memoryUsage()
  const kB = (bytes) => Math.round(bytes / 1024)
  return { module: kB(moduleMemory()), heap: kB(heapUsed), resident: kB(rss) }
}

const first = JSON.stringify(book.plan(demo))
const warm = Math.max(8 * CYCLE, Math.floor(rounds / 10 / CYCLE) * CYCLE)
const begun = performance.now()
let before
for (let round = 0; round < rounds; round++) {
  if (round === warm) before = memory()
  planOnce(round)
  requestOnce(round)
}
const after = memory()
assert.equal(JSON.stringify(book.plan(demo)), first)

const seconds = Math.round((performance.now() - begun) / 1000)
const shown = ({ module, heap, resident }) => `module ${module} kB, heap ${heap} kB, resident ${resident} kB`
console.log(
  `soak in Node: ${rounds} rounds in ${seconds} s: ${done.plans} plans with a record each, ${done.refused} plans refused, ` +
    `${done.requests} requests. After ${warm} rounds ${shown(before)}; at the end ${shown(after)}.`,
)
assert.ok(done.plans > rounds / 3 && done.refused > rounds / 3 && done.records === done.plans)
for (const [of, most] of Object.entries(GROWTH)) {
  assert.ok(after[of] - before[of] <= most, `${of} memory grew by ${after[of] - before[of]} kB, more than ${most} kB`)
}
