// The form for the book: its formulas, materials, molds, products and bench as lists with new, copy, rename and delete.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { repeat } from '../vendor/lit-html/directives/repeat.js'
import { entryFields, fieldAt, marksMoved } from './book-fields.js'
import { formulaFields } from './book-formula.js'
import { keyOfPart, ofPart, renamed, usesOf, wordsOfUse } from './book-uses.js'
import { isReady, schemaOf } from './book-words.js'
import { faultsOfBook } from './core.js'
import { editAll, editBook } from './edits.js'
import { faultsAt, faultsJustAt, fieldId, goTo, messages, onTheWay } from './faults.js'
import { words } from './generic.js'
import { ofLibrary } from './library.js'
import { part, reveal } from './part.js'
import { once } from './press.js'
import { change, state } from './state.js'
import { local, message, say } from './words.js'

/** The parts of the book that have a form, and the tree of all fields. */
const PARTS = {
  formulas: 'form.formulas',
  materials: 'form.materials',
  molds: 'form.molds',
  products: 'form.products',
  bench: 'form.bench',
  advanced: 'form.advanced',
}

const titleOf = (part) => say(PARTS[part])

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
      withCommas([
        ...Object.entries(isObject(doses) ? doses : {}).map(([material, amount]) =>
          ofLibrary(`${amount?.unit ? `${amount.value} ${amount.unit}` : amount} ${material}`),
        ),
        per ? say('form.per', { amount: ofLibrary(per) }) : '',
        typeof base === 'string' ? base : '',
      ]),
    fresh: (others) => ({ per: others.at(-1)?.per ?? '1 cup', doses: {} }),
    without: ['per', 'base', 'doses'],
  },
  materials: {
    gist: ({ kind, density, like }) => ofLibrary([kind, like, density?.value ?? density].filter(Boolean).join(', ')),
    fresh: () => ({ kind: 'colorant' }),
    first: ({ kind }) => OFFERED[kind] ?? [],
  },
  molds: {
    gist: ({ cavities, cavity }) =>
      isObject(cavities)
        ? Object.entries(cavities)
            .map(([shape, one]) => `${one?.count} ${shape}`)
            .join(', ')
        : [
            say('form.cavities', { count: cavities ?? '' }),
            isObject(cavity) ? say('form.water', { amount: String(cavity.water) }) : cavity,
          ]
            .filter(Boolean)
            .join(', '),
    fresh: () => ({ cavities: 1, cavity: '' }),
    first: ({ cavities }) => (isObject(cavities) ? ['sprue', 'feed'] : ['cavity', 'sprue', 'feed']),
  },
  products: {
    gist: ({ mold, formulas, layers }) =>
      [mold, Array.isArray(layers) ? layers.map((layer) => listed(layer?.formulas)).reduce(over, '') : listed(formulas)]
        .filter(Boolean)
        .join(', '),
    fresh: () => ({ mold: names('molds')[0] ?? '', formulas: names('formulas').slice(0, 1) }),
    first: ({ layers }) => (layers === undefined ? ['formulas'] : []),
  },
}

const withCommas = (parts) => parts.filter(Boolean).map((part, at) => html`${at ? ', ' : nothing}${part}`)
const over = (one, other) => (one ? say('form.over', { one, other }) : other)
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
  return html`<nav class="book-parts" aria-label=${say('form.parts')}>
      ${Object.keys(PARTS).map(
        (part) =>
          html`<button
            type="button"
            class=${part === shown ? '' : 'quiet'}
            aria-current=${part === shown ? 'true' : nothing}
            @click=${() => show({ part })}
          >
            ${titleOf(part)}${count(part) ? html` <span class="fault-count">${count(part)}</span>` : nothing}
          </button>`,
      )}
    </nav>
    ${shown === 'advanced' ? tree() : isReady() ? partView(shown, faults, tools) : html`<p role="status">${say('form.loading')}</p>`}`
}

function partView(part, faults, tools) {
  if (part !== 'bench') return entries(part, faults)
  const { bench } = state.book
  const id = fieldId('book', ['bench'])
  return html`${tools.before()}
    <section class="entry-list" aria-label=${say('form.tools')} id=${id} tabindex="-1">
      <h2 class="out-of-sight">${say('form.tools')}</h2>
      ${messages(id, faultsJustAt(faults, ['bench']))}
      ${
        isObject(bench)
          ? html`<ul class="entries">
                ${Object.keys(TOOLS).map((key) => tool(key, faults))}
              </ul>
              ${entryFields({ path: ['bench'], schema: schemaOf('bench'), faults, without: Object.keys(TOOLS) })}`
          : html`<button type="button" @click=${() => editBook(['bench'], { cups: [], injector: { holds: '' } })}>
              ${say('form.beginBench')}
            </button>`
      }
    </section>
    ${tools.after()}`
}

