// Formulas and orders from CSV: the first rows, what each column is, faults by row. Nothing is taken until it is said so.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { hasCommas, readCsv, textOf, withPoint } from './book-csv.js'
import { isReady, unitsOf } from './book-words.js'
import { faultsOfBook, plan } from './core.js'
import { editAll } from './edits.js'
import { keys } from './faults.js'
import { choice, field, number } from './fields.js'
import { once } from './press.js'
import { counted } from './show.js'
import { takeIn } from './storage.js'
import { change, state } from './state.js'

/** The rows of the preview, and the faults that are listed. */
const [SEEN, LISTED] = [5, 12]

/** Lines that the library checks at once: each call makes a plan of them. */
const CHECKED = 40

/** What a column can be, by what is imported: its words, and how its heading may begin. */
const COLUMNS = {
  formulas: {
    formula: ['Formula', /^(formula|recipe|color|name)/],
    material: ['Material', /^(material|ingredient|colorant)/],
    amount: ['Amount', /^(amount|dose|qty|quantity)/],
    unit: ['Unit', /^(unit|measure)/],
    per: ['Per, of base', /^per\b/],
    base: ['Base', /^base/],
    notes: ['Notes', /^note/],
  },
  orders: {
    order: ['Order', /^(order|no\b|number)/],
    product: ['Product', /^(product|item|article)/],
    mold: ['Mold', /^mold/],
    formulas: ['Formulas, with + between', /^(formula|color)/],
    shape: ['Shape', /^shape/],
    pieces: ['Pieces', /^(piece|pcs|qty|quantity|count)/],
    packs: ['Packs', /^packs?$/],
    pack_of: ['Pieces in a pack', /^(pack of|per pack|pack size|pack_of)/],
    promised: ['Promised', /^(promised|due|date|deliver)/],
  },
}

const SEPARATORS = { ',': 'comma', ';': 'semicolon', '\t': 'tab' }
const NUMBERS = { point: 'point: 1.5', comma: 'comma: 1,5' }
const DATES = { iso: '2027-03-04', month: '3/4/2027, the month first', day: '4.3.2027, the day first' }

/** The file that is being looked at; null if none is. */
let file = null

/** Whether a file is being looked at: the view is then that of the import. */
export const isImporting = () => file !== null

/** Keys that open a file of formulas or of orders. */
export function importKeys() {
  return html`${opener('formulas', 'Formulas from CSV')} ${opener('orders', 'Orders from CSV')}`
}

