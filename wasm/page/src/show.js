// Quantities on the page. The library gives them in the book's measures, and where both scales are in use on the other one
// too, with which is which: 338 °F and 170 °C. So it gives the sentences of a plan. The US/Metric switch decides which of the two
// comes first.
import { dates } from './formats.js'
import { state } from './state.js'
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { local, locale } from './words.js'

/** The text on the scale that is shown, and on the other scale (empty if there is none). */
function scales({ text, scale, other }) {
  return other && scale && scale !== state.scale ? [other, text] : [text, other ?? '']
}

/** The text of a quantity or a sentence on the scale that is shown. */
export function short(shown) {
  return local(scales(shown)[0])
}

/** The text on both scales, the other one smaller. */
export function both(quantity) {
  const [shown, other] = scales(quantity).map(local)
  return html`<span class="quantity">${shown}${other ? html` <small>${other}</small>` : nothing}</span>`
}

/** A deviation, with a true minus sign; empty if there is none. */
export function off(way) {
  return way.off.text === '0 %' ? '' : local(way.off.text.replace('-', '−'))
}

/** A count to two significant digits: a nominal count is no more certain. */
export function about(count) {
  return Number(count.toPrecision(2))
}

/** A date as people say it: `Thu, Mar 4`. Any other text is returned unchanged. */
export function day(text) {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text ?? '')) return text ?? ''
  const date = new Date(`${text}T00:00:00Z`)
  if (Number.isNaN(date.valueOf())) return text
  return dates(locale(), { weekday: 'short', month: 'short', day: 'numeric', timeZone: 'UTC' }).format(date)
}
