// What to add to a pot where something else went in than meant.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { ask } from './core.js'
import { both, off, short } from './show.js'
import { state } from './state.js'

/** Asks what to add; null where nothing went in otherwise. */
export function putRight(wanted) {
  const { poured: written, cup, trace } = state.one
  const poured = Object.fromEntries(Object.entries(written).filter(([, amount]) => amount.trim()))
  if (!Object.keys(poured).length) return null
  const pot = { ...wanted.whole, ...poured }
  const chosen = { ...(cup && { cup }), ...(trace && { trace }) }
  const request = { calculate: 'correct', book: state.book, ...wanted.request, ...chosen, pot }
  const { answer, faults } = ask(request)
  return { request, answer, faults: faults.map(helped) }
}

// Help in the words of the page, where the library's speaks of a request.
const HELP = {
  'pot-foreign-material':
    'Nothing can be taken out: make of it what it could still become, keep it as left-over, or let it pass where it is little enough.',
  'correction-over-full': 'Say above which cup it is in; a larger one must stand on the shelf, in the book.',
  'pot-without-cup': 'Put a cup on the shelf, in the book.',
}

const helped = (fault) => ({ ...fault, help: HELP[fault.code] ?? fault.help })

const OUTCOMES = {
  right: 'It comes right. Add:',
  nearest: 'The cup is too small to make it right. The nearest that fits; add:',
  foreign: 'It cannot be made right.',
}

/** The answer, in words and weigh list; `letPass` is given the share of the pot up to which a stranger is let pass. */
export function answerOf(answer, letPass) {
  const fault = answer.fault && helped(answer.fault)
  return html`
    <p class="outcome ${answer.outcome}"><strong>${OUTCOMES[answer.outcome]}</strong></p>
    ${fault ? html`<p>${fault.message} ${fault.help}</p>` : nothing}
    ${answer.outcome === 'foreign' ? pass(answer, letPass) : nothing}
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
            <button type="button" class="quiet" @click=${() => letPass('')}>It is not</button>
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

/** A key to let pass what does not belong, with the share that it is of the pot. */
function pass({ foreign, mass }, letPass) {
  const most = Math.max(...foreign.map((one) => one.mass.value / mass.value))
  // Up to the next tenth of a per cent, so that it is not refused for the rounding.
  const trace = `${Math.ceil(most * 1000) / 10} %`
  return html`<button type="button" class="quiet" @click=${() => letPass(trace)}>
    Let it pass: ${trace} of the pot at most
  </button>`
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
