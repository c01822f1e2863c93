// The form for the book: its formulas, materials, molds, products and bench as lists with new, copy, rename and delete.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { repeat } from '../vendor/lit-html/directives/repeat.js'
import { entryFields, fieldAt, marksMoved } from './book-fields.js'
import { formulaFields } from './book-formula.js'
import { SINGULAR, renamed, usesOf, wordsOfUse } from './book-uses.js'
import { isReady, schemaOf } from './book-words.js'
import { faultsOfBook } from './core.js'
import { editAll, editBook } from './edits.js'
import { faultsAt, faultsJustAt, fieldId, goTo, messages, onTheWay } from './faults.js'
import { words } from './generic.js'
import { part, reveal } from './part.js'
import { once } from './press.js'
import { change, state } from './state.js'

/** The parts of the book that have a form, and the tree of all fields. */
const PARTS = {
  formulas: 'Formulas',
  materials: 'Materials',
  molds: 'Molds',
  products: 'Products',
  bench: 'Bench',
  advanced: 'Advanced',
}

/** The entries of a list that are shown at once. */
const SHOWN = 40

/** Fields that are offered though they are empty, by kind of material. */
const LIQUID = ['density', 'drop', 'price']
const POWDER = ['like', 'as_scooped', 'price']
const OFFERED = {
  plastisol: ['density', 'fused', 'shot_window', 'price'],
  softener: ['like', ...LIQUID],
  hardener: LIQUID,
  stabilizer: LIQUID,
  colorant: LIQUID,
  scent: ['like', ...LIQUID],
  salt: POWDER,
  pearl: POWDER,
  flake: [...POWDER, 'cut', 'thickness'],
  other: ['like', 'density'],
}

const isObject = (value) => typeof value === 'object' && value !== null && !Array.isArray(value)

/** What the list of a part needs to know about an entry: its gist, a new one, and its fields. */
const ENTRIES = {
  formulas: {
    gist: ({ doses, per, base }) =>
      [
        ...Object.entries(isObject(doses) ? doses : {}).map(
          ([material, amount]) => `${amount?.unit ? `${amount.value} ${amount.unit}` : amount} ${material}`,
        ),
        per ? `per ${per}` : '',
        typeof base === 'string' ? base : '',
      ]
        .filter(Boolean)
        .join(', '),
    fresh: (others) => ({ per: others.at(-1)?.per ?? '1 cup', doses: {} }),
    without: ['per', 'base', 'doses'],
  },
  materials: {
    gist: ({ kind, density, like }) => [kind, like, density?.value ?? density].filter(Boolean).join(', '),
    fresh: () => ({ kind: 'colorant' }),
    first: ({ kind }) => OFFERED[kind] ?? [],
  },
  molds: {
    gist: ({ cavities, cavity }) =>
      isObject(cavities)
        ? Object.entries(cavities)
            .map(([shape, one]) => `${one?.count} ${shape}`)
            .join(', ')
        : [`${cavities} cavities`, isObject(cavity) ? `${cavity.water} of water` : cavity].filter(Boolean).join(', '),
    fresh: () => ({ cavities: 1, cavity: '' }),
    first: ({ cavities }) => (isObject(cavities) ? ['sprue', 'feed'] : ['cavity', 'sprue', 'feed']),
  },
  products: {
    gist: ({ mold, formulas, layers }) =>
      [mold, Array.isArray(layers) ? layers.map((layer) => listed(layer?.formulas)).join(' over ') : listed(formulas)]
        .filter(Boolean)
        .join(', '),
    fresh: () => ({ mold: names('molds')[0] ?? '', formulas: names('formulas').slice(0, 1) }),
    first: ({ layers }) => (layers === undefined ? ['formulas'] : []),
  },
}

const listed = (value) => (Array.isArray(value) ? value.join(' + ') : '')
const names = (part) => Object.keys(isObject(state.book[part]) ? state.book[part] : {})

