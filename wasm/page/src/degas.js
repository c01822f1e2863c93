// Degassing by the one key: it starts the clock of a fill, then ends it, with what the gauge shows then. The library checks the
// reading; the tick keeps it.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { ask } from './core.js'
import { said } from './faults.js'
import { ofLibrary, sayStored, unbroken } from './library.js'
import { once, onceSubmits } from './press.js'
import { toggle } from './progress.js'
import { short } from './show.js'
import { change, state } from './state.js'
import { clockOf, isOver, start, timerOf } from './timers.js'
import { local, say, typed } from './words.js'

/** The reading that was refused last: the item, the text, and why. */
let refused = { item: null, text: '', faults: [] }

/** Whether the next thing to do is a fill under vacuum whose clock runs: then the gauge is read. */
export const isUnderVacuum = ({ step, item }) => step.kind === 'degas' && Boolean(timerOf(item))

const unit = () => (state.scale === 'metric' ? 'kPa' : 'inHg')

/** How the book states its vacuum: by what a gauge shows, or by the pressure that is left. */
const kindOf = ({ vacuum }) => (vacuum?.absolute === undefined ? 'gauge' : 'absolute')

/** What the library says to a reading of a step's vacuum: what is left in the chamber, or why it cannot be. */
function checked(plan, step, reading) {
  const { bench, altitude, station_pressure, measures } = plan.made_from.book
  const { dial_tolerance } = bench.vacuum ?? {}
  return ask({
    calculate: 'degas',
    liquid_volume: same(step.of.at.fills),
    vacuum: { [kindOf(bench)]: reading, ...(dial_tolerance && { dial_tolerance }) },
    ...(altitude && { altitude }),
    ...(station_pressure && { station_pressure }),
    measures,
  })
}

const same = ({ value, unit }) => ({ value, unit })

/** A reading as it is typed; a number alone is in the unit that is asked for. */
const withUnit = (text) => (/[\p{L}]/u.test(text) ? typed(text) : `${typed(text)} ${unit()}`)

/** What to do now at a fill: words, and keys. */
export function degasNow(plan, step, item, at) {
  const timer = timerOf(item)
  if (!timer) {
    const clock = clockOf(step, item)
    return {
      words: html`<span>${ofLibrary(unbroken(item.say))}</span>`,
      keys: html`<button type="button" class="done-next clock" @click=${once(at, () => start(item, clock))}>
          <span aria-hidden="true">▶</span> ${clock.seconds ? clock.words : say('degas.start')}
        </button>
        <button type="button" class="quiet" @click=${once(at, () => toggle(item))}>${say('degas.skip')}</button>`,
    }
  }
  const fault = refused.item === item.id ? refused.faults[0] : null
  const end = (event) => {
    event.preventDefault()
    const text = event.target.elements.gauge.value.trim()
    const reading = text && withUnit(text)
    const { answer, faults } = text ? checked(plan, step, reading) : { answer: null, faults: [] }
    refused = { item: item.id, text, faults }
    if (faults.length) return change()
    const left = answer ? short(answer.absolute) : null
    toggle(item, reading ? { reading, left } : {})
  }
  const early = timer.seconds !== null && !isOver(timer)
  const id = `gauge:${at}:${item.id}`
  const asks = say(kindOf(plan.made_from.book.bench) === 'gauge' ? 'degas.askGauge' : 'degas.askLeft')
  return {
    words: html`<span
      >${fault ? html`<strong class="bad">${said(fault, 'message')}</strong> ${said(fault, 'help')}` : html`${say('step.pot', { pot: step.pots[0] })}, ${sayStored(item.hold)}. ${asks}`}</span
    >`,
    keys: html`<form class="reading" @submit=${end}>
      <label for=${id} class="out-of-sight">${asks} ${unit()}</label>
      <input
        id=${id}
        name="gauge"
        size="4"
        inputmode="decimal"
        autocomplete="off"
        enterkeyhint="done"
        aria-invalid=${fault ? 'true' : nothing}
      />
      <span aria-hidden="true">${unit()}</span>
      <button class="done-next ${early ? 'early' : ''}" @click=${onceSubmits(at)}>
        ${say(early ? 'step.early' : 'step.done')}
      </button>
    </form>`,
  }
}

/** What the gauge showed at the end of a fill, for its row. */
export function gaugeRead(item) {
  const { words, reading, left } = state.done[item.id] ?? {}
  if (!words || !reading) return nothing
  return html`<p class="hint">${say('degas.showed', { reading: html`<strong>${local(reading)}</strong>`, left })}</p>`
}
