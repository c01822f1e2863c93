// What the tests share: the demo shop's documents, the module's memory, and where the repository is.
import { readFileSync } from 'node:fs'

/** The root of the repository: the tests run in a project of their own. */
export const root = new URL(`file://${process.env.POURWRIGHT_ROOT}/`)

export const read = (path) => readFileSync(new URL(path, root), 'utf8')
export const book = JSON.parse(read('core/examples/demo/book.json'))
export const orders = JSON.parse(read('core/examples/demo/orders.json'))

/** The memory of the module; to be called before it is loaded. */
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
