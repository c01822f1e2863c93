// What stands at the head of each sheet of paper, so that loose ones can be told apart.

const sheet = new CSSStyleSheet()
let written = null

/** A CSS string: whatever could end it is escaped. */
const quoted = (words) => `"${words.replaceAll(/["\\\n\r\f]/g, (sign) => `\\${sign.codePointAt(0).toString(16)} `)}"`

/** Has `words` stand at the head of each sheet, with its number. */
export function headOfSheets(words) {
  if (words === written) return
  written = words
  sheet.replaceSync(`@page {
    @top-left { content: ${quoted(words)} }
    @top-right { content: counter(page) " of " counter(pages) }
  }`)
  if (!document.adoptedStyleSheets.includes(sheet)) document.adoptedStyleSheets.push(sheet)
}
