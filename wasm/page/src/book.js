// The shop's book: the cups at hand, files, and every field of the book with its faults beside it.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { live } from '../vendor/lit-html/directives/live.js'
import { calibration } from './calibrate.js'
import { faultsOfBook, plan as planOf } from './core.js'
import { beside, faultList, faultsAt, faultsJustAt, fieldId, keys } from './faults.js'
import { field, number, textInput } from './fields.js'
import { counted } from './show.js'
import { demo, saveFile, takeIn } from './storage.js'
import { once } from './press.js'
import { isBegun } from './progress.js'
import { change, editBook, isInvented, state, valueAt } from './state.js'

/** The view; `plan` is that of the documents as they stand, where there is one; `faults` are those of the book. */
export function bookView(plan, faults) {
  if (state.bookText !== null) return broken()
  return html`
    ${faultList(`${counted(faults.length, 'fault')} in the book`, 'book', faults)}
    <div class="book-tools">
      ${cups()}
      <section>
        <h2>Files</h2>
        <p class="hint">Book and orders stay in this browser. Keep them as files too: a browser may forget.</p>
        <div class="buttons">
          ${opener('Open a book', openBook)}
          <button type="button" @click=${() => saveFile('book.json', state.book)}>Save the book</button>
          ${opener('Open orders', openOrders)}
          <button type="button" @click=${() => saveFile('orders.json', state.orders)}>Save the orders</button>
          ${plan ? html`<button type="button" class="quiet" @click=${() => saveFile('plan.json', plan)}>Save the plan</button>` : nothing}
          <button type="button" class="quiet" @click=${demoDay}>Demo book and orders</button>
          ${state.before ? html`<button type="button" class="quiet" @click=${takeBack}>Back to what was here before</button>` : nothing}
        </div>
      </section>
      <section>
        <h2>This page</h2>
        ${field(
          'A degassing is held for so many minutes',
          'hold',
          textInput({ id: 'hold', value: state.hold, set: (hold) => change({ hold }), size: 5, numeric: true }),
        )}
        <p class="hint">Empty: the clock counts up, and you stop it. The library states no time for it.</p>
      </section>
    </div>
    ${calibration()}
    <section class="tree" id="book" tabindex="-1">
      <h2>Every field of the book</h2>
      ${beside('book', faultsJustAt(faults, []))}
      ${Object.entries(state.book).map(([key, value]) => branch([key], value, faults))} ${adder([], state.book)}
    </section>
  `
}

