// Formulas and orders from CSV: the first rows, what each column is, faults by row. Nothing is taken until it is said so.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { hasCommas, readCsv, textOf, withPoint } from './book-csv.js'
import { isReady, unitsOf } from './book-words.js'
import { faultsOfBook, plan } from './core.js'
import { editAll } from './edits.js'
import { keys, said } from './faults.js'
import { choice, field, number } from './fields.js'
import { inEnglish } from './library.js'
import { once } from './press.js'
import { takeIn } from './storage.js'
import { change, state } from './state.js'
import { language, message, say } from './words.js'

/** The rows of the preview, and the faults that are listed. */
const [SEEN, LISTED] = [5, 12]

/** Lines that the library checks at once: each call makes a plan of them. */
const CHECKED = 40

/** What a column can be, by what is imported: the message with its words, and how its heading may begin, in any language. */
const COLUMNS = {
  formulas: {
    formula: ['csv.colFormula', /^(formula|recipe|color|name|rezept|farbe)/],
    material: ['csv.colMaterial', /^(material|ingredient|colorant|zutat)/],
    amount: ['csv.colAmount', /^(amount|dose|qty|quantity|menge|dosis)/],
    unit: ['csv.colUnit', /^(unit|measure|einheit)/],
    per: ['csv.colPer', /^(per|je|pro)\b/],
    base: ['csv.colBase', /^(base|plastisol)/],
    notes: ['csv.colNotes', /^(note|notiz|bemerkung)/],
  },
  orders: {
    order: ['csv.colOrder', /^(order|no\b|number|bestellung|auftrag|nr\b|nummer)/],
    product: ['csv.colProduct', /^(product|item|article|produkt|artikel)/],
    mold: ['csv.colMold', /^(mold|gießform|giessform|form$)/],
    formulas: ['csv.colFormulas', /^(formula|color|rezept|farbe)/],
    shape: ['csv.colShape', /^(shape|gestalt)/],
    pieces: ['csv.colPieces', /^(piece|pcs|qty|quantity|count|stück$|stueck$|anzahl|menge)/],
    packs: ['csv.colPacks', /^(packs?|packungen|packung)$/],
    pack_of: ['csv.colPackOf', /^(pack of|per pack|pack size|pack_of|stück je|stück pro|packungsgröße)/],
    promised: ['csv.colPromised', /^(promised|due|date|deliver|zugesagt|datum|termin|liefer)/],
  },
}

const SEPARATORS = { ',': 'csv.comma', ';': 'csv.semicolon', '\t': 'csv.tab' }
const NUMBERS = { point: 'csv.pointDecimal', comma: 'csv.commaDecimal' }
const DATES = { iso: 'csv.dateIso', month: 'csv.dateMonth', day: 'csv.dateDay' }

const columnOf = (kind, key) => say(COLUMNS[kind][key][0])

/** The file that is being looked at; null if none is. */
let file = null

/** Whether a file is being looked at: the view is then that of the import. */
export const isImporting = () => file !== null

/** Keys that open a file of formulas or of orders. */
export function importKeys() {
  return html`${opener('formulas')} ${opener('orders')}`
}

function opener(kind) {
  const take = (event) => {
    const [chosen] = event.target.files
    if (chosen) takeIn(async () => look(kind, chosen.name, new Uint8Array(await chosen.arrayBuffer())))
    event.target.value = ''
  }
  return html`<label class="button quiet"
    >${say(kind === 'formulas' ? 'csv.formulas' : 'csv.orders')}<input
      type="file"
      accept=".csv,.txt,.tsv,text/csv,text/plain"
      class="out-of-sight"
      @change=${take}
  /></label>`
}

function look(kind, name, bytes) {
  const { text, encoding } = textOf(bytes)
  file = { kind, name, text, encoding, without: false, unit: '', same: 'replace', into: 'after', dates: 'iso' }
  separate(readCsv(text))
  change({ notice: '' })
}

