// The letter of a pot, as on its tag.
import { html } from '../vendor/lit-html/lit-html.js'

export const letter = (pot) => html`<span class="letter" data-pot=${pot}>${pot}</span>`
