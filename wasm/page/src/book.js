// The shop's book: the cups on hand, files, and every field of the book with its faults.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { live } from '../vendor/lit-html/directives/live.js'
import { demo } from './begin.js'
import { bookForm } from './book-form.js'
import { importKeys, importView, isImporting } from './book-import.js'
import { nothingYet, startView } from './book-start.js'
import { calibration } from './calibrate.js'
import { FORMAT, faultsOfBook } from './core.js'
import { editBook, noEdits } from './edits.js'
import { messages, faultList, faultsAt, faultsJustAt, fieldId, keys } from './faults.js'
import { field, number, textInput } from './fields.js'
import { glovesSize } from './gloves.js'
import { isDemo, isInvented } from './invented.js'
import { planned, settled } from './planning.js'
import { languageChoice } from './language.js'
import { inEnglish } from './library.js'
import { saveFile, takeIn } from './storage.js'
import { once } from './press.js'
import { isBegun, notBegun } from './progress.js'
import { change, scaleOf, state, valueAt } from './state.js'
import { local, say, typed } from './words.js'

/** The view; `plan` is that of the present documents, if there is one; `faults` are those of the book and of the orders. */
export function bookView(plan, faults, ordersFaults) {
  if (state.bookText !== null) return broken()
  if (isImporting()) return importView(faults)
  if (state.form.start) return startView(plan, faults, ordersFaults)
  return html`
    ${faultList(say('book.faults', { count: faults.length }), 'book', faults)}
    ${
      isInvented()
        ? html`<p class="begin-own">
            ${say('book.tenThings')}
            <button type="button" class="quiet" @click=${newShop}>${say('book.beginOwn')}</button>
          </p>`
        : nothing
    }
    ${bookForm(faults, () => tree(faults), {
      before: () => html`<div class="book-tools">${cups()}</div>`,
      after: calibration,
    })}
    <div class="book-tools">
      <section>
        <h2>${say('book.files')}</h2>
        <p class="hint">${say('book.filesHint')}</p>
        <div class="buttons">
          ${opener(say('book.openBook'), openBook)}
          <button type="button" @click=${() => saveFile('book.json', state.book)}>${say('book.saveBook')}</button>
          ${opener(say('book.openOrders'), openOrders)}
          <button type="button" @click=${() => saveFile('orders.json', state.orders)}>${say('book.saveOrders')}</button>
          ${plan ? html`<button type="button" class="quiet" @click=${() => saveFile('plan.json', plan)}>${say('book.savePlan')}</button>` : nothing}
          ${importKeys()}
          <button type="button" class="quiet" @click=${newShop}>${say('book.fromNothing')}</button>
          <button type="button" class="quiet" @click=${demoDay}>${say('book.demo')}</button>
          ${state.before ? html`<button type="button" class="quiet" @click=${takeBack}>${say('book.back')}</button>` : nothing}
        </div>
      </section>
      <section>
        <h2>${say('book.thisPage')}</h2>
        ${languageChoice()}
        ${field(
          say('book.holdFor'),
          'hold',
          textInput({ id: 'hold', value: state.hold, set: (hold) => change({ hold }), size: 5, numeric: true }),
        )}
        <p class="hint">${say('book.holdHint')}</p>
        ${glovesSize()}
      </section>
    </div>
  `
}

/** Every field of the book, as its document has them. */
const tree = (faults) =>
  html`<section class="tree" id="book" tabindex="-1">
    <h2>${say('book.everyField')}</h2>
    ${messages('book', faultsJustAt(faults, []))}
    ${Object.entries(state.book).map(([key, value]) => branch([key], value, faults))} ${adder([], state.book)}
  </section>`

/** The cups on the shelf. One that is put away stays in the book under `ext`, where programs can find it. */
function cups() {
  const { bench } = state.book
  const here = Array.isArray(bench?.cups) ? bench.cups : []
  const away = Array.isArray(bench?.ext?.put_away) ? bench.ext.put_away : []
  const move = (cups, put_away) => {
    const { ext, ...tools } = bench
    const { put_away: _, ...others } = ext ?? {}
    const kept = { ...others, ...(put_away.length && { put_away }) }
    editBook(['bench'], { ...tools, cups, ...(Object.keys(kept).length && { ext: kept }) })
  }
  const holds = (cup) => (typeof cup?.holds === 'string' ? local(cup.holds) : JSON.stringify(cup?.holds ?? cup))
  const add = (event) => {
    event.preventDefault()
    const form = new FormData(event.target)
    const marks = typed(form.get('marks').trim())
    move([...here, { holds: typed(form.get('holds').trim()), ...(marks && { marks }) }], away)
    event.target.reset()
  }
  return html`<section>
    <h2>${say('book.cupsOnShelf')}</h2>
    <div class="buttons cups">
      ${here.map(
        (cup, at) =>
          html`<button
            type="button"
            role="switch"
            aria-checked="true"
            @click=${once('cups', () => move(here.toSpliced(at, 1), [...away, cup]))}
          >
            <span aria-hidden="true">✓</span> ${holds(cup)}
          </button>`,
      )}
      ${away.map(
        (cup, at) =>
          html`<button
            type="button"
            role="switch"
            aria-checked="false"
            class="quiet"
            @click=${once('cups', () => move([...here, cup], away.toSpliced(at, 1)))}
          >
            ${holds(cup)}
          </button>`,
      )}
    </div>
    <form class="fields" @submit=${add}>
      ${field(say('book.anotherCup'), 'cup:holds', html`<input id="cup:holds" name="holds" size="7" required placeholder="3 cup" autocomplete="off" />`)}
      ${field(say('book.marked'), 'cup:marks', html`<input id="cup:marks" name="marks" size="7" placeholder="1/4 cup" autocomplete="off" />`)}
      <button>${say('book.add')}</button>
    </form>
  </section>`
}

