/** Whether to stop the plan that is being made; nothing where nobody asks. */
let question
let failure

/** Asked by the module about every millisecond of planning. No exception may cross it. */
export function stopped() {
  try {
    return Boolean(question?.())
  } catch (error) {
    failure = { error }
    return true
  }
}

/** The result of `call`, during which the module asks `stop`. Throws what `stop` throws. */
export function stoppable(stop, call) {
  const outer = [question, failure]
  ;[question, failure] = [stop, undefined]
  try {
    return call()
  } catch (error) {
    throw failure ? failure.error : error
  } finally {
    ;[question, failure] = outer
  }
}
