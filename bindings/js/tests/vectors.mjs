// tests/vectors: what every door answers alike.
import assert from 'node:assert/strict'
import { read } from './support.mjs'

const lines = (name) => read(`tests/vectors/${name}.jsonl`).trimEnd().split('\n')

/** Compares the answers that `ask` gives to a list of texts with those wanted, and tells how many there were. */
export async function compareVectors(ask) {
  const requests = lines('requests')
  const wanted = lines('answers').map((line) => JSON.parse(line))
  assert.ok(requests.length > 100 && requests.length === wanted.length)
  const found = await ask(requests)
  for (const [index, answer] of wanted.entries()) {
    assert.deepStrictEqual(found[index], answer, `line ${index + 1}: ${requests[index].slice(0, 100)}`)
  }
  return requests.length
}
