// Texts of the library on the page: they are English, and are marked so if the page speaks another language.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { language, local, say } from './words.js'

/** The `lang` of an element that has such texts. */
export const inEnglish = () => (language() === 'en' ? nothing : 'en')

/** A text with its numbers next to their units: `1/2 tsp` is one word where a line ends. */
export const unbroken = (text) => String(text).replaceAll(/(?<=\d) (?=[\p{L}°])/gu, '\u00a0')

/** A text of the library, with numbers as the locale has them; `1 7/8` never ends a line after the 1. */
export function ofLibrary(text) {
  const shown = local(String(text)).replaceAll(/(?<=\d) (?=\d+\/\d)/g, '\u00a0')
  return language() === 'en' ? shown : html`<span lang="en">${shown}</span>`
}

/**
 * A message that was stored, in the language that is spoken. A text is data, or a message that an earlier version stored in the
 * language of then.
 */
export function sayStored(stored) {
  if (typeof stored !== 'object') return stored
  if ('amount' in stored) return local(stored.amount)
  if ('quoted' in stored) return ofLibrary(stored.quoted)
  const values = Object.entries(stored.values).map(([name, value]) => [name, sayStored(value)])
  return say(stored.key, Object.fromEntries(values))
}
