// Another amount of a material than the sheet's: a pad with the measures of the bench. The library says whether it is within
// tolerance, which a tick then keeps, or how the pot is put right.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { answerOf, waysOf } from './correction.js'
import { ask, inUnit } from './core.js'
import { said } from './faults.js'
import { wantedByPot } from './meant.js'
import { lookAt } from './one.js'
import { once } from './press.js'
import { toggle } from './progress.js'
import { change, state } from './state.js'
import { potsByLetter } from './steps.js'
import { decimalSign, local, say } from './words.js'
import { putRight, shownChange } from './work.js'

/** The pad that is open: its item, the tool, the digits or the measures that were tapped, and why the day cannot go on. */
let pad = null

/** The tools that measure a material, as the plan has it. */
const toolsOf = ({ weigh }) => [weigh.best, ...weigh.others].map(({ tool }) => tool)

/** Whether the pad is open for an item. */
export const isPadOpen = (item) => pad?.item === item.id

/** Whether a pad is open. */
export const isAnyPadOpen = () => pad !== null && document.querySelector('.pad') !== null

/** Types on the pad that is open; whether the key was one of a pad, also if this one measures by spoons or cups. */
export function typeOnPad(key) {
  const name = { Backspace: 'back', '.': 'decimal', ',': 'decimal' }[key] ?? (/^\d$/.test(key) ? key : null)
  const found = document.querySelector(`.pad [data-key="${name}"]`)
  found?.click()
  return name !== null
}

/** Opens or closes the pad of an item. */
export function turnPad(item) {
  pad = isPadOpen(item) ? null : { item: item.id, tool: toolsOf(item)[0], digits: '', taps: [], refused: [] }
  change()
}

function edit(parts) {
  pad = { ...pad, refused: [], ...parts }
  change()
}

/** What the bench fills: spoons, or cups to their marks, the largest first. */
function measuresOf({ bench, measures }, tool) {
  const all = tool === 'spoons' ? bench.spoons : bench.cups.flatMap(({ holds, marks }) => [holds, marks])
  const milliliters = new Map([...new Set(all)].filter(Boolean).map((text) => [text, inUnit(text, 'mL', measures)]))
  return [...milliliters].sort(([, one], [, other]) => other - one)
}

const isDigits = ({ tool }) => tool === 'balance' || tool === 'drops'

/**
 * The amount as the library reads it, `{ amount, faults }`; both empty if none is tapped. What was tapped is a log as that of a
 * trial: the library adds it up.
 */
function amountOf(plan, { weigh: { material } }) {
  const { tool, digits, taps } = pad
  if (isDigits(pad)) {
    const amount = Number(digits) > 0 ? `${digits.replace(/\.$/, '')} ${tool === 'drops' ? 'drops' : 'g'}` : ''
    return { amount, faults: [] }
  }
  if (!taps.length) return { amount: '', faults: [] }
  const { book } = plan.made_from
  const bases = Object.keys(book.materials).filter((name) => book.materials[name].kind === 'plastisol')
  const isBase = bases.includes(material)
  // Doses are per base: those per one cup, in a trial of one cup, are what was tapped.
  const [start, ...log] = isBase ? taps : [CUP, ...taps]
  const trial = { start, base: isBase ? material : bases[0], log: log.map((text) => ({ [material]: text })) }
  const { answer, faults } = ask({ calculate: 'trial', book, per: CUP, trial })
  if (!answer) return { amount: '', faults }
  if (isBase) return { amount: `${answer.volume.value} ${answer.volume.unit}`, faults: [] }
  const { dose, off, mass } = answer.cup.find((one) => one.material === material)
  // A sum that cannot be written exactly in what was tapped goes by its mass.
  return { amount: off.value === 0 ? dose : `${mass.value} ${mass.unit}`, faults: [] }
}

/** The amount of base of the trial that adds up what was tapped. */
const CUP = '1 cup'

/** The amount as it was tapped. */
function wordsOf() {
  const { tool, digits, taps } = pad
  if (isDigits(pad)) return digits && say(tool === 'drops' ? 'pad.drops' : 'pad.grams', { amount: local(digits) })
  const counts = new Map()
  for (const text of taps) counts.set(text, (counts.get(text) ?? 0) + 1)
  return [...counts].map(([text, count]) => (count > 1 ? `${count} × ${local(text)}` : local(text))).join(' + ')
}

/** The pad of an item, with what its amount comes to. */
export function padView(plan, step, item) {
  const { book } = plan.made_from
  const tools = toolsOf(item)
  const asks = say(item.isMore ? 'pad.whatMore' : 'pad.whatWentIn', { material: item.weigh.material })
  return html`<div class="pad" role="group" aria-label=${asks}>
    <p class="say">${asks}</p>
    ${
      tools.length > 1
        ? html`<div class="tools">
            ${tools.map(
              (tool) =>
                html`<button
                  type="button"
                  class="quiet"
                  aria-pressed=${tool === pad.tool ? 'true' : 'false'}
                  @click=${() => edit({ tool, digits: '', taps: [] })}
                >
                  ${say(`pad.by_${tool}`)}
                </button>`,
            )}
          </div>`
        : nothing
    }
    <output class="tapped" aria-live="polite">${wordsOf() || say('pad.nothing')}</output>
    ${isDigits(pad) ? digitKeys() : measureKeys(book)} ${comesTo(plan, step, item)}
  </div>`
}

