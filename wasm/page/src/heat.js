// The heat of a pot goes by the thermometer: the page asks what it shows, and the library answers with the next burst, with
// "hot", or with "stop, and let it cool".
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { once } from './press.js'
import { progress, toggle } from './progress.js'
import { short } from './show.js'
import { change, state } from './state.js'
import { clockOf, isOver, start, stop, timerOf } from './timers.js'
import { nextBurst } from './work.js'

let last = { plan: null, step: null, reading: null, answer: null, faults: [] }

/** What to do at the reading of a heat; null if it has not been read, or has no table. */
export function advice(plan, step) {
  const reading = state.readings[step.id]
  if (!reading || !isByReading(step)) return null
  if (last.plan !== plan || last.step !== step.id || last.reading !== reading) {
    last = { answer: null, faults: [], ...nextBurst(plan, step.id, reading), plan, step: step.id, reading }
  }
  return last
}

/** Whether a step is a heat whose table is known. */
export const isByReading = ({ kind, items }) => kind === 'heat' && items.some(({ burst }) => burst)

const degree = () => (state.scale === 'metric' ? '°C' : '°F')

/** Clocks of bursts of this heat. */
const burstOf = (step) => step.items.find((item) => item.burst && timerOf(item))

function read(step, text) {
  const burst = burstOf(step)
  if (burst) endBurst(burst)
  change({ readings: { ...state.readings, [step.id]: `${text.trim()} ${degree()}` } })
}

function again(step) {
  const { [step.id]: _, ...readings } = state.readings
  change({ readings })
}

/** A burst is over: it is ticked, however often it is repeated, and the pot is read again. */
function endBurst(item) {
  if (progress(item) === 'done') stop(item.id)
  else toggle(item)
}

/** The field for a reading; `at` says where it is on the page. */
function field(step, at) {
  const id = `reading:${at}:${step.id}`
  const submit = (event) => {
    event.preventDefault()
    const input = event.target.elements.reading
    if (!input.value.trim()) return input.focus()
    read(step, input.value)
    event.target.reset()
  }
  return html`<form class="reading" @submit=${submit}>
    <label for=${id} class="out-of-sight">The thermometer in pot ${step.pots[0]} shows, ${degree()}</label>
    <input id=${id} name="reading" size="4" inputmode="decimal" autocomplete="off" enterkeyhint="go" />
    <span aria-hidden="true">${degree()}</span>
    <button class=${at === 'foot' ? 'done-next' : ''}>Next</button>
  </form>`
}

/** What to do now: words, and keys. */
export function heatNow(plan, step, at) {
  const burst = burstOf(step)
  const timer = burst && timerOf(burst)
  if (timer && !isOver(timer)) {
    return {
      words: html`<span>In the oven: ${burst.burst.burst.text}</span>`,
      keys: html`<button type="button" class="done-next early" @click=${once(at, () => endBurst(burst))}>
        Done early
      </button>`,
    }
  }
  const found = timer ? null : advice(plan, step)
  const reading = state.readings[step.id]
  if (!found?.answer) {
    const fault = found?.faults[0]
    const words = timer ? 'Stir. What does the thermometer show?' : 'What does the thermometer show?'
    const hot = step.items.at(-1)
    return {
      words: html`<span>${fault ? html`<strong class="bad">${fault.message}</strong> ${fault.help}` : words}</span>`,
      keys: html`${field(step, at)}
      ${
        timer
          ? nothing
          : html`<button type="button" class="quiet" @click=${once(at, () => toggle(hot))}>Skip: it is hot</button>`
      }`,
    }
  }
  const { go, text, item: id, burst: runs } = found.answer
  const item = step.items.find((item) => item.id === id)
  const read = short(found.answer.reading)
  const rest = html`<button type="button" class="quiet" @click=${once(at, () => again(step))}>
    ${go === 'burst' ? 'Skip: read again' : 'Read again'}
  </button>`
  if (go === 'burst') {
    return {
      words: html`<span>${read}: <strong>${text}</strong></span>`,
      keys: html`<button type="button" class="done-next clock" @click=${once(at, () => run(step, item))}>
          <span aria-hidden="true">▶</span> ${runs.text}
        </button>
        ${rest}`,
    }
  }
  if (go === 'hot') {
    return {
      words: html`<span>${read}: <strong>${text}</strong></span>`,
      keys: html`<button type="button" class="done-next" @click=${once(at, () => toggle(item, { reading }))}>
          Done
        </button>
        ${rest}`,
    }
  }
  return { words: html`<span class="bad">${read}: <strong>${text}</strong></span>`, keys: rest }
}

function run(step, item) {
  start(item, clockOf(step, item))
  again(step)
}
