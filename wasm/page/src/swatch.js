// Colors on the screen: swatches, and how far two readings are apart. What a screen shows of a color is the library's answer.
import { html, nothing, svg } from '../vendor/lit-html/lit-html.js'
import { reply, variant } from './replies.js'
import { ofLibrary } from './library.js'
import { state } from './state.js'
import { decimal, say } from './words.js'

/** A color of an answer as requests take it. */
export function labOf({ lightness, a, b }) {
  return { lab: [lightness, a, b] }
}

/** What a screen shows of a color, as `#rrggbb`; null if no screen shows it or it cannot be read. */
export function hexOf(color) {
  return reply({ calculate: 'color-reading', instrument: color }).answer?.hex ?? null
}

/** A field of a color, with its name for those who do not see it; crossed out if no screen shows it. */
export function swatch(hex, label, kind = '') {
  return html`<svg class="swatch ${kind}" role="img" aria-label=${label} viewBox="0 0 8 8" preserveAspectRatio="none">
    ${
      hex
        ? svg`<rect width="8" height="8" fill=${hex} />`
        : svg`<path class="none" d="M0 0 8 8M8 0 0 8" vector-effect="non-scaling-stroke" />`
    }
  </svg>`
}

/** Swatches of the formulas whose color is in the book. */
export function swatchesOf(formulas) {
  const names = [...new Set(formulas)]
  return names.map((name) => {
    const color = state.book.formulas?.[name]?.color
    return color ? swatch(hexOf(color), say('color.ofFormula', { name }), 'small') : nothing
  })
}

/** The formulas of an order line or a product, of all its layers. */
export function formulasOf(line) {
  const { formulas, layers } = state.book.products?.[line.product] ?? line
  const list = (value) => (Array.isArray(value) ? value : [])
  return [...list(formulas), ...list(layers).flatMap((layer) => list(layer?.formulas))]
}

/**
 * How far two readings are apart, with the band of error and in words: the library compares the one with a book whose only
 * formula looked like the other. Null if it cannot.
 */
export function apart(one, other) {
  const book = variant(state.book, `one:${JSON.stringify(other)}`, ({ products, ...book }) => ({
    ...book,
    products: {},
    formulas: { sample: { doses: {}, color: other } },
  }))
  return reply({ calculate: 'color-nearest', color: one }, book).answer?.formulas[0]?.difference ?? null
}

/** A difference in the words of a person, with its number and band. */
export function differenceText({ difference, low, high, looks }) {
  return html`<strong>${ofLibrary(`${looks[0].toUpperCase()}${looks.slice(1)}.`)}</strong>
    <span class="number"
      >${say('color.difference', { difference: digit(difference), low: digit(low), high: digit(high) })}</span
    >`
}

/** A number to one decimal, with a true minus sign. */
export const digit = (value) => decimal(Math.abs(value) < 0.05 ? 0 : value, 1)
