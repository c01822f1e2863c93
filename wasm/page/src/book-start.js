// A shop from nothing: ten things to fill in, with starter values where there is a usual one, and then the first plan.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { amountInput } from './book-amount.js'
import { fieldAt, starterMark } from './book-fields.js'
import { faultsOfName, giveName } from './book-form.js'
import { isReady, schemaOf } from './book-words.js'
import { FORMAT } from './core.js'
import { editBook, editOrders } from './edits.js'
import { faultsAt, fieldId, keys, messages } from './faults.js'
import { field, number, textInput } from './fields.js'
import { change, state, valueAt } from './state.js'

/** Usual values that a new book begins with, by their places. Everything else is the maker's to fill in. */
const STARTERS = {
  '/measures': 'us-customary',
  '/formulas/formula 1/per': '1 cup',
  '/bench/spoons': ['1 tbsp', '1 tsp', '1/2 tsp', '1/4 tsp'],
  '/bench/balance/reads': '0.1 g',
}

/** The documents of a shop that is begun from nothing. */
export function nothingYet() {
  const book = {
    format: FORMAT,
    measures: STARTERS['/measures'],
    default_base: 'base',
    materials: { base: { kind: 'plastisol', density: '' }, 'color 1': { kind: 'colorant' } },
    formulas: { 'formula 1': { per: STARTERS['/formulas/formula 1/per'], doses: { 'color 1': '' } } },
    molds: { 'mold 1': { cavities: '', cavity: '' } },
    bench: {
      cups: [{ holds: '' }],
      injector: { holds: '' },
      balance: { reads: STARTERS['/bench/balance/reads'] },
      spoons: STARTERS['/bench/spoons'],
    },
    ext: { starter: STARTERS },
  }
  const orders = { format: FORMAT, lines: [{ order: '1', mold: 'mold 1', formulas: ['formula 1'], pieces: '' }] }
  return { book, orders }
}

/** The names of the things that a new shop begins with; null if they are no longer there. */
function things() {
  const { book, orders } = state
  const [line] = orders.lines ?? []
  const [base, mold, formula] = [book.default_base, line?.mold, line?.formulas?.[0]]
  const [color] = Object.keys(book.formulas?.[formula]?.doses ?? {})
  const isThere = book.materials?.[base] && book.materials?.[color] && book.molds?.[mold] && book.bench
  return isThere ? { base, color, mold, formula } : null
}

const isEmpty = (of, path) => [undefined, '', null].includes(valueAt(state[of], path))

/** The ten things: a title, the fields that must be filled in, what is drawn. */
const THINGS = [
  {
    title: 'Your measures',
    needs: () => [['book', 'measures']],
    draw: (_, faults) =>
      fieldAt(
        ['measures'],
        { $ref: '#/$defs/System', description: 'How much a cup, a spoon and a fluid ounce hold.' },
        faults,
        { required: true },
      ),
  },
  {
    title: 'The base plastisol, and its density',
    needs: ({ base }) => [['book', 'materials', base, 'density']],
    draw: ({ base }, faults) => html`${nameField('materials', base)} ${part('materials', base, ['density'], faults)}`,
  },
  {
    title: 'One colorant, and its drop',
    needs: () => [],
    draw: ({ color }, faults) => html`${nameField('materials', color)} ${part('materials', color, ['drop'], faults)}`,
  },
  {
    title: 'One mold',
    needs: ({ mold }) => [
      ['book', 'molds', mold, 'cavities'],
      ['book', 'molds', mold, 'cavity'],
    ],
    draw: ({ mold }, faults) =>
      html`${nameField('molds', mold)} ${part('molds', mold, ['cavities', 'cavity'], faults)}`,
  },
  {
    title: 'The cups that you mix in',
    needs: () => (state.book.bench.cups ?? []).map((_, at) => ['book', 'bench', 'cups', at, 'holds']),
    draw: (_, faults) => bench('cups', faults),
  },
  {
    title: 'The scale',
    needs: () => [['book', 'bench', 'balance', 'reads']],
    draw: (_, faults) => bench('balance', faults, 'Scale'),
  },
  { title: 'The spoons', needs: () => [['book', 'bench', 'spoons']], draw: (_, faults) => bench('spoons', faults) },
  {
    title: 'The injector',
    needs: () => [['book', 'bench', 'injector', 'holds']],
    draw: (_, faults) => bench('injector', faults),
  },
  {
    title: 'One formula',
    needs: ({ formula, color }) => [
      ['book', 'formulas', formula, 'per'],
      ['book', 'formulas', formula, 'doses', color],
    ],
    draw: ({ formula, color }, faults) =>
      html`${nameField('formulas', formula)}
      ${amount(`${color} in it`, ['formulas', formula, 'doses', color], faults, color)}
      ${amount('Per, of base', ['formulas', formula, 'per'], faults)} ${starterMark(['formulas', formula, 'per'])}`,
  },
  {
    title: 'One order',
    needs: () => [
      ['orders', 'lines', 0, 'order'],
      ['orders', 'lines', 0, 'pieces'],
    ],
    draw: (_, __, faults) => html`${ordered('Order', 'order', faults)} ${ordered('Pieces', 'pieces', faults, true)}`,
  },
]

