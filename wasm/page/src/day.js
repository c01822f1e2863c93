// The day's events besides the steps of the pots: the record, a trial, more pieces, leftovers, and what the book learned.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { learnPart, offers } from './learn.js'
import { morePart } from './more.js'
import { recordPart } from './record.js'
import { shelfPart } from './shelf.js'
import { change, state } from './state.js'
import { trialPart } from './trial.js'
import { say } from './words.js'

const PARTS = { record: recordPart, trial: trialPart, more: morePart, shelf: shelfPart, learn: learnPart }

/** Shows a part of the view. */
export const showPart = (part) => change({ day: { ...state.day, part } })

/** The view; `made` is what was planned. */
export function dayView(made) {
  const { part } = state.day
  const waiting = { learn: offers().length, shelf: state.day.shelf.length }
  return html`<div class="day">
    <nav class="book-parts day-parts" aria-label=${say('day.parts')}>
      ${Object.keys(PARTS).map(
        (name) =>
          html`<button
            type="button"
            class=${name === part ? '' : 'quiet'}
            aria-current=${name === part ? 'true' : nothing}
            @click=${() => showPart(name)}
          >
            ${say(`day.${name}`)}${waiting[name] ? html` <span class="badge">${waiting[name]}</span>` : nothing}
          </button>`,
      )}
    </nav>
    ${PARTS[part](made)}
  </div>`
}
