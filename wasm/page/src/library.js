// Texts of the library on the page: they are English, and are marked so if the page speaks another language.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { language, local } from './words.js'

/** The `lang` of an element that has such texts. */
export const inEnglish = () => (language() === 'en' ? nothing : 'en')

/** A text of the library, with numbers as the locale has them. */
export const ofLibrary = (text) =>
  language() === 'en' ? local(String(text)) : html`<span lang="en">${local(String(text))}</span>`