/** What is asked at an entry: its new name, or why it cannot be deleted; of one at a time. */
let asked = { part: null, name: null, rename: null, refused: false, faults: [] }
const NOT_ASKED = { part: null, name: null, rename: null, refused: false, faults: [] }

const show = (parts) => change({ form: { ...state.form, ...parts } })

/** The keys for the parts, and the one that is shown; `tree` draws that of all fields, `tools` those of the bench. */
export function bookForm(faults, tree, tools) {
  const { part: shown } = state.form
  const count = (part) => (part === 'advanced' ? faults.length : faultsAt(faults, [part]).length)
  return html`<nav class="book-parts" aria-label="Parts of the book">
      ${Object.entries(PARTS).map(
        ([part, title]) =>
          html`<button
            type="button"
            class=${part === shown ? '' : 'quiet'}
            aria-current=${part === shown ? 'true' : nothing}
            @click=${() => show({ part })}
          >
            ${title}${count(part) ? html` <span class="fault-count">${count(part)}</span>` : nothing}
          </button>`,
      )}
    </nav>
    ${shown === 'advanced' ? tree() : isReady() ? partView(shown, faults, tools) : html`<p role="status">Loading the form …</p>`}`
}

function partView(part, faults, tools) {
  if (part !== 'bench') return entries(part, faults)
  const { bench } = state.book
  const id = fieldId('book', ['bench'])
  return html`${tools.before()}
    <section class="entry-list" aria-label="Tools" id=${id} tabindex="-1">
      <h2 class="out-of-sight">Tools</h2>
      ${messages(id, faultsJustAt(faults, ['bench']))}
      ${
        isObject(bench)
          ? html`<ul class="entries">
                ${Object.keys(TOOLS).map((key) => tool(key, faults))}
              </ul>
              ${entryFields({ path: ['bench'], schema: schemaOf('bench'), faults, without: Object.keys(TOOLS) })}`
          : html`<button type="button" @click=${() => editBook(['bench'], { cups: [], injector: { holds: '' } })}>
              Begin a bench
            </button>`
      }
    </section>
    ${tools.after()}`
}

/** The tools of the bench that have a card, with their titles. */
const TOOLS = {
  cups: 'Cups',
  spoons: 'Spoons',
  balance: 'Scale',
  injector: 'Injector',
  vacuum: 'Vacuum',
  oven: 'Oven',
}

function tool(key, faults) {
  const value = state.book.bench[key]
  const { properties, required } = schemaOf('bench')
  const path = ['bench', key]
  return folded(path, TOOLS[key], value === undefined ? 'none' : gistOf(value), faultsAt(faults, path).length, () =>
    fieldAt(path, properties[key], faults, { required: required.includes(key), label: TOOLS[key] }),
  )
}

/** A tool in a few words. */
function gistOf(value) {
  if (Array.isArray(value)) return value.map((one) => (isObject(one) ? (one.holds ?? gistOf(one)) : one)).join(', ')
  if (!isObject(value)) return String(value)
  return Object.entries(value)
    .map(([key, below]) => (typeof below === 'object' ? words(key) : `${words(key)} ${below}`))
    .join(', ')
}

function entries(part_, faults) {
  const id = fieldId('book', [part_])
  const value = state.book[part_]
  const list = Object.entries(isObject(value) ? value : {})
  const { shown, keys: others } = part(`book ${part_}`, list, SHOWN, PARTS[part_])
  const one = SINGULAR[part_]
  return html`<section class="entry-list" aria-label=${PARTS[part_]} id=${id} tabindex="-1">
    <h2 class="out-of-sight">${PARTS[part_]}</h2>
    ${messages(id, faultsJustAt(faults, [part_]))}
    <div class="buttons">
      <button type="button" @click=${once(`new ${part_}`, () => addNew(part_, list))}>New ${one}</button>
    </div>
    ${others}
    <ul class="entries">
      ${repeat(
        shown,
        ([name]) => name,
        ([name, entry]) => card(part_, name, entry, faults),
      )}
    </ul>
    ${others} ${list.length ? nothing : html`<p class="hint">There is no ${one} yet.</p>`}
  </section>`
}

