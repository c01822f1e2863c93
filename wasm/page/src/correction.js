// The ways to go on with a pot into which something else went.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { cautionsAt } from './cautions.js'
import { said } from './faults.js'
import { ofLibrary } from './library.js'
import { once } from './press.js'
import { both, off, short } from './show.js'
import { state } from './state.js'
import { local, say } from './words.js'

/** Asks how to go on with what was poured; null if everything went in as planned. */
export function waysOf(wanted, { poured, cup, trace, hot } = state.one) {
  const instead = Object.fromEntries(Object.entries(poured).filter(([, amount]) => amount.trim()))
  if (!Object.keys(instead).length) return null
  const chosen = { ...(cup && { cup }), ...(trace && { trace }), ...(hot && { hot: hot === 'hot' }) }
  const request = { calculate: 'correct', ...wanted.request, ...chosen, instead }
  const { answer, faults } = wanted.ask(request)
  return { request, answer, faults: faults.map(helped) }
}

// Help in the words of the page, where the library's words are about a request.
const HELP = {
  'pot-foreign-material': 'correction.helpForeign',
  'correction-over-full': 'correction.helpOverFull',
  'pot-without-cup': 'correction.helpNoCup',
  'pot-empty': 'correction.helpEmpty',
}

/** Faults of the cup are shown at its field, even while none is chosen. */
const OF_CUP = ['correction-over-full', 'pot-without-cup']

const helped = (fault) => ({
  ...fault,
  path: OF_CUP.includes(fault.code) ? '/cup' : fault.path,
  ...(HELP[fault.code] && { help: say(HELP[fault.code]), ownHelp: true }),
})

const TITLES = {
  'as-it-is': 'correction.asItIs',
  within: 'correction.within',
  exact: 'correction.exact',
  nearest: 'correction.nearest',
  keep: 'correction.keep',
}

/** The title of a way. */
const titleOf = ({ way }) => say(TITLES[way])

function outcome({ ways }) {
  const has = (way) => ways.some((one) => one.way === way)
  if (has('as-it-is')) return ['right', say('correction.allWithin')]
  if (has('within') || has('exact')) return ['right', say('correction.can')]
  if (has('nearest')) return ['nearest', say('correction.notFully')]
  return ['foreign', say('correction.cannot')]
}

/**
 * The answer as cards, one for each way; `meant` are the formulas that it should be, `letPass` gets the share of the pot up to
 * which a material is ignored, and `take`, if there is one, the way that is taken.
 */
export function answerOf(answer, meant, letPass, take) {
  const [kind, words] = outcome(answer)
  const fault = answer.fault && helped(answer.fault)
  const reasons = answer.not_offered.map(({ message }) => html`<p class="not-offered">${ofLibrary(message)}</p>`)
  return html`
    <p class="outcome ${kind}"><strong>${words}</strong></p>
    ${cautionsAt(answer)} ${fault ? html`<p>${said(fault, 'message')} ${said(fault, 'help')}</p>` : nothing}
    ${answer.foreign.length ? pass(answer, letPass) : nothing}
    ${
      answer.traces.length
        ? html`<p>
            ${say('correction.traces', {
              traces: answer.traces.map((trace) => `${trace.material} ${short(trace.mass)}`).join(', '),
            })}
            <button type="button" class="quiet" @click=${() => letPass('')}>${say('correction.dontIgnore')}</button>
          </p>`
        : nothing
    }
    ${kind === 'right' ? nothing : reasons}
    <ol class="ways">
      ${answer.ways.map((way) => html`<li>${card(way, answer)} ${take ? taking(way, take) : nothing}</li>`)}
    </ol>
    ${kind === 'right' ? reasons : becomes(answer.becomes, meant)}
  `
}

/** The key that takes a way: what it adds becomes steps of the pot. */
const taking = (way, take) =>
  html`<div class="buttons">
    <button
      type="button"
      aria-label=${say('correction.doThisWay', { way: titleOf(way) })}
      @click=${once(`take ${way.way}`, () => take(way))}
    >
      ${say(way.add.length ? 'correction.doThis' : 'correction.goOn')}
    </button>
  </div>`

