// For programmers: the requests that the page made and the library's answers.
import { html } from '../vendor/lit-html/lit-html.js'
import { inEnglish } from './library.js'
import { say } from './words.js'

const text = (value) => JSON.stringify(value, (key, below) => (key === 'book' ? say('asked.book') : below), 2)

/** Requests with their answers, in a closed section; those without a book are asked of the plan. */
export function asked(...pairs) {
  return html`<details class="asked">
    <summary>${say('asked.title')}</summary>
    ${pairs.map(
      ([request, answer]) =>
        html`<div
          class="wide"
          tabindex="0"
          role="region"
          aria-label=${say('asked.region', { name: request.calculate ?? request.pot })}
        >
          <pre lang=${inEnglish()}>
${`${request.pot ? 'plan.request' : 'calculate'}(${text(request)})\n\n→ ${text(answer)}`}</pre>
        </div>`,
    )}
  </details>`
}
