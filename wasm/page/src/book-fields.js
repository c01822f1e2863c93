// Fields of an entry of the book, by the library's schema: those that it must have, those that it has, and a way to add others.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { live } from '../vendor/lit-html/directives/live.js'
import { described, formOf, isAmount, starters, target, typed } from './book-words.js'
import { partNamedAt, renamedShape } from './book-uses.js'
import { editAll, editBook } from './edits.js'
import { faultsAt, faultsJustAt, fieldId, messages } from './faults.js'
import { choice, field, number, textInput } from './fields.js'
import { words } from './generic.js'
import { inEnglish, ofLibrary } from './library.js'
import { once } from './press.js'
import { change, state, valueAt } from './state.js'
import { local, message, say } from './words.js'

const isObject = (value) => typeof value === 'object' && value !== null && !Array.isArray(value)

/** Optional fields of tools that are offered though they are empty, by the key of the tool or of its list. */
const OFFERED = {
  cups: ['marks', 'brim', 'film'],
  balance: ['to'],
  injector: ['keeps'],
  vacuum: ['gauge', 'rise'],
  oven: ['timings', 'hot_for'],
}

/** Fields that were added and have no value yet, by id. */
const added = new Set()

/** Where the starter values are that a new book begins with, by their JSON Pointers: each is one until it is changed. */
const MARKS = ['ext', 'starter']

const pointer = (path) => fieldId('', path)

/** Whether the value at `path` is a starter value that nobody has changed. */
export function isStarter(path) {
  const marked = valueAt(state.book, [...MARKS, pointer(path)])
  return marked !== undefined && JSON.stringify(marked) === JSON.stringify(valueAt(state.book, path))
}

/** The mark of a starter value, with a key that takes it as one's own. */
export function starterMark(path) {
  if (!isStarter(path)) return nothing
  const what = words(String(path.at(-1)))
  const own = () => editBook([...MARKS, pointer(path)], undefined, message('form.own', { what }))
  return html`<span class="starter"
    ><strong>${say('form.starter')}</strong>
    <button type="button" class="quiet" aria-label=${say('form.rightOf', { what })} @click=${once(`own ${path}`, own)}>
      ${say('form.right')}
    </button></span
  >`
}

/** The marks of starter values below `from`, at `to`: names are parts of their places. */
export function marksMoved(from, to) {
  const marks = valueAt(state.book, MARKS)
  const [before, after] = [pointer(from), pointer(to)]
  if (!isObject(marks) || !Object.keys(marks).some((at) => at.startsWith(`${before}/`))) return []
  const moved = Object.entries(marks).map(([at, value]) => [
    at.startsWith(`${before}/`) ? after + at.slice(before.length) : at,
    value,
  ])
  return [{ of: 'book', path: MARKS, value: Object.fromEntries(moved) }]
}

/** The value of a generic material that the one at `path` is like; null if it is like none or has its own. */
function genericAt(path) {
  const [part, material, key, ...rest] = path
  if (part !== 'materials' || rest.length) return null
  const value = starters()[state.book.materials?.[material]?.like]?.[key]
  if (value === undefined || key === 'kind' || key === 'notes' || key === 'name') return null
  return { text: isObject(value) ? value.value : String(value), source: isObject(value) ? value.source : '' }
}

/**
 * The fields of the entry at `path` of the book. `first` are the names of optional fields that are shown though they are empty,
 * `without` those that have a place of their own; `quiet` leaves out what they mean, `brief` the way to others.
 */
export function entryFields({ path, schema, faults, first = [], without = [], quiet = false, brief = false }) {
  const value = valueAt(state.book, path)
  const has = isObject(value) ? value : {}
  const required = schema.required ?? []
  const names = Object.keys(schema.properties).filter((name) => name !== 'ext' && !without.includes(name))
  const isShown = (name) =>
    required.includes(name) || name in has || first.includes(name) || added.has(fieldId('book', [...path, name]))
  const ranks = [...required, ...first]
  const rank = (name) => (ranks.includes(name) ? ranks.indexOf(name) : ranks.length)
  const shown = names.filter(isShown).sort((one, other) => rank(one) - rank(other))
  const others = names.filter((name) => !isShown(name))
  const add = (name) => {
    if (!name) return
    const id = fieldId('book', [...path, name])
    added.add(id)
    change()
    document.getElementById(id)?.focus()
  }
  const id = `${fieldId('book', path)}:more`
  return html`<div class="entry-fields">
    ${shown.map((name) => fieldAt([...path, name], schema.properties[name], faults, { required: required.includes(name), quiet, brief }))}
    ${
      others.length && !brief
        ? field(
            say('form.anotherField'),
            id,
            choice({
              id,
              value: '',
              names: others,
              set: add,
              none: '…',
              label: say('form.anotherFieldOf', { what: String(path.at(-1)) }),
              lang: inEnglish(),
            }),
          )
        : nothing
    }
  </div>`
}

