// A shop from nothing: ten things to fill in, with starter values where there is a usual one, and then the first plan.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { amountInput } from './book-amount.js'
import { fieldAt, starterMark } from './book-fields.js'
import { faultsOfName, giveName } from './book-form.js'
import { isReady, schemaOf } from './book-words.js'
import { FORMAT } from './core.js'
import { editBook, editOrders } from './edits.js'
import { faultsAt, fieldId, keys, messages, said } from './faults.js'
import { field, number, textInput } from './fields.js'
import { inEnglish } from './library.js'
import { change, state, valueAt } from './state.js'
import { local, say } from './words.js'

/** Usual values that a new book begins with. Everything else is the maker's to fill in. */
const USUAL = {
  measures: 'us-customary',
  per: '1 cup',
  spoons: ['1 tbsp', '1 tsp', '1/2 tsp', '1/4 tsp'],
  reads: '0.1 g',
}

/** The documents of a shop that is begun from nothing. */
export function nothingYet() {
  const [base, color, formula, mold] = ['start.base', 'start.color', 'start.formula', 'start.mold'].map((name) =>
    say(name),
  )
  const { measures, per, spoons, reads } = USUAL
  // The places of the usual values are marked.
  const starter = {
    '/measures': measures,
    [fieldId('', ['formulas', formula, 'per'])]: per,
    '/bench/spoons': spoons,
    '/bench/balance/reads': reads,
  }
  const book = {
    format: FORMAT,
    measures,
    default_base: base,
    materials: { [base]: { kind: 'plastisol', density: '' }, [color]: { kind: 'colorant' } },
    formulas: { [formula]: { per, doses: { [color]: '' } } },
    molds: { [mold]: { cavities: '', cavity: '' } },
    bench: { cups: [{ holds: '' }], injector: { holds: '' }, balance: { reads }, spoons },
    ext: { starter },
  }
  const orders = { format: FORMAT, lines: [{ order: '1', mold, formulas: [formula], pieces: '' }] }
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

/** The ten things: the message that is their title, the fields that must be filled in, what is drawn. */
const THINGS = [
  {
    title: 'start.measures',
    needs: () => [['book', 'measures']],
    draw: (_, faults) =>
      fieldAt(['measures'], { $ref: '#/$defs/System' }, faults, { required: true, means: say('start.measuresHint') }),
  },
  {
    title: 'start.basePart',
    needs: ({ base }) => [['book', 'materials', base, 'density']],
    draw: ({ base }, faults) => html`${nameField('materials', base)} ${part('materials', base, ['density'], faults)}`,
  },
  {
    title: 'start.colorPart',
    needs: () => [],
    draw: ({ color }, faults) => html`${nameField('materials', color)} ${part('materials', color, ['drop'], faults)}`,
  },
  {
    title: 'start.moldPart',
    needs: ({ mold }) => [
      ['book', 'molds', mold, 'cavities'],
      ['book', 'molds', mold, 'cavity'],
    ],
    draw: ({ mold }, faults) =>
      html`${nameField('molds', mold)} ${part('molds', mold, ['cavities', 'cavity'], faults)}`,
  },
  {
    title: 'start.cupsPart',
    needs: () => (state.book.bench.cups ?? []).map((_, at) => ['book', 'bench', 'cups', at, 'holds']),
    draw: (_, faults) => bench('cups', faults),
  },
  {
    title: 'start.balancePart',
    needs: () => [['book', 'bench', 'balance', 'reads']],
    draw: (_, faults) => bench('balance', faults, say('start.scale')),
  },
  {
    title: 'start.spoonsPart',
    needs: () => [['book', 'bench', 'spoons']],
    draw: (_, faults) => bench('spoons', faults),
  },
  {
    title: 'start.injectorPart',
    needs: () => [['book', 'bench', 'injector', 'holds']],
    draw: (_, faults) => bench('injector', faults),
  },
  {
    title: 'start.formulaPart',
    needs: ({ formula, color }) => [
      ['book', 'formulas', formula, 'per'],
      ['book', 'formulas', formula, 'doses', color],
    ],
    draw: ({ formula, color }, faults) =>
      html`${nameField('formulas', formula)}
      ${amount(say('start.inIt', { material: color }), ['formulas', formula, 'doses', color], faults, color)}
      ${amount(say('formula.per'), ['formulas', formula, 'per'], faults)} ${starterMark(['formulas', formula, 'per'])}`,
  },
  {
    title: 'start.orderPart',
    needs: () => [
      ['orders', 'lines', 0, 'order'],
      ['orders', 'lines', 0, 'pieces'],
    ],
    draw: (_, __, faults) =>
      html`${ordered(say('start.order'), 'order', faults)} ${ordered(say('start.pieces'), 'pieces', faults, true)}`,
  },
]

/** The view; `plan` is that of the documents, if there is one. */
export function startView(plan, bookFaults, ordersFaults) {
  if (!isReady()) return html`<p role="status">${say('form.loading')}</p>`
  const all = things()
  if (!all) {
    return html`<p class="notice" role="status">
      ${say('start.notThere')}
      <button type="button" @click=${leave}>${say('start.toLists')}</button>
    </p>`
  }
  // What is empty has no fault yet: it is to be filled in.
  const told = (of, faults) => faults.filter(({ path }) => valueAt(state[of], keys(path)) !== '')
  const [own, ofOrders] = [told('book', bookFaults), told('orders', ordersFaults)]
  const left = THINGS.map(({ needs }) => needs(all).filter(([of, ...path]) => isEmpty(of, path)).length)
  const open = left.filter(Boolean).length
  return html`<div class="start-shop">
    <h2>${say('book.fromNothing')}</h2>
    <p class="hint">
      ${say('start.hint', {
        starters: html`<strong>${say('start.starters')}</strong>`,
        one: example('1 1/4 cup'),
        other: example('30 drops'),
        third: example('9.5 mL'),
      })}
    </p>
    <ol class="ten">
      ${THINGS.map(
        ({ title, draw }, at) =>
          html`<li class="thing ${left[at] ? '' : 'filled'}">
            <h3>
              ${say('start.thing', { number: at + 1, title: say(title) })}
              ${left[at] ? html`<small>${say('start.toFill')}</small>` : html`<span aria-hidden="true">✓</span>`}
            </h3>
            <div class="thing-fields">${draw(all, own, ofOrders)}</div>
          </li>`,
      )}
    </ol>
    <div class="ready" role="status">
      ${
        plan
          ? html`<p>
                <strong>${say('start.planned')}</strong>
                ${say('start.pots', { count: plan.pots.length, pieces: plan.lines[0]?.pieces ?? 0 })}
              </p>
              <div class="buttons"><a class="button" href="#bench" @click=${leave}>${say('start.toBench')}</a></div>`
          : html`<p>
              ${
                open
                  ? say('start.still', {
                      what: THINGS.filter((_, at) => left[at])
                        .map(({ title }) => inSentence(say(title)))
                        .join('; '),
                    })
                  : why(own, ofOrders)
              }
            </p>`
      }
      <div class="buttons"><button type="button" class="quiet" @click=${leave}>${say('start.toBook')}</button></div>
    </div>
  </div>`
}

/** Why there is no plan although everything is filled in. */
const why = (...faults) =>
  html`${faults.flat().map((fault) => html`<span><strong>${said(fault, 'message')}</strong> ${said(fault, 'help')}</span> `)}`

const example = (amount) => html`<code lang=${inEnglish()}>${local(amount)}</code>`

/** A title inside a sentence: its first word is small, if it is no noun of a language that writes them large. */
const inSentence = (title) => title[0].toLowerCase() + title.slice(1)

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
      <label for=${id}>${say('start.callIt')}</label>
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
