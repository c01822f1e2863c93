// Plans a day away from the page, which stays free meanwhile. One message is one day: it is answered, or the worker is ended.
import init, { Book, PourwrightError } from '../pourwright/src/web.js'

/** The book of the last day: most changes are to the orders. */
let held = { text: null, book: null }

async function planned({ module, book, orders }) {
  await init(module)
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
    return { plan: held.book.plan(orders) }
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
