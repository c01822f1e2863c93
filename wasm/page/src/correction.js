// What to add to a pot into which something else went.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { ask } from './core.js'
import { both, off, short } from './show.js'
import { state } from './state.js'

/** Asks what to add; null if everything went in as planned. */
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

// Help in the words of the page, where the library's words are about a request.
const HELP = {
  'pot-foreign-material':
    'Nothing can be taken out: make it into one of the formulas below, keep it as a leftover, or ignore it if it is little enough.',
  'correction-over-full': 'Choose above which cup it is in. A larger cup must be on the shelf, in the book.',
  'pot-without-cup': 'Put a cup on the shelf, in the book.',
}

const helped = (fault) => ({ ...fault, help: HELP[fault.code] ?? fault.help })

const OUTCOMES = {
  right: 'It can be fixed. Add:',
  nearest: 'The cup is too small to fix it fully. For the nearest that fits, add:',
  foreign: 'It cannot be fixed.',
}

/** The answer in words, with a weigh list; `letPass` gets the share of the pot up to which a material is ignored. */
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
            <span class="amount">
              <strong>${best.measure}</strong> <span class="off">${off(best)}</span>
              <small>${others.map((way) => html`<span>or ${way.measure} ${off(way)}</span>`)}</small>
            </span>
          </li>`,
      )}
    </ul>
    ${answer.nothing_of.length ? html`<p>Nothing more of <strong>${answer.nothing_of.join(', ')}</strong>.</p>` : nothing}
    ${
      answer.too_little.length
        ? html`<p>${answer.too_little.join(', ')}: too little is missing to measure it. Leave it.</p>`
        : nothing
    }
    ${
      answer.traces.length
        ? html`<p>
            Little enough to ignore:
            ${answer.traces.map((trace) => `${trace.material} ${short(trace.mass)}`).join(', ')}.
            <button type="button" class="quiet" @click=${() => letPass('')}>Do not ignore it</button>
          </p>`
        : nothing
    }
    ${
      answer.outcome === 'foreign'
        ? becomes(answer.becomes)
        : html`<p>
            The pot then holds ${short(answer.mass)}, ${both(answer.volume)}; the cup holds at most ${both(answer.cup)}.
            ${
              answer.outcome === 'nearest' && answer.right_mass
                ? html`Fully fixed it would hold ${short(answer.right_mass)}, ${both(answer.right_volume)}.`
                : nothing
            }
          </p>`
    }
    ${
      answer.outcome === 'nearest'
        ? html`<p>
            Still off:
            ${answer.off
              .filter((one) => off(one))
              .map((one) => `${one.material} ${off(one)}`)
              .join(', ')}.
          </p>`
        : nothing
    }
  `
}

/** A button to ignore what does not belong, with its share of the pot. */
function pass({ foreign, mass }, letPass) {
  const largest = Math.max(...foreign.map((one) => one.mass.value / mass.value))
  // Rounded up to a tenth of a per cent, so that rounding does not refuse it.
  const trace = `${Math.ceil(largest * 1000) / 10} %`
  return html`<button type="button" class="quiet" @click=${() => letPass(trace)}>
    Ignore it: at most ${trace} of the pot
  </button>`
}

function becomes(list) {
  if (!list.length) return html`<p>No formula of the book can be made of it by adding.</p>`
  return html`<p>By adding, it can become:</p>
    <ul>
      ${list.map(
        (one) =>
          html`<li>
            <strong>${one.formulas.join(' + ')}</strong>${one.products.length ? ` (${one.products.join(', ')})` : ''}:
            add ${short(one.adds)}, total ${short(one.mass)}${one.fits ? '' : ', more than the cup holds'}
          </li>`,
      )}
    </ul>`
}
