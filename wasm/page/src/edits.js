// Changes of the book and of the orders, which can be undone and done again, also after a reload.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { spoken } from './faults.js'
import { sayStored } from './library.js'
import { once } from './press.js'
import { change, state, valueAt, withValue } from './state.js'
import { message, say } from './words.js'

/** The changes that are kept, and the characters that they may take together in the store. */
const MOST = { changes: 100, characters: 200_000 }

/** What is typed into one field without a longer pause is one change. */
const PAUSE = 3000

/** A list of changes that is empty. */
export const noEdits = () => ({ done: [], undone: [] })

/**
 * Writes `value` at `path` (a list of keys) of a document, "book" or "orders"; undefined removes what is there. `words` are the
 * message of what the change was; if they are omitted, the path says it.
 */
export function edit(of, path, value, words = null) {
  // What is removed has to come back to its place among the others.
  const at = value === undefined ? path.slice(0, -1) : path
  const before = valueAt(state[of], at)
  const document_ = withValue(state[of], path, value)
  const after = valueAt(document_, at)
  const own = { of, path: at, before, after, words: words ?? placed(of, path, value), at: Date.now() }
  const { done } = state.edits
  const last = done.at(-1)
  const goesOn =
    last?.path &&
    value !== undefined &&
    words === null &&
    isAt(last, own) &&
    own.at - last.at < PAUSE &&
    !state.edits.undone.length
  const changes = goesOn ? [...done.slice(0, -1), { ...own, before: last.before }] : [...done, own]
  change({ [of]: document_, edits: { done: shortened(changes), undone: [] } })
}

/**
 * Several changes as one, each `{ of, path, value }`, or `{ of, path, from, to }` for another name of a key. What they change next to
 * book and orders (what a view shows) is undone with them.
 */
export function editAll(changes, words) {
  const made = {}
  const parts = changes.map((one) => {
    const document_ = made[one.of] ?? state[one.of]
    if ('from' in one) {
      made[one.of] = withKey(document_, one.path, one.from, one.to)
      return one
    }
    const { of, value } = one
    const path = value === undefined ? one.path.slice(0, -1) : one.path
    made[of] = withValue(document_, one.path, value)
    return { of, path, before: valueAt(document_, path), after: valueAt(made[of], path) }
  })
  const own = { parts, words, at: Date.now() }
  change({ ...made, edits: { done: shortened([...state.edits.done, own]), undone: [] } })
}

/** A copy of `document_` in which the object at `path` has the key `to` in place of `from`, in the same place. */
function withKey(document_, path, from, to) {
  const entries = Object.entries(valueAt(document_, path)).map(([key, value]) => [key === from ? to : key, value])
  return withValue(document_, path, Object.fromEntries(entries))
}

/** Writes a value into the book. */
export const editBook = (path, value, words) => edit('book', path, value, words)

/** Writes a value into the order list. */
export const editOrders = (path, value, words) => edit('orders', path, value, words)

const isAt = (one, other) => one.of === other.of && one.path.join('\n') === other.path.join('\n')

/** What a change was, by its place. */
function placed(of, path, value) {
  const isNew = valueAt(state[of], path) === undefined
  const own = message(value === undefined ? 'edits.removed' : isNew ? 'edits.added' : 'edits.changed')
  return { ...own, place: { of, path } }
}

/** What a change was, in the language that is spoken: "Changed: lines › no. 2 › pieces". */
function wordsOf({ words }) {
  const { key, place } = words
  if (!place) return sayStored(words)
  const there = place.path.map((key) => spoken(String(key))).join(' › ')
  return say(key, { there: there || say(place.of === 'book' ? 'edits.book' : 'edits.orders') })
}

/** The last changes, as many as are kept. */
function shortened(changes) {
  let characters = 0
  const kept = []
  for (const one of changes.slice(-MOST.changes).reverse()) {
    characters += JSON.stringify(one).length
    // The last change can always be undone.
    if (characters > MOST.characters && kept.length) break
    kept.unshift(one)
  }
  return kept
}

/** The parts of a change; most have one. */
const partsOf = (one) => one.parts ?? [one]

/** Whether the documents still have what a part of a change `side`, "before" or "after", has. What a view shows may be another. */
function isThere(part, side) {
  const there = valueAt(state[part.of], part.path)
  if (part.of !== 'book' && part.of !== 'orders') return true
  if (!('from' in part)) return JSON.stringify(there) === JSON.stringify(part[side])
  const [now, other] = side === 'after' ? [part.to, part.from] : [part.from, part.to]
  return Object.hasOwn(there ?? {}, now) && !Object.hasOwn(there, other)
}

/** The last change, if nothing else has changed the same places since. */
function last(changes, side) {
  const one = changes.at(-1)
  return one && partsOf(one).every((part) => isThere(part, side)) ? one : null
}

/** The documents with the parts of a change as they were before it, or are after it. */
function turned(parts, side) {
  const made = {}
  for (const part of parts) {
    const document_ = made[part.of] ?? state[part.of]
    const [from, to] = side === 'after' ? [part.from, part.to] : [part.to, part.from]
    made[part.of] =
      'from' in part ? withKey(document_, part.path, from, to) : withValue(document_, part.path, part[side])
  }
  return made
}

/** Undoes the last change. */
export function undoEdit() {
  const { done, undone } = state.edits
  const one = last(done, 'after')
  if (!one) return
  change({
    ...turned(partsOf(one).toReversed(), 'before'),
    edits: { done: done.slice(0, -1), undone: [...undone, one] },
  })
}

/** Does the change again that was undone last. */
export function redoEdit() {
  const { done, undone } = state.edits
  const one = last(undone, 'before')
  if (!one) return
  change({
    ...turned(partsOf(one), 'after'),
    edits: { done: [...done, one], undone: undone.slice(0, -1) },
  })
}

/** The last change with the keys that undo it and do it again; nothing where there is none. */
export function editsBar() {
  const [back, again] = [last(state.edits.done, 'after'), last(state.edits.undone, 'before')]
  if (!back && !again) return nothing
  const key = (words, one, press) => {
    const name = one ? say('edits.key', { key: words, what: wordsOf(one) }) : words
    // Words of the library among others are marked, which an attribute cannot do.
    const isText = typeof name === 'string'
    return html`<button
      type="button"
      class="quiet"
      ?disabled=${!one}
      aria-label=${isText ? name : nothing}
      @click=${once(words, press)}
    >
      ${isText ? words : html`<span aria-hidden="true">${words}</span><span class="out-of-sight">${name}</span>`}
    </button>`
  }
  return html`<div class="next edits">
    <p class="say">${back ? wordsOf(back) : say('edits.undone', { what: wordsOf(again) })}</p>
    <span class="both">${key(say('page.undo'), back, undoEdit)} ${key(say('edits.redo'), again, redoEdit)}</span>
  </div>`
}

/** The keys of the keyboard for it, outside of fields, which have their own. */
export function editByKey(event) {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.target.closest?.('input, textarea, select')) return
  const key = event.key.toLowerCase()
  const press = { z: event.shiftKey ? redoEdit : undoEdit, y: redoEdit }[key]
  if (!press) return
  event.preventDefault()
  press()
}
