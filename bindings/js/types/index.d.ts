/// <reference lib="esnext.disposable" />
import type { BookDocument, OrdersDocument, PlanDocument, Requests, Responses } from './documents.js'

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

/**
 * Requests as JSON Lines: a text; texts, one request each; or bytes in UTF-8, such as the body of a `Response` or a file stream of
 * Node, which are split at line feeds. A line feed at the end begins no line.
 */
export type Lines =
  | string
  | Iterable<string | Uint8Array>
  | AsyncIterable<string | Uint8Array>
  | {
      /** Of a `ReadableStream` of bytes or of pieces of text. It is canceled if not all answers are taken. */
      getReader(): { read(): Promise<{ done: boolean; value?: string | Uint8Array }>; cancel(): Promise<void> }
    }

/**
 * Answers many requests, one a line: gives one answer a line, in their order, each as it comes: `{"result": ...}` or
 * `{"faults": [...]}` as JSON text, without a line feed. A line that is not a request is answered by its faults in its place. Only
 * one line is kept, and nothing is read before the answer is asked for.
 *
 * @example
 * for await (const answer of answerLines(response.body)) show(JSON.parse(answer))
 *
 * @throws {PourwrightError} because the lines are none (`wrong-type`). What the source throws, the loop throws.
 */
export function answerLines(lines: Lines): AsyncGenerator<string, void, undefined>

/** What a plan may take: `{ pots: 200, thousand_steps: 1000 }`. A plan that takes more is refused (`budget-pots`, `budget-work`). */
export type PlanBudget = NonNullable<Requests['plan']['budget']>

/**
 * Called about every millisecond of planning; the plan ends with `plan-stopped` when it returns true, and with what it throws. A
 * short plan is finished without a call. While the module plans, its thread does nothing else: no timer, no signal and no click
 * arrives. Look at the clock, `() => performance.now() > late`, or from a worker at shared memory,
 * `() => Atomics.load(flags, 0) === 1`. It must not free the book.
 */
export type Stop = () => boolean

/** A shop's book, read once for many plans and requests. It uses memory until it is freed. */
export class Book {
  /**
   * Reads a book: the document, or its JSON text, in which duplicate keys are found too.
   * @throws {PourwrightError} with all faults of the book
   */
  constructor(book: BookDocument | string)
  /**
   * Does the calculation of a request, which leaves `book` out.
   * @throws {PourwrightError} with all faults of the request
   */
  request<C extends Calculation>(request: Requests[C] & { calculate: C; book?: undefined }): Responses[C]
  /** The same from JSON text, in which duplicate keys are found too. */
  request(request: string): Responses[Calculation]
  /**
   * Answers many requests, one a line, which leave `book` out: as the function `answerLines`.
   * @throws {PourwrightError} because the lines are none; the loop throws `book-freed` after `free()`
   */
  answerLines(lines: Lines): AsyncGenerator<string, void, undefined>
  /**
   * The plan of a day, open for requests. Free it.
   * @throws {PourwrightError} with all faults of the budget, the orders or the plan
   */
  open(orders: OrdersDocument | string, budget?: PlanBudget, stop?: Stop): Plan
  /**
   * The plan of a day as data, as the request `plan` gives it.
   * @throws {PourwrightError} with all faults of the budget, the orders or the plan
   */
  plan(orders: OrdersDocument | string, budget?: PlanBudget, stop?: Stop): PlanDocument
  /**
   * The bench sheet of a day: text, at most 80 columns wide.
   * @throws {PourwrightError} with all faults of the budget, the orders or the plan
   */
  sheet(orders: OrdersDocument | string, budget?: PlanBudget, stop?: Stop): string
  /**
   * The notes to a day's plan: other ways to measure, uncertainties, sink rates, costs, why there are not fewer pots, what was
   * assumed. Text, at most 80 columns wide.
   * @throws {PourwrightError} with all faults of the budget, the orders or the plan
   */
  notes(orders: OrdersDocument | string, budget?: PlanBudget, stop?: Stop): string
  /** Frees the memory; the book cannot be used any more. Its plans can. */
  free(): void
  [Symbol.dispose](): void
}

/** A day's plan with the book that it was made from, open for requests. It uses memory until it is freed. */
export class Plan {
  private constructor()
  /**
   * Opens a plan again: its document, or the JSON text of that.
   * @throws {PourwrightError} with all faults of the document, or because it has no `made_from`
   */
  static from(document: PlanDocument | string): Plan
  /**
   * Does the calculation of a request, which leaves `book` and `plan` out.
   * @throws {PourwrightError} with all faults of the request
   */
  request<C extends Calculation>(
    request: Requests[C] & { calculate: C; book?: undefined; plan?: undefined },
  ): Responses[C]
  /** The same from JSON text, in which duplicate keys are found too. */
  request(request: string): Responses[Calculation]
  /**
   * Answers many requests, one a line, which leave `book` and `plan` out: as the function `answerLines`.
   * @throws {PourwrightError} because the lines are none; the loop throws `plan-freed` after `free()`
   */
  answerLines(lines: Lines): AsyncGenerator<string, void, undefined>
  /** The plan as data, complete: store it as JSON, and open it again with `Plan.from`. */
  document(): PlanDocument
  /** The bench sheet: text, at most 80 columns wide. */
  sheet(): string
  /** The notes to it: text, at most 80 columns wide. */
  notes(): string
  /** Frees the memory; the plan cannot be used any more. */
  free(): void
  [Symbol.dispose](): void
}
