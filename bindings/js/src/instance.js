import { refuse } from './error.js'

/** The calculations on plain numbers: every module has them, and all give the same answers. */
let ofAnyModule

/** Loads the WebAssembly module of `glue` once; its functions. */
export function loader(glue) {
  let starting
  let ofThisModule

  function started({ memory }) {
    ofThisModule = glue
    ofAnyModule ??= { table: new glue.Table(), memory }
  }

  return {
    /** From `source`; default: the package's own file. */
    init(source) {
      starting ??= glue.default({ module_or_path: source }).then(started, (failure) => {
        starting = undefined
        throw failure
      })
      return starting
    },

    /** From bytes or a compiled module, synchronously. */
    initSync(module) {
      started(glue.initSync({ module }))
      starting ??= Promise.resolve()
    },

    /** All functions of the module. */
    instance: () => ofThisModule ?? notReady(),
  }
}

/** The calculations on plain numbers of the module that was loaded first, and its memory. */
export const calculator = () => ofAnyModule ?? notReady()

function notReady() {
  refuse(
    'not-ready',
    '',
    'The WebAssembly module is not loaded yet.',
    'Call `await init()` once, before anything else.',
  )
}
