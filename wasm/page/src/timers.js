// Clocks: a burst counts down; a degassing counts up, or down if a time to hold it is set. A clock is stored as the time
// it was started at, so that it keeps running while the page is closed.
import { once } from './press.js'
import { change, state } from './state.js'
import { AsyncDirective, directive } from '../vendor/lit-html/async-directive.js'
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { sayStored } from './library.js'
import { local, message, say } from './words.js'

const REPEAT = 4000

/** Starts the clock of an item. */
export function start(item, { label, seconds }) {
  const timer = { id: item.id, label, seconds, started: Date.now() }
  change({ timers: [...state.timers.filter(({ id }) => id !== item.id), timer] })
  readySound()
}

/** Stops the clock of an item. */
export function stop(id) {
  change({ timers: state.timers.filter((timer) => timer.id !== id) })
}

export const timerOf = (item) => state.timers.find(({ id }) => id === item.id)

/** The minutes written for a degassing, in seconds; null if it is not a positive number. */
function holdSeconds() {
  const minutes = Number(state.hold)
  return state.hold.trim() && Number.isFinite(minutes) && minutes > 0 ? minutes * 60 : null
}

/** The clock of an item before it starts: its label, its seconds and the words on its button. */
export function clockOf(step, item) {
  const pot = step.pots.reduce((one, other) => message('clock.and', { one, other }))
  if (item.burst) {
    const { value, text } = item.burst.burst
    const label = message('clock.burst', { pot, number: item.number, of: item.of })
    return { label, seconds: value, words: local(text) }
  }
  if (item.clock) return item.clock
  if (item.hold) {
    const seconds = holdSeconds()
    const label = message('clock.hold', { pot, what: item.hold })
    return { label, seconds, words: seconds ? clock(seconds) : say('clock.clock') }
  }
  return null
}

/** Seconds that a clock shows: those left, or those gone by. */
export function face(timer) {
  const gone = (Date.now() - timer.started) / 1000
  return timer.seconds === null ? Math.floor(gone) : Math.max(0, Math.ceil(timer.seconds - gone))
}

/** Whether a clock has run out. */
export const isOver = (timer) => timer.seconds !== null && face(timer) === 0

/** `2:05`. */
export function clock(seconds) {
  const [minutes, rest] = [Math.floor(seconds / 60), seconds % 60]
  return `${minutes}:${String(rest).padStart(2, '0')}`
}

/** The faces that are on the page. */
const faces = new Set()

/** The face of a clock. While it runs it is drawn alone: the page is only drawn again when a clock has run out. */
class Face extends AsyncDirective {
  render(timer) {
    this.timer = timer
    faces.add(this)
    this.text = clock(face(timer))
    return this.text
  }

  follow() {
    const text = clock(face(this.timer))
    if (text === this.text) return
    this.text = text
    this.setValue(text)
  }

  disconnected() {
    faces.delete(this)
  }

  reconnected() {
    faces.add(this)
  }
}

export const running = directive(Face)

/** The running clocks, for the bar at the foot of the page. */
export function timerBar(goTo) {
  const silent = audio?.state !== 'running' && state.timers.some(({ seconds }) => seconds !== null)
  return html`${state.timers.map((timer) => {
    const label = sayStored(timer.label)
    return html`<div class="timer ${isOver(timer) ? 'over' : ''}" role="timer" aria-label=${label}>
      <a href="#bench" @click=${(event) => goTo(event, timer.id)}>
        <span class="face">${running(timer)}</span>
        <span class="of">${isOver(timer) ? say('clock.over', { label }) : label}</span>
      </a>
      <button
        type="button"
        class="quiet"
        @click=${once('stop', () => stop(timer.id))}
        aria-label=${say('clock.stopOf', { label })}
      >
        ${say('clock.stop')}
      </button>
    </div>`
  })}
  ${silent ? html`<p class="silent">${say('clock.silent')}</p>` : nothing}`
}

let rang = 0
let beat = 0
/** The clocks that were over when the page was drawn last. */
let drawnOver = ''
/** Clocks whose end has been announced, by their start time. */
const announced = new Set()

const textOf = (timers) => timers.map(({ id, started }) => `${id} ${started}`).join('\n')

/** Runs the clocks. Called when the page has been drawn with some. */
export function runTimers() {
  drawnOver = textOf(state.timers.filter(isOver))
  if (beat) return
  keepAwake(true)
  beat = setInterval(() => {
    if (!state.timers.length) {
      clearInterval(beat)
      beat = 0
      keepAwake(false)
      return
    }
    const over = state.timers.filter(isOver)
    const ended = over.filter(({ started }) => !announced.has(started))
    if (ended.length) {
      document.getElementById('said').textContent = ended
        .map(({ label }) => say('clock.said', { label: sayStored(label) }))
        .join(' ')
      for (const { started } of ended) announced.add(started)
    }
    if (over.length && Date.now() - rang > REPEAT) ring()
    for (const one of faces) one.follow()
    if (textOf(over) !== drawnOver) change()
  }, 250)
}

let audio = null

/** Browsers let a page play sound only after a touch: called at each touch while clocks run, also after a reload. */
export function readySound() {
  if (!state.timers.length || audio?.state === 'running') return
  if (!audio) {
    audio = new AudioContext()
    // The words about silent clocks go.
    audio.addEventListener('statechange', () => change())
  }
  audio.resume()
}

/** Three short tones, and a buzz if the device can. */
function ring() {
  rang = Date.now()
  navigator.vibrate?.([200, 100, 200])
  if (audio?.state !== 'running') return
  for (const at of [0, 0.3, 0.6]) {
    const [tone, volume] = [audio.createOscillator(), audio.createGain()]
    tone.frequency.value = 880
    volume.gain.setValueAtTime(0.4, audio.currentTime + at)
    volume.gain.exponentialRampToValueAtTime(0.001, audio.currentTime + at + 0.25)
    tone.connect(volume).connect(audio.destination)
    tone.start(audio.currentTime + at)
    tone.stop(audio.currentTime + at + 0.25)
  }
}

let lock = null

/** Keeps the screen on while a clock runs, if the browser can and the page is visible; else the page says so. */
export async function keepAwake(on = state.timers.length > 0) {
  if (!on) {
    lock?.release()
    lock = null
    if (state.sleeps) change({ sleeps: '' })
  } else if (document.visibilityState === 'visible' && (!lock || lock.released)) {
    // The browser may refuse, on a low battery for example; the clocks run anyway.
    lock = (await navigator.wakeLock?.request('screen').catch(() => null)) ?? null
    const sleeps = lock ? '' : whyItSleeps()
    if (state.sleeps !== sleeps) change({ sleeps })
  }
}

/** Why the screen may go dark while a clock runs, and what would help. */
function whyItSleeps() {
  if (isSecureContext) return say('clock.sleeps')
  return say('clock.sleepsPlain', { command: 'wasm/page/serve 8017 0.0.0.0 https' })
}
