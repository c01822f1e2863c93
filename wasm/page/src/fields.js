// Fields of a form: a label, a control, and its faults.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { live } from '../vendor/lit-html/directives/live.js'
import { messages } from './faults.js'
import { local, typed } from './words.js'

/** Links a control to its faults for screen readers. */
const described = (id, faults) => (faults.length ? `${id}:fault` : nothing)

/** A label over a control. */
export function field(label, id, control, faults = [], kind = '') {
  return html`<div class="field ${kind}"><label for=${id}>${label}</label>${control}${messages(id, faults)}</div>`
}

/**
 * A line of text; `set` gets the text. If it is an amount or a number, it is shown and typed with the decimal sign of the locale,
 * and `set` gets it as the library reads it.
 */
export function textInput({
  id,
  value,
  faults = [],
  set,
  size = 10,
  placeholder = '',
  label = null,
  numeric = false,
  amount = numeric,
}) {
  const [shown, read] = amount ? [local, typed] : [String, String]
  return html`<input
    id=${id}
    size=${size}
    placeholder=${shown(String(placeholder))}
    autocomplete="off"
    inputmode=${numeric ? 'decimal' : nothing}
    aria-label=${label ?? nothing}
    aria-invalid=${faults.length ? 'true' : nothing}
    aria-describedby=${described(id, faults)}
    .value=${live(shown(String(value ?? '')))}
    @input=${(event) => set(read(event.target.value))}
  />`
}

/**
 * A choice among names, in the language `lang` if it is not that of the page. A value that is not among them stays, shown with its
 * fault. `none` is the text for no choice, `shown` what a name is shown as.
 */
export function choice({
  id,
  value,
  names,
  faults = [],
  set,
  none = null,
  label = null,
  lang = nothing,
  shown = String,
}) {
  const all = value && !names.includes(value) ? [...names, value] : names
  return html`<select
    id=${id}
    aria-label=${label ?? nothing}
    aria-invalid=${faults.length ? 'true' : nothing}
    aria-describedby=${described(id, faults)}
    .value=${live(value ?? '')}
    @change=${(event) => set(event.target.value)}
  >
    ${none !== null || !value ? html`<option value="" ?selected=${!value}>${none ?? '—'}</option>` : nothing}
    ${all.map((name) => html`<option value=${name} lang=${lang} ?selected=${name === value}>${shown(name)}</option>`)}
  </select>`
}

/** A number between buttons large enough for a glove, each `[words, label, press, disabled]`. */
export function stepper({ label, id, before, after, control, faults = [] }) {
  const key = ([words, name, press, disabled = false]) =>
    html`<button type="button" aria-label=${name} ?disabled=${disabled} @click=${press}>${words}</button>`
  return html`<div class="field stepper" role="group" aria-label=${label}>
    <label for=${id}>${label}</label>
    <div class="keys">${before.map(key)}${control}${after.map(key)}</div>
    ${messages(id, faults)}
  </div>`
}

/** The text as a number if it is one; else the text itself, so that the library can report the fault. */
export function number(text) {
  const trimmed = text.trim()
  if (trimmed === '') return undefined
  return /^-?\d+(\.\d+)?$/.test(trimmed) ? Number(trimmed) : trimmed
}
