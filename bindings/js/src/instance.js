import { refuse } from './error.js'

/** The calculations on plain numbers: every module has them, and all give the same answers. */
let ofAnyModule

/** Loads the WebAssembly module of `glue` once, whole or in `parts`; its functions. */
export function loader(glue, parts) {
  let starting
  let ofThisModule
  /** The first part of the module, while the rest is not there. */
  let first
  let resting

  function started({ memory }) {
    ofThisModule = glue
    ofAnyModule ??= { table: new glue.Table(), memory }
  }

  function startedFirst(exports) {
    ofThisModule = glue
    first = exports
  }

  function start(source, then) {
    starting ??= glue.default({ module_or_path: source }).then(then, (failure) => {
      starting = undefined
      throw failure
    })
    return starting
  }

  return {
    /** From `source`; default: the package's own file. */
    init: (source) => start(source, started),

    /** The first part, from `source`. */
    initFirst: (source) => start(source, startedFirst),

    /** The rest, from `source`, when the first part is there. */
    async initRest(source) {
      await (starting ?? notReady())
      if (!first) return
      resting ??= parts.instantiateRest(source, first).then(
        () => {
          started(first)
          first = undefined
        },
        (failure) => {
          resting = undefined
          throw failure
        },
      )
      await resting
    },

    /** From bytes or a compiled module, synchronously. */
    initSync(module) {
      started(glue.initSync({ module }))
      starting ??= Promise.resolve()
    },

    /** All functions of the module. */
    instance: () => ofThisModule ?? notReady(),

    /** Refuses a request in JSON whose calculation is not loaded yet. */
    checkLoaded: (request) => first && parts.checkFirst(request),
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
