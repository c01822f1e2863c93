// Replies of the library that are drawn again and again: a request is asked once for each book.
import { ask } from './core.js'

/** The replies that are held for a book. */
const MOST = 300

const held = new WeakMap()
const NO_BOOK = {}

/** The library's reply to `request` about `book`: `{ answer, faults }`. */
export function reply(request, book = null) {
  const of = book ?? NO_BOOK
  if (!held.has(of)) held.set(of, new Map())
  const replies = held.get(of)
  const key = JSON.stringify(request)
  if (!replies.has(key)) {
    if (replies.size >= MOST) replies.clear()
    replies.set(key, ask(book ? { ...request, book } : request))
  }
  return replies.get(key)
}

const variants = new WeakMap()

/** A variant of `book`, made once for each `key`. */
export function variant(book, key, make) {
  if (!variants.has(book)) variants.set(book, new Map())
  const own = variants.get(book)
  if (!own.has(key)) {
    if (own.size >= MOST) own.clear()
    own.set(key, make(book))
  }
  return own.get(key)
}