/**
 * One field of the book by its schema; `label` names it other than by its key, `means` says what it is other than the schema does,
 * `quiet` leaves that out, and `brief` what a group has besides its first fields.
 */
export function fieldAt(path, schema, faults, more = {}) {
  const { required = false, label = null, quiet = false, brief = false, means = null } = more
  const id = fieldId('book', path)
  const value = valueAt(state.book, path)
  const of = { ...formOf(schema), id, path, value, required, schema, faults, brief }
  const about = described(schema)
  const title = label ?? words(String(path.at(-1)))
  const shown = more.shown ?? label ?? ofLibrary(title)
  const shape = of.named && isObject(value) ? NAMED : SHAPES[of.form]
  // What is written in another way than the form has fields for stays as it is.
  if (!shape || !shape.takes(value)) return elsewhere(title, shown, of)
  if (shape.isGroup) return shape.draw(title, { ...of, shown, isTheirs: label === null })
  const own = faultsAt(faults, path)
  const generic = value === undefined ? genericAt(path) : null
  const source = isObject(value) && typeof value.source === 'string' ? value.source : ''
  return html`<div class="entry-field">
    ${field(shown, id, shape.draw(own, of, typed(about.example)), own)}
    ${
      generic
        ? html`<p class="starter">
            ${say('form.starterOf', {
              mark: html`<strong>${say('form.starter')}</strong>`,
              value: local(generic.text),
              material: ofLibrary(state.book.materials[path[1]].like),
            })}
          </p>`
        : starterMark(path)
    }
    ${source ? html`<p class="hint">${say('form.from', { source })}</p>` : nothing} ${brief ? nothing : unlike(of)}
    ${means ? html`<p class="hint">${means}</p>` : quiet ? nothing : hint(about, required || generic)}
  </div>`
}

const hint = ({ text, byDefault }, isWithoutDefault) =>
  html`<p class="hint">
    ${inTheirs(text)}${byDefault && byDefault !== 'none' && !isWithoutDefault ? html` ${say('form.ifEmpty', { value: inTheirs(byDefault) })}` : nothing}
  </p>`

/** A text of the schema, marked as English. */
const inTheirs = (text) => html`<span lang=${inEnglish()}>${told(text)}</span>`

/** A text of the schema: what it has in backticks is a name of a field, or as it is in the document. */
const told = (text) =>
  text
    .split('`')
    .map((part, at) =>
      at % 2
        ? /^[a-z_]+$/.test(part)
          ? html`<em>${words(part)}</em>`
          : html`<code>${local(part)}</code>`
        : local(part),
    )

const goesToAdvanced = () => change({ form: { ...state.form, part: 'advanced' } })

/** A value that has no field here, with the way to it. */
function elsewhere(title, shown, { id, path, value, faults }) {
  return html`<div class="entry-field" id=${id} tabindex="-1">
    <div class="field">
      <span class="label">${shown}</span>
      <code>${value === undefined ? say('form.none') : JSON.stringify(value)}</code>
      ${messages(id, faultsAt(faults, path))}
    </div>
    <div class="buttons">
      <button
        type="button"
        class="quiet"
        aria-label=${say('form.changeInAdvanced', { what: title })}
        @click=${goesToAdvanced}
      >
        ${say('form.inAdvanced')}
      </button>
    </div>
  </div>`
}

const isScalar = (value) => typeof value !== 'object' || value === null

/** Writes the text of a field; one that is optional goes when it is emptied. */
const write = ({ id, path, required, value }, text) => {
  // It stays on the page while another value is typed.
  added.add(id)
  const at = isObject(value) ? [...path, 'value'] : path
  editBook(at, text === '' || text === undefined ? (required || at !== path ? '' : undefined) : text)
}

