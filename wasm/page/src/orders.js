// The day's orders, line by line, each fault next to its field.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { guard } from '../vendor/lit-html/directives/guard.js'
import { repeat } from '../vendor/lit-html/directives/repeat.js'
import { costOfLine, costTable, lineCosts, runsOut } from './cost.js'
import { FORMAT, quoteOf } from './core.js'
import { editOrders } from './edits.js'
import { letter } from './letter.js'
import { messages, faultList, faultsAt, faultsJustAt, fieldId } from './faults.js'
import { choice, field, number, stepper, textInput } from './fields.js'
import { LINES, part, reveal } from './part.js'
import { once } from './press.js'
import { ofBefore } from './progress.js'
import { short } from './show.js'
import { change, state, valueAt } from './state.js'
import { waitingForList } from './shelf.js'
import { formulasOf, swatchesOf } from './swatch.js'
import { language, local, message, say } from './words.js'

/**
 * The view: `last` is the last plan that could be made, `present` whether it is that of the present orders; `faults` are
 * those of the present orders. `now` says what is made of each line, and its place in the plan, if the day went on.
 */
export function ordersView(last, faults, present, now) {
  const { lines } = state.orders
  const plan = present ? quoteOf(last) : null
  const { shown, from, keys } = part('lines', lines, LINES, say('orders.lines'))
  return html`
    ${faultList(say('orders.faults', { count: faults.length }), 'orders', faults)} ${whole(faults)}
    <div class="fields of-day">${written(say('orders.day'), ['day'], faults, { size: 12 })}</div>
    ${ofBefore()} ${messages(fieldId('orders', ['lines']), faultsJustAt(faults, ['lines']))} ${keys}
    <ol class="orders" id=${fieldId('orders', ['lines'])} tabindex="-1">
      ${repeat(
        shown,
        (_, index) => from + index,
        (line, index) => lineCard(line, from + index, plan, faults, now?.[from + index]),
      )}
    </ol>
    ${keys}
    <div class="buttons"><button type="button" @click=${once('add', addLine)}>${say('orders.add')}</button></div>
    ${runsOut(plan)} ${stock(faults)} ${shelf(faults)} ${costTable(plan)}
  `
}

const names = (part) => Object.keys(state.book[part] ?? {})

function lineCard(line, index, plan, faults, now) {
  const path = ['lines', index]
  const id = fieldId('orders', path)
  const own = faultsJustAt(faults, path)
  const isFaulty = faultsAt(faults, path).length > 0
  const place = now ? (now.line ?? 0) - 1 : index
  const planned = plan?.lines[place]
  const byPack = isByPack(line)
  // At a key in one line, the fields of the others stay as they are.
  const drawnFrom = [line, state.book, language(), opened.has(index), isFaulty ? faults : null]
  return html`<li class="line ${isFaulty ? 'faulty' : ''} ${opened.has(index) ? 'open' : ''}" id=${id} tabindex="-1">
    <div class="fields">
      ${guard(drawnFrom, () => fieldsOfLine(line, index, faults))}
      ${planned ? comesTo(line, planned, byPack && !now?.made, lineCosts(plan)[place]) : nothing}
    </div>
    ${messages(id, own)} ${strays(line, path, fieldsOf(line, byPack), faults, OPPOSITES)}
    ${now?.made ? html`<p class="made">${say('orders.made', { made: html`<strong>${now.made}</strong>`, owed: now.owed })}</p>` : nothing}
  </li>`
}

const isByPack = (line) => line.packs !== undefined || line.pack_of !== undefined

function fieldsOfLine(line, index, faults) {
  const path = ['lines', index]
  const byPack = isByPack(line)
  return html`${written(say('orders.order'), [...path, 'order'], faults, { size: 3 })} ${what(line, path, faults)}
    ${shape(line, path, faults)}
    ${byPack ? count(say('orders.packs'), [...path, 'packs'], faults) : count(say('orders.pieces'), [...path, 'pieces'], faults)}
    <div class="rest">
      ${byPack ? written(say('orders.packOf'), [...path, 'pack_of'], faults, { size: 3, numeric: true }) : nothing}
      ${written(say('orders.promised'), [...path, 'promised'], faults, { size: 9, placeholder: say('orders.date') })}
      <div class="field ends">
        <button type="button" class="quiet" @click=${once(`swap ${index}`, () => swap(line, index, byPack))}>
          ${byPack ? say('orders.byPiece') : say('orders.inPacks')}
        </button>
        <button
          type="button"
          class="quiet"
          aria-label=${say('orders.remove', { line: index + 1 })}
          @click=${once(`remove ${index}`, () => removeLine(index))}
        >
          <span aria-hidden="true">✕</span>
        </button>
      </div>
    </div>
    <button
      type="button"
      class="quiet opens"
      aria-expanded=${opened.has(index)}
      aria-label=${say('orders.more', { line: index + 1 })}
      @click=${once(`open ${index}`, () => turn(index))}
    >
      <span aria-hidden="true">⋯</span>
    </button>`
}

