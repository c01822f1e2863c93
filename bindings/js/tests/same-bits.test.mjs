// The answers of the module next to those of the native library, and of the small module next to both, number by number
// to the last bit.
import assert from 'node:assert/strict'
import { once } from 'node:events'
import { test } from 'node:test'
import { Worker } from 'node:worker_threads'

import init, { Book, Plan, calculate } from 'pourwright'
import { answered, book, orders } from './support.mjs'
import { native } from './table.mjs'

await init()

/** Orders of many sizes, so that many numbers are compared, rounded ones among them. */
function scaled(factor) {
  const lines = orders.lines.map((line) => {
    const scaled = { ...line }
    for (const count of ['pieces', 'packs']) if (count in line) scaled[count] = Math.ceil(line[count] * factor)
    return scaled
  })
  return { ...orders, lines }
}

const requests = [0.1, 0.5, 1, 1.7, 2.5].map((factor) => ({ calculate: 'plan', book, orders: scaled(factor) }))
for (const [amount, to] of [
  ['1/3 cup', 'mL'],
  ['330 °F', '°C'],
  ['0.1 lb', 'g'],
  ['29.92 inHg', 'Pa'],
  ['6 oz', 'g'],
  ['1 cup', 'furlong'],
]) {
  requests.push({ calculate: 'convert', amount, to })
}
const salt = { kind: 'salt', like: 'sodium-chloride', as_scooped: '1.22 g/mL' }
for (const density of ['1.05 g/mL', '1.12 g/mL', '1.17 g/mL', '3 g/mL']) {
  requests.push({
    calculate: 'salt',
    base_volume: '1 cup',
    base_density: '1.03 g/mL',
    salt,
    loading: { finished_density: density },
    cavity_volume: '9.5 mL',
  })
}
requests.push({ calculate: 'water', water_mass: '9.47 g', water_temperature: '22 °C' }, { calculate: 'nothing' }, {})

const answers = native(requests)

test('these requests', () => {
  for (const [index, request] of requests.entries()) {
    assert.deepStrictEqual(
      answered(() => calculate(request)),
      answers[index],
      JSON.stringify(request).slice(0, 100),
    )
  }
  assert.ok(answers.filter((answer) => answer.result).length >= 10, 'most are answered')
})

test('a book that is read once', () => {
  const shop = new Book(book)
  for (const [index, request] of requests.entries()) {
    if (request.calculate !== 'plan') continue
    const answer = answered(() => ({ calculate: 'plan', ...shop.plan(request.orders) }))
    assert.deepStrictEqual(answer, answers[index])
  }
})

test('open books and plans, each request through its handle', () => {
  const shop = new Book(book)
  const plan = shop.open(orders)
  const given = { book, plan: plan.document() }
  const formula = { calculate: 'formula', formulas: ['dusk', 'plain'], base_amount: '1/3 cup' }
  const record = { calculate: 'record', actuals: { format: 'pourwright/1.0', pots: {} } }
  const [made, unknown, recorded] = native([
    { ...formula, book },
    { ...formula, formulas: ['dusk', 'plane'], book },
    { ...record, ...given },
  ])
  for (const open of [shop, plan]) {
    assert.deepStrictEqual(
      answered(() => open.request(formula)),
      made,
    )
    assert.deepStrictEqual(
      answered(() => open.request({ ...formula, formulas: ['dusk', 'plane'] })),
      unknown,
    )
  }
  for (const open of [plan, Plan.from(given.plan)]) {
    assert.deepStrictEqual(
      answered(() => open.request(record)),
      recorded,
    )
  }
  assert.ok(made.result && unknown.faults && recorded.result)
})

test('tests/vectors', () => import('./node-vectors.mjs'))

test('the small module on plain numbers', async () => {
  const [whole, small] = await Promise.all(['pourwright', 'pourwright/scalar'].map(everyAnswer))
  assert.ok(
    whole.length > 1000 && whole.some(({ result }) => result !== undefined) && whole.some(({ faults }) => faults),
  )
  assert.deepStrictEqual(small, whole)
})

/** What an entry of the package answers to the odd calls: in a worker, since two entries in one share the first module. */
async function everyAnswer(entry) {
  const worker = new Worker(new URL('./answers.mjs', import.meta.url), { workerData: entry })
  const [answers] = await once(worker, 'message')
  return answers
}
