// More pieces while the day is begun: plus and minus at an order line, and what that means for the pots.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { editOrders } from './edits.js'
import { said } from './faults.js'
import { choice } from './fields.js'
import { ofLibrary } from './library.js'
import { LINES, part } from './part.js'
import { once } from './press.js'
import { change, state } from './state.js'
import { message, say } from './words.js'
import { shownChange, wordsOf } from './work.js'

let product = ''

/** The line that was changed last: what that means is shown below it. */
let changed = null

/** The part of the view. */
export function morePart(made) {
  const { shown, from, keys } = part('more', state.orders.lines, LINES, say('more.lines'))
  return html`<section class="more-part">
    <h2>${say('more.title')}</h2>
    ${changed === null || !state.orders.lines[changed] ? meaning(made) : nothing} ${keys}
    <ul class="more-lines">
      ${shown.map((line, at) => row(line, from + at, made))}
    </ul>
    ${keys} ${another()}
  </section>`
}

const meaning = (made) => html`<div class="means" role="status">${means(made)}</div>`

const numberOf = (value) => (Number.isInteger(value) ? value : 0)

function row(line, at, made) {
  const key = line.packs === undefined ? 'pieces' : 'packs'
  const count = numberOf(line[key])
  const what = `${line.order}, ${line.product ?? [line.mold, ...(Array.isArray(line.formulas) ? line.formulas : [])].filter(Boolean).join(' · ')}${line.shape ? `, ${line.shape}` : ''}`
  const go = (to) => {
    changed = at
    editOrders(['lines', at, key], to, message('more.changed', { what, from: count, to }))
  }
  const now = made.gone ? made.gone.lines[at] : state.work?.lines?.[at]
  return html`<li>
    <p>${what} ${now?.made ? html`<small>${say('more.made', { made: now.made, owed: now.owed })}</small>` : nothing}</p>
    <div class="keys" role="group" aria-label=${what}>
      <button
        type="button"
        aria-label="${say('more.less')}: ${what}"
        ?disabled=${count <= 1}
        @click=${() => go(count - 1)}
      >
        −
      </button>
      <output aria-label=${say(`more.${key}`)}
        >${count}<small>${key === 'packs' ? say('more.packs') : ''}</small></output
      >
      <button type="button" aria-label="${say('more.more')}: ${what}" @click=${() => go(count + 1)}>+</button>
    </div>
    ${changed === at ? meaning(made) : nothing}
  </li>`
}

/** A line for another product. */
function another() {
  const names = Object.keys(state.book.products ?? {})
  const chosen = names.includes(product) ? product : ''
  const add = () => {
    const { lines } = state.orders
    editOrders(
      ['lines', lines.length],
      { order: lines.at(-1)?.order ?? '1', product: chosen, pieces: 1 },
      message('more.added', { product: chosen }),
    )
    product = ''
  }
  return html`<div class="buttons">
    ${choice({
      id: 'more/product',
      value: chosen,
      names,
      none: say('more.choose'),
      label: say('more.choose'),
      set: (name) => {
        product = name
        change()
      },
    })}
    <button type="button" class="quiet" ?disabled=${!chosen} @click=${once('add line', add)}>${say('more.add')}</button>
  </div>`
}

/** What the orders as they are by now mean for the pots, against the plan that is worked by. */
function means({ status, base, plan, gone, bookFaults, ordersFaults, dayFaults }) {
  const faults = [...dayFaults, ...ordersFaults, ...bookFaults]
  if (faults.length) {
    return html`<div class="fault" role="alert">
      <p><strong>${say('more.cannot')}</strong></p>
      ${faults.map((fault) => html`<p>${said(fault, 'message')} ${said(fault, 'help')}</p>`)}
    </div>`
  }
  if (status !== 'done') return html`<p class="hint">${say('more.waits')}</p>`
  if (!state.work) return html`<p class="hint">${say('more.notBegun')}</p>`
  if (!gone) return html`<p class="hint">${say('more.asPlanned')}</p>`
  const lines = plan === base ? [] : differences(base, plan)
  const notMade = gone.not_made.length > 0
  return html`<h3>${notMade ? say('more.partly') : say('more.means')}</h3>
    <ul class="lines">
      ${lines.map((line) => html`<li><strong>${line}</strong></li>`)}
      ${wordsOf(gone).map((line) => html`<li>${shownChange(line)}</li>`)}
    </ul>
    <p class="hint">${say('more.undo')}</p>`
}

/** The loads and shots that are left to do of a pot, by mold; `done` are the ticks of its plan. */
function leftToShoot(plan, pot, done) {
  const found = new Map()
  for (const { kind, at, items } of plan.steps) {
    const own = kind === 'shoot' && at.find((one) => one.pot === pot.pot)
    if (!own) continue
    const { mold } = pot.stages[own.stage - 1].draws[own.draw - 1]
    const left = items.filter(({ id }) => !done[id]?.words)
    const { loads, shots } = found.get(mold) ?? { loads: 0, shots: 0 }
    found.set(mold, { loads: loads + left.length, shots: left.reduce((sum, one) => sum + one.shots, shots) })
  }
  return found
}

/** How the loads of a pot differ: `2 more loads of finger-5`. */
function loads(before, old, after, pot) {
  const [was, is] = [leftToShoot(before, old, state.done), leftToShoot(after, pot, {})]
  const none = { loads: 0, shots: 0 }
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((mold) => {
    const [one, other] = [was.get(mold) ?? none, is.get(mold) ?? none]
    const count = other.loads - one.loads
    if (count > 0) return [say('more.loadsMore', { count, mold })]
    if (count < 0) return [say('more.loadsLess', { count: -count, mold })]
    return one.shots === other.shots ? [] : [say('more.shots', { mold, from: one.shots, to: other.shots })]
  })
}

/** What goes into a pot, by stage and material. */
const amountsOf = (pot) =>
  new Map(
    pot.stages.flatMap(({ weigh }, stage) =>
      weigh.map(({ material, best }) => [`${stage} ${material}`, { material, measure: best.measure }]),
    ),
  )

/** How what goes into a pot differs: of one that is begun, what goes in besides. */
function amounts(old, after, pot) {
  if (pot.there) {
    const own = after.steps.filter(({ at }) => at.some((one) => one.pot === pot.pot))
    return own.flatMap(({ items }) => items.filter(({ more }) => more)).map(({ text }) => ofLibrary(text))
  }
  const was = amountsOf(old)
  return [...amountsOf(pot)].flatMap(([key, { material, measure }]) => {
    const before = was.get(key)?.measure
    return before === undefined || before === measure
      ? []
      : [say('more.amount', { material, from: ofLibrary(before), to: ofLibrary(measure) })]
  })
}

/** How the pots of two plans differ. */
function differences(before, after) {
  return after.pots.flatMap((pot) => {
    const old = before.pots.find(({ pot: letter, id }) => letter === pot.pot && id === pot.id)
    if (!old) return []
    const parts = [...loads(before, old, after, pot), ...amounts(old, after, pot)]
    return parts.length
      ? [say('more.pot', { pot: pot.pot, parts: parts.map((part, at) => [at ? '; ' : '', part]) })]
      : []
  })
}
