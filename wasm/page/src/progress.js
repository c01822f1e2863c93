// What has been done: ticks at the items of the plan that is worked by.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { day } from './show.js'
import { change, state } from './state.js'
import { isOver, start } from './timers.js'
import { beginWork, isRest, takeBackWork } from './work.js'

/**
 * "todo" or "done". In the plan of the rest of the day, after a change, only what it leaves to do is shown; what puts a pot right
 * is the same before and after.
 */
export function progress(item) {
  if (item.isNothing) return 'done'
  return state.done[item.id]?.words && (item.isFix || !isRest()) ? 'done' : 'todo'
}

/** A pot that is hot is done with its heat: bursts that were not needed stay without a tick. */
export const isDone = (step) =>
  step.kind === 'heat' ? progress(step.items.at(-1)) === 'done' : step.items.every((item) => progress(item) === 'done')

/** Ticks an item, or removes its tick; `more` is what the tick carries besides, such as a reading. */
export function toggle(item, more = {}) {
  if (progress(item) === 'done') return takeBack(item.id)
  beginWork()
  const over = [item.id, ...(item.ends ?? [])]
  const stopped = state.timers.filter(({ id }) => over.includes(id))
  const tick = { words: item.words, at: later(), stopped, started: item.starts?.id, ...more }
  change({
    done: { ...state.done, [item.id]: tick },
    timers: state.timers.filter((timer) => !stopped.includes(timer)),
  })
  if (item.starts) start(item.starts, item.starts.clock)
  keepStored()
}

/** A time after that of every tick. */
const later = () => Math.max(Date.now(), ...Object.values(state.done).map(({ at }) => at + 1))

/** The id of the last tick; null if there is none. */
function lastTick() {
  const ticks = Object.entries(state.done).filter(([, { words }]) => words)
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
export const notBegun = () => ({ work: null, workAt: Date.now(), done: {}, readings: {}, tickedOn: null, timers: [] })

/** Starts the day over. */
export function begin() {
  const words = 'Clear all ticks and clocks? All pots are then planned again from nothing, also those that are begun.'
  if (confirm(words)) change(notBegun())
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
    The ticks here were made for ${state.tickedOn ? day(state.tickedOn) : 'a list without a day'}.
    <button type="button" @click=${begin}>Clear all ticks</button>
    <button type="button" class="quiet" @click=${() => change({ tickedOn: state.orders.day ?? null })}>
      Keep them
    </button>
  </div>`
}

/** The first item that is not done, with its step. Of a heat it is the last: its bursts go by the thermometer. */
export function next(steps) {
  const step = steps.find((step) => !isDone(step))
  if (!step) return null
  const items = step.kind === 'heat' ? [step.items.at(-1)] : step.items
  return { step, item: items.find((item) => progress(item) !== 'done') }
}
