// Keys besides the large one at the foot: all loads of a step at once, and an amount other than the plan's.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { lookAt } from './one.js'
import { once } from './press.js'
import { progress, toggle } from './progress.js'

/** The keys of the next step. */
export function besides({ step }) {
  if (step.kind === 'shoot') return loads(step)
  if (step.kind !== 'measure' && step.kind !== 'add') return nothing
  return html`<a class="button quiet other" href="#one" @click=${() => lookAt(step)}>Other amount</a>`
}

/** The loads of a step as dots, and the key for those that are left, if they are several. */
function loads({ items }) {
  const left = items.filter((item) => progress(item) !== 'done')
  const all = () => {
    for (const item of left) toggle(item)
  }
  const dots = html`<span
    class="dots"
    role="img"
    aria-label="${items.length - left.length} of ${items.length} loads done"
    >${items.map((item) => (progress(item) === 'done' ? '●' : '○'))}</span
  >`
  if (left.length < 2) return dots
  return html`<div class="loads-left">
    ${dots}
    <button type="button" class="quiet" @click=${once('all loads', all)}>All ${left.length} loads</button>
  </div>`
}
