// An amount as a number and a unit to choose; what is typed with its unit is taken as it is.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { live } from '../vendor/lit-html/directives/live.js'
import { unitsOf } from './book-words.js'
import { inEnglish } from './library.js'
import { change, state } from './state.js'
import { local, say, typed } from './words.js'

/** What is being typed: an amount is taken apart when it is done, not under the fingers. */
let typing = { id: null, text: '' }

/** Units that were chosen before there is a number, by the id of the field. */
const chosen = new Map()

const textOfAmount = (value) =>
  typeof value === 'object' && value !== null ? `${value.value ?? ''} ${value.unit ?? ''}`.trim() : String(value ?? '')

/** The number and the unit of an amount; `unit` is empty if it has none of the list. */
function apart(text, units) {
  const spellings = units.flatMap((unit) => [unit, ...(unit.endsWith('s') ? [unit.slice(0, -1)] : [])])
  const unit = spellings.filter((unit) => text.endsWith(` ${unit}`)).sort((one, other) => other.length - one.length)[0]
  if (!unit) return { number: text, unit: '' }
  const number = text.slice(0, -unit.length - 1)
  return { number, unit: units.includes(unit) ? unit : `${unit}s` }
}

/** The units of a book's measures, those that its formulas use first. */
function units() {
  const all = unitsOf(state.book.measures)
  const used = new Map()
  for (const formula of Object.values(state.book.formulas ?? {})) {
    for (const dose of Object.values(formula?.doses ?? {})) {
      const { unit } = apart(textOfAmount(dose), all)
      if (unit) used.set(unit, (used.get(unit) ?? 0) + 1)
    }
  }
  const first = [...used.keys()].sort((one, other) => used.get(other) - used.get(one))
  return { all: [...first, ...all.filter((unit) => !used.has(unit))], first: first[0] ?? all[0] }
}

/** The unit that a material was dosed in last, else one of its kind; colors are counted in drops, else as most doses are. */
function usual(material, all, first) {
  const { formulas = {}, materials = {} } = state.book
  const doses = Object.values(formulas).flatMap((formula) => Object.entries(formula?.doses ?? {}))
  const unitOf = (isLike) =>
    doses
      .filter(([name]) => isLike(name))
      .map(([, dose]) => apart(textOfAmount(dose), all).unit)
      .findLast(Boolean)
  const kind = materials[material]?.kind
  const own =
    unitOf((name) => name === material) ?? unitOf((name) => kind !== undefined && materials[name]?.kind === kind)
  return own ?? (kind === 'colorant' ? all.find((unit) => unit === 'drops') : null) ?? first
}

/** Two controls for one amount; `set` gets its text. `label` names it for a reader who does not see the row. */
export function amountInput({ id, value, faults, set, label, material = null }) {
  const { all, first } = units()
  const text = textOfAmount(value)
  const parts = apart(text, all)
  const unit = parts.unit || (text ? '' : (chosen.get(id) ?? usual(material, all, first)))
  const shown = typing.id === id ? typing.text : local(parts.number)
  const hasWord = (text) => /[\p{L}%°]/u.test(text)
  const write = (event) => {
    typing = { id, text: event.target.value }
    const read = typed(event.target.value.trim())
    set(!read || hasWord(read) || !unit ? read : `${read} ${unit}`)
  }
  const stop = () => {
    if (typing.id !== id) return
    typing = { id: null, text: '' }
    // A field that is taken away loses the focus while the page is drawn.
    queueMicrotask(() => change())
  }
  const choose = (event) => {
    chosen.set(id, event.target.value)
    if (text) set(`${parts.number} ${event.target.value}`)
    else change()
  }
  return html`<div class="amount-in">
    <input
      id=${id}
      size="7"
      autocomplete="off"
      aria-label=${label}
      aria-invalid=${faults.length ? 'true' : nothing}
      aria-describedby=${faults.length ? `${id}:fault` : nothing}
      .value=${live(shown)}
      @input=${write}
      @change=${stop}
      @blur=${stop}
    />
    <select id="${id}:unit" aria-label=${say('form.unitOf', { what: label })} .value=${live(unit)} @change=${choose}>
      ${unit ? nothing : html`<option value="" selected>${say('form.asWritten')}</option>`}
      ${all.map((one) => html`<option value=${one} lang=${inEnglish()} ?selected=${one === unit}>${one}</option>`)}
    </select>
  </div>`
}
