// Cautions by code, in English in the library's words: short at the step they concern, in full below the pots.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { say } from './words.js'

const CAUTIONS = {
  'hot-plastisol': ['cautions.hot', 'cautions.hotInFull'],
  fumes: ['cautions.fumes', 'cautions.fumesInFull'],
  water: ['cautions.water', 'cautions.waterInFull'],
  'damp-salt': ['cautions.salt', 'cautions.saltInFull'],
  vacuum: ['cautions.vacuum', 'cautions.vacuumInFull'],
  'food-gear': ['cautions.food', 'cautions.foodInFull'],
  'data-sheet': ['cautions.sheet', 'cautions.sheetInFull'],
}

/** The words of a caution, short or in full; one that the page does not know is shown by its code. */
const wordsOf = (code, isInFull) => (CAUTIONS[code] ? say(CAUTIONS[code][isInFull ? 1 : 0]) : code)

const NONE = new Set()

/**
 * The cautions of a step. Those in `before`, a set of codes, were at the pot's steps before, and are not shown again; `inFull` for
 * the first heat of a pot.
 */
export function cautionsAt({ cautions }, before = NONE, inFull = false) {
  if (!cautions.length) return nothing
  // Paper has them in full once, on its last sheet.
  const words = (code) =>
    inFull && !before.has(code)
      ? html`<span class="in-full">${wordsOf(code, true)}</span><span class="on-paper">${wordsOf(code, false)}</span>`
      : wordsOf(code, false)
  return html`<ul class="cautions ${inFull ? 'at-heat' : ''}">
    ${cautions.map(
      (code) => html`<li data-caution=${code} class=${before.has(code) ? 'again' : ''}>${words(code)}</li>`,
    )}
  </ul>`
}

/** All cautions of the plan, in full. */
export function cautionsInFull(plan) {
  return html`<ul class="cautions full">
    ${plan.cautions.map((code) => html`<li data-caution=${code}>${wordsOf(code, true)}</li>`)}
  </ul>`
}
