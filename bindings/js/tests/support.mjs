// Shared by the tests: the demo shop's documents, answers of calls, the module's memory, and the repository's root.
import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'

import { PourwrightError } from 'pourwright'

/** The root of the repository: the tests run in a project of their own. */
export const root = new URL(`file://${process.env.POURWRIGHT_ROOT}/`)

export const read = (path) => readFileSync(new URL(path, root), 'utf8')
export const book = JSON.parse(read('core/examples/demo/book.json'))
export const orders = JSON.parse(read('core/examples/demo/orders.json'))

/** The error that a call throws, which must be a `PourwrightError`. */
export function refused(call) {
  try {
    call()
  } catch (error) {
    assert.ok(error instanceof PourwrightError && error instanceof Error, String(error))
    const [{ code, path, message, help }] = error.faults
    assert.deepEqual([error.name, error.code, error.path, error.help], ['PourwrightError', code, path, help])
    assert.ok(error.message.startsWith(message))
    return error
  }
  assert.fail('nothing was thrown')
}

/** The answer of a call in the core's form: `{ result }` or `{ faults }`. */
export function answered(call, what = 'the call') {
  try {
    return { result: call() }
  } catch (error) {
    assert.ok(error instanceof PourwrightError, `${what}: ${error}`)
    return { faults: error.faults }
  }
}

/** Whether a call was answered. It may be refused, but must throw nothing else, and `convert` must still answer. */
export const survivesWith = (convert) => (call, what) => {
  const { faults } = answered(call, what)
  assert.equal(convert({ amount: '1 cup', to: 'mL' }).value, 236.5882365, what)
  return faults === undefined
}

/** The memory of the module. Call it before the module is loaded. */
export function watchMemory() {
  const { instantiate } = WebAssembly
  let memory
  WebAssembly.instantiate = async (...parameters) => {
    const loaded = await instantiate.apply(WebAssembly, parameters)
    memory = (loaded.instance ?? loaded).exports.memory
    return loaded
  }
  return () => memory.buffer.byteLength
}
