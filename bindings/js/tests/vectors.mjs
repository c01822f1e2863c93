// tests/vectors: what every door answers alike.
import assert from 'node:assert/strict'
import { read } from './support.mjs'

/** What this build refuses to do, since it has no solver; the other doors answer it. */
const WITHOUT_SOLVER = new Set(['leftovers'])

const lines = (name) => read(`tests/vectors/${name}.jsonl`).trimEnd().split('\n')

/** Compares the answers that `ask` gives to a list of texts with those wanted, and tells how many there were. */
export async function compareVectors(ask) {
  const requests = lines('requests')
  const wanted = lines('answers').map((line) => JSON.parse(line))
  assert.ok(requests.length > 100 && requests.length === wanted.length)
  const found = await ask(requests)
  for (const [index, answer] of wanted.entries()) {
    const place = `line ${index + 1}: ${requests[index].slice(0, 100)}`
    if (WITHOUT_SOLVER.has(answer.result?.calculate)) {
      assert.deepEqual(
        found[index].faults?.map((fault) => fault.code),
        ['solver-left-out'],
        place,
      )
    } else {
      assert.deepStrictEqual(found[index], answer, place)
    }
  }
  return requests.length
}
