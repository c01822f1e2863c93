// A formula as rows of material, amount and unit: each is checked by the library as it is written.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { repeat } from '../vendor/lit-html/directives/repeat.js'
import { amountInput } from './book-amount.js'
import { starterMark } from './book-fields.js'
import { ask } from './core.js'
import { editAll, editBook } from './edits.js'
import { faultsAt, faultsJustAt, fieldId, messages } from './faults.js'
import { choice, field } from './fields.js'
import { once } from './press.js'
import { short } from './show.js'
import { state } from './state.js'
import { local, locale, message, say } from './words.js'

const isObject = (value) => typeof value === 'object' && value !== null && !Array.isArray(value)

const materials = () => Object.entries(isObject(state.book.materials) ? state.book.materials : {})
const plastisols = () => materials().flatMap(([name, entry]) => (entry?.kind === 'plastisol' ? [name] : []))

/** The form of the formula of a name. */
export function formulaFields(name, faults) {
  const path = ['formulas', name]
  const formula = state.book.formulas[name]
  const comes = faults.length ? null : comesTo(name, formula)
  const perId = fieldId('book', [...path, 'per'])
  const perFaults = faultsAt(faults, [...path, 'per'])
  const setPer = (text) => editBook([...path, 'per'], text || undefined)
  return html`
    <div class="fields">
      ${field(
        say('formula.per'),
        perId,
        amountInput({ id: perId, value: formula.per, faults: perFaults, set: setPer, label: say('formula.per') }),
        perFaults,
      )}
      ${base(path, formula, faults)}
    </div>
    ${starterMark([...path, 'per'])}
    ${rows(
      say('formula.doses'),
      [...path, 'doses'],
      materials().map(([material]) => material),
      faults,
      comes?.masses,
    )}
    ${comes && !comes.masses ? messages(`${fieldId('book', path)}:comes-to`, comes.faults) : nothing}
    ${comes?.masses ? html`<p class="comes-to">${weighs(formula, comes)}</p>` : nothing}
  `
}

const weighs = ({ per }, { mass, density }) => say('formula.weighs', { per: local(String(per)), mass, density })

/** Where the base comes from: that of the formulas it is combined with, a plastisol, or a blend. */
function base(path, formula, faults) {
  const at = [...path, 'base']
  const id = fieldId('book', at)
  const own = faultsJustAt(faults, at)
  if (isObject(formula.base)) {
    return html`<div class="blend" id=${id} tabindex="-1">
      ${messages(id, own)} ${rows(say('formula.blend'), at, plastisols(), faults)}
      <button type="button" class="quiet" @click=${once(id, () => editBook(at, Object.keys(formula.base)[0]))}>
        ${say('formula.oneBase')}
      </button>
    </div>`
  }
  const blend = () => {
    const [first, second] = [
      formula.base ?? state.book.default_base ?? plastisols()[0],
      plastisols().find((one) => one !== formula.base),
    ]
    editBook(at, Object.fromEntries([first, second].filter(Boolean).map((one) => [one, formula.per ?? ''])))
  }
  const { default_base } = state.book
  const whose = default_base ? say('formula.ofBodyElse', { base: String(default_base) }) : say('formula.ofBody')
  return html`${field(
      say('formula.base'),
      id,
      choice({
        id,
        value: formula.base,
        names: plastisols(),
        faults: own,
        set: (name) => editBook(at, name || undefined),
        none: whose,
      }),
      own,
    )}
    <div class="field ends">
      <button type="button" class="quiet" @click=${once(id, blend)}>${say('formula.makeBlend')}</button>
    </div>`
}

/** Rows of material and amount at `path`, which is an object of amounts by material. */
function rows(title, path, names, faults, masses = new Map()) {
  const id = fieldId('book', path)
  const of = path.reduce((below, key) => below?.[key], state.book)
  const doses = isObject(of) ? of : {}
  const more = names.filter((name) => !(name in doses))
  const focus = (material) => document.getElementById(fieldId('book', [...path, material]))?.focus()
  const add = (material) => {
    if (!material) return
    editBook([...path, material], '', message('formula.added', { material, formula: path[1] }))
    focus(material)
  }
  const exchange = (material, other) => {
    const words = message('formula.exchanged', { material, other, formula: path[1] })
    editAll([{ of: 'book', path, from: material, to: other }], words)
    document.getElementById(`${fieldId('book', [...path, other])}:material`)?.focus()
  }
  const row = ([material, amount]) => {
    const at = [...path, material]
    const own = faultsAt(faults, at)
    const rowId = fieldId('book', at)
    const remove = () => editBook(at, undefined, message('formula.removed', { material, formula: path[1] }))
    return html`<li class="dose">
      ${choice({
        id: `${rowId}:material`,
        value: material,
        names: [material, ...more],
        set: (other) => exchange(material, other),
        label: say('formula.materialOf', { material }),
      })}
      ${amountInput({
        id: rowId,
        value: amount,
        faults: own,
        set: (text) => editBook(at, text),
        label: say('formula.amountOf', { material }),
        material,
      })}
      <span class="mass">${masses.get(material) ?? ''}</span>
      <button
        type="button"
        class="quiet"
        aria-label=${say('form.removeOf', { name: material })}
        @click=${once(`remove ${rowId}`, remove)}
      >
        <span aria-hidden="true">✕</span>
      </button>
      ${messages(rowId, own)} ${starterMark(at)}
    </li>`
  }
  return html`<fieldset class="group" id=${id} tabindex="-1">
    <legend>${title}</legend>
    ${messages(id, faultsJustAt(faults, path))}
    <ol class="doses">
      ${repeat(Object.entries(doses), ([material]) => material, row)}
    </ol>
    ${
      more.length
        ? field(
            say('formula.addMaterial'),
            `${id}:more`,
            choice({ id: `${id}:more`, value: '', names: more, set: add, none: '…' }),
          )
        : nothing
    }
  </fieldset>`
}

const known = new WeakMap()

/** What a formula weighs for the amount that it is per; null if it has none. The library has the answer, or the reason. */
function comesTo(name, formula) {
  if (!formula.per) return null
  const of = known.get(state.book) ?? new Map()
  known.set(state.book, of)
  const key = `${name}\n${state.scale}\n${locale()}`
  if (!of.has(key)) {
    const { answer, faults } = ask({
      calculate: 'formula',
      book: state.book,
      formulas: [name],
      base_amount: formula.per,
    })
    of.set(
      key,
      answer
        ? {
            masses: new Map(answer.parts.map(({ material, mass }) => [material, short(mass)])),
            mass: short(answer.mass),
            density: short(answer.density),
          }
        : { faults },
    )
  }
  return of.get(key)
}
