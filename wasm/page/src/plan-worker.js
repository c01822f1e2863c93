// Plans a day away from the page, which stays free meanwhile. One message is one day: it is answered, or the worker is ended.
import init, { Book, Plan, PourwrightError, calculate, rest } from '../pourwright/src/parts-web.js'
import { sorted } from './core.js'
import { withNothing } from './nothing.js'

/** The book of the last day: most changes are to the orders. */
let held = { text: null, book: null }

/** The plan of the last day, open for requests. */
let last = { key: null, open: null }

async function planned({ modules, book, orders, base, request }) {
  await init(modules.first)
  if (modules.rest) await rest(modules.rest)
  let document = base
  const key = JSON.stringify([book, orders])
  if (!base || last.key !== key) {
    last.open?.free()
    last = { key: null, open: null }
    const { open, ...faults } = base ? { open: Plan.from(base) } : made(book, orders)
    if (!open) return faults
    last = { key, open }
    document ??= open.document()
  }
  if (!request) return { plan: document, base: document }
  const { answer, ...faults } = sorted(asked(request, document))
  if (!answer) return { base: document, ...faults }
  const { plan, ...gone } = answer
  return { base: document, plan: plan ?? document, gone, ...faults }
}

function asked(what, plan) {
  const request = withNothing(plan, what)
  try {
    return { answer: request.book ? calculate({ ...request, plan }) : last.open.request(request) }
  } catch (error) {
    return { faults: faultsOf(error) }
  }
}

function made(book, orders) {
  try {
    if (held.text !== book) {
      held.book?.free()
      held = { text: null, book: null }
      held = { text: book, book: new Book(book) }
    }
  } catch (error) {
    return { bookFaults: faultsOf(error) }
  }
  try {
    return { open: held.book.open(orders) }
  } catch (error) {
    return { ordersFaults: faultsOf(error) }
  }
}

function faultsOf(error) {
  if (error instanceof PourwrightError) return error.faults
  throw error
}

addEventListener('message', async ({ data }) => {
  try {
    postMessage({ id: data.id, ...(await planned(data)) })
  } catch (failure) {
    // A trap: this instance of the module is not used again.
    postMessage({ id: data.id, failure: failure.message })
  }
})
