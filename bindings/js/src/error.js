/** How deep the module is when it makes an error. */
const MODULE_FRAMES = 10

/** What the library refuses: one fault or more, the first of them also as the error's own code, path and help. */
export class PourwrightError extends Error {
  /** @param {import('../types/scalar.d.ts').Fault[]} faults */
  constructor(faults) {
    const [first] = faults
    // The caller stands behind the frames of the module in the stack. A host may have frozen the limit.
    const { stackTraceLimit } = Error
    Reflect.set(Error, 'stackTraceLimit', stackTraceLimit + MODULE_FRAMES)
    super(faults.length === 1 ? first.message : `${first.message} (and ${faults.length - 1} more)`)
    Reflect.set(Error, 'stackTraceLimit', stackTraceLimit)
    this.code = first.code
    this.path = first.path
    this.help = first.help
    this.faults = faults
  }

  static {
    this.prototype.name = 'PourwrightError'
  }
}

/** One fault: the module makes its faults by it too. */
export const fault = (code, path, message, help) => ({ code, path, message, help })

/** Throws one fault. */
export function refuse(code, path, message, help) {
  throw new PourwrightError([fault(code, path, message, help)])
}
