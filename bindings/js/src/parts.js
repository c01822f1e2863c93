// The library in two files, so that a page has its plan before all else is there. `wasm/glue` cuts the module.
import { refuse } from './error.js'

/** The calculations of the first part; all others, and plain numbers, are in the rest. */
export const FIRST = [
  'plan',
  'quote',
  'next-burst',
  'convert',
  'formula',
  'mix',
  'measure',
  'air',
  'degas',
  'salt',
  'sink',
  'shot',
]

/** Refuses a request in JSON that the first part cannot answer. What cannot be read is left to the module. */
export function checkFirst(request) {
  let name
  try {
    name = JSON.parse(request)?.calculate
  } catch {
    return
  }
  if (typeof name === 'string' && !FIRST.includes(name)) {
    refuse(
      'not-ready',
      '/calculate',
      `"${name}" is in the rest of the library, which is not loaded yet.`,
      'Call `await rest()` once, before it.',
    )
  }
}

/** Loads the second part into the memory and table of the first, whose exports are `first`. */
export async function instantiateRest(source, first) {
  const isAddress = typeof source === 'string' || source instanceof URL
  const found = await (isAddress ? fetch(source) : source)
  const module = typeof found.arrayBuffer === 'function' ? await found.arrayBuffer() : found
  await WebAssembly.instantiate(module, { first })
}
