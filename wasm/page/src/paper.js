// The head of each printed page, so that loose pages can be told apart.

const sheet = new CSSStyleSheet()
let written = null

/** A CSS string, with everything escaped that could end it. */
const quoted = (words) => `"${words.replaceAll(/["\\\n\r\f]/g, (sign) => `\\${sign.codePointAt(0).toString(16)} `)}"`

/** Prints `words` and the page number at the head of each page. */
export function headOfSheets(words) {
  if (words === written) return
  written = words
  sheet.replaceSync(`@page {
    @top-left { content: ${quoted(words)} }
    @top-right { content: counter(page) " of " counter(pages) }
  }`)
  if (!document.adoptedStyleSheets.includes(sheet)) document.adoptedStyleSheets.push(sheet)
}
