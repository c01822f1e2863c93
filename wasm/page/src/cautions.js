// Cautions by code, in the library's words: short at the step they concern, in full below the pots.
import { html, nothing } from '../vendor/lit-html/lit-html.js'

const CAUTIONS = {
  'hot-plastisol': [
    'Hot plastisol burns deep: gloves, sleeves, eye protection.',
    'Hot plastisol sticks to skin and burns deep: long sleeves, heat-proof gloves, eye protection.',
  ],
  fumes: [
    'SMOKE or a sharp smell: stop the oven, leave, air the room.',
    'Work where fumes are drawn off. Smoke or a sharp smell is overheated PVC giving off hydrogen chloride: stop heating, leave, air the room.',
  ],
  water: [
    'Mold and injector bone DRY: a drop of water throws plastisol.',
    'A drop of water in a mold or pot turns to steam and throws plastisol: everything must be dry.',
  ],
  'damp-salt': [
    'Bone-dry salt only, in thirds, lumps broken; it settles, so stir.',
    'Salt holds water: dry it first, or it steams in the hot pot. Stir before every load; it settles.',
  ],
  vacuum: [
    'Only a chamber made for vacuum; protect your eyes.',
    'A cracked or weak vessel collapses under vacuum: use a chamber made for it, and eye protection.',
  ],
  'food-gear': ['Never food gear again.', 'Cups, spoons and an oven used for plastisol are never used for food again.'],
  'data-sheet': [
    "The supplier's data sheet comes first.",
    "The supplier's safety data sheet, local codes and licensed practice come before this sheet.",
  ],
}

const NONE = new Set()

/**
 * The cautions of a step. Those in `before`, a set of codes, were at the pot's steps before, and are not shown again; `inFull` for
 * the first heat of a pot.
 */
export function cautionsAt({ cautions }, before = NONE, inFull = false) {
  if (!cautions.length) return nothing
  const words = (code) => CAUTIONS[code]?.[inFull && !before.has(code) ? 1 : 0] ?? code
  return html`<ul class="cautions ${inFull ? 'at-heat' : ''}">
    ${cautions.map(
      (code) => html`<li data-caution=${code} class=${before.has(code) ? 'again' : ''}>${words(code)}</li>`,
    )}
  </ul>`
}

/** All cautions of the plan, in full. */
export function cautionsInFull(plan) {
  return html`<ul class="cautions full">
    ${plan.cautions.map((code) => html`<li data-caution=${code}>${CAUTIONS[code]?.[1] ?? code}</li>`)}
  </ul>`
}
