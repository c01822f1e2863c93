// The head of each printed page, so that loose pages can be told apart.
import { say } from './words.js'

const sheet = new CSSStyleSheet()
let written = ''

/** A CSS string, with everything escaped that could end it. */
const quoted = (words) => `"${words.replaceAll(/["\\\n\r\f]/g, (sign) => `\\${sign.codePointAt(0).toString(16)} `)}"`

/** What counts the pages, in CSS. */
const COUNTERS = { page: { css: 'counter(page)' }, pages: { css: 'counter(pages)' } }

/** Prints `words` and the page number at the head of each page. */
export function headOfSheets(words) {
  const number = say('paper.number', COUNTERS).map((piece) => piece.css ?? quoted(piece))
  const rules = `@page {
    @top-left { content: ${quoted(words)} }
    @top-right { content: ${number.join(' ')} }
  }`
  if (rules === written) return
  written = rules
  sheet.replaceSync(rules)
  if (!document.adoptedStyleSheets.includes(sheet)) document.adoptedStyleSheets.push(sheet)
}
