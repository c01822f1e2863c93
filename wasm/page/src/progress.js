// What has been done. A tick keeps the words that it was done by: where the plan says something else by now, the tick no
// longer counts and both are shown.
import { change, state } from './state.js'

/** "todo", "done", or "changed": done, but by other words than the plan's. */
export function progress(item) {
  const words = state.done[item.id]
  if (words === undefined) return 'todo'
  return words === item.words ? 'done' : 'changed'
}

export const isDone = (step) => step.items.every((item) => progress(item) === 'done')

/** Ticks an item off, or takes the tick back. */
export function toggle(item) {
  const done = { ...state.done }
  if (progress(item) === 'done') {
    delete done[item.id]
    change({ done, ticked: state.ticked.filter((id) => id !== item.id) })
  } else {
    done[item.id] = item.words
    const timers = state.timers.filter((timer) => timer.id !== item.id)
    change({ done, timers, ticked: [...state.ticked.filter((id) => id !== item.id), item.id] })
  }
}

/** Takes the last tick back. */
export function undo() {
  const done = { ...state.done }
  delete done[state.ticked.at(-1)]
  change({ done, ticked: state.ticked.slice(0, -1) })
}

/** Begins the day anew. */
export function begin() {
  if (confirm('All ticks and clocks are cleared. Go on?')) change({ done: {}, ticked: [], timers: [] })
}

/** The first item that is not done, with its step. */
export function next(steps) {
  for (const step of steps) {
    const item = step.items.find((item) => progress(item) !== 'done')
    if (item) return { step, item }
  }
  return null
}
