// tests/vectors: what every door answers alike. Where POURWRIGHT_ANSWERS names a folder, the answers are written there:
// tests/doors.
import assert from 'node:assert/strict'
import { writeFileSync } from 'node:fs'

import { jsonOf } from './calls.mjs'
import { read } from './support.mjs'

const lines = (name) => read(`tests/vectors/${name}.jsonl`).trimEnd().split('\n')

export const CALCULATIONS = Object.fromEntries(
  JSON.parse(read('core/schema/calculations.json')).calculations.map((one) => [one.name, one]),
)

function writeAnswers(door, kind, answers) {
  const folder = process.env.POURWRIGHT_ANSWERS
  const name = `${door}.${kind}`
  if (folder && door) writeFileSync(`${folder}/${name}.jsonl`, answers.map((answer) => `${jsonOf(answer)}\n`).join(''))
}

/** Compares the answers that `ask` gives to a list of texts with those wanted, and tells how many there were. `null` is no door of its own. */
export async function compareVectors(door, ask) {
  const requests = lines('requests')
  const wanted = lines('answers').map((line) => JSON.parse(line))
  assert.ok(requests.length > 400 && requests.length === wanted.length)
  const found = await ask(requests, wanted)
  writeAnswers(door, 'requests', found)
  for (const [index, answer] of wanted.entries()) {
    assert.deepStrictEqual(found[index], answer, `line ${index + 1}: ${requests[index].slice(0, 100)}`)
  }
  return requests.length
}

/** The same of the calls on plain numbers. */
export async function compareCalls(door, ask) {
  const calls = lines('calls').map((line) => JSON.parse(line))
  assert.ok(calls.length > 600)
  const found = await ask(calls)
  writeAnswers(door, 'calls', found)
  for (const [index, { call, case: of, results, faults }] of calls.entries()) {
    const wanted = results ? { results } : { faults }
    assert.deepStrictEqual(found[index], wanted, `calls.jsonl:${index + 1}: ${call}, ${of}`)
  }
  return calls.length
}
