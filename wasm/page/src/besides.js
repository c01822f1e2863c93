// Keys besides the large one at the foot: all loads of a step at once, and an amount other than the plan's.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { turnPad } from './pad.js'
import { once } from './press.js'
import { progress, toggle } from './progress.js'
import { say } from './words.js'

/** The keys of the next step. */
export function besides({ step, item }) {
  if (step.kind === 'shoot') return html`<div class="loads-left">${loadDots(step)} ${loadsKey(step)}</div>`
  if (step.kind !== 'measure' && step.kind !== 'add') return nothing
  const open = () => {
    turnPad(item)
    requestAnimationFrame(() => document.querySelector('.pad')?.scrollIntoView({ block: 'center' }))
  }
  return html`<button type="button" class="quiet other" @click=${once('pad', open)}>${say('step.otherAmount')}</button>`
}

const left = ({ items }) => items.filter((item) => progress(item) === 'todo')

/** The loads of a step as dots. */
export function loadDots(step) {
  const dots = { done: '●', skipped: '–', todo: '○' }
  const done = step.items.filter((item) => progress(item) === 'done').length
  return html`<span class="dots" role="img" aria-label=${say('step.loadsDone', { done, count: step.items.length })}
    >${step.items.map((item) => dots[progress(item)])}</span
  >`
}

/** The key for the loads that are left, if they are several. */
export function loadsKey(step) {
  const { length } = left(step)
  const all = () => {
    for (const item of left(step)) toggle(item)
  }
  if (length < 2) return nothing
  return html`<button type="button" class="quiet loads-key" @click=${once('all loads', all)}>
    ${say('step.allLoads', { count: length })}
  </button>`
}