/** How each form of a value is drawn. */
const SHAPES = {
  text: {
    takes: (value) =>
      isScalar(value) || (isObject(value) && isScalar(value.value) && 'value' in value && !('unit' in value)),
    draw(own, of, placeholder) {
      const { id, value, path } = of
      const part = partNamedAt('book', path)
      if (part || path.at(-1) === 'like') {
        const names = part ? Object.keys(state.book[part] ?? {}) : likes(path)
        return choice({
          id,
          value,
          names,
          faults: own,
          set: (name) => write(of, name),
          none: of.required ? null : say('form.none'),
          lang: part ? nothing : inEnglish(),
        })
      }
      const text = isObject(value) ? value.value : value
      const set = (text) => write(of, text)
      return textInput({ id, value: text, faults: own, set, size: 18, placeholder, amount: isAmount(of.schema) })
    },
  },
  number: {
    takes: isScalar,
    draw: (own, of, placeholder) =>
      textInput({
        id: of.id,
        value: of.value,
        faults: own,
        set: (text) => write(of, number(text)),
        size: 7,
        placeholder,
        numeric: true,
      }),
  },
  yes: {
    takes: isScalar,
    draw(own, of) {
      const [yes, no] = [say('form.yes'), say('form.no')]
      return choice({
        id: of.id,
        value: of.value === undefined ? '' : of.value === true ? yes : of.value === false ? no : String(of.value),
        names: [yes, no],
        faults: own,
        set: (name) => editBook(of.path, { [yes]: true, [no]: false }[name]),
        none: say('form.notStated'),
      })
    },
  },
  choice: {
    takes: isScalar,
    draw: (own, of) =>
      choice({
        id: of.id,
        value: of.value,
        names: of.names,
        faults: own,
        set: (name) => write(of, name),
        none: of.required ? null : say('form.notStated'),
        lang: inEnglish(),
      }),
  },
  pair: {
    takes: (value) => value === undefined || (Array.isArray(value) && value.every(isScalar)),
    draw(own, of, placeholder) {
      const { id, path, value = ['', ''], schema } = of
      const examples = JSON.parse(described(schema).example || '["", ""]')
      const set = (at, text) => {
        const both = [0, 1].map((place) => (place === at ? text : (value[place] ?? '')))
        added.add(id)
        editBook(path, both.some(Boolean) ? both : undefined)
      }
      return html`<div class="pair">
        ${[0, 1].map((at) =>
          textInput({
            id: at ? `${id}/1` : id,
            value: value[at],
            faults: own,
            set: (text) => set(at, text),
            size: 8,
            placeholder: examples[at] ?? placeholder,
            label: say(at ? 'form.highest' : 'form.lowest', { what: words(path.at(-1)) }),
            amount: true,
          }),
        )}
      </div>`
    },
  },
  group: {
    isGroup: true,
    takes: (value) => value === undefined || isObject(value),
    draw: (title, { id, path, value, required, schema, faults, brief, shown }) =>
      html`<fieldset class="group" id=${id} tabindex="-1">
        <legend>${shown}</legend>
        <p class="hint">${inTheirs(described(schema).text)}</p>
        ${messages(id, faultsJustAt(faults, path))}
        ${entryFields({ path, schema: target(schema), faults, first: offered(path.at(-1), brief), brief })}
        ${
          required
            ? nothing
            : html`<button type="button" class="quiet" @click=${once(`remove ${id}`, () => removed(id, path, value))}>
                ${say('form.removeOf', { name: title })}
              </button>`
        }
      </fieldset>`,
  },
  list: {
    isGroup: true,
    takes: (value) => value === undefined || Array.isArray(value),
    draw: (title, of) => list(title, of),
  },
}

/** The fields that are offered of a tool; where there is little room the first. */
const offered = (key, brief) => (OFFERED[key] ?? []).slice(0, brief ? 1 : undefined)

/** Groups by name, such as the unlike cavities of a mold, by shape. */
const NAMED = {
  isGroup: true,
  takes: isObject,
  draw: (_, { id, path, value, named, faults, schema, shown }) => {
    const names = Object.keys(value)
    const nameOf = (number) => say('form.shapeNumber', { number })
    const free = (number) => (names.includes(nameOf(number)) ? free(number + 1) : nameOf(number))
    const add = () => {
      const what = free(names.length + 1)
      editBook([...path, what], freshGroup(named), message('form.added', { what }))
    }
    const remove = (name) => editBook([...path, name], undefined, message('form.removed', { what: name }))
    const rename = (name, to) => {
      if (to === name) return
      if (!to || names.includes(to)) change()
      else editAll(renamedShape(path, name, to), message('form.renamed', { name, to }))
    }
    return html`<fieldset class="group" id=${id} tabindex="-1">
      <legend>${shown}</legend>
      <p class="hint">${inTheirs(described(schema).text)}</p>
      ${messages(id, faultsJustAt(faults, path))}
      <ol class="items">
        ${names.map((name, at) => {
          const place = [...path, name]
          const own = fieldId('book', place)
          return html`<li id=${own} tabindex="-1">
            ${messages(own, faultsJustAt(faults, place))}
            <div class="entry-field">
              ${field(
                say('form.shape'),
                `${own}:name`,
                html`<input
                  id="${own}:name"
                  size="14"
                  autocomplete="off"
                  .value=${live(name)}
                  @change=${(event) => rename(name, event.target.value.trim())}
                />`,
              )}
            </div>
            ${entryFields({ path: place, schema: named, faults, quiet: at > 0 })}
            <div class="buttons">
              <button
                type="button"
                class="quiet"
                aria-label=${say('form.removeOf', { name })}
                @click=${once(`remove ${own}`, () => remove(name))}
              >
                ${say('form.remove')}
              </button>
            </div>
          </li>`
        })}
      </ol>
      <div class="buttons">
        <button type="button" class="quiet" @click=${once(`add ${id}`, add)}>${say('form.addShape')}</button>
        <button type="button" class="quiet" @click=${once(`like ${id}`, () => editBook(path, 1))}>
          ${say('form.allAlike')}
        </button>
      </div>
    </fieldset>`
  },
}

