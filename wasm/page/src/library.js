// Texts of the library on the page: they are English, and are marked so if the page speaks another language.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { language, local, say } from './words.js'

/** The `lang` of an element that has such texts. */
export const inEnglish = () => (language() === 'en' ? nothing : 'en')

/** A text with the parts of each amount next to each other: `1 7/8 cup` is one word where a line ends. */
export const unbroken = (text) =>
  String(text).replaceAll(/(?<=\d) (?=\d+\/\d|(cup|tbsp|tsp|fl|oz|lb|gal|qt|g|kg|mL|L)\b|°)/g, '\u00a0')

/** A text of the library, with numbers as the locale has them. */
export const ofLibrary = (text) =>
  language() === 'en' ? local(String(text)) : html`<span lang="en">${local(String(text))}</span>`

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