function card(way, answer) {
  return html`<h3>${titleOf(way)}</h3>
    ${
      way.add.length
        ? html`<ul class="weigh">
            ${way.add.map(addition)}
          </ul>`
        : html`<p>${say('correction.addNothing')}</p>`
    }
    ${
      way.too_little.length
        ? html`<p>${say('correction.tooLittle', { materials: way.too_little.join(', ') })}</p>`
        : nothing
    }
    ${way.cost ? html`<p>${say('correction.costs', { cost: html`<strong>${local(way.cost.text)}</strong>` })}</p>` : nothing}
    ${way.way === 'keep' ? doses(answer.kept) : staysOff(way, answer)} ${fullness(way, answer)}
    ${way.details.map((detail) => html`<p class="hint">${ofLibrary(detail)}</p>`)}`
}

/** A deviation that is not broken at the end of a line. */
const deviation = (one) => html`<span class="quantity">${off(one)}</span>`

function addition({ material, kind, best, others }) {
  return html`<li class="kind-${kind}">
    <span class="material">${material}<small>${ofLibrary(kind)}</small></span>
    <span class="amount">
      <strong>${ofLibrary(best.measure)}</strong> <span class="off">${off(best)}</span>
      <small
        >${others.map((way) => html`<span>${say('cards.or', { measure: ofLibrary(way.measure) })} ${deviation(way)}</span>`)}</small
      >
    </span>
  </li>`
}

/** What differs from the formula after that, and why that is no fault. */
function staysOff(way, { pot }) {
  const left = way.off.filter((one) => off(one))
  if (!left.length) return html`<p>${say('correction.nothingOff')}</p>`
  const allowed = new Map(pot.map((one) => [one.material, one.allowed]))
  const words = left.map((one, place) => {
    const why = allowed.get(one.material)
    return html`${place ? ', ' : nothing}${one.material} ${deviation(one)}${why ? html` (${ofLibrary(why)})` : nothing}`
  })
  return html`<p>${say(way.within ? 'correction.staysOffWithin' : 'correction.staysOff', { words })}</p>`
}

/** The doses of the pot as it is. */
function doses({ per, color, body, own_body: own }) {
  const all = [color, own].flatMap((formula) => Object.entries(formula?.doses ?? {}))
  const words = all.map(([material, amount]) => `${material} ${local(String(amount))}`)
  const base = typeof own?.base === 'string' ? [own.base] : Object.keys(own?.base ?? {})
  const amount = local(per)
  const values = {
    doses: words.join(', ') || say('correction.noDoses'),
    per: base.length ? say('correction.perOf', { amount, base: base.join(` ${say('bench.and')} `) }) : amount,
  }
  return html`<p>
    ${body.length ? say('correction.dosesWith', { ...values, body: body.join(' + ') }) : say('correction.doses', values)}
  </p>`
}

/** How full the cup is then. */
function fullness({ mass, volume }, { cup }) {
  return html`<div class="fullness">
    <progress
      max=${cup.value}
      .value=${volume.value}
      aria-label=${say('correction.cupAt', { volume: short(volume) })}
    ></progress>
    <p>${say('correction.thenHolds', { mass: short(mass), volume: both(volume), cup: both(cup) })}</p>
  </div>`
}

/** A button to ignore what does not belong, with its share of the pot. */
function pass({ foreign, mass }, letPass) {
  const largest = Math.max(...foreign.map((one) => one.mass.value / mass.value))
  // Rounded up to a tenth of a per cent, so that rounding does not refuse it.
  const trace = `${Math.ceil(largest * 1000) / 10} %`
  return html`<button type="button" class="quiet" @click=${() => letPass(trace)}>
    ${say('correction.ignore', { trace: local(trace) })}
  </button>`
}

function becomes(list, meant) {
  const others = list.filter(({ formulas }) => formulas.join() !== meant.join())
  if (!others.length) return html`<p>${say('correction.noOther')}</p>`
  return html`<p>${say('correction.canBecome')}</p>
    <ul>
      ${others.map(
        (one) =>
          html`<li>
            <strong>${one.formulas.join(' + ')}</strong>${one.products.length ? ` (${one.products.join(', ')})` : ''}:
            ${say(one.fits ? 'correction.becomes' : 'correction.becomesOver', { adds: short(one.adds), mass: short(one.mass) })}
          </li>`,
      )}
    </ul>`
}
