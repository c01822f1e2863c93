import start, * as glue from '../build/pourwright.js'
import { refuse } from './error.js'

let starting
let started = false

/** Loads the WebAssembly module, once: from `source`, or from where the package has it. */
export function init(source) {
  starting ??= start({ module_or_path: source }).then(
    () => {
      started = true
    },
    (failure) => {
      starting = undefined
      throw failure
    },
  )
  return starting
}

/** The same from bytes or a compiled module that are at hand, without waiting. */
export function initSync(module) {
  glue.initSync({ module })
  started = true
  starting ??= Promise.resolve()
}

/** The functions of the WebAssembly module. */
export function instance() {
  if (!started) {
    refuse(
      'not-ready',
      '',
      'The WebAssembly module is not loaded yet.',
      'Call `await init()` once, before anything else.',
    )
  }
  return glue
}