/** The key that makes groups by name of a number. */
const unlike = ({ id, path, named }) =>
  named
    ? html`<button
        type="button"
        class="quiet"
        @click=${once(`unlike ${id}`, () => editBook(path, { [say('form.shapeNumber', { number: 1 })]: freshGroup(named) }))}
      >
        ${say('form.unlike')}
      </button>`
    : nothing

/** Removes a group, and the place for it. */
function removed(id, path, value) {
  added.delete(id)
  if (value === undefined) change()
  else editBook(path, undefined)
}

/** The generic materials of the kind of a material. */
function likes([part, material]) {
  const kind = state.book[part]?.[material]?.kind
  return Object.entries(starters())
    .filter(([, one]) => one.kind === kind)
    .map(([name]) => name)
}

/** A list of values or groups, each with keys to copy and to remove it. */
function list(title, { id, path, value = [], items, faults, required, schema, brief, shown, isTheirs }) {
  const { form, ...more } = formOf(items)
  // Names of fields are English: of several, with an s at the end.
  const one = title.replace(/s$/, '')
  const named = (at) => `${one} ${at + 1}`
  const fresh = form === 'group' ? freshGroup(more.schema, value.at(-1)) : (namesFor(path)[0] ?? '')
  const focus = (at) => requestAnimationFrame(() => document.getElementById(fieldId('book', [...path, at]))?.focus())
  const add = (entry, at) => {
    editBook(path, value.toSpliced(at, 0, entry), message('form.added', { what: one }))
    focus(at)
  }
  const remove = (at) => {
    const left = value.length === 1 && !required ? undefined : value.toSpliced(at, 1)
    editBook(path, left, message('form.removed', { what: one }))
  }
  // Numbers of a reading are as many as they are: they come and go together.
  const isReading = form === 'number' && value.length > 0
  const keys = (at) =>
    html`<div class="buttons">
      ${
        form === 'group'
          ? html`<button
              type="button"
              class="quiet"
              aria-label=${say('form.copyOf', { name: named(at) })}
              @click=${once(`copy ${id} ${at}`, () => add(value[at], at + 1))}
            >
              ${say('form.copy')}
            </button>`
          : nothing
      }
      <button
        type="button"
        class="quiet"
        aria-label=${say('form.removeOf', { name: named(at) })}
        @click=${once(`remove ${id} ${at}`, () => remove(at))}
      >
        ${form === 'group' ? say('form.remove') : html`<span aria-hidden="true">✕</span>`}
      </button>
    </div>`
  return html`<fieldset class="group" id=${id} tabindex="-1">
    <legend>${shown}</legend>
    <p class="hint">${inTheirs(described(schema).text)}</p>
    ${starterMark(path)} ${messages(id, faultsJustAt(faults, path))}
    <ol class="items ${form}">
      ${value.map((_, at) => {
        const place = [...path, at]
        return form === 'group'
          ? html`<li id=${fieldId('book', place)} tabindex="-1">
              ${messages(fieldId('book', place), faultsJustAt(faults, place))}
              ${entryFields({ path: place, schema: more.schema, faults, first: offered(path.at(-1), brief), quiet: at > 0, brief })}
              ${keys(at)}
            </li>`
          : html`<li class="one-line">
              ${fieldAt(place, items, faults, { required: true, label: named(at), shown: isTheirs ? ofLibrary(named(at)) : named(at), quiet: true })}${isReading ? nothing : keys(at)}
            </li>`
      })}
    </ol>
    ${
      isReading
        ? nothing
        : html`<button type="button" class="quiet" @click=${once(`add ${id}`, () => add(fresh, value.length))}>
            ${say('form.addOne', { what: one })}
          </button>`
    }
  </fieldset>`
}

/** Names that an entry of a list can have; none if it is no name. */
function namesFor(path) {
  const part = partNamedAt('book', [...path, 0])
  return part ? Object.keys(state.book[part] ?? {}) : []
}

/** A group with its required fields, empty. */
function freshGroup(schema) {
  const of = (key) => {
    const { form } = formOf(schema.properties[key])
    return form === 'list' ? [] : form === 'group' ? freshGroup(target(schema.properties[key])) : ''
  }
  return Object.fromEntries((schema.required ?? []).map((key) => [key, of(key)]))
}