/** What a line comes to by the plan. */
function comesTo(line, { pieces, piece, pots }, isCounted, cost) {
  const from = pots.map((pot) => letter(pot))
  return html`<p class="comes-to">
    ${swatchesOf(formulasOf(line))}
    ${isCounted ? html`<strong>${say('orders.inAll', { count: pieces })}</strong>, ` : nothing}
    ${say('orders.each', { mass: short(piece), pots: html`${from}` })} <span class="price">${costOfLine(cost)}</span>
  </p>`
}

/** The lines whose further fields are shown on a small screen. */
let opened = new Set()

function turn(index) {
  opened = opened.has(index) ? new Set([...opened].filter((one) => one !== index)) : new Set([...opened, index])
  change()
}

/** The thing ordered: a product, or a mold and formulas. */
function what(line, path, faults) {
  const set = (product) => {
    const { product: _, mold, formulas, layers, overlap, shape, ...rest } = line
    editOrders(path, { ...rest, ...(product ? { product } : aMold()) })
  }
  const id = fieldId('orders', [...path, 'product'])
  const own = faultsAt(faults, [...path, 'product'])
  const none = say('orders.byMold')
  const product = choice({ id, value: line.product, names: names('products'), faults: own, set, none })
  return html`${field(say('orders.product'), id, product, own, 'product')}
  ${line.product === undefined ? byMold(line, path, faults) : nothing}`
}

const listOf = (value) => (Array.isArray(value) ? value : [])

const aMold = () => ({ mold: names('molds')[0], formulas: names('formulas').slice(0, 1) })

function byMold(line, path, faults) {
  const formulas = [...path, 'formulas']
  const layers = [...path, 'layers']
  return html`${chosen(say('orders.mold'), [...path, 'mold'], names('molds'), faults)}
  ${
    Array.isArray(line.layers)
      ? html`<div class="field" id=${fieldId('orders', layers)} tabindex="-1">
          ${say('orders.layers', {
            layers: line.layers
              .map((layer) => `${listOf(layer?.formulas).join(' + ')} ${local(String(layer?.share))}`)
              .join(', '),
          })}
          ${messages(fieldId('orders', layers), faultsAt(faults, layers))}
        </div>`
      : html`${listOf(line.formulas).map((_, at) => chosen(say('orders.formula'), [...formulas, at], names('formulas'), faults, say('orders.none')))}
          <div class="field ends" id=${fieldId('orders', formulas)} tabindex="-1">
            <button
              type="button"
              class="quiet"
              @click=${once(fieldId('orders', formulas), () => editOrders(formulas, [...listOf(line.formulas), names('formulas')[0]]))}
            >
              ${say('orders.another')}
            </button>
            ${messages(fieldId('orders', formulas), faultsJustAt(faults, formulas))}
          </div>`
  }`
}

function shape(line, path, faults) {
  const mold = state.book.molds?.[state.book.products?.[line.product]?.mold ?? line.mold]
  const unlike = typeof mold?.cavities === 'object'
  if (!unlike && line.shape === undefined) return nothing
  return chosen(say('orders.shape'), [...path, 'shape'], unlike ? Object.keys(mold.cavities) : [], faults)
}

function chosen(label, path, names, faults, none = null) {
  const id = fieldId('orders', path)
  const own = faultsAt(faults, path)
  const set = (name) => editOrders(path, name || undefined)
  return field(label, id, choice({ id, value: valueAt(state.orders, path), names, faults: own, set, none }), own)
}

function written(label, path, faults, more) {
  const id = fieldId('orders', path)
  const own = faultsAt(faults, path)
  const set = (text) => editOrders(path, more.numeric ? number(text) : text || undefined)
  return field(label, id, textInput({ id, value: valueAt(state.orders, path), faults: own, set, ...more }), own)
}

/** A count, with buttons for one less and one more. */
function count(label, path, faults) {
  const id = fieldId('orders', path)
  const own = faultsAt(faults, path)
  const value = valueAt(state.orders, path)
  const now = Number.isInteger(value) ? value : 0
  const set = (text) => editOrders(path, number(text))
  return stepper({
    label,
    id,
    faults: own,
    before: [['−', say('orders.less', { what: label }), () => editOrders(path, now - 1), now <= 1]],
    control: textInput({ id, value, faults: own, set, size: 3, numeric: true }),
    after: [['+', say('orders.oneMore', { what: label }), () => editOrders(path, now + 1)]],
  })
}

/** Counts a line by piece or in packs, with the same number of pieces. */
function swap(line, index, byPack) {
  const { pieces, packs, pack_of, ...rest } = line
  const counted = byPack ? { pieces: piecesIn(packs, pack_of) } : { packs: 1, pack_of: pieces ?? 1 }
  editOrders(['lines', index], { ...rest, ...counted })
}

