import { refuse } from './error.js'
import { checkLoaded, instance } from './whole-module.js'
import { jsonText } from './json.js'
import { answersTo } from './lines.js'
import { stoppable } from './stop.js'

/** Does the calculation of a request: an object, or its JSON text. */
export function calculate(request) {
  return answered(instance().calculate, request)
}

/** The answers to requests, one a line. */
export function answerLines(lines) {
  const { calculate } = instance()
  return answersTo(lines, () => checked(calculate))
}

/** The objects of the module, until they are freed. */
const handles = new WeakMap()

/** What a book and a plan have in common. */
class Open {
  constructor(handle) {
    handles.set(this, handle)
  }

  /** Does the calculation of a request, which leaves out what is open. */
  request(request) {
    const handle = held(this)
    return answered((text) => handle.request(text), request)
  }

  /** The answers to requests, one a line, which leave out what is open. */
  answerLines(lines) {
    held(this)
    return answersTo(lines, () => {
      const handle = held(this)
      return checked((request) => handle.request(request))
    })
  }

  /** Frees the memory. */
  free() {
    handles.get(this)?.free()
    handles.delete(this)
  }
}

// For engines with `using`.
if (Symbol.dispose) Open.prototype[Symbol.dispose] = Open.prototype.free

/** A shop's book, read once for many plans and requests. */
export class Book extends Open {
  constructor(book) {
    const { Book } = instance()
    super(new Book(jsonText(book)))
  }

  /** The plan of a day within a budget, open for requests. */
  open(orders, budget = {}, stop = undefined) {
    if (stop !== undefined && typeof stop !== 'function') {
      refuse('wrong-type', '/stop', 'stop is not a function.', 'Pass a function that returns true to stop the plan.')
    }
    const parameters = [jsonText(orders), jsonText(budget)]
    return new Plan(stoppable(stop, () => held(this).open(...parameters)))
  }

  /** The plan of a day. */
  plan(orders, budget, stop) {
    return once(this.open(orders, budget, stop), (plan) => plan.document())
  }

  /** The bench sheet of a day, as text. */
  sheet(orders, budget, stop) {
    return once(this.open(orders, budget, stop), (plan) => plan.sheet())
  }

  /** The notes to a day's plan, as text. */
  notes(orders, budget, stop) {
    return once(this.open(orders, budget, stop), (plan) => plan.notes())
  }
}

/** A day's plan, with the book that it was made from. */
export class Plan extends Open {
  /** Opens a plan again: its document, or the JSON text of that. */
  static from(document) {
    const { Plan: Handle } = instance()
    return new Plan(new Handle(jsonText(document)))
  }

  /** The plan as data, complete: to be stored, and opened again. */
  document() {
    return JSON.parse(held(this).document())
  }

  /** The bench sheet, as text. */
  sheet() {
    return held(this).sheet()
  }

  /** The notes to it, as text. */
  notes() {
    return held(this).notes()
  }
}

function answered(ask, request) {
  return JSON.parse(checked(ask)(jsonText(request)))
}

/** `ask`, of requests whose calculation is loaded. */
const checked = (ask) => (request) => {
  checkLoaded(request)
  return ask(request)
}

function held(open) {
  const handle = handles.get(open)
  if (handle !== undefined) return handle
  if (open instanceof Plan) {
    refuse('plan-freed', '', 'The plan has been freed.', 'Open it again: `Plan.from(document)`.')
  }
  refuse('book-freed', '', 'The book has been freed.', 'Load it again: `new Book(document)`.')
}

/** What `read` reads from a plan, which is then freed. */
function once(plan, read) {
  try {
    return read(plan)
  } finally {
    plan.free()
  }
}
