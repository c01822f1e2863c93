// Fields of a plan that no view has a place for, as a list of names and values.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { ofLibrary } from './library.js'
import { both } from './show.js'
import { say } from './words.js'

/** The fields of `object` that `known` does not name. */
export function anything(object, known) {
  const rest = Object.entries(object).filter(([key, value]) => !known.includes(key) && key !== 'ext' && !isEmpty(value))
  return rest.length ? html`<dl class="anything">${rest.map(([key, value]) => pair(key, value))}</dl>` : nothing
}

const isEmpty = (value) =>
  value === null || value === false || (typeof value === 'object' && Object.keys(value).length === 0)

const pair = (key, value) =>
  html`<div>
    <dt>${ofLibrary(words(key))}</dt>
    <dd>${shown(value)}</dd>
  </div>`

export const words = (key) => key.replaceAll('_', ' ').replaceAll('-', ' ')

function shown(value) {
  if (value === true) return say('show.yes')
  if (typeof value !== 'object') return ofLibrary(value)
  if (typeof value.text === 'string') return both(value)
  if (typeof value.message === 'string') return ofLibrary(value.message)
  if ('known' in value) return shown(value.known)
  if ('unknown' in value) return say('show.unknown', { why: ofLibrary(value.unknown.message) })
  if (Array.isArray(value))
    return html`<ul>
      ${value.map((one) => html`<li>${shown(one)}</li>`)}
    </ul>`
  const rest = Object.entries(value).filter(([, below]) => !isEmpty(below))
  return html`<dl class="anything">${rest.map(([key, below]) => pair(key, below))}</dl>`
}
