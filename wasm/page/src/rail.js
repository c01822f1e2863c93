// The pots at a glance: how far each is, and which are hot, as a ring and in words.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { isDone, progress } from './progress.js'
import { say } from './words.js'

/** The pots as links to their cards; `stepsOf` are the steps by pot, `goTo` shows an item. */
export function rail(plan, stepsOf, goTo) {
  return html`<div class="rail" role="group" aria-label=${say('rail.pots')}>
    ${plan.pots.map((pot) => {
      const steps = stepsOf.get(pot.pot) ?? []
      const done = steps.filter(isDone).length
      const next = steps.find((step) => !isDone(step)) ?? steps.at(-1)
      const hot = isHot(pot, steps)
      const words = say(hot ? 'rail.hotPot' : 'rail.pot', { pot: pot.pot, done, count: steps.length })
      return html`<a
        href="#bench"
        class=${hot ? 'hot' : ''}
        aria-label=${words}
        @click=${(event) => next && goTo(event, next.items[0].id)}
      >
        <svg viewBox="0 0 40 40" aria-hidden="true">
          <circle class="whole" cx="20" cy="20" r="17" />
          <circle class="part" cx="20" cy="20" r="17" pathLength="100" stroke-dasharray="${share(done, steps)} 100" />
          <text x="20" y="26">${pot.pot}</text>
        </svg>
        ${hot ? html`<span>${say('rail.hot')}</span>` : nothing}
      </a>`
    })}
  </div>`
}

const share = (done, steps) => (steps.length ? (100 * done) / steps.length : 0)

/** A pot is taken as hot from its first burst until its last step is done, and if it was hot when the day went on. */
export const isHot = ({ there }, steps) =>
  !steps.every(isDone) &&
  (there?.hot === true ||
    steps.some(({ kind, items }) => kind === 'heat' && items.some((item) => progress(item) === 'done')))
