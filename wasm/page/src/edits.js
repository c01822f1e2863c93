// Changes of the book and of the orders, which can be undone and done again, also after a reload.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { spoken } from './faults.js'
import { once } from './press.js'
import { change, state, valueAt, withValue } from './state.js'

/** The changes that are kept, and the characters that they may take together in the store. */
const MOST = { changes: 100, characters: 200_000 }

/** What is typed into one field without a longer pause is one change. */
const PAUSE = 3000

/** A list of changes that is empty. */
export const noEdits = () => ({ done: [], undone: [] })

/**
 * Writes `value` at `path` (a list of keys) of a document, "book" or "orders"; undefined removes what is there. `words` say what
 * the change was; if they are omitted, the path does.
 */
export function edit(of, path, value, words = null) {
  // What is removed has to come back to its place among the others.
  const at = value === undefined ? path.slice(0, -1) : path
  const before = valueAt(state[of], at)
  const document_ = withValue(state[of], path, value)
  const after = valueAt(document_, at)
  const own = { of, path: at, before, after, words: words ?? wordsOf(of, path, value), at: Date.now() }
  const { done } = state.edits
  const last = done.at(-1)
  const goesOn =
    last &&
    value !== undefined &&
    words === null &&
    isAt(last, own) &&
    own.at - last.at < PAUSE &&
    !state.edits.undone.length
  const changes = goesOn ? [...done.slice(0, -1), { ...own, before: last.before }] : [...done, own]
  change({ [of]: document_, edits: { done: shortened(changes), undone: [] } })
}

/** Writes a value into the book. */
export const editBook = (path, value, words) => edit('book', path, value, words)

/** Writes a value into the order list. */
export const editOrders = (path, value, words) => edit('orders', path, value, words)

const isAt = (one, other) => one.of === other.of && one.path.join('\n') === other.path.join('\n')

/** What a change was, by its place: "Changed: lines › no. 2 › pieces". */
function wordsOf(of, path, value) {
  const there = path.map((key) => spoken(String(key))).join(' › ') || (of === 'book' ? 'the book' : 'the orders')
  if (value === undefined) return `Removed: ${there}.`
  return `${valueAt(state[of], path) === undefined ? 'Added' : 'Changed'}: ${there}.`
}

/** The last changes, as many as are kept. */
function shortened(changes) {
  let characters = 0
  const kept = []
  for (const one of changes.slice(-MOST.changes).reverse()) {
    characters += JSON.stringify(one).length
    if (characters > MOST.characters) break
    kept.unshift(one)
  }
  return kept
}

/** The last change, if nothing else has changed the same place since. */
function last(changes, side) {
  const one = changes.at(-1)
  return one && JSON.stringify(valueAt(state[one.of], one.path)) === JSON.stringify(one[side]) ? one : null
}

/** Undoes the last change. */
export function undoEdit() {
  const { done, undone } = state.edits
  const one = last(done, 'after')
  if (!one) return
  change({
    [one.of]: withValue(state[one.of], one.path, one.before),
    edits: { done: done.slice(0, -1), undone: [...undone, one] },
  })
}

/** Does the change again that was undone last. */
export function redoEdit() {
  const { done, undone } = state.edits
  const one = last(undone, 'before')
  if (!one) return
  change({
    [one.of]: withValue(state[one.of], one.path, one.after),
    edits: { done: [...done, one], undone: undone.slice(0, -1) },
  })
}

/** The last change with the keys that undo it and do it again; nothing where there is none. */
export function editsBar() {
  const [back, again] = [last(state.edits.done, 'after'), last(state.edits.undone, 'before')]
  if (!back && !again) return nothing
  const key = (words, one, press) =>
    html`<button
      type="button"
      class="quiet"
      ?disabled=${!one}
      aria-label=${one ? `${words}: ${one.words}` : words}
      @click=${once(words, press)}
    >
      ${words}
    </button>`
  return html`<div class="next edits">
    <p class="say">${back ? back.words : `Undone: ${again.words}`}</p>
    ${key('Undo', back, undoEdit)} ${key('Redo', again, redoEdit)}
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
