// The language of the page: the browser's, or the one that was chosen. A change of it draws the page again at once.
import { html } from '../vendor/lit-html/lit-html.js'
import { change, onChange, state } from './state.js'
import { LANGUAGES, language, languageFor, say, speak } from './words.js'

/** Speaks the language of the state from now on, also if another tab chooses one. It is there when this is done. */
export async function followLanguage() {
  await turn()
  onChange(async () => {
    if ([language(), failed].includes(languageFor(state.language))) return
    await turn()
    // Steps in words are held until other documents are opened.
    change({ opened: state.opened + 1 })
  })
}

/** A language whose messages could not be loaded. */
let failed = null

async function turn() {
  const wanted = languageFor(state.language)
  try {
    await speak(wanted)
    failed = null
  } catch (failure) {
    failed = wanted
    state.notice = say('language.failed', { name: LANGUAGES[wanted].name, why: failure.message })
  }
  document.documentElement.lang = language()
}

/** The choice, for the book's view. Each language has its own name. */
export function languageChoice() {
  const choose = (event) => change({ language: event.target.value })
  const option = (code, name, lang) =>
    html`<option value=${code} lang=${lang} ?selected=${state.language === code}>${name}</option>`
  const own = languageFor('')
  return html`<div class="field">
    <label for="language">${say('language.language')}</label>
    <select id="language" @change=${choose}>
      ${option('', say('language.browser', { name: LANGUAGES[own].name }), language())}
      ${Object.entries(LANGUAGES).map(([code, { name }]) => option(code, name, code))}
    </select>
  </div>`
}
