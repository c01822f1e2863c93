/// <reference lib="esnext.disposable" />
import type { BookDocument, OrdersDocument, Plan, Requests, Responses } from './documents.js'

export type * from './documents.js'
export * from './scalar.js'
export { default } from './scalar.js'

/** The name of a calculation. */
export type Calculation = keyof Requests

/**
 * Does the calculation of a request; `calculate` names it.
 * @throws {PourwrightError} with all faults of the request
 */
export function calculate<C extends Calculation>(request: Requests[C] & { calculate: C }): Responses[C]
/** The same from JSON text, in which duplicate keys are found too. */
export function calculate(request: string): Responses[Calculation]

/** A shop's book, read once for many plans. It uses memory until it is freed. */
export class Book {
  /**
   * Reads a book: the document, or its JSON text, in which duplicate keys are found too.
   * @throws {PourwrightError} with all faults of the book
   */
  constructor(book: BookDocument | string)
  /**
   * The plan of a day, as the request `plan` gives it.
   * @throws {PourwrightError} with all faults of the orders, or of the plan
   */
  plan(orders: OrdersDocument | string): Plan
  /**
   * The bench sheet of a day: text, at most 80 columns wide.
   * @throws {PourwrightError} with all faults of the orders, or of the plan
   */
  sheet(orders: OrdersDocument | string): string
  /**
   * The notes to a day's plan: other ways to measure, uncertainties, sink rates, costs, why there are not fewer pots, what was
   * assumed. Text, at most 80 columns wide.
   * @throws {PourwrightError} with all faults of the orders, or of the plan
   */
  notes(orders: OrdersDocument | string): string
  /** Frees the memory; the book cannot be used any more. */
  free(): void
  [Symbol.dispose](): void
}
