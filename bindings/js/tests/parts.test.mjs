// The entry in two files, in Node: first what plans need, then all else, by the vectors of all doors.
import assert from 'node:assert/strict'
import { test } from 'node:test'

import init, * as parts from 'pourwright/parts'
import { answerTo } from './calls.mjs'
import { answered, book, orders, refused } from './support.mjs'
import { CALCULATIONS, compareCalls, compareVectors } from './vectors.mjs'

const { rest, Book, Plan, calculate, convert } = parts
const answers = (requests) => requests.map((request) => answered(() => calculate(request)))
const isNotReady = ({ faults }) => faults?.[0].code === 'not-ready'

/** Calculations whose requests were refused before the rest was there. */
const refusedFirst = new Set()

test('before it is loaded every call throws not-ready', async () => {
  assert.equal(refused(() => calculate('{}')).code, 'not-ready')
  await assert.rejects(rest(), { code: 'not-ready' })
  await Promise.all([init(), init()])
})

test('the first part plans a day', () => {
  const shop = new Book(book)
  const plan = shop.open(orders)
  assert.match(plan.sheet(), /ORDER OF WORK/)
  assert.ok(plan.notes().length > 0)
  const again = Plan.from(plan.document())
  assert.deepEqual(again.document(), plan.document())
  assert.equal(refused(() => again.request({ calculate: 'go-on', pots: {} })).code, 'not-ready')
  for (const open of [again, plan, shop]) open.free()
})

test('the first part answers what it has as the whole library does, and refuses all else', async () => {
  await compareVectors(null, (requests, wanted) =>
    answers(requests).map((answer, index) => {
      if (!isNotReady(answer)) return answer
      refusedFirst.add(JSON.parse(requests[index]).calculate)
      assert.equal(answer.faults[0].path, '/calculate')
      return wanted[index]
    }),
  )
  for (const name of ['go-on', 'learn', 'color-next', 'trial']) assert.ok(refusedFirst.has(name), name)
  for (const name of ['plan', 'convert', 'next-burst']) assert.ok(!refusedFirst.has(name), name)
  assert.equal(refused(() => convert({ amount: '1 cup', to: 'mL' })).code, 'not-ready')
})

test('each line of many requests is answered or refused by itself', async () => {
  const lines = ['{"calculate":"convert","amount":"1 cup","to":"tbsp"}', '{"calculate":"dose"}', '[']
  const found = []
  for await (const answer of parts.answerLines(lines)) found.push(JSON.parse(answer))
  assert.equal(found[0].result.value, 16)
  assert.ok(isNotReady(found[1]))
  assert.equal(found[2].faults[0].code, 'not-json')
})

test('with the rest everything is answered', async () => {
  await assert.rejects(rest(new Uint8Array(8)), WebAssembly.CompileError)
  await Promise.all([rest(), rest()])
  await compareVectors(null, answers)
  await compareCalls(null, (calls) => calls.map((call) => answerTo(parts, CALCULATIONS, call)))
})
