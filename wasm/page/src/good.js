// Good pieces, counted at the bench while they are shot.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { change, state } from './state.js'
import { say } from './words.js'

/** The good pieces of a shape as counted; undefined if they are not. */
const countOf = ({ counted }, shape) => state.good[counted]?.[shape ?? '']

function set(step, shape, count) {
  change({ good: { ...state.good, [step.counted]: { ...state.good[step.counted], [shape ?? '']: count } } })
}

/** The counts of a step that shoots, for each shape that is made. */
export function goodPieces(step, draw) {
  const made = draw.pieces.filter(({ made }) => made)
  if (!made.length) return nothing
  return html`<div class="good">${made.map((pieces) => counter(step, draw, pieces))}</div>`
}

function counter(step, { mold }, { shape, made }) {
  const count = countOf(step, shape)
  const of = { what: shape ? `${mold}, ${shape}` : mold, made }
  // The first press counts from all that are made.
  const less = () => set(step, shape, count === undefined ? made - 1 : Math.max(0, count - 1))
  const more = () => set(step, shape, count === undefined ? made : Math.min(made, count + 1))
  return html`<div class="count" role="group" aria-label=${say('step.goodOf', of)}>
    <button type="button" class="quiet less" aria-label=${say('step.oneBad')} ?disabled=${count === 0} @click=${less}>
      −
    </button>
    <output aria-live="polite"
      ><strong>${count ?? '?'}</strong>
      ${say('step.ofGood', { made })}${shape ? html` <small>${shape}</small>` : nothing}</output
    >
    <button
      type="button"
      class="quiet more"
      aria-label=${say('step.oneGood')}
      ?disabled=${count === made}
      @click=${more}
    >
      +
    </button>
  </div>`
}
