// No input causes a trap, which would make the instance unusable.
import assert from 'node:assert/strict'
import { describe, test } from 'node:test'

import init, { Book, Plan, calculate, convert } from 'pourwright'
import { book, orders, survivesWith, watchMemory } from './support.mjs'
import { LONG_TEXTS, ODD_TEXTS } from './table.mjs'

const memory = watchMemory()
await init()
const survives = survivesWith(convert)

const RECORD = { calculate: 'record', actuals: { format: 'pourwright/1.0', pots: {} } }

test('deep nesting', () => {
  for (const depth of [100, 127, 128, 1000, 1_000_000]) {
    for (const [open, close] of [
      ['[', ']'],
      ['{"a":', '}'],
    ]) {
      // prettier-ignore
      const text = open.repeat(depth) + (open === '[' ? '' : '1') + close.repeat(depth)
      survives(() => calculate(text), `${depth} ${open}`)
      survives(() => calculate(`{"calculate": "plan", "book": ${text}, "orders": ${text}}`), `${depth} ${open}`)
      survives(() => new Book(`{"format": "pourwright/1.0", "ext": ${text}}`), `${depth} ${open}`)
      survives(() => Plan.from(`{"format": "pourwright/1.0", "made_from": ${text}}`), `${depth} ${open}`)
    }
  }
  let deep = {}
  for (let depth = 0; depth < 100_000; depth += 1) deep = { deep }
  survives(() => calculate(deep), 'a deep object')
})

test('long texts', () => {
  for (const text of LONG_TEXTS) {
    survives(() => calculate(text), 'a text')
    survives(() => calculate({ calculate: text }), 'a name')
    survives(() => calculate({ calculate: 'convert', amount: text, to: text, [text]: text }), 'a request')
  }
})

test('odd characters', () => {
  for (const text of ODD_TEXTS) {
    for (const amount of [text, `1${text}cup`, `${text}1 cup`, `1 cup${text}`]) {
      survives(() => calculate({ calculate: 'convert', amount, to: text }), amount)
      survives(
        () => new Book({ ...book, [amount]: 1, shop: amount, molds: { [amount]: { cavities: amount } } }),
        amount,
      )
    }
  }
})

test('a list of faults longer than any shop needs', () => {
  const weights = `[${'0,'.repeat(200_000)}0]`
  survives(() => calculate(`{"calculate": "calibrate", "cold_density": "1 g/mL", "weights": ${weights}}`), 'weights')
  const keys = Array.from({ length: 30_000 }, (_, index) => `"k${index}":0`)
  survives(() => new Book(`{${keys.join()}}`), 'keys')
})

describe('random slips', () => {
  let state = 20270302
  const random = (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return Math.floor((state / 2 ** 32) * below)
  }
  const nodes = (value, found = []) => {
    if (typeof value !== 'object' || value === null) return found
    for (const key of Object.keys(value)) {
      found.push([value, key])
      nodes(value[key], found)
    }
    return found
  }
  const slips = [null, 0, -1, 1e300, 0.1, true, '', 'x', '1e999 g', '0 g', '-1 cup', '1000000 gal', '1e-30 mL', '100 %', [], {}, '999999999999999999999999 cup', '1/0 cup'] // prettier-ignore
  /** A copy with up to `most` slips. */
  const slipped = (document, most) => {
    const copy = structuredClone(document)
    for (let slip = random(most); slip >= 0; slip -= 1) {
      const all = nodes(copy)
      const [holder, key] = all[random(all.length)]
      if (random(4) === 0) delete holder[key]
      else if (random(3) === 0) holder[key] = structuredClone(all[random(all.length)][0])
      else holder[key] = slips[random(slips.length)]
    }
    return copy
  }
  const survivesCut = (text, call) => {
    const cut = random(text.length)
    survives(() => call(text.slice(0, cut) + text.slice(cut + 1 + random(3))), 'a cut')
  }

  test('a thousand in books and orders', () => {
    let answered = 0
    for (let round = 0; round < 1000; round += 1) {
      const request = slipped({ calculate: 'plan', book, orders }, 3)
      if (survives(() => calculate(request), JSON.stringify(request).slice(0, 200))) answered += 1
      survivesCut(JSON.stringify({ calculate: 'plan', book, orders }), calculate)
    }
    assert.ok(answered > 0, 'some slips are let pass')
  })

  test('a few hundred in stored plans', () => {
    const plan = new Book(book).plan(orders)
    const use = (document) => {
      const again = Plan.from(document)
      try {
        survives(() => again.request(RECORD), 'a record')
        return again.sheet()
      } finally {
        again.free()
      }
    }
    let opened = 0
    for (let round = 0; round < 300; round += 1) {
      if (survives(() => use(slipped(plan, 1)), 'a plan')) opened += 1
      survivesCut(JSON.stringify(plan), use)
    }
    assert.ok(opened > 0, 'some slips are let pass')
  })
})

test('memory does not grow with books and plans that are freed', () => {
  const rounds = (count) => {
    for (let round = 0; round < count; round += 1) {
      const shop = new Book(book)
      shop.plan(orders)
      const plan = shop.open(orders)
      plan.request(RECORD)
      plan.free()
      survives(() => shop.plan({ ...orders, lines: [{ order: '1' }] }), 'a fault')
      shop.free()
    }
    return memory()
  }
  const before = rounds(20)
  assert.equal(rounds(300), before)
})
