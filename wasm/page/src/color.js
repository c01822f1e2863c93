// The view of color: pictures with a card, target and sample side by side, the next drops, and the formulas that are near.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { asked } from './asked.js'
import { cupPart } from './color-cup.js'
import { picturesPart } from './color-marks.js'
import { nearPart } from './color-near.js'
import { forget, kept, readingOf } from './color-pictures.js'
import { choice, field, textInput } from './fields.js'
import { once } from './press.js'
import { reply } from './replies.js'
import { inEnglish, ofLibrary } from './library.js'
import { change, state } from './state.js'
import { apart, differenceText, digit, swatch } from './swatch.js'
import { local, say, typed as withPoint } from './words.js'

/** What is read, with its messages: its title, and the others of it. */
const READ = {
  target: { title: 'color.target', none: 'color.noTarget', forget: 'color.forgetTarget', asRead: 'color.asReadTarget' },
  seen: { title: 'color.seen', none: 'color.noSeen', forget: 'color.forgetSeen', asRead: 'color.asReadSeen' },
}

/** The view. */
export function colorView() {
  return html`<div class="color">
    ${picturesPart()}
    <div class="answers">${sideBySide()} ${cupPart()} ${nearPart()}</div>
  </div>`
}

/** Target and sample as the card balances them, and how far they are apart. */
function sideBySide() {
  const { target, seen } = state.color
  const difference = target && seen ? apart(target.color, seen.color) : null
  const found = pairs()
  return html`<section class="side-by-side" aria-labelledby="side-by-side">
    <h2 id="side-by-side">${say('color.sideBySide')}</h2>
    <div class="pair">
      ${Object.keys(READ).map((kind) =>
        state.color[kind]
          ? swatch(state.color[kind].hex, say(READ[kind].title))
          : html`<div class="swatch empty">${say(READ[kind].none)}</div>`,
      )}
    </div>
    <p class="say" role="status">${difference ? differenceText(difference) : nothing}</p>
    ${Object.keys(READ).map((kind) => readingPart(kind))}
    ${
      target || seen
        ? html`<p class="hint">
            ${say(target?.pictures || seen?.pictures ? 'color.balanced' : 'color.daylight')}
            ${ofLibrary(statementOf(target ?? seen) ?? '')}
          </p>`
        : nothing
    }
    ${target && seen ? otherLights(target, seen) : nothing} ${instruments()} ${found.length ? asked(...found) : nothing}
  </section>`
}

const statementOf = ({ color }) => reply({ calculate: 'color-reading', instrument: color }).answer?.statement

/** What was typed of an instrument, and the light that it is for; not kept. */
const typed = { target: { text: '', light: 'D65', faults: [] }, seen: { text: '', light: 'D65', faults: [] } }

/** A reading: its numbers, or why there are none; and what would make it better. */
function readingPart(kind) {
  const now = state.color[kind]
  const faults = readingOf(kind)?.faults ?? []
  if (!now && !faults.length) return nothing
  return html`<div class="reading-of">
    <h3>
      ${say(READ[kind].title)}
      ${
        now
          ? html`<button
              type="button"
              class="quiet"
              aria-label=${say(READ[kind].forget)}
              @click=${once(`forget ${kind}`, () => forget(kind))}
            >
              ${say('color.forget')}
            </button>`
          : nothing
      }
    </h3>
    ${faults.slice(0, 1).map(({ message }) => html`<p class="bad">${say('color.notRead', { why: ofLibrary(message) })}</p>`)}
    ${
      now
        ? html`${numbersOf(now)} ${now.notes.map(({ message }) => html`<p class="better">${ofLibrary(message)}</p>`)}
          ${now.hex ? nothing : html`<p class="hint">${say('color.noScreen')}</p>`}`
        : nothing
    }
  </div>`
}

/** The numbers of a reading, with the largest of their uncertainties and where they are from. */
function numbersOf({ color, lab, pictures }) {
  const [lightness, a, b] = [lab.lightness, lab.a, lab.b].map(digit)
  const where = fromWhere(pictures)
  const most = color.uncertainty && digit(Math.max(...color.uncertainty))
  return html`<p>
    ${say('color.lab', { lightness, a, b })} <small>${most ? say('color.sure', { most, where }) : where}</small>
  </p>`
}

function fromWhere(pictures) {
  if (!pictures) return say('color.byInstrument')
  return pictures === 1 ? say('color.fromOne') : say('color.fromPictures', { count: pictures })
}

/** The requests that were made of pictures, with their answers. */
const pairs = () =>
  Object.keys(READ)
    .map((kind) => readingOf(kind))
    .filter((found) => found?.answer)
    .map(({ request, answer }) => [request, answer])

/** Readings of an instrument, or colors in digits. */
function instruments() {
  return html`<details class="instrument">
    <summary>${say('color.instrument')}</summary>
    ${Object.keys(READ).map((kind) => instrument(kind))}
    <p class="hint">
      ${say('color.instrumentHint', {
        lab: html`<q>52, 41, 18</q>`,
        hex: html`<q>#b85e5a</q>`,
        bands: html`<q>${local('400 0.31 420 0.33 …')}</q>`,
      })}
    </p>
  </details>`
}

function instrument(kind) {
  const own = typed[kind]
  const id = `color/${kind}/typed`
  const set = (text) => {
    own.text = withPoint(text)
    const request = { calculate: 'color-reading', instrument: entryOf(own) }
    const { answer = null, faults = [] } = text.trim() ? reply(request) : {}
    own.faults = faults
    change(answer ? { color: { ...state.color, [kind]: { ...kept(answer), given: entryOf(own) }, play: null } } : {})
  }
  const light = choice({
    id: `${id}/light`,
    value: own.light,
    names: ['D65', 'D50'],
    set: (light) => {
      own.light = light
      set(own.text)
    },
  })
  const text = textInput({ id, value: local(own.text), size: 14, placeholder: '52, 41, 18', faults: own.faults, set })
  return html`<div class="fields">
    ${field(say(READ[kind].asRead), id, text, own.faults)} ${field(say('color.inLight'), `${id}/light`, light)}
  </div>`
}

/** A color as documents have it, of what was typed. */
function entryOf({ text, light }) {
  const plain = text.trim()
  const numbers = plain.match(/-?\d+(\.\d+)?/g)?.map(Number) ?? []
  if (/^#/.test(plain) || numbers.length < 3) return { hex: plain }
  if (numbers.length === 3) return { lab: numbers, light }
  const [wavelengths, reflectance] = [0, 1].map((odd) => numbers.filter((_, at) => at % 2 === odd))
  return { bands: { from_nm: wavelengths[0], step_nm: wavelengths[1] - wavelengths[0], reflectance } }
}

/** How they look in lamp light and under an LED, or why that is not known. */
function otherLights(target, seen) {
  const request = {
    calculate: 'color-lights',
    color: target.given ?? target.color,
    other_color: seen.given ?? seen.color,
  }
  const { answer, faults } = reply(request)
  return html`<details>
    <summary>${say('color.otherLights')}</summary>
    <div lang=${inEnglish()}>
      ${(answer ? answer.text : [`${faults[0].message} ${faults[0].help}`]).map((line) => html`<p>${local(line)}</p>`)}
    </div>
  </details>`
}
