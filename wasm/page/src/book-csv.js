// Reads CSV as spreadsheets write it: RFC 4180, and semicolons or tabs in place of commas, a byte order mark, either end of line.
import { say } from './words.js'

/** The characters that can be between cells. */
export const DELIMITERS = [',', ';', '\t']

/** Rows that are read from a file. A longer one is refused: nothing of it is cut off unseen. */
export const MOST_ROWS = 2000

/**
 * The text of a file: UTF-8, or UTF-16 with its mark; else Windows-1252, which older spreadsheets write. `encoding` says which.
 */
export function textOf(bytes) {
  const starts = (...mark) => mark.every((byte, at) => bytes[at] === byte)
  const utf16 = starts(0xff, 0xfe) ? 'utf-16le' : starts(0xfe, 0xff) ? 'utf-16be' : null
  for (const encoding of utf16 ? [utf16] : ['utf-8', 'windows-1252']) {
    try {
      return { text: new TextDecoder(encoding, { fatal: true }).decode(bytes), encoding }
    } catch {
      // Not in this encoding: the next one. Windows-1252 reads any bytes.
    }
  }
  return { text: new TextDecoder(utf16).decode(bytes), encoding: utf16 }
}

/** The delimiter of a text: the one that divides its first row into the most cells. */
export function delimiterOf(text) {
  const counts = DELIMITERS.map((delimiter) => read(text, delimiter, 1).rows[0]?.cells.length ?? 0)
  return DELIMITERS[counts.indexOf(Math.max(...counts))]
}

/**
 * The rows of a text: `{ rows: [{ number, cells }], faults: [{ row, message, help }] }`. `number` counts rows from 1 as a
 * spreadsheet does, empty rows included, which are left out. Cells are trimmed unless they are quoted.
 */
export function readCsv(text, delimiter = delimiterOf(text)) {
  const { rows, faults } = read(text, delimiter)
  const [head] = rows
  for (const { number, cells } of rows.slice(1)) {
    if (cells.length > head.cells.length) {
      const counts = { count: cells.length, first: head.cells.length }
      faults.push(fault(number, say('csv.wideRow', counts), say('csv.wideRowHelp')))
    }
  }
  if (rows.length > MOST_ROWS) {
    const message = say('csv.tooMany', { count: rows.length, most: MOST_ROWS })
    faults.push(fault(rows[MOST_ROWS].number, message, say('csv.tooManyHelp')))
  }
  return { delimiter, rows, faults: faults.sort((one, other) => one.row - other.row) }
}

/** Reads by characters, as many rows as `most`. */
function read(text, delimiter, most = Infinity) {
  const rows = []
  const faults = []
  let at = text.startsWith('\uFEFF') ? 1 : 0
  let number = 0
  while (at < text.length && rows.length < most) {
    number += 1
    const cells = []
    let isQuoted = false
    for (;;) {
      const cell = quoted(text, at)
      if (cell) {
        isQuoted = true
        if (cell.open) faults.push(fault(number, say('csv.openQuote'), say('csv.openQuoteHelp')))
        const end = endOfCell(text, cell.to, delimiter)
        const rest = text.slice(cell.to, end).trim()
        if (rest) {
          faults.push(fault(number, say('csv.afterQuote', { rest }), say('csv.afterQuoteHelp')))
        }
        cells.push(cell.value)
        at = end
      } else {
        const end = endOfCell(text, at, delimiter)
        cells.push(text.slice(at, end).trim())
        at = end
      }
      if (text[at] !== delimiter || at >= text.length) break
      at += 1
    }
    // The end of the line: CR LF, LF or CR.
    at += text.startsWith('\r\n', at) ? 2 : 1
    if (isQuoted || cells.some(Boolean)) rows.push({ number, cells: trimmed(cells) })
  }
  return { rows, faults }
}

const fault = (row, message, help) => ({ row, message, help })

/** Without the empty cells at the end, which spreadsheets write for columns that end earlier. */
function trimmed(cells) {
  const last = cells.findLastIndex(Boolean)
  return cells.slice(0, Math.max(last + 1, 1))
}

/** The quoted cell that begins at `at`: its value and where it ends; null if none does. */
function quoted(text, at) {
  let from = at
  while (text[from] === ' ') from += 1
  if (text[from] !== '"') return null
  let value = ''
  for (let here = from + 1; ;) {
    const end = text.indexOf('"', here)
    if (end === -1) return { value: value + text.slice(here), to: text.length, open: true }
    value += text.slice(here, end)
    if (text[end + 1] !== '"') return { value, to: end + 1, open: false }
    value += '"'
    here = end + 2
  }
}

function endOfCell(text, at, delimiter) {
  let end = at
  while (end < text.length && text[end] !== delimiter && text[end] !== '\n' && text[end] !== '\r') end += 1
  return end
}

/** Numbers of a cell with a decimal comma, with a point: `1,5 g` becomes `1.5 g`. */
export const withPoint = (cell) => cell.replaceAll(/(?<=\d),(?=\d)/g, '.')

/** Whether the numbers of cells seem to have decimal commas. */
export const hasCommas = (cells) =>
  cells.some((cell) => /\d,\d/.test(cell)) && !cells.some((cell) => /\d\.\d/.test(cell))
