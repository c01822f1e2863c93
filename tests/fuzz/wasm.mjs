// Compares the module's answers with the native ones, which come in by lines, for so many seconds: no trap, no byte of
// difference.
import assert from 'node:assert/strict'
import { createInterface } from 'node:readline'

import init, { PourwrightError, calculate } from '../../bindings/js/src/node.js'

const until = Date.now() + 1000 * Number(process.argv[2])
await init()

const codes = new Set()
let [answered, refused] = [0, 0]
for await (const line of createInterface({ input: process.stdin })) {
  const { request, answer } = JSON.parse(line)
  let found
  try {
    found = { result: calculate(request) }
    answered += 1
  } catch (error) {
    assert.ok(error instanceof PourwrightError, `${error}: ${request}`)
    found = { faults: error.faults }
    for (const { code } of error.faults) codes.add(code)
    refused += 1
  }
  assert.deepStrictEqual(found, answer, request)
  if (Date.now() > until) break
}
console.log(`${answered} requests answered, ${refused} refused with ${codes.size} codes: as by the native library.`)
process.exit()
