import { refuse } from './error.js'
import { instance } from './whole-module.js'
import { jsonText } from './json.js'

/** Does the calculation of a request: an object, or its JSON text. */
export function calculate(request) {
  const { calculate } = instance()
  return JSON.parse(calculate(jsonText(request)))
}

/** A shop's book, read once for many plans. */
export class Book {
  #book

  constructor(book) {
    const { Book } = instance()
    this.#book = new Book(jsonText(book))
  }

  /** The plan of a day. */
  plan(orders) {
    return JSON.parse(this.#held().plan(jsonText(orders)))
  }

  /** The bench sheet of a day, as text. */
  sheet(orders) {
    return this.#held().sheet(jsonText(orders))
  }

  /** The notes to a day's plan, as text. */
  notes(orders) {
    return this.#held().notes(jsonText(orders))
  }

  /** Frees the memory. */
  free() {
    this.#book?.free()
    this.#book = undefined
  }

  #held() {
    return this.#book ?? refuse('book-freed', '', 'The book has been freed.', 'Load it again: `new Book(document)`.')
  }
}

// For engines with `using`.
if (Symbol.dispose) Book.prototype[Symbol.dispose] = Book.prototype.free