/** The view; `plan` is that of the documents, if there is one. */
export function startView(plan, bookFaults, ordersFaults) {
  if (!isReady()) return html`<p role="status">Loading the form …</p>`
  const all = things()
  if (!all) {
    return html`<p class="notice" role="status">
      What a new shop begins with is no longer in the book: go on in its lists.
      <button type="button" @click=${leave}>To the lists</button>
    </p>`
  }
  // What is empty has no fault yet: it is to be filled in.
  const told = (of, faults) => faults.filter(({ path }) => valueAt(state[of], keys(path)) !== '')
  const [own, ofOrders] = [told('book', bookFaults), told('orders', ordersFaults)]
  const left = THINGS.map(({ needs }) => needs(all).filter(([of, ...path]) => isEmpty(of, path)).length)
  const open = left.filter(Boolean).length
  return html`<div class="start-shop">
    <h2>A shop from nothing</h2>
    <p class="hint">
      Ten things, and your first day is planned. <strong>Starter values</strong> are usual ones: they stay marked until
      you change them. Every amount is read as you would say it: <code>1 1/4 cup</code>, <code>30 drops</code>,
      <code>9.5 mL</code>.
    </p>
    <ol class="ten">
      ${THINGS.map(
        ({ title, draw }, at) =>
          html`<li class="thing ${left[at] ? '' : 'filled'}">
            <h3>
              ${at + 1}. ${title}
              ${left[at] ? html`<small>to fill in</small>` : html`<span aria-hidden="true">✓</span>`}
            </h3>
            <div class="thing-fields">${draw(all, own, ofOrders)}</div>
          </li>`,
      )}
    </ol>
    <div class="ready" role="status">
      ${
        plan
          ? html`<p>
                <strong>Your first day is planned:</strong> ${plan.pots.length}
                ${plan.pots.length === 1 ? 'pot' : 'pots'}, ${plan.lines[0]?.pieces} pieces.
              </p>
              <div class="buttons"><a class="button" href="#bench" @click=${leave}>To the bench</a></div>`
          : html`<p>
              ${
                open
                  ? `Still to fill in: ${THINGS.filter((_, at) => left[at])
                      .map(({ title }) => title.toLowerCase())
                      .join('; ')}.`
                  : why(own, ofOrders)
              }
            </p>`
      }
      <div class="buttons"><button type="button" class="quiet" @click=${leave}>To the lists of the book</button></div>
    </div>
  </div>`
}

/** Why there is no plan although everything is filled in. */
const why = (...faults) =>
  html`${faults.flat().map(({ message, help }) => html`<span><strong>${message}</strong> ${help}</span> `)}`

const leave = () => change({ form: { ...state.form, start: false } })

/** Some fields of an entry. */
function part(part, name, fields, faults) {
  const schema = schemaOf(part)
  return fields.map((key) =>
    fieldAt([part, name, key], schema.properties[key], faults, {
      required: (schema.required ?? []).includes(key) || key === 'density' || key === 'cavity',
    }),
  )
}

function bench(key, faults, label = null) {
  const schema = schemaOf('bench')
  return fieldAt(['bench', key], schema.properties[key], faults, { required: true, label, brief: true })
}

function amount(label, path, faults, material = null) {
  const id = fieldId('book', path)
  const own = faultsAt(faults, path)
  const set = (text) => editBook(path, text)
  return field(label, id, amountInput({ id, value: valueAt(state.book, path), faults: own, set, label, material }), own)
}

function ordered(label, key, faults, numeric = false) {
  const path = ['lines', 0, key]
  const id = fieldId('orders', path)
  const own = faultsAt(faults, key === 'pieces' ? ['lines'] : path)
  const set = (text) => editOrders(path, numeric ? (number(text) ?? '') : text)
  return field(
    label,
    id,
    textInput({ id, value: valueAt(state.orders, path), faults: own, set, size: 6, numeric }),
    own,
  )
}

/** Faults of a name that is being given, by its place. */
let naming = { id: null, text: '', faults: [] }

/** The name of a thing, given when it is typed: it is renamed where it is used. */
function nameField(part, name) {
  const id = `start/${part}/${name}`
  const isNaming = naming.id === id
  const type = (event) => {
    const text = event.target.value
    naming = { id, text, faults: text.trim() === name ? [] : faultsOfName(part, name, text) }
    change()
  }
  const done = () => {
    const { text, faults } = naming
    if (naming.id !== id || faults.length) return
    naming = { id: null, text: '', faults: [] }
    queueMicrotask(() => (text.trim() === name ? change() : giveName(part, name, text.trim(), false)))
  }
  const faults = isNaming ? naming.faults : []
  return html`<div class="entry-field">
    <div class="field">
      <label for=${id}>What you call it</label>
      <input
        id=${id}
        size="18"
        autocomplete="off"
        aria-invalid=${faults.length ? 'true' : nothing}
        aria-describedby=${faults.length ? `${id}:fault` : nothing}
        .value=${isNaming ? naming.text : name}
        @input=${type}
        @change=${done}
        @blur=${done}
      />
      ${messages(id, faults)}
    </div>
  </div>`
}
