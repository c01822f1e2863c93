// Long lists are drawn in parts, so that a page with thousands of entries stays as quick as one with ten. On paper all of
// them are drawn.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { change } from './state.js'
import { say } from './words.js'

/** The order lines that are shown at once. */
export const LINES = 25

/** The first entry that is shown, by the name of the list. */
const firsts = new Map()

/** Up to this number of entries, paper has the whole list; a longer one is printed part by part. */
const ON_PAPER = 500

let onPaper = false
addEventListener('beforeprint', () => {
  onPaper = true
  change()
})
addEventListener('afterprint', () => {
  onPaper = false
  change()
})

/**
 * The part of a list that is shown: `shown`, its place `from`, and `keys` to go on to the other parts; `what` names the
 * entries. A list of at most `size` entries is shown whole.
 */
export function part(name, list, size, what) {
  if (list.length <= size || (onPaper && list.length <= ON_PAPER)) return { shown: list, from: 0, keys: nothing }
  const from = Math.min(firsts.get(name) ?? 0, Math.floor((list.length - 1) / size) * size)
  const to = Math.min(from + size, list.length)
  const go = (place) => {
    firsts.set(name, place)
    change()
  }
  const keys = html`<nav class="parts" aria-label=${say('lists.parts', { what })}>
    <button type="button" class="quiet" ?disabled=${from === 0} @click=${() => go(from - size)}>
      ${say('lists.earlier')}
    </button>
    <button type="button" class="quiet" ?disabled=${to === list.length} @click=${() => go(to)}>
      ${say('lists.later')}
    </button>
    <span>${say('lists.range', { what, from: from + 1, to, all: list.length })}</span>
  </nav>`
  return { shown: list.slice(from, to), from, keys }
}

/** Lets the next drawing show the part with the entry at `place`. */
export function reveal(name, place, size) {
  firsts.set(name, Math.floor(place / size) * size)
}
