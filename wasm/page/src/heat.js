// The heat of a pot goes by the thermometer: the page asks what it shows. The library answers as the reading is typed, with the next
// burst, with "hot", or with "stop, and let it cool"; the key next to the field does what the answer says.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { live } from '../vendor/lit-html/directives/live.js'
import { said } from './faults.js'
import { ofLibrary } from './library.js'
import { once, onceSubmits } from './press.js'
import { isDone, isSkipped, progress, toggle } from './progress.js'
import { short } from './show.js'
import { change, state } from './state.js'
import { clockOf, isOver, start, stop, timerOf } from './timers.js'
import { local, say, typed } from './words.js'
import { nextBurst } from './work.js'

let last = { plan: null, step: null, reading: null, answer: null, faults: [] }

/** What to do at the reading of a heat; null if it has not been read, or has no table. */
function advice(plan, step) {
  const reading = readingOf(step)
  if (!reading || !isByReading(step)) return null
  if (last.plan !== plan || last.step !== step.id || last.reading !== reading) {
    last = { answer: null, faults: [], ...nextBurst(plan, step.id, reading), plan, step: step.id, reading }
  }
  return last
}

/** Whether a step is a heat whose table is known. */
export const isByReading = ({ kind, items }) => kind === 'heat' && items.some(({ burst }) => burst)

/** Whether a heat is over without a reading of the thermometer: its maker has said that the pot is hot. */
const isUnread = (step) => isDone(step) && isSkipped(step.items.at(-1))

/** The same for a pot that was hot when the day went on: its last heat is in the ticks of before. */
function wasUnread(key) {
  const works = [state.done]
  for (let past = state.work?.past; past; past = past.work.past) works.push(past.done)
  const hot = works.flatMap((done) =>
    Object.entries(done).filter(([id, { words }]) => words && id.startsWith(`${key}/`) && id.endsWith('/hot')),
  )
  const last = hot.reduce((one, other) => (one && one[1].at > other[1].at ? one : other), null)
  return Boolean(last?.[1].skipped)
}

/** The pots of a shot that are hot by the judgment of their maker: no thermometer was read. */
export const unreadAt = ({ at, heated }) =>
  at.filter(({ pot, key }) => {
    const heat = heated.get(pot.pot)
    return heat ? isUnread(heat) : pot.there?.hot && wasUnread(key)
  })

/** What a shot from such a pot is marked with. */
export const unreadNote = (step) =>
  unreadAt(step).map(
    ({ pot, at }) =>
      html`<p class="unread">
        ${say('heat.unread', { pot: pot.pot, from: short(at.shoot_from), to: short(at.shoot_to) })}
      </p>`,
  )

const degree = () => (state.scale === 'metric' ? '°C' : '°F')

/** The reading of a heat as the library reads it; empty if there is none. */
const readingOf = (step) => typed(state.readings[step.id] ?? '')

/** The reading as it was typed, without its unit. */
function shownOf(step) {
  const [text = '', unit] = (state.readings[step.id] ?? '').split(' ')
  return unit === degree() ? text : ''
}

/** Clocks of bursts of this heat. */
const burstOf = (step) => step.items.find((item) => item.burst && timerOf(item))

/** The pot is read: a burst that was over is done. */
function read(step, text) {
  const burst = burstOf(step)
  if (burst) endBurst(burst)
  const written = text.replaceAll(/\s/g, '')
  if (!written) return forget(step)
  change({ readings: { ...state.readings, [step.id]: `${written} ${degree()}` } })
}

function forget(step) {
  const { [step.id]: _, ...readings } = state.readings
  change({ readings })
}

/** A burst is over: it is ticked, however often it is repeated, and the pot is read again. */
function endBurst(item) {
  if (progress(item) === 'done') stop(item.id)
  else toggle(item)
}

const idOf = (step, at) => `reading:${at}:${step.id}`

function again(step, at) {
  forget(step)
  document.getElementById(idOf(step, at))?.focus()
}

/** The field for a reading, with the key that does what the library answers to it; `at` says where it is on the page. */
function field(plan, step, at) {
  const id = idOf(step, at)
  const { go, burst } = advice(plan, step)?.answer ?? {}
  const submit = (event) => {
    event.preventDefault()
    const input = event.target.elements.reading
    // What was filled in without a keystroke is read now.
    if (input.value !== shownOf(step)) read(step, input.value)
    const { answer } = advice(plan, step) ?? {}
    const found = step.items.find((item) => item.id === answer?.item)
    if (answer?.go === 'burst') run(step, found)
    else if (answer?.go === 'hot') toggle(found, { reading: readingOf(step) })
    else input.focus()
  }
  const keys = {
    burst: () =>
      html`<button class="${at === 'foot' ? 'done-next' : ''} clock" @click=${onceSubmits(at)}>
        <span aria-hidden="true">▶</span> ${local(burst.text)}
      </button>`,
    hot: () =>
      html`<button class=${at === 'foot' ? 'done-next' : ''} @click=${onceSubmits(at)}>${say('heat.done')}</button>`,
    none: () =>
      html`<button class=${at === 'foot' ? 'done-next' : ''} @click=${onceSubmits(at)}>${say('heat.next')}</button>`,
  }
  const key = go ? (keys[go] ?? (() => nothing)) : keys.none
  return html`<form class="reading" @submit=${submit}>
    <label for=${id} class="out-of-sight">${say('heat.shows', { pot: step.pots[0], unit: degree() })}</label>
    <input
      id=${id}
      name="reading"
      size="4"
      inputmode="decimal"
      autocomplete="off"
      enterkeyhint="go"
      .value=${live(shownOf(step))}
      @input=${(event) => read(step, event.target.value)}
    />
    <span aria-hidden="true">${degree()}</span>
    ${key()}
  </form>`
}

/** What to do now: words, and keys. */
export function heatNow(plan, step, at) {
  const burst = burstOf(step)
  const timer = burst && timerOf(burst)
  if (timer && !isOver(timer)) {
    return {
      words: html`<span>${say('heat.inTheOven', { time: local(burst.burst.burst.text) })}</span>`,
      keys: html`<button type="button" class="done-next early" @click=${once(at, () => endBurst(burst))}>
        ${say('heat.early')}
      </button>`,
    }
  }
  const { answer, faults = [] } = advice(plan, step) ?? {}
  // One template for all, so that the field stays while it is typed into.
  const keys = (besides) => html`${field(plan, step, at)} ${besides}`
  if (!answer) {
    const [fault] = faults
    const hot = step.items.at(-1)
    const asks = say(timer ? 'heat.stirAndAsk' : 'heat.ask')
    const skip = html`<button
      type="button"
      class="quiet skip-step"
      @click=${once(at, () => toggle(hot, { skipped: true }))}
    >
      ${say('heat.skip')}
    </button>`
    return {
      words: html`<span
        >${fault ? html`<strong class="bad">${said(fault, 'message')}</strong> ${said(fault, 'help')}` : asks}</span
      >`,
      keys: keys(timer ? nothing : skip),
    }
  }
  const { go } = answer
  const words = html`${short(answer.reading)}: <strong>${ofLibrary(short(answer))}</strong>`
  return {
    words: go === 'burst' || go === 'hot' ? html`<span>${words}</span>` : html`<span class="bad">${words}</span>`,
    keys: keys(
      html`<button type="button" class="quiet" @click=${once(`again ${at}`, () => again(step, at))}>
        ${say(go === 'burst' ? 'heat.skipBurst' : 'heat.again')}
      </button>`,
    ),
  }
}

function run(step, item) {
  start(item, clockOf(step, item))
  forget(step)
}
