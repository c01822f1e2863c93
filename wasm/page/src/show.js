// A quantity of a result on the page. The library words it on the scales of both systems, `338 °F (170 °C)`; the switch
// says which of the two stands first.
import { state } from './state.js'
import { html, nothing } from '../vendor/lit-html/lit-html.js'

const METRIC = /(°C|kPa|\b(mL|L|g|kg|mm|cm|m|cm\/s|g\/mL))$/
const US = /(°F|inHg|\b(cup|tbsp|tsp|fl oz|gal|lb|in))$/

/** The text on the scale that is shown, and the one on the other; the latter is empty where there is none. */
function scales({ text }) {
  const both = /^(.+) \((.+)\)$/.exec(text)
  if (!both) return [text, '']
  const [, first, second] = both
  const wanted = state.scale === 'metric' ? METRIC : US
  return !wanted.test(first) && wanted.test(second) ? [second, first] : [first, second]
}

/** The text on the scale that is shown. */
export function short(quantity) {
  return scales(quantity)[0]
}

/** Both, the other one smaller. */
export function both(quantity) {
  const [shown, other] = scales(quantity)
  return html`<span class="quantity">${shown}${other ? html` <small>${other}</small>` : nothing}</span>`
}

/** A deviation as a maker reads it: a true minus sign, nothing where there is none. */
export function off(way) {
  return way.off.text === '0 %' ? '' : way.off.text.replace('-', '−')
}

/** `3 shots`, `1 shot`. */
export function counted(count, what) {
  return `${count} ${what}${count === 1 ? '' : 's'}`
}

/** A count to two digits, as one can be sure of it. */
export function about(count) {
  return new Intl.NumberFormat('en-US', { maximumSignificantDigits: 2, useGrouping: false }).format(count)
}

/** A date as it is spoken of: `Thu, Mar 4`. Anything else stays as it was written. */
export function day(text) {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text ?? '')) return text ?? ''
  const date = new Date(`${text}T00:00:00Z`)
  if (Number.isNaN(date.valueOf())) return text
  return date.toLocaleDateString('en-US', { weekday: 'short', month: 'short', day: 'numeric', timeZone: 'UTC' })
}