function opener(kind, label) {
  const take = (event) => {
    const [chosen] = event.target.files
    if (chosen) takeIn(async () => look(kind, chosen.name, new Uint8Array(await chosen.arrayBuffer())))
    event.target.value = ''
  }
  return html`<label class="button quiet"
    >${label}<input type="file" accept=".csv,.txt,.tsv,text/csv,text/plain" class="out-of-sight" @change=${take}
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
  if (!isReady()) return html`<p role="status">Loading the form …</p>`
  const { kind, name, read, map } = file
  const [heading, ...body] = read.rows
  if (!body.length) {
    return html`<section class="import">
      <h2>${name}</h2>
      <p class="fault">
        <strong>The file has no rows below its first one.</strong> The first row has the names of the columns.
      </p>
      <div class="buttons"><button type="button" @click=${leave}>Back</button></div>
    </section>`
  }
  const made = checked(bookFaults)
  const { faults, count, left } = made
  const wide = Math.max(...read.rows.map(({ cells }) => cells.length))
  const what = (count) => counted(count, kind === 'formulas' ? 'formula' : 'order line')
  return html`<section class="import" aria-label="Import from CSV">
    <h2>${kind === 'formulas' ? 'Formulas' : 'Orders'} from ${name}</h2>
    ${file.encoding === 'windows-1252' ? html`<p class="notice">The file is not UTF-8; it is read as Windows-1252. Check letters such as ¼ and é below.</p>` : nothing}
    <div class="fields">
      ${select('Between cells', 'separator', SEPARATORS, read.delimiter, (delimiter) => {
        separate(readCsv(file.text, delimiter))
        change()
      })}
      ${select('Decimal', 'numbers', NUMBERS, file.numbers, (numbers) => set({ numbers }))}
      ${map.includes('promised') ? select('Days are written', 'dates', DATES, file.dates, (dates) => set({ dates })) : nothing}
      ${kind === 'formulas' && !map.includes('unit') ? unitless() : nothing}
    </div>
    <h3>What each column is</h3>
    <div class="wide" tabindex="0" role="region" aria-label="The first rows of ${name}">
      <table class="preview">
        <thead>
          <tr>
            <th scope="col">Row</th>
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
    <p class="hint">${counted(body.length, 'row')}, of which the first ${Math.min(SEEN, body.length)} are shown.</p>
    ${faults.length ? faultRows(faults) : nothing}
    <div class="fields">
      ${
        kind === 'formulas' && made.same.length
          ? select(
              'Formulas that are in the book already',
              'same',
              { replace: `replace ${made.same.length} of them`, keep: 'keep those of the book' },
              file.same,
              (same) => set({ same }),
            )
          : nothing
      }
      ${kind === 'orders' && state.orders.lines?.length ? select('The lines that are there', 'into', { after: 'stay: add to them', instead: 'go: replace them' }, file.into, (into) => set({ into })) : nothing}
    </div>
    <p class="outcome-of" role="status">
      ${count ? html`<strong>${what(count)}</strong> to take.` : 'Nothing to take yet.'}
      ${left ? `${what(left)} with faults${file.without ? ' left out' : ''}.` : nothing}
    </p>
    <div class="buttons">
      <button
        type="button"
        ?disabled=${!count || (faults.length > 0 && !file.without)}
        @click=${once('take these', () => take(made))}
      >
        Take these
      </button>
      ${
        left && !file.without && count
          ? html`<button type="button" class="quiet" @click=${() => set({ without: true })}>
              Leave out what has faults
            </button>`
          : nothing
      }
      <button type="button" class="quiet" @click=${leave}>Take nothing</button>
    </div>
  </section>`
}

function select(label, id, words, value, set) {
  const options = Object.keys(words)
  return html`<div class="field">
    <label for="import:${id}">${label}</label>
    <select id="import:${id}" @change=${(event) => set(event.target.value)}>
      ${options.map((one) => html`<option value=${one} ?selected=${one === value}>${words[one]}</option>`)}
    </select>
  </div>`
}

/** The unit of amounts that are written without one. */
function unitless() {
  const names = unitsOf(state.book.measures)
  return field(
    'Amounts without a unit are',
    'import:unit',
    choice({ id: 'import:unit', value: file.unit, names, set: (unit) => set({ unit }), none: 'a fault' }),
  )
}

function columnChoice(heading, at) {
  const words = Object.fromEntries(Object.entries(COLUMNS[file.kind]).map(([key, [title]]) => [key, title]))
  const doses = file.kind === 'formulas' ? Object.keys(state.book.materials ?? {}) : []
  const value = file.map[at] ?? ''
  const change_ = (event) => set({ map: Object.assign([...file.map], { [at]: event.target.value }) })
  return html`<select aria-label="Column ${heading || at + 1} is" @change=${change_}>
    <option value="" ?selected=${!value}>left out</option>
    ${Object.entries(words).map(([key, title]) => html`<option value=${key} ?selected=${key === value}>${title}</option>`)}
    ${doses.map((name) => html`<option value="dose ${name}" ?selected=${value === `dose ${name}`}>dose of ${name}</option>`)}
  </select>`
}

function faultRows(faults) {
  return html`<section class="fault-list" role="alert" aria-label="Faults of the file">
    <h3>${counted(faults.length, 'fault')} in the file</h3>
    <ul>
      ${faults
        .slice(0, LISTED)
        .map(
          ({ row, message, help }) =>
            html`<li>
              ${row ? html`<strong>Row ${row}.</strong> ` : nothing}${message} <span class="help">${help}</span>
            </li>`,
        )}
    </ul>
    ${faults.length > LISTED ? html`<p>… and ${faults.length - LISTED} others.</p>` : nothing}
  </section>`
}

let memo = { of: [], made: null }

/** What the file gives: entries, faults by row, counts. Made again only if the file, its columns or a document changed. */
function checked(bookFaults) {
  const of = [file, state.book, state.orders]
  if (!of.every((one, at) => one === memo.of[at])) {
    const made = file.kind === 'formulas' ? formulas() : lines()
    const faults = bookFaults.length
      ? [{ row: 0, message: 'The book has faults.', help: 'Fix them first: then its library can check every row.' }]
      : []
    const all = [...faults, ...file.read.faults, ...made.faults].sort((one, other) => one.row - other.row)
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
      if (/\d\.\d/.test(cell)) {
        faults.push({
          row,
          message: `“${cell}” has a point, and the file's decimals are commas.`,
          help: 'Write it without a point, or choose the decimal point above.',
        })
      }
      return withPoint(cell)
    }
    const entries = map.map((key, at) => [key, value(at)]).filter(([key]) => key)
    return { row, faults, twice: twiceIn(map), of: Object.fromEntries(entries) }
  })
}

