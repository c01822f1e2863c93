/** What the library refuses: one fault or more, the first of them also as the error's own code, path and help. */
export class PourwrightError extends Error {
  /** @param {string | import('../types/index.d.ts').Fault[]} faults the faults, or their JSON text */
  constructor(faults) {
    const all = typeof faults === 'string' ? JSON.parse(faults) : faults
    const [first] = all
    super(all.length === 1 ? first.message : `${first.message} (and ${all.length - 1} more)`)
    this.code = first.code
    this.path = first.path
    this.help = first.help
    this.faults = all
  }

  static {
    this.prototype.name = 'PourwrightError'
  }
}

/** Throws one fault. */
export function refuse(code, path, message, help) {
  throw new PourwrightError([{ code, path, message, help }])
}
