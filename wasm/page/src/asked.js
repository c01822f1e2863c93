// For whoever builds the library into a program of their own: what the page asked, and what it was told.
import { html } from '../vendor/lit-html/lit-html.js'

const text = (value) => JSON.stringify(value, (key, below) => (key === 'book' ? '…the book…' : below), 2)

/** Requests with their answers, folded away. */
export function asked(...pairs) {
  return html`<details class="asked">
    <summary>For programs: what the page asked, and was told</summary>
    ${pairs.map(
      ([request, answer]) =>
        html`<div class="wide" tabindex="0" role="region" aria-label="Request and answer: ${request.calculate}">
          <pre>${`calculate(${text(request)})\n\n→ ${text(answer)}`}</pre>
        </div>`,
    )}
  </details>`
}