function card(part, name, entry, faults) {
  const path = [part, name]
  const gist = isObject(entry) ? ENTRIES[part].gist(entry) : ''
  return folded(path, name, gist, faultsAt(faults, path).length, () => body(part, name, entry, faults))
}

/** An entry with its gist, which is opened for its fields. */
function folded(path, title, gist, count, body) {
  const id = fieldId('book', path)
  const name = path.at(-1)
  const isOpen = state.form.open === name
  const toggle = () => {
    asked = NOT_ASKED
    show({ open: isOpen ? null : name })
  }
  return html`<li class="entry ${count ? 'faulty' : ''}">
    <h3>
      <button type="button" class="quiet" id="${id}:key" aria-expanded=${isOpen ? 'true' : 'false'} @click=${toggle}>
        <span class="name">${title}${count ? html` <span class="fault-count">${count}</span>` : nothing}</span>
        ${isOpen ? nothing : html`<small>${gist}</small>`}
      </button>
    </h3>
    ${isOpen ? html`<div class="entry-body">${body()}</div>` : nothing}
  </li>`
}

function body(part, name, entry, faults) {
  const path = [part, name]
  const id = fieldId('book', path)
  const { fresh, first = () => [], without = [] } = ENTRIES[part]
  const isAsked = asked.part === part && asked.name === name
  const uses = usesOf(part, name)
  return html`<div class="buttons">
      <button
        type="button"
        class="quiet"
        aria-label="Copy ${name}"
        @click=${once(`copy ${id}`, () => copy(part, name))}
      >
        Copy
      </button>
      <button type="button" class="quiet" aria-label="Rename ${name}" @click=${() => askName(part, name)}>
        Rename
      </button>
      <button
        type="button"
        class="quiet"
        aria-label="Delete ${name}"
        @click=${once(`delete ${id}`, () => remove(part, name))}
      >
        Delete
      </button>
    </div>
    ${isAsked && asked.rename !== null ? nameForm(part, name) : nothing}
    ${isAsked && asked.refused && uses.length ? refusal(name, uses) : nothing}
    <div id=${id} tabindex="-1">${messages(id, faultsJustAt(faults, path))}</div>
    ${
      isObject(entry)
        ? html`${part === 'formulas' ? formulaFields(name, faults) : nothing}
          ${entryFields({ path, schema: schemaOf(part), faults, first: first(entry), without })}`
        : html`<p class="fault"><code>${JSON.stringify(entry)}</code></p>
            <button type="button" @click=${() => editBook(path, fresh([]))}>Begin it again</button>`
    }
    ${
      uses.length && !(isAsked && asked.refused)
        ? html`<div class="used">
            <p>Used by</p>
            ${links(uses)}
          </div>`
        : nothing
    }`
}

/** Why something is not deleted, with a key to each place that uses it. */
function refusal(name, uses) {
  return html`<div class="refused" role="alert">
    <p>
      <strong>${name} is used in ${uses.length} ${uses.length === 1 ? 'place' : 'places'}, so it stays.</strong> Take it
      out there first, or rename it.
    </p>
    ${links(uses)}
  </div>`
}

const links = (uses) =>
  html`<ul class="uses">
    ${uses.map(
      (use) =>
        html`<li>
          <a class="button quiet" href="#${use.of}" @click=${(event) => goTo(event, use.of, use.path)}
            >${wordsOfUse(use)}</a
          >
        </li>`,
    )}
  </ul>`

/** A name that is not taken: the name itself, else with a number. */
function free(part, name) {
  const taken = names(part)
  for (let number = 2, found = name; ; number += 1) {
    if (!taken.includes(found)) return found
    found = `${name} ${number}`
  }
}

function addNew(part, list) {
  const name = free(part, `new ${SINGULAR[part]}`)
  const entry = ENTRIES[part].fresh(list.map(([, one]) => one).filter(isObject))
  begin(part, name, entry, `Added: ${SINGULAR[part]}.`, list.length)
}

