// What to add to a pot where something else went in than meant.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { ask } from './core.js'
import { both, off, short } from './show.js'
import { state } from './state.js'

/** Asks what to add; null where nothing went in otherwise. */
export function putRight(wanted) {
  const poured = Object.fromEntries(Object.entries(state.one.poured).filter(([, amount]) => amount.trim()))
  if (!Object.keys(poured).length) return null
  const pot = { ...wanted.whole, ...poured }
  const request = { calculate: 'correct', book: state.book, ...wanted.request, pot }
  return { request, ...ask(request) }
}

const OUTCOMES = {
  right: 'It comes right. Add:',
  nearest: 'The cup is too small to make it right. The nearest that fits; add:',
  foreign: 'It cannot be made right.',
}

/** The answer, in words and weigh list. */
export function answerOf(answer) {
  return html`
    <p class="outcome ${answer.outcome}"><strong>${OUTCOMES[answer.outcome]}</strong></p>
    ${answer.fault ? html`<p>${answer.fault.message} ${answer.fault.help}</p>` : nothing}
    <ul class="weigh">
      ${answer.add.map(
        ({ material, kind, best, others }) =>
          html`<li class="kind-${kind}">
            <span class="material">${material}<small>${kind}</small></span>
            <span class="measure">
              <strong>${best.measure}</strong> <span class="off">${off(best)}</span>
              <small>${others.map((way) => html`<span>or ${way.measure} ${off(way)}</span>`)}</small>
            </span>
          </li>`,
      )}
    </ul>
    ${answer.nothing_of.length ? html`<p>Nothing more of <strong>${answer.nothing_of.join(', ')}</strong>.</p>` : nothing}
    ${
      answer.too_little.length
        ? html`<p>So little lacks of ${answer.too_little.join(', ')} that no tool measures it: leave it.</p>`
        : nothing
    }
    ${
      answer.traces.length
        ? html`<p>
            Little enough to let pass:
            ${answer.traces.map((trace) => `${trace.material} ${short(trace.mass)}`).join(', ')}.
          </p>`
        : nothing
    }
    ${
      answer.outcome === 'foreign'
        ? becomes(answer.becomes)
        : html`<p>
            The pot then holds ${short(answer.mass)}, ${both(answer.volume)}; the cup may hold ${both(answer.cup)}.
            ${
              answer.outcome === 'nearest' && answer.right_mass
                ? html`To be right it would have to hold ${short(answer.right_mass)}, ${both(answer.right_volume)}.`
                : nothing
            }
          </p>`
    }
    ${
      answer.outcome === 'nearest'
        ? html`<p>
            It stays off by:
            ${answer.off
              .filter((one) => off(one))
              .map((one) => `${one.material} ${off(one)}`)
              .join(', ')}.
          </p>`
        : nothing
    }
  `
}

function becomes(list) {
  if (!list.length) return html`<p>Nothing in the book can still be made of it by adding.</p>`
  return html`<p>By adding it could still become:</p>
    <ul>
      ${list.map(
        (one) =>
          html`<li>
            <strong>${one.formulas.join(' + ')}</strong>${one.products.length ? ` (${one.products.join(', ')})` : ''}:
            ${short(one.adds)} more, ${short(one.mass)} in all${one.fits ? '' : ', more than the cup holds'}
          </li>`,
      )}
    </ul>`
}
