// The words of the page in the reader's language. Messages are in `words/`, a file for each part of the page, English first;
// every language has the same messages with the same values. What the library says is the library's, in English.
import { numbers } from './formats.js'
import * as english from './words/en.js'

/** The languages by their code, each by its own name, and what brings its messages. English is always there. */
export const LANGUAGES = {
  en: { name: 'English', load: async () => english },
  de: { name: 'Deutsch', load: () => import('./words/de.js') },
}

/** Number of results that are remembered: most of what a key draws again has not changed. */
const REMEMBERED = 1000

/** The messages, the locale that numbers and dates are written in, and what depends on it. */
let [messages, used] = [english, localeFor('en')]

/** The language of the reader: as `chosen`, or else the first of the browser's that the page has, or else English. */
export const languageFor = (chosen, wanted = globalThis.navigator?.languages ?? []) =>
  [chosen, ...wanted.map((locale) => locale.split('-')[0])].find((code) => Object.hasOwn(LANGUAGES, code)) ?? 'en'

/** Loads a language: `say` uses it from then on. */
export async function speak(language, wanted) {
  messages = await LANGUAGES[language].load()
  used = localeFor(language, wanted)
}

function localeFor(language, wanted = globalThis.navigator?.languages ?? []) {
  const locale = wanted.find((one) => one.split('-')[0] === language) ?? (language === 'en' ? 'en-US' : language)
  const number = numbers(locale)
  const decimal = number.formatToParts(0.5).find(({ type }) => type === 'decimal').value
  const plural = new Intl.PluralRules(locale)
  return {
    language,
    locale,
    number: remembered((value) => number.format(value)),
    plural: remembered((count) => plural.select(count)),
    decimal,
  }
}

/** A function with the results of `of`, which is slow, of the last values. */
function remembered(of) {
  const known = new Map()
  return (value) => {
    if (!known.has(value)) {
      if (known.size >= REMEMBERED) known.clear()
      known.set(value, of(value))
    }
    return known.get(value)
  }
}

/** The locale of numbers and dates. */
export const locale = () => used.locale

/** The decimal sign of the locale. */
export const decimalSign = () => used.decimal

/** The code of the language that is spoken. */
export const language = () => used.language

/**
 * The message `key`, `part.name` of `words/`, with `values` in the place of `{names}`. A number is written as the locale has it;
 * a message with plural forms takes the form that `values.count` needs. If a value is a part of the page, the message is a list
 * of parts, else a text.
 */
export function say(key, values = {}) {
  const [part, name] = key.split('.')
  const found = messages[part]?.[name]
  if (found === undefined) throw new Error(`There is no message "${key}".`)
  const message = typeof found === 'string' ? found : (found[used.plural(values.count)] ?? found.other)
  const parts = piecesOf(message).map((piece, at) => (at % 2 ? valueOf(values, piece, key) : piece))
  return parts.every((piece) => typeof piece === 'string') ? parts.join('') : parts.filter((piece) => piece !== '')
}

/** The pieces of a message: text and names of values in turn. */
const piecesOf = remembered((message) => message.split(/\{(\w+)\}/))

/** A message that is stored, and said later by `sayStored` in the language of then; so are its values that are messages. */
export const message = (key, values = {}) => ({ key, values })

/** An amount, and a text of the library, among the values of such a message. */
export const amount = (text) => ({ amount: text })
export const quoted = (text) => ({ quoted: text })

function valueOf(values, name, key) {
  const value = values[name]
  if (value === undefined) throw new Error(`The message "${key}" needs "${name}".`)
  return typeof value === 'number' ? used.number(value) : value
}

/** A number with so many decimal places, and a true minus sign. */
export function decimal(value, places) {
  const fixed = numbers(used.locale, { minimumFractionDigits: places, maximumFractionDigits: places })
  return fixed.format(value).replace('-', '−')
}

/** A text of the library with the decimal sign of the locale: the library writes a point, and groups no digits. */
export const local = (text) => (used.decimal === '.' ? text : text.replaceAll(/(?<=\d)\.(?=\d)/g, used.decimal))

/** What a person wrote with the decimal sign of the locale, as the library reads it. */
export const typed = (text) => (used.decimal === '.' ? text : text.replaceAll(/(?<=\d),(?=\d)/g, '.'))