const twiceIn = (map) => map.find((key, at) => key && map.indexOf(key) !== at)

const missing = (key) => ({
  row: 0,
  message: `No column is “${COLUMNS[file.kind][key][0]}”.`,
  help: 'Choose it above its column.',
})

const doubled = (twice) => ({
  row: 0,
  message: `Two columns are “${COLUMNS[file.kind][twice]?.[0] ?? twice}”.`,
  help: 'Leave one of them out.',
})

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
      faults.push({ row, message: 'The row has no formula, and none is above it.', help: 'Write its name.' })
      continue
    }
    const entry = found.get(name) ?? { doses: {}, row, rows: {} }
    found.set(name, entry)
    const add = (material, amount) => {
      if (Object.hasOwn(entry.doses, material)) {
        faults.push({
          row,
          of: name,
          message: `“${material}” is in “${name}” twice, here and in row ${entry.rows[`doses/${material}`]}.`,
          help: 'Write it once, with the whole amount.',
        })
      }
      entry.doses[material] = amount
      entry.rows[`doses/${material}`] = row
    }
    if (of.material || of.amount) {
      if (of.material) add(of.material, withUnit(of.amount, of.unit))
      else faults.push({ row, of: name, message: `“${of.amount}” has no material.`, help: 'Write of what it is.' })
    }
    for (const key of doses) if (of[key]) add(key.slice('dose '.length), withUnit(of[key], ''))
    for (const key of ['per', 'base', 'notes']) {
      if (!of[key]) continue
      if (entry[key] !== undefined && entry[key] !== of[key]) {
        faults.push({
          row,
          of: name,
          message: `“${name}” has “${of[key]}” here and “${entry[key]}” in row ${entry.rows[key]}: ${COLUMNS.formulas[key][0].toLowerCase()}.`,
          help: 'Write the one that is meant.',
        })
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
      const { ordersFaults } = plan(state.book, { format, ...others, pots: undefined, lines })
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
  file = null
  if (kind === 'formulas') {
    const changes = good.map(([formula, entry]) => ({ of: 'book', path: ['formulas', formula], value: entry }))
    editAll(
      [...changes, { of: 'form', path: ['part'], value: 'formulas' }],
      `Taken from ${name}: ${counted(good.length, 'formula')}.`,
    )
    return
  }
  const words = `Taken from ${name}: ${counted(good.length, 'order line')}.`
  const { lines = [] } = state.orders
  if (into === 'after')
    editAll(
      good.map((line, at) => ({ of: 'orders', path: ['lines', lines.length + at], value: line })),
      words,
    )
  else editAll([{ of: 'orders', path: ['lines'], value: good }], words)
  location.hash = '#orders'
}
