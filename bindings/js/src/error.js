/** The number of stack frames of the module when it makes an error. */
const MODULE_FRAMES = 10

/** A refused call: one fault or more. The error's own code, path and help are those of the first. */
export class PourwrightError extends Error {
  /** @param {import('../types/scalar.d.ts').Fault[]} faults */
  constructor(faults) {
    const [first] = faults
    // Include the caller, who is behind the module's frames in the stack. A host may have frozen the limit.
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

/** One fault; the module uses it too. */
export const fault = (code, path, message, help) => ({ code, path, message, help })

/** Throws one fault. */
export function refuse(code, path, message, help) {
  throw new PourwrightError([fault(code, path, message, help)])
}