/** The pieces of a number of packs. A value that is not a number stays, shown with its fault. */
function piecesIn(packs = 1, each = 1) {
  if (typeof packs !== 'number') return packs
  return typeof each === 'number' ? packs * each : each
}

function removeLine(at) {
  const { order, product, mold } = state.orders.lines[at]
  const what = [order, product ?? mold].filter((word) => word !== undefined).join(' ')
  editOrders(['lines', at], undefined, message('orders.removed', { line: at + 1, what }))
}

/** Fields that a line cannot have together with a product or with packs. */
const OPPOSITES = ['mold', 'formulas', 'layers', 'pieces']

/** The keys of a line that have a field of their own. */
function fieldsOf(line, byPack) {
  const byMold = line.product === undefined ? ['mold', Array.isArray(line.layers) ? 'layers' : 'formulas'] : []
  return ['order', 'product', ...byMold, 'shape', 'promised', ...(byPack ? ['packs', 'pack_of'] : ['pieces'])]
}

/** Keys with a fault, or that exclude another, and that have no field on the page; each with a button to remove it. */
function strays(object, path, fields, faults, opposites = []) {
  return Object.keys(object)
    .filter((key) => !fields.includes(key) && key !== 'ext')
    .map((key) => ({ key, at: [...path, key], own: faultsAt(faults, [...path, key]) }))
    .filter(({ key, own }) => own.length || opposites.includes(key))
    .map(({ key, at, own }) => {
      const id = fieldId('orders', at)
      return html`<div class="stray" id=${id} tabindex="-1">
        <code>${key}: ${JSON.stringify(object[key])}</code>
        <button
          type="button"
          class="quiet"
          aria-label=${say('orders.removeField', { field: at.join(' ') })}
          @click=${() => editOrders(at, undefined)}
        >
          ${say('orders.removeIt')}
        </button>
        ${messages(id, own)}
      </div>`
    })
}

/** The faults of the list itself, rather than of one of its fields. */
function whole(faults) {
  const own = faultsJustAt(faults, [])
  const wrong = own.some(({ code }) => code === 'missing-field') || faultsAt(faults, ['format']).length
  return html`<div id="orders" tabindex="-1">
    ${messages('orders', own)} ${strays(state.orders, [], ['day', 'lines', 'stock', 'shelf'], faults)}
    ${
      wrong && state.orders.format !== FORMAT
        ? html`<div class="buttons">
            <button type="button" @click=${() => editOrders(['format'], FORMAT)}>
              ${say('orders.format', { format: FORMAT })}
            </button>
          </div>`
        : nothing
    }
  </div>`
}

function addLine() {
  const { lines } = state.orders
  const product = names('products')[0]
  const line = { order: lines.at(-1)?.order ?? '1', ...(product ? { product } : aMold()), pieces: 1 }
  reveal('lines', lines.length, LINES)
  editOrders(['lines', lines.length], line, message('orders.added', { line: lines.length + 1 }))
}

/** The stock of each material before the day. */
function stock(faults) {
  const { stock } = state.orders
  const had = typeof stock === 'object' && stock !== null ? stock : {}
  const more = names('materials').filter((name) => !(name in had))
  const set = (name) => name && editOrders(['stock', name], '')
  const id = fieldId('orders', ['stock'])
  return html`<h2 id=${id} tabindex="-1">${say('orders.stock')}</h2>
    ${messages(id, faultsJustAt(faults, ['stock']))}
    <div class="fields stock">
      ${Object.keys(had).map((name) => written(name, ['stock', name], faults, { size: 7, amount: true }))}
      ${field(say('orders.moreStock'), 'stock:more', choice({ id: 'stock:more', value: '', names: more, set, none: '…' }))}
    </div>`
}

/** Leftovers come with an order list; the pots show what is taken of them. */
function shelf(faults) {
  const path = ['shelf']
  const left = listOf(state.orders.shelf)
  const own = faultsAt(faults, path)
  const waits = waitingForList()
  if (!left.length && !own.length && waits === nothing) return nothing
  const words = ({ name, mass } = {}) =>
    `${name}: ${local(typeof mass === 'string' ? mass : `${mass?.value} ${mass?.unit}`)}`
  return html`<h2 id=${fieldId('orders', path)} tabindex="-1">${say('orders.shelf')}</h2>
    ${messages(fieldId('orders', path), own)} ${waits}
    <ul>
      ${left.map((one) => html`<li>${words(one ?? {})}</li>`)}
    </ul>
    ${
      own.length
        ? html`<div class="buttons">
            <button type="button" @click=${() => editOrders(path, undefined)}>${say('orders.noLeftovers')}</button>
          </div>`
        : nothing
    }`
}