function copy(part, name) {
  const place = names(part).indexOf(name)
  begin(part, free(part, `${name} copy`), structuredClone(state.book[part][name]), `Copied: ${name}.`, place)
}

/** Adds an entry and asks for its name. */
function begin(part, name, entry, words, place) {
  reveal(`book ${part}`, Math.max(place, names(part).length), SHOWN)
  editAll(
    [
      { of: 'book', path: [part, name], value: entry },
      { of: 'form', path: ['open'], value: name },
    ],
    words,
  )
  askName(part, name)
}

function askName(part, name) {
  asked = { ...NOT_ASKED, part, name, rename: name }
  change()
  const input = document.getElementById('entry-name')
  input?.focus()
  input?.select()
}

function nameForm(part, name) {
  const { rename, faults } = asked
  const type = (event) => {
    asked = { ...asked, rename: event.target.value, faults: faultsOfName(part, name, event.target.value) }
    change()
  }
  const done = (event) => {
    event.preventDefault()
    const to = rename.trim()
    if (to === name) {
      asked = NOT_ASKED
      change()
      return
    }
    asked = { ...asked, faults: faultsOfName(part, name, to) }
    if (asked.faults.length) change()
    else giveName(part, name, to)
  }
  return html`<form class="fields name-form" @submit=${done}>
    <div class="field">
      <label for="entry-name">Name</label>
      <input
        id="entry-name"
        size="24"
        autocomplete="off"
        aria-invalid=${faults.length ? 'true' : nothing}
        aria-describedby=${faults.length ? 'entry-name:fault' : nothing}
        .value=${rename}
        @input=${type}
      />
      ${messages('entry-name', faults)}
    </div>
    <div class="field ends"><button>${rename === name ? 'Keep this name' : 'Rename'}</button></div>
  </form>`
}

/** Why something cannot have a name: it is taken, or the library does not take it. */
export function faultsOfName(part, name, to) {
  if (to.trim() !== name && names(part).includes(to.trim())) {
    return [{ path: '', message: `There is a ${SINGULAR[part]} “${to.trim()}” already.`, help: 'Choose another name.' }]
  }
  // A book with nothing else in it has no faults but those of the name.
  const book = {
    format: state.book.format,
    measures: state.book.measures,
    materials: {},
    formulas: {},
    molds: {},
    bench: state.book.bench,
  }
  return faultsOfBook({ ...book, [part]: { [to.trim()]: {} } }).filter(({ code }) => code === 'bad-name')
}

/** Gives something another name, everywhere; the cursor goes to it in the list, unless another form asked for the name. */
export function giveName(part, name, to, isInList = true) {
  asked = NOT_ASKED
  editAll([...renamed(part, name, to), ...marksMoved([part, name], [part, to])], `Renamed: ${name} is now ${to}.`)
  if (isInList) document.getElementById(`${fieldId('book', [part, to])}:key`)?.focus()
}

function remove(part, name) {
  if (usesOf(part, name).length) {
    asked = { ...NOT_ASKED, part, name, refused: true }
    change()
    return
  }
  asked = NOT_ASKED
  editBook([part, name], undefined, `Deleted: ${SINGULAR[part]} ${name}.`)
}

/** Shows the part and the entry that a path of the book leads to; what has no field there is in the tree. */
onTheWay('book', (path) => {
  const [part, name] = path
  const { form } = state
  if (!isReady() || !(part in PARTS) || form.part === 'advanced') {
    if (form.part !== 'advanced') show({ part: 'advanced', start: false })
    return
  }
  if (part in ENTRIES && name !== undefined) reveal(`book ${part}`, names(part).indexOf(name), SHOWN)
  show({ part, start: false, ...(name !== undefined && { open: name }) })
  const field =
    document.getElementById(fieldId('book', path)) ?? document.getElementById(fieldId('book', path.slice(0, -1)))
  if (!field) show({ part: 'advanced' })
})