function digitKeys() {
  const { tool, digits } = pad
  const put = (sign) => {
    if (sign === '.' && digits.includes('.')) return
    const next = `${digits}${sign}`.replace(/^0+(?=\d)/, '')
    if (next.length <= 7) edit({ digits: next === '.' ? '0.' : next })
  }
  return html`<div class="digits">
    ${[...'789456123'].map((digit) => html`<button type="button" class="quiet" data-key=${digit} @click=${() => put(digit)}>${digit}</button>`)}
    ${
      tool === 'drops'
        ? html`<span></span>`
        : html`<button
            type="button"
            class="quiet"
            data-key="decimal"
            aria-label=${say('pad.decimal')}
            @click=${() => put('.')}
          >
            ${decimalSign()}
          </button>`
    }
    <button type="button" class="quiet" data-key="0" @click=${() => put('0')}>0</button>
    <button
      type="button"
      class="quiet"
      data-key="back"
      aria-label=${say('pad.back')}
      @click=${() => edit({ digits: digits.slice(0, -1) })}
    >
      ⌫
    </button>
  </div>`
}

/** Each tap is one more of a measure. */
function measureKeys(book) {
  const { tool, taps } = pad
  return html`<div class="measures">
    ${measuresOf(book, tool).map(
      ([text]) =>
        html`<button type="button" class="quiet" @click=${() => edit({ taps: [...taps, text] })}>
          + ${local(text)}
        </button>`,
    )}
    <button
      type="button"
      class="quiet"
      data-key="back"
      aria-label=${say('pad.back')}
      ?disabled=${!taps.length}
      @click=${() => edit({ taps: taps.slice(0, -1) })}
    >
      ⌫
    </button>
  </div>`
}

/** What was poured in other amounts of this stage, with that of the pad. */
function pouredIn(step, item, amount) {
  const kept = step.items.flatMap(({ id, weigh }) => {
    const { words, poured } = state.done[id] ?? {}
    return words && poured ? [[weigh.material, poured]] : []
  })
  return { ...Object.fromEntries(kept), [item.weigh.material]: amount }
}

/** What the amount comes to: a tick, or the ways to put the pot right. */
function comesTo(plan, step, item) {
  const { amount, faults: unread } = amountOf(plan, item)
  const elsewhere = html`<a
    class="button quiet"
    href="#one"
    @click=${() => lookAt(step, amount ? pouredIn(step, item, amount) : {})}
  >
    ${say('pad.somethingElse')}
  </a>`
  if (!amount)
    return html`${faultsOf(unread)}
      <div class="buttons">${closeKey(item)} ${elsewhere}</div>`
  const of = { pot: step.pots[0], key: step.of.key, stage: step.of.stage }
  const poured = pouredIn(step, item, amount)
  const hot = step.kind === 'add' ? 'hot' : ''
  const wanted = wantedByPot(potsByLetter(plan), of, plan)
  const { answer, faults } = waysOf(wanted, { poured, cup: '', trace: '', hot })
  if (!answer) {
    return html`${faultsOf(faults)}
      <div class="buttons">${closeKey(item)} ${elsewhere}</div>`
  }
  if (answer.ways.some(({ way }) => way === 'as-it-is')) {
    const keep = () => {
      const words = wordsOf()
      pad = null
      toggle(item, { words, poured: amount })
    }
    return html`<p class="outcome right"><strong>${say('pad.within')}</strong></p>
      <div class="buttons">
        <button type="button" class="take" @click=${once('pad', keep)}>
          ${say('pad.keep', { amount: wordsOf() })}
        </button>
        ${closeKey(item)} ${elsewhere}
      </div>`
  }
  const take = (way) => {
    const refused = putRight(of, way, { instead: poured, cup: '', hot })
    if (refused) return edit({ refused })
    pad = null
    change()
  }
  return html`<p class="outcome nearest"><strong>${say('pad.outside')}</strong></p>
    <div class="correction">${answerOf(answer, step.of.at.formulas, () => {}, take)}</div>
    ${pad.refused.map((words) => html`<p class="fault" role="alert">${shownChange(words)}</p>`)}
    <div class="buttons">${closeKey(item)} ${elsewhere}</div>`
}

const faultsOf = (faults) =>
  faults.length
    ? html`<p class="fault">${faults.map((fault) => html`${said(fault, 'message')} ${said(fault, 'help')} `)}</p>`
    : nothing

const closeKey = (item) =>
  html`<button type="button" class="quiet" @click=${() => turnPad(item)}>${say('pad.close')}</button>`