/** Takes the file's cells, and guesses what its columns are. */
function separate(read) {
  const heading = read.rows[0]?.cells ?? []
  const body = read.rows.slice(1)
  const columns = COLUMNS[file.kind]
  const taken = new Set()
  const map = heading.map((cell) => {
    const words = cell.toLowerCase().trim()
    const found = Object.keys(columns).find((key) => !taken.has(key) && (words === key || columns[key][1].test(words)))
    if (found) taken.add(found)
    // A column may be a material, with a formula in each row.
    return found ?? (file.kind === 'formulas' && Object.hasOwn(state.book.materials ?? {}, cell) ? `dose ${cell}` : '')
  })
  const cells = body.flatMap((row) => row.cells)
  file = { ...file, read, map, numbers: hasCommas(cells) ? 'comma' : 'point' }
}

const set = (parts) => {
  file = { ...file, ...parts }
  change()
}

const leave = () => {
  file = null
  change()
}

/** The view of the file. */
export function importView(bookFaults) {
  if (!isReady()) return html`<p role="status">${say('form.loading')}</p>`
  const { kind, name, read, map } = file
  const [heading, ...body] = read.rows
  if (!body.length) {
    return html`<section class="import">
      <h2>${name}</h2>
      <p class="fault"><strong>${say('csv.noRows')}</strong> ${say('csv.firstRow')}</p>
      <div class="buttons"><button type="button" @click=${leave}>${say('csv.back')}</button></div>
    </section>`
  }
  const made = checked(bookFaults)
  const { faults, count, left } = made
  const wide = Math.max(...read.rows.map(({ cells }) => cells.length))
  const what = (count) => counted(kind, count)
  return html`<section class="import" aria-label=${say('csv.title')}>
    <h2>${say(kind === 'formulas' ? 'csv.formulasFrom' : 'csv.ordersFrom', { name })}</h2>
    ${file.encoding === 'windows-1252' ? html`<p class="notice">${say('csv.encoding')}</p>` : nothing}
    <div class="fields">
      ${select(say('csv.between'), 'separator', SEPARATORS, read.delimiter, (delimiter) => {
        separate(readCsv(file.text, delimiter))
        change()
      })}
      ${select(say('csv.decimal'), 'numbers', NUMBERS, file.numbers, (numbers) => set({ numbers }))}
      ${map.includes('promised') ? select(say('csv.days'), 'dates', DATES, file.dates, (dates) => set({ dates })) : nothing}
      ${kind === 'formulas' && !map.includes('unit') ? unitless() : nothing}
    </div>
    <h3>${say('csv.columns')}</h3>
    <div class="wide" tabindex="0" role="region" aria-label=${say('csv.firstRows', { name })}>
      <table class="preview">
        <thead>
          <tr>
            <th scope="col">${say('csv.rowHead')}</th>
            ${Array.from({ length: wide }, (_, at) => html`<th scope="col">${columnChoice(heading.cells[at] ?? '', at)}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${read.rows.slice(0, SEEN + 1).map(
            ({ number, cells }) =>
              html`<tr>
                <th scope="row">${number}</th>
                ${Array.from({ length: wide }, (_, at) => html`<td>${cells[at] ?? ''}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
    <p class="hint">${say('csv.rows', { count: body.length, shown: Math.min(SEEN, body.length) })}</p>
    ${faults.length ? faultRows(faults) : nothing}
    <div class="fields">
      ${
        kind === 'formulas' && made.same.length
          ? select(
              say('csv.same'),
              'same',
              { replace: ['csv.replace', { count: made.same.length }], keep: 'csv.keep' },
              file.same,
              (same) => set({ same }),
            )
          : nothing
      }
      ${kind === 'orders' && state.orders.lines?.length ? select(say('csv.into'), 'into', { after: 'csv.after', instead: 'csv.instead' }, file.into, (into) => set({ into })) : nothing}
    </div>
    <p class="outcome-of" role="status">
      ${count ? say('csv.toTake', { what: html`<strong>${what(count)}</strong>` }) : say('csv.nothingYet')}
      ${left ? say(file.without ? 'csv.withoutFaulty' : 'csv.withFaults', { what: what(left) }) : nothing}
    </p>
    <div class="buttons">
      <button
        type="button"
        ?disabled=${!count || (faults.length > 0 && !file.without)}
        @click=${once('take these', () => take(made))}
      >
        ${say('csv.take')}
      </button>
      ${
        left && !file.without && count
          ? html`<button type="button" class="quiet" @click=${() => set({ without: true })}>
              ${say('csv.leaveOut')}
            </button>`
          : nothing
      }
      <button type="button" class="quiet" @click=${leave}>${say('csv.takeNothing')}</button>
    </div>
  </section>`
}

function select(label, id, words, value, set) {
  const options = Object.keys(words)
  return html`<div class="field">
    <label for="import:${id}">${label}</label>
    <select id="import:${id}" @change=${(event) => set(event.target.value)}>
      ${options.map((one) => html`<option value=${one} ?selected=${one === value}>${say(...[words[one]].flat())}</option>`)}
    </select>
  </div>`
}

/** So many formulas or order lines. */
const counted = (kind, count) => say(keyOfCount(kind), { count })

const keyOfCount = (kind) => (kind === 'formulas' ? 'csv.countFormulas' : 'csv.countOrders')

/** The unit of amounts that are written without one. */
function unitless() {
  const names = unitsOf(state.book.measures)
  return field(
    say('csv.unitless'),
    'import:unit',
    choice({
      id: 'import:unit',
      value: file.unit,
      names,
      set: (unit) => set({ unit }),
      none: say('csv.aFault'),
      lang: inEnglish(),
    }),
  )
}

function columnChoice(heading, at) {
  const doses = file.kind === 'formulas' ? Object.keys(state.book.materials ?? {}) : []
  const value = file.map[at] ?? ''
  const change_ = (event) => set({ map: Object.assign([...file.map], { [at]: event.target.value }) })
  return html`<select aria-label=${say('csv.columnIs', { name: heading || at + 1 })} @change=${change_}>
    <option value="" ?selected=${!value}>${say('csv.leftOut')}</option>
    ${Object.keys(COLUMNS[file.kind]).map((key) => html`<option value=${key} ?selected=${key === value}>${columnOf(file.kind, key)}</option>`)}
    ${doses.map((name) => html`<option value="dose ${name}" ?selected=${value === `dose ${name}`}>${say('csv.doseOf', { material: name })}</option>`)}
  </select>`
}

function faultRows(faults) {
  return html`<section class="fault-list" role="alert" aria-label=${say('csv.faultsTitle')}>
    <h3>${say('csv.faults', { count: faults.length })}</h3>
    <ul>
      ${faults.slice(0, LISTED).map(
        (fault) =>
          html`<li>
            ${fault.row ? html`<strong>${say('csv.row', { row: fault.row })}</strong> ` : nothing}${said(fault, 'message')}
            <span class="help">${said(fault, 'help')}</span>
          </li>`,
      )}
    </ul>
    ${faults.length > LISTED ? html`<p>${say('csv.others', { count: faults.length - LISTED })}</p>` : nothing}
  </section>`
}

/** A fault that the page has found in a row, by its message; row 0 is the file. */
const fault = (row, key, values = {}, of = undefined) => ({
  row,
  of,
  message: say(key, values),
  help: say(`${key}Help`),
  own: true,
})

let memo = { of: [], made: null }

/** What the file gives: entries, faults by row, counts. Made again only if the file, its columns or a document changed. */
function checked(bookFaults) {
  const of = [file, state.book, state.orders, language()]
  if (!of.every((one, at) => one === memo.of[at])) {
    const made = file.kind === 'formulas' ? formulas() : lines()
    const faults = bookFaults.length ? [fault(0, 'csv.bookFaults')] : []
    const ofFile = file.read.faults.map((one) => ({ ...one, own: true }))
    const all = [...faults, ...ofFile, ...made.faults].sort((one, other) => one.row - other.row)
    memo = { of, made: { ...made, faults: all, count: bookFaults.length || file.read.faults.length ? 0 : made.count } }
  }
  return memo.made
}

/** The cells of the rows by what their columns are. */
function records() {
  const { read, map, numbers } = file
  return read.rows.slice(1).map(({ number: row, cells }) => {
    const faults = []
    const value = (at) => {
      const cell = cells[at] ?? ''
      const isAmount = /^(amount|per|base|pieces|packs|pack_of|dose )/.test(map[at])
      if (numbers !== 'comma' || !isAmount) return cell
      if (/\d\.\d/.test(cell)) faults.push(fault(row, 'csv.hasPoint', { cell }))
      return withPoint(cell)
    }
    const entries = map.map((key, at) => [key, value(at)]).filter(([key]) => key)
    return { row, faults, twice: twiceIn(map), of: Object.fromEntries(entries) }
  })
}

const twiceIn = (map) => map.find((key, at) => key && map.indexOf(key) !== at)

const missing = (key) => fault(0, 'csv.missing', { column: columnOf(file.kind, key) })

const doubled = (twice) =>
  fault(0, 'csv.doubled', { column: twice in COLUMNS[file.kind] ? columnOf(file.kind, twice) : twice })

/** An amount as the library reads it: with its unit, if that has a column of its own or is chosen for all. */
function withUnit(amount, unit) {
  if (!amount) return ''
  const own = unit || (/[\p{L}%°]/u.test(amount) ? '' : file.unit)
  return own ? `${amount} ${own}` : amount
}

/** Formulas from rows: one dose a row, or one formula a row with a column for each material. */
function formulas() {
  const all = records()
  const faults = all.flatMap((record) => record.faults)
  const doses = file.map.filter((key) => key.startsWith('dose '))
  if (!file.map.includes('formula')) return noneFor('formula')
  if (!doses.length && !file.map.includes('material')) return noneFor('material')
  if (!doses.length && !file.map.includes('amount')) return noneFor('amount')
  if (all[0]?.twice) return { ...none, faults: [doubled(all[0].twice)] }
  const found = new Map()
  let last = ''
  for (const { row, of } of all) {
    // Spreadsheets often name a formula only in its first row.
    const name = of.formula || last
    last = name
    if (!name) {
      faults.push(fault(row, 'csv.noFormula'))
      continue
    }
    const entry = found.get(name) ?? { doses: {}, row, rows: {} }
    found.set(name, entry)
    const add = (material, amount) => {
      if (Object.hasOwn(entry.doses, material)) {
        const first = entry.rows[`doses/${material}`]
        faults.push(fault(row, 'csv.twice', { material, formula: name, row: first }, name))
      }
      entry.doses[material] = amount
      entry.rows[`doses/${material}`] = row
    }
    if (of.material || of.amount) {
      if (of.material) add(of.material, withUnit(of.amount, of.unit))
      else faults.push(fault(row, 'csv.noMaterial', { amount: of.amount }, name))
    }
    for (const key of doses) if (of[key]) add(key.slice('dose '.length), withUnit(of[key], ''))
    for (const key of ['per', 'base', 'notes']) {
      if (!of[key]) continue
      if (entry[key] !== undefined && entry[key] !== of[key]) {
        const column = columnOf('formulas', key)
        const values = { formula: name, here: of[key], there: entry[key], row: entry.rows[key], column }
        faults.push(fault(row, 'csv.unlike', values, name))
      }
      entry[key] = of[key]
      entry.rows[key] = row
    }
  }
  const same = [...found.keys()].filter((name) => Object.hasOwn(state.book.formulas ?? {}, name))
  const taken = [...found].filter(([name]) => file.same === 'replace' || !same.includes(name))
  const entries = new Map(taken.map(([name, { row, rows, ...entry }]) => [name, entry]))
  // Faults of the form hide those of the meaning: what has some is left out, and the rest checked again.
  const rest = new Map(entries)
  for (let isNew = true; isNew;) {
    isNew = false
    const book = { ...state.book, formulas: { ...state.book.formulas, ...Object.fromEntries(rest) } }
    for (const { path, message, help } of faultsOfBook(book)) {
      const [part, name, ...below] = keys(path)
      if (part !== 'formulas' || !entries.has(name)) continue
      const { row, rows } = found.get(name)
      faults.push({ row: rows[below.join('/')] ?? rows[below[0]] ?? row, of: name, message, help })
      isNew = rest.delete(name) || isNew
    }
  }
  const bad = new Set(faults.map(({ of }) => of))
  const good = [...entries].filter(([name]) => !bad.has(name))
  return { faults, same, count: good.length, left: entries.size - good.length, good }
}

const none = { same: [], count: 0, left: 0, good: [] }
const noneFor = (key) => ({ ...none, faults: [missing(key)] })

/** Order lines from rows. */
function lines() {
  const all = records()
  const faults = all.flatMap((record) => record.faults)
  const has = (key) => file.map.includes(key)
  if (!has('order')) return noneFor('order')
  if (!has('product') && !has('mold')) return noneFor('product')
  if (!has('pieces') && !has('packs')) return noneFor('pieces')
  if (all[0]?.twice) return { ...none, faults: [doubled(all[0].twice)] }
  let last = ''
  const made = all.map(({ row, of }) => {
    const { order = '', formulas = '', pieces, packs, pack_of, promised, ...names } = of
    last = order || last
    const texts = Object.fromEntries(Object.entries(names).filter(([, text]) => text))
    const numbers = Object.entries({ pieces, packs, pack_of }).filter(([, text]) => text)
    const line = {
      order: last,
      ...texts,
      ...(formulas && { formulas: formulas.split('+').map((name) => name.trim()) }),
      ...Object.fromEntries(numbers.map(([key, text]) => [key, number(text)])),
      ...(promised && { promised: asDay(promised) }),
    }
    return { row, line }
  })
  const bad = new Set(all.filter((record) => record.faults.length).map(({ row }) => row))
  const { format, lines: _, ...others } = state.orders
  for (let from = 0; from < made.length; from += CHECKED) {
    let some = made.slice(from, from + CHECKED)
    for (let isNew = true; isNew && some.length;) {
      isNew = false
      const lines = some.map(({ line }) => line)
      const { ordersFaults } = plan(state.book, { format, ...others, pots: undefined, lines }, { quoteFirst: true })
      for (const { path, message, help } of ordersFaults) {
        const [list, at] = keys(path)
        if (list !== 'lines' || !some[Number(at)]) continue
        const { row } = some[Number(at)]
        isNew = true
        bad.add(row)
        faults.push({ row, message, help })
      }
      some = some.filter(({ row }) => !bad.has(row))
    }
  }
  const good = made.filter(({ row }) => !bad.has(row)).map(({ line }) => line)
  return { faults, same: [], count: good.length, left: made.length - good.length, good }
}

/** A day as YYYY-MM-DD; what is not a day stays, and the library refuses it. */
function asDay(text) {
  const parts = file.dates === 'iso' ? null : /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/.exec(text)
  if (!parts) return text
  const [, one, other, year] = parts
  const [month, day] = file.dates === 'month' ? [one, other] : [other, one]
  return `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`
}

/** Takes what was imported, as one change. */
function take({ good }) {
  const { kind, name, into } = file
  const words = message('csv.taken', { name, what: message(keyOfCount(kind), { count: good.length }) })
  file = null
  if (kind === 'formulas') {
    const changes = good.map(([formula, entry]) => ({ of: 'book', path: ['formulas', formula], value: entry }))
    editAll([...changes, { of: 'form', path: ['part'], value: 'formulas' }], words)
    return
  }
  const { lines = [] } = state.orders
  if (into === 'after')
    editAll(
      good.map((line, at) => ({ of: 'orders', path: ['lines', lines.length + at], value: line })),
      words,
    )
  else editAll([{ of: 'orders', path: ['lines'], value: good }], words)
  location.hash = '#orders'
}
