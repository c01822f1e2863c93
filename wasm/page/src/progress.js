// What has been done: ticks at the items of the plan that is worked by.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { day } from './show.js'
import { change, state } from './state.js'
import { isOver, start } from './timers.js'
import { say } from './words.js'
import { beginWork, isRest, takeBackWork } from './work.js'

/**
 * "todo", "done" or "skipped". In the plan of the rest of the day, after a change, only what it leaves to do is shown; what puts a
 * pot right is the same before and after.
 */
export function progress(item) {
  if (item.isNothing) return 'done'
  const { words, skipped } = (item.isFix || !isRest()) && state.done[item.id] ? state.done[item.id] : {}
  if (words) return 'done'
  return skipped ? 'skipped' : 'todo'
}

/** Whether an item was skipped; a heat that was skipped counts as hot. */
export const isSkipped = (item) => progress(item) !== 'todo' && Boolean(state.done[item.id]?.skipped)

const isOpen = (item) => progress(item) === 'todo'

/** Nothing of it is left to do. A pot that is hot is over with its heat: bursts that were not needed stay without a tick. */
export const isDone = (step) => (step.kind === 'heat' ? !isOpen(step.items.at(-1)) : !step.items.some(isOpen))

/** Ticks an item, or removes its tick; `more` is what the tick carries besides, such as a reading. */
export function toggle(item, more = {}) {
  if (progress(item) === 'done') return takeBack(item.id)
  mark(item, { words: item.words, started: item.starts?.id, ...more })
  if (item.starts) start(item.starts, item.starts.clock)
}

/** Skips an item: it is not done, and the library is not told that it is. */
export const skip = (item) => mark(item, { skipped: true })

/** Keeps what was done with an item, and stops its clocks. */
function mark(item, tick) {
  beginWork()
  const over = [item.id, ...(item.ends ?? [])]
  const stopped = state.timers.filter(({ id }) => over.includes(id))
  change({
    done: { ...state.done, [item.id]: { ...tick, at: later(), stopped } },
    timers: state.timers.filter((timer) => !stopped.includes(timer)),
  })
  keepStored()
}

/** A time after that of every tick. */
const later = () => Math.max(Date.now(), ...Object.values(state.done).map(({ at }) => at + 1))

/** The id of the last tick; null if there is none. */
function lastTick() {
  const ticks = Object.entries(state.done).filter(([, { words, skipped }]) => words || skipped)
  return ticks.reduce((last, one) => (last && last[1].at > one[1].at ? last : one), null)?.[0] ?? null
}

/** Whether there is something to undo. */
export const canUndo = () => lastTick() !== null || Boolean(state.work?.past)

/** Removes the last tick, or goes back to the plan before the last change. */
export function undo() {
  const last = lastTick()
  if (last === null) takeBackWork()
  else takeBack(last)
}

/** Takes back that an item was skipped. */
export const unskip = (item) => takeBack(item.id)

/** Removes a tick and undoes what it did to clocks: one that it stopped runs on, unless its time is over by now. */
function takeBack(taken) {
  const { stopped = [], started } = state.done[taken]
  const timers = [...state.timers.filter(({ id }) => id !== started), ...stopped.filter((timer) => !isOver(timer))]
  change({ done: { ...state.done, [taken]: { at: later() } }, timers })
}

const anyTicked = () => state.work !== null && (lastTick() !== null || Boolean(state.work.past))

/** Whether anything is ticked or a clock runs. */
export const isBegun = () => state.timers.length > 0 || anyTicked()

/** What a day has that is not begun. */
export const notBegun = () => ({
  work: null,
  workAt: Date.now(),
  done: {},
  good: {},
  readings: {},
  tickedOn: null,
  timers: [],
})

/** Starts the day over. */
export function begin() {
  if (confirm(say('progress.clear'))) change(notBegun())
}

/** Asks the browser once to keep what is stored here when it runs short of room. */
let asked = false
function keepStored() {
  if (asked) return
  asked = true
  navigator.storage?.persist?.().catch(() => {})
}

/** Whether the ticks are from another day than the order list's. */
const isOfBefore = () => anyTicked() && (state.tickedOn ?? '') !== (state.orders.day ?? '')

/** A notice about ticks of another day, with buttons to clear or keep them. */
export function ofBefore() {
  if (!isOfBefore()) return nothing
  return html`<div class="undo" role="status">
    ${state.tickedOn ? say('progress.before', { day: day(state.tickedOn) }) : say('progress.beforeNoDay')}
    <button type="button" @click=${begin}>${say('bench.clear')}</button>
    <button type="button" class="quiet" @click=${() => change({ tickedOn: state.orders.day ?? null })}>
      ${say('progress.keep')}
    </button>
  </div>`
}

/** The first item that is not done, with its step. Of a heat it is the last: its bursts go by the thermometer. */
export function next(steps) {
  const step = steps.find((step) => !isDone(step))
  if (!step) return null
  const items = step.kind === 'heat' ? [step.items.at(-1)] : step.items
  return { step, item: items.find(isOpen) }
}