function opener(label, open) {
  return html`<label class="button"
    >${label}<input
      type="file"
      accept=".json,application/json"
      class="out-of-sight"
      @change=${(event) => {
        const [file] = event.target.files
        if (file) takeIn(async () => open(await file.text(), file.name))
        event.target.value = ''
      }}
  /></label>`
}

/** Opens a book: any fault of it can be fixed here. Until it can be read, the earlier book stays. */
function openBook(text, name = null) {
  const book = parsed(text)
  const twice = faultsOfBook(text).filter(({ code }) => code === 'duplicate-key')
  if (book && 'lines' in book && !('materials' in book)) {
    change({ notice: say('book.isOrders', { name: name ?? say('book.this') }) })
  } else if (book === undefined || twice.length) change({ bookText: text, notice: '' })
  else return replaceBook(book)
}

/** Opens a book alone, on its own scale. Orders of which it can make no line are those of another book: they are put aside. */
async function replaceBook(book) {
  if (!replace({ book, bookText: null, scale: scaleOf(book) })) return
  await settled()
  const { bookFaults, ordersFaults } = planned()
  const faulty = new Set(
    ordersFaults
      .map(({ path }) => keys(path))
      .filter(([list]) => list === 'lines')
      .map(([, at]) => at),
  )
  if (bookFaults.length || faulty.size < Math.max(1, state.orders.lines.length)) return
  change({
    orders: { format: FORMAT, lines: [] },
    edits: noEdits(),
    opened: state.opened + 1,
    notice: say('book.putAside'),
  })
}

function openOrders(text, name) {
  const orders = parsed(text)
  if (orders && Array.isArray(orders.lines) && orders.lines.every(isObject)) replace({ orders })
  else if (orders && 'materials' in orders) change({ notice: say('book.isBook', { name }) })
  else change({ notice: say('book.isNoOrders', { name }) })
}

/** The parts of the state that belong to a day's documents. */
const DAY = ['book', 'orders', 'edits', 'scale', 'form', ...Object.keys(notBegun())]

const present = () => Object.fromEntries(DAY.map((part) => [part, state[part]]))

/** Replaces the documents; the present ones are put aside with their ticks and clocks. */
export function replace(documents) {
  if (isBegun() && !confirm(say('book.removesTicks'))) return false
  // A book that cannot be read does not displace the one put aside.
  const reads = !state.before || !planned().bookFaults.length
  const before = reads ? present() : state.before
  const opened = state.opened + 1
  const form = { ...state.form, open: null, start: false }
  change({ edits: noEdits(), ...documents, ...notBegun(), before, opened, form, notice: '' })
  return true
}

/** Restores what was put aside; the present documents are put aside instead. */
function takeBack() {
  const opened = state.opened + 1
  change({
    ...notBegun(),
    edits: noEdits(),
    ...state.before,
    workAt: Date.now(),
    before: present(),
    opened,
    bookText: null,
    notice: '',
  })
}

/** The object of a JSON text; undefined if it is not one. */
function parsed(text) {
  try {
    const value = JSON.parse(text)
    return isObject(value) ? value : undefined
  } catch {
    // The library reports what is wrong with the text, and where.
    return undefined
  }
}

const isObject = (value) => typeof value === 'object' && value !== null && !Array.isArray(value)

function demoDay() {
  if (!isDemo() && !confirm(say('book.replaces'))) return
  takeIn(async () => {
    const { book, orders } = await demo()
    replace({ book, orders, bookText: null, scale: scaleOf(book) })
  })
}

/** Begins a shop from nothing; the present documents are put aside. */
export function newShop() {
  const documents = nothingYet()
  if (replace({ ...documents, bookText: null, scale: scaleOf(documents.book) })) {
    change({ form: { part: 'formulas', open: null, start: true } })
  }
}

