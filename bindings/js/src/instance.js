import { refuse } from './error.js'

/** The functions on plain numbers: every module has them, and they answer alike. */
let ofAnyModule

/** Loads the WebAssembly module behind `glue`, once, and gives its functions. */
export function loader(glue) {
  let starting
  let ofThisModule

  function started() {
    ofThisModule = glue
    ofAnyModule ??= glue
  }

  return {
    /** From `source`, or from where the package has it. */
    init(source) {
      starting ??= glue.default({ module_or_path: source }).then(started, (failure) => {
        starting = undefined
        throw failure
      })
      return starting
    },

    /** From bytes or a compiled module that are at hand, without waiting. */
    initSync(module) {
      glue.initSync({ module })
      started()
      starting ??= Promise.resolve()
    },

    /** All functions of the module. */
    instance: () => ofThisModule ?? notReady(),
  }
}

/** The functions on plain numbers, of the module that was loaded first. */
export const scalar = () => ofAnyModule ?? notReady()

function notReady() {
  refuse(
    'not-ready',
    '',
    'The WebAssembly module is not loaded yet.',
    'Call `await init()` once, before anything else.',
  )
}