/** The tools of the bench that have a card, with their titles. */
const TOOLS = {
  cups: 'form.toolCups',
  spoons: 'form.toolSpoons',
  balance: 'form.toolBalance',
  injector: 'form.toolInjector',
  vacuum: 'form.toolVacuum',
  oven: 'form.toolOven',
}

function tool(key, faults) {
  const value = state.book.bench[key]
  const { properties, required } = schemaOf('bench')
  const path = ['bench', key]
  const label = say(TOOLS[key])
  const gist = value === undefined ? say('form.none') : ofLibrary(gistOf(value))
  return folded(path, label, gist, faultsAt(faults, path).length, () =>
    fieldAt(path, properties[key], faults, { required: required.includes(key), label }),
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
  const { shown, keys: others } = part(`book ${part_}`, list, SHOWN, titleOf(part_))
  return html`<section class="entry-list" aria-label=${titleOf(part_)} id=${id} tabindex="-1">
    <h2 class="out-of-sight">${titleOf(part_)}</h2>
    ${messages(id, faultsJustAt(faults, [part_]))}
    <div class="buttons">
      <button type="button" @click=${once(`new ${part_}`, () => addNew(part_, list))}>
        ${ofPart('form.new', part_)}
      </button>
    </div>
    ${others}
    <ul class="entries">
      ${repeat(
        shown,
        ([name]) => name,
        ([name, entry]) => card(part_, name, entry, faults),
      )}
    </ul>
    ${others} ${list.length ? nothing : html`<p class="hint">${ofPart('form.no', part_)}</p>`}
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
        ${isOpen ? nothing : html`<small>${typeof gist === 'string' ? local(gist) : gist}</small>`}
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
        aria-label=${say('form.copyOf', { name })}
        @click=${once(`copy ${id}`, () => copy(part, name))}
      >
        ${say('form.copy')}
      </button>
      <button
        type="button"
        class="quiet"
        aria-label=${say('form.renameOf', { name })}
        @click=${() => askName(part, name)}
      >
        ${say('form.rename')}
      </button>
      <button
        type="button"
        class="quiet"
        aria-label=${say('form.deleteOf', { name })}
        @click=${once(`delete ${id}`, () => remove(part, name))}
      >
        ${say('form.delete')}
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
            <button type="button" @click=${() => editBook(path, fresh([]))}>${say('form.beginAgain')}</button>`
    }
    ${
      uses.length && !(isAsked && asked.refused)
        ? html`<div class="used">
            <p>${say('form.usedBy')}</p>
            ${links(uses)}
          </div>`
        : nothing
    }`
}

/** Why something is not deleted, with a key to each place that uses it. */
function refusal(name, uses) {
  return html`<div class="refused" role="alert">
    <p><strong>${say('form.refused', { name, count: uses.length })}</strong> ${say('form.refusedHelp')}</p>
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
  const name = free(part, ofPart('form.fresh', part))
  const entry = ENTRIES[part].fresh(list.map(([, one]) => one).filter(isObject))
  begin(part, name, entry, message(keyOfPart('form.added', part)), list.length)
}

function copy(part, name) {
  const place = names(part).indexOf(name)
  const entry = structuredClone(state.book[part][name])
  begin(part, free(part, say('form.nameOfCopy', { name })), entry, message('form.copied', { name }), place)
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
      <label for="entry-name">${say('form.name')}</label>
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
    <div class="field ends"><button>${say(rename === name ? 'form.keepName' : 'form.rename')}</button></div>
  </form>`
}

/** Why something cannot have a name: it is taken, or the library does not take it. */
export function faultsOfName(part, name, to) {
  if (to.trim() !== name && names(part).includes(to.trim())) {
    const taken = ofPart('form.taken', part, { name: to.trim() })
    return [{ path: '', message: taken, help: say('form.takenHelp'), own: true }]
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
  const words = message('form.renamed', { name, to })
  editAll([...renamed(part, name, to), ...marksMoved([part, name], [part, to])], words)
  if (isInList) document.getElementById(`${fieldId('book', [part, to])}:key`)?.focus()
}

function remove(part, name) {
  if (usesOf(part, name).length) {
    asked = { ...NOT_ASKED, part, name, refused: true }
    change()
    return
  }
  asked = NOT_ASKED
  editBook([part, name], undefined, message(keyOfPart('form.deleted', part), { name }))
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