/** The cups on the shelf: one that is put away stays in the book, for programs to find, under `ext`. */
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
  const holds = (cup) => (typeof cup?.holds === 'string' ? cup.holds : JSON.stringify(cup?.holds ?? cup))
  const add = (event) => {
    event.preventDefault()
    const form = new FormData(event.target)
    const marks = form.get('marks').trim()
    move([...here, { holds: form.get('holds').trim(), ...(marks && { marks }) }], away)
    event.target.reset()
  }
  return html`<section>
    <h2>Cups on the shelf</h2>
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
      ${field('Another, holding', 'cup:holds', html`<input id="cup:holds" name="holds" size="7" required placeholder="3 cup" autocomplete="off" />`)}
      ${field('marked every', 'cup:marks', html`<input id="cup:marks" name="marks" size="7" placeholder="1/4 cup" autocomplete="off" />`)}
      <button>Add</button>
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

/** Opens a book: whatever is wrong with it, it can be mended here. Until it reads, the book before stands. */
function openBook(text, name = null) {
  const book = parsed(text)
  const twice = faultsOfBook(text).filter(({ code }) => code === 'duplicate-key')
  if (book && 'lines' in book && !('materials' in book)) {
    change({ notice: `“${name ?? 'This'}” is an order list, no book: open it by “Open orders”.` })
  } else if (book === undefined || twice.length) change({ bookText: text, notice: '' })
  else replace({ book, bookText: null })
}

function openOrders(text, name) {
  const orders = parsed(text)
  if (orders && Array.isArray(orders.lines) && orders.lines.every(isObject)) replace({ orders })
  else if (orders && 'materials' in orders) change({ notice: `“${name}” is a book: open it by “Open a book”.` })
  else change({ notice: `“${name}” is no order list: that is a JSON object with a list “lines” of objects.` })
}

/** What belongs to a day and goes with its documents. */
const DAY = ['book', 'orders', 'done', 'ticked', 'tickedOn', 'timers']

const asItStands = () => Object.fromEntries(DAY.map((part) => [part, state[part]]))

/** Puts other documents in the place of those that stand here, which are put aside with their ticks and clocks. */
function replace(documents) {
  if (isBegun() && !confirm('The ticks and clocks of the day go with what stands here. Replace it?')) return
  // A book that does not read does not push the one before out.
  const reads = !state.before || !planOf(state.book, state.orders).bookFaults.length
  const before = reads ? asItStands() : state.before
  change({ ...documents, done: {}, ticked: [], tickedOn: null, timers: [], before, notice: '', removed: null })
}

/** Takes back what was put aside; what stands here is put aside in its place. */
function takeBack() {
  change({ ...state.before, before: asItStands(), bookText: null, notice: '', removed: null })
}

/** The object that a JSON text says; undefined where it says none. */
function parsed(text) {
  try {
    const value = JSON.parse(text)
    return isObject(value) ? value : undefined
  } catch {
    // What is wrong with the text is told by the library, with its place.
    return undefined
  }
}

const isObject = (value) => typeof value === 'object' && value !== null && !Array.isArray(value)

function demoDay() {
  if (!isInvented() && !confirm('The book and the orders that stand here are replaced. Are they saved?')) return
  takeIn(async () => {
    const [book, orders] = await Promise.all([demo('book'), demo('orders')])
    replace({ book, orders, bookText: null })
  })
}

/** A book whose text is no JSON, or says a thing twice: mended as text. */
function broken() {
  const faults = faultsOfBook(state.bookText)
  return html`<section>
    <h2>This book cannot be read yet</h2>
    ${beside('book-text', faults)}
    <label for="book-text">Its text</label>
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
      <button type="button" @click=${() => openBook(state.bookText)}>Read it again</button>
      <button type="button" class="quiet" @click=${() => change({ bookText: null })}>Back to the book before</button>
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
  // Fields that are missing are faults of what lacks them: no field below shows those.
  const unseen = all.filter(({ path: at }) => at.startsWith(id.slice(4) + '/') && hidden(path, keys(at)))
  const open = opened.has(id) || all.length > 0
  const toggled = (event) => {
    // Fields that were opened for their faults stay open when these are mended.
    if (event.target.open === opened.has(id)) return
    if (event.target.open) opened.add(id)
    else opened.delete(id)
    change()
  }
  return html`<details class=${all.length ? 'faulty' : ''} ?open=${open} @toggle=${toggled}>
    <summary id=${id}>
      ${name(key)}${all.length ? html` <span class="fault-count">${all.length}</span>` : nothing}
      <small>${gist(value)}</small>
    </summary>
    ${
      open
        ? html`${beside(id, [...own, ...unseen])}
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

/** The groups of fields that are open, by their ids. */
const opened = new Set()

const hidden = (path, at) => valueAt(state.book, at.slice(0, path.length + 1)) === undefined

const name = (key) => (typeof key === 'number' ? `no. ${key + 1}` : key)

/** What a closed group holds, in a few words: its names, of a list what stands in it. */
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
      aria-label="Remove ${path.join(' ')}"
      @click=${once(`remove ${id}`, () => editBook(path, undefined))}
    >
      <span aria-hidden="true">✕</span>
    </button>
    ${beside(id, own)}
  </div>`
}

/** A field more: its name and value, or in a list one like the last. */
function adder(path, value) {
  if (Array.isArray(value)) {
    return html`<button
      type="button"
      class="quiet"
      @click=${once(`more ${path}`, () => editBook(path, [...value, value.at(-1) ?? '']))}
    >
      One more like the last
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
  const where = path.join(' ') || 'the book'
  return html`<form class="adder" @submit=${add}>
    <input
      name="key"
      required
      size="12"
      placeholder="new field"
      aria-label="Name of a new field in ${where}"
      autocomplete="off"
    />
    <input
      name="value"
      size="16"
      placeholder="value"
      aria-label="Value of a new field in ${where}"
      autocomplete="off"
    />
    <button class="quiet">Add</button>
  </form>`
}

function parsedValue(text) {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
