// What has been done. A tick keeps the words that it was done by: where the plan says something else by now, the tick no
// longer counts and both are shown.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { day } from './show.js'
import { change, state } from './state.js'
import { isOver, start } from './timers.js'

/** "todo", "done", or "changed": ticked, but the plan has another amount now. */
export function progress(item) {
  const tick = state.done[item.id]
  if (!tick?.words) return 'todo'
  return tick.words === item.words ? 'done' : 'changed'
}

export const isDone = (step) => step.items.every((item) => progress(item) === 'done')

/** Ticks an item, or removes its tick. */
export function toggle(item) {
  if (progress(item) === 'done') return takeBack(item.id)
  const over = [item.id, ...(item.ends ?? [])]
  const stopped = state.timers.filter(({ id }) => over.includes(id))
  change({
    done: { ...state.done, [item.id]: { words: item.words, gives: item.gives } },
    tickedOn: anyTicked() ? state.tickedOn : (state.orders.day ?? null),
    timers: state.timers.filter((timer) => !stopped.includes(timer)),
    ticked: [...state.ticked.filter(({ id }) => id !== item.id), { id: item.id, stopped, started: item.starts?.id }],
  })
  if (item.starts) start(item.starts, item.starts.clock)
}

/** Removes the last tick. */
export function undo() {
  takeBack(state.ticked.at(-1).id)
}

/** Removes a tick and undoes what it did to clocks: one that it stopped runs on, unless its time is over by now. */
function takeBack(taken) {
  const { [taken]: _, ...done } = state.done
  const { stopped = [], started } = state.ticked.find(({ id }) => id === taken) ?? {}
  const timers = [...state.timers.filter(({ id }) => id !== started), ...stopped.filter((timer) => !isOver(timer))]
  change({ done, timers, ticked: state.ticked.filter(({ id }) => id !== taken) })
}

const anyTicked = () => Object.keys(state.done).length > 0

/** Whether anything is ticked or a clock runs. */
export const isBegun = () => state.timers.length > 0 || anyTicked()

/** Starts the day over. */
export function begin() {
  if (confirm('Clear all ticks and clocks?')) change({ done: {}, ticked: [], tickedOn: null, timers: [] })
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

/** The first item that is not done, with its step. */
export function next(steps) {
  for (const step of steps) {
    const item = step.items.find((item) => progress(item) !== 'done')
    if (item) return { step, item }
  }
  return null
}
