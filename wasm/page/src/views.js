// The views, and the way to them: a row of links. On a phone the row has what is used all day, and a key that unfolds the others.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { change } from './state.js'
import { say } from './words.js'

/** The views in the order of their keys; the first are used all day. */
export const VIEWS = ['orders', 'bench', 'day', 'one', 'salt', 'color', 'book']
const DAILY = 3

/** The view that the address names. */
export const view = () => (VIEWS.includes(location.hash.slice(1)) ? location.hash.slice(1) : 'bench')

export const titleOf = (view) => say(`page.${view}`)

let isUnfolded = false

/** Folds the other views: one was chosen. */
export const foldViews = () => {
  isUnfolded = false
}

const turn = () => {
  isUnfolded = !isUnfolded
  change()
}

/** The links; `counts` are the faults by view. */
export function viewLinks(counts) {
  const shown = view()
  const [daily, others] = [VIEWS.slice(0, DAILY), VIEWS.slice(DAILY)]
  const link = (name) =>
    html`<a href="#${name}" aria-current=${name === shown ? 'page' : nothing}
      >${titleOf(name)}${faultCount(counts[name])}</a
    >`
  const isOther = others.includes(shown)
  const faults = others.reduce((sum, name) => sum + (counts[name] ?? 0), 0)
  return html`<nav class="views ${isUnfolded ? 'unfolded' : ''}" aria-label=${say('page.views')}>
    ${daily.map(link)}
    <button
      type="button"
      class="quiet others ${isOther ? 'is-shown' : ''}"
      aria-expanded=${isUnfolded ? 'true' : 'false'}
      @click=${turn}
    >
      ${isOther ? html`${titleOf(shown)}<span class="out-of-sight">, ${say('page.others')}</span>` : say('page.others')}
      <span aria-hidden="true">${isUnfolded ? '▴' : '▾'}</span>${isUnfolded ? nothing : faultCount(faults)}
    </button>
    <span class="other-views">${others.map(link)}</span>
  </nav>`
}

const faultCount = (count) => (count ? html` <span class="fault-count">${count}</span>` : nothing)
