// Keys at the bench that lead to the day's events.
import { html } from '../vendor/lit-html/lit-html.js'
import { change, state } from './state.js'
import { say } from './words.js'

/** The keys for more pieces and for the record. */
export const dayKeys = () =>
  ['more', 'record'].map(
    (part) =>
      html`<a class="button quiet" href="#day" @click=${() => change({ day: { ...state.day, part } })}>
        ${say(`day.${part}`)}
      </a>`,
  )