/** A book whose text is not JSON or has a duplicate key: fixed as text. */
function broken() {
  const faults = faultsOfBook(state.bookText)
  return html`<section>
    <h2>${say('book.broken')}</h2>
    ${messages('book-text', faults)}
    <label for="book-text">${say('book.text')}</label>
    <textarea
      id="book-text"
      rows="24"
      spellcheck="false"
      aria-invalid=${faults.length ? 'true' : nothing}
      aria-describedby=${faults.length ? 'book-text:fault' : nothing}
      .value=${live(state.bookText)}
      @input=${(event) => change({ bookText: event.target.value })}
    ></textarea>
    <div class="buttons">
      <button type="button" @click=${() => openBook(state.bookText)}>${say('book.readAgain')}</button>
      <button type="button" class="quiet" @click=${() => change({ bookText: null })}>${say('book.backToBook')}</button>
    </div>
  </section>`
}

/** A field, or a group of fields that can be opened. */
function branch(path, value, faults) {
  const key = path.at(-1)
  const id = fieldId('book', path)
  if (typeof value !== 'object' || value === null) return leaf(path, value, faults)
  const own = faultsJustAt(faults, path)
  const all = faultsAt(faults, path)
  // A missing field is a fault of the group that lacks it: no field below can show it.
  const unseen = all.filter(({ path: at }) => at.startsWith(id.slice(4) + '/') && hidden(path, keys(at)))
  const open = opened.has(id) || all.length > 0
  const toggled = (event) => {
    // Fields that were opened for their faults stay open when these are fixed.
    if (event.target.open === opened.has(id)) return
    if (event.target.open) opened.add(id)
    else opened.delete(id)
    change()
  }
  return html`<details class=${all.length ? 'faulty' : ''} ?open=${open} @toggle=${toggled}>
    <summary id=${id}>
      ${name(key)}${all.length ? html` <span class="fault-count">${all.length}</span>` : nothing}
      <small lang=${inEnglish()}>${gist(value)}</small>
    </summary>
    ${
      open
        ? html`${messages(id, [...own, ...unseen])}
            <div class="branch">
              ${Object.entries(value).map(([below, inner]) =>
                branch([...path, Array.isArray(value) ? Number(below) : below], inner, faults),
              )}
              ${adder(path, value)}
            </div>`
        : nothing
    }
  </details>`
}

/** The open groups of fields, by id. */
const opened = new Set()

const hidden = (path, at) => valueAt(state.book, at.slice(0, path.length + 1)) === undefined

const name = (key) =>
  typeof key === 'number' ? say('faults.place', { number: key + 1 }) : html`<span lang=${inEnglish()}>${key}</span>`

/** The content of a closed group in a few words: its names, or the entries of a list. */
function gist(value) {
  const isGroup = (below) => typeof below === 'object' && below !== null
  const entries = Object.entries(value)
  const words = Array.isArray(value)
    ? value.map((below) => (isGroup(below) ? gist(below) : String(below)))
    : entries.map(([key, below]) => (isGroup(below) ? key : String(below)))
  const text = words.join(', ')
  return text.length > 70 ? `${text.slice(0, 68)}…` : text
}

function leaf(path, value, faults) {
  const id = fieldId('book', path)
  const own = faultsAt(faults, path)
  const key = path.at(-1)
  const long = typeof value === 'string' && value.length > 28
  const read = {
    string: (text) => text,
    number,
    boolean: (text) => (/^(true|false)$/.test(text) ? text === 'true' : text),
  }
  return html`<div class="leaf">
    <label for=${id}>${name(key)}</label>
    ${textInput({
      id,
      value,
      faults: own,
      size: long ? 44 : 16,
      set: (text) => editBook(path, (read[typeof value] ?? number)(text) ?? ''),
    })}
    <button
      type="button"
      class="quiet remove"
      aria-label=${say('book.remove', { what: path.join(' ') })}
      @click=${once(`remove ${id}`, () => editBook(path, undefined))}
    >
      <span aria-hidden="true">✕</span>
    </button>
    ${messages(id, own)}
  </div>`
}

/** A form for a new field, or in a list a button for one more like the last. */
function adder(path, value) {
  if (Array.isArray(value)) {
    return html`<button
      type="button"
      class="quiet"
      @click=${once(`more ${path}`, () => editBook(path, [...value, value.at(-1) ?? '']))}
    >
      ${say('book.oneMore')}
    </button>`
  }
  const add = (event) => {
    event.preventDefault()
    const form = new FormData(event.target)
    const text = form.get('value').trim()
    editBook(
      [...path, form.get('key').trim()],
      text.startsWith('{') || text.startsWith('[') ? (parsedValue(text) ?? text) : text,
    )
    event.target.reset()
  }
  const where = path.join(' ') || say('book.theBook')
  return html`<form class="adder" @submit=${add}>
    <input
      name="key"
      required
      size="12"
      placeholder=${say('book.newField')}
      aria-label=${say('book.nameOfField', { where })}
      autocomplete="off"
    />
    <input
      name="value"
      size="16"
      placeholder=${say('book.value')}
      aria-label=${say('book.valueOfField', { where })}
      autocomplete="off"
    />
    <button class="quiet">${say('book.add')}</button>
  </form>`
}

function parsedValue(text) {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
