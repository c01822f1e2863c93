// The view of color: pictures with a card, target and sample side by side, the next drops, and the formulas that are near.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { asked } from './asked.js'
import { cupPart } from './color-cup.js'
import { drop, picturesPart } from './color-marks.js'
import { nearPart } from './color-near.js'
import { kept, readingOf } from './color-pictures.js'
import { messages } from './faults.js'
import { choice, field, textInput } from './fields.js'
import { once } from './press.js'
import { reply } from './replies.js'
import { change, state } from './state.js'
import { apart, differenceText, swatch } from './swatch.js'

const TITLES = { target: 'Target', seen: 'Sample' }

/** The view. */
export function colorView() {
  return html`<div class="color" @dragover=${drop.over} @drop=${drop.take}>
    ${picturesPart()}
    <div class="answers">${sideBySide()} ${cupPart()} ${nearPart()}</div>
  </div>`
}

/** Target and sample as the card balances them, and how far they are apart. */
function sideBySide() {
  const { target, seen } = state.color
  const difference = target && seen ? apart(target.color, seen.color) : null
  return html`<section class="side-by-side" aria-labelledby="side-by-side">
    <h2 id="side-by-side">Side by side</h2>
    <div class="pair">
      ${Object.keys(TITLES).map((kind) =>
        state.color[kind]
          ? swatch(state.color[kind].hex, TITLES[kind])
          : html`<div class="swatch empty">no ${TITLES[kind].toLowerCase()} yet</div>`,
      )}
    </div>
    <p class="say" role="status">${difference ? differenceText(difference) : nothing}</p>
    ${Object.keys(TITLES).map((kind) => readingPart(kind))}
    ${
      target || seen
        ? html`<p class="hint">As in daylight (D65), balanced by the card. ${statementOf(target ?? seen)}</p>`
        : nothing
    }
    ${target && seen ? otherLights(target, seen) : nothing}
  </section>`
}

const statementOf = ({ color }) => reply({ calculate: 'color-reading', instrument: color }).answer?.statement

/** What was typed of an instrument, and the light that it is for; not kept. */
const typed = { target: { text: '', light: 'D65', faults: [] }, seen: { text: '', light: 'D65', faults: [] } }

/** A reading: its numbers, what is wrong with it or could be better, and what would do. */
function readingPart(kind) {
  const now = state.color[kind]
  const found = readingOf(kind)
  const faults = found?.faults ?? []
  return html`<div class="reading-of">
    <h3>${TITLES[kind]}</h3>
    ${
      now
        ? html`<p>
              L*
              ${now.color.lab
                .map((part) => part.toFixed(1))
                .join(', a* ')
                .replace(/, a\* ([^,]*)$/, ', b* $1')}
              <small>± ${Math.max(...now.color.uncertainty).toFixed(1)}, ${fromWhere(now.pictures)}</small>
              <button
                type="button"
                class="quiet"
                aria-label="Forget the ${TITLES[kind].toLowerCase()}"
                @click=${once(`forget ${kind}`, () => change({ color: { ...state.color, [kind]: null } }))}
              >
                Forget
              </button>
            </p>
            ${now.notes.map(({ message }) => html`<p class="better">${message}</p>`)}
            ${now.hex ? nothing : html`<p class="hint">No screen shows this color.</p>`}`
        : nothing
    }
    ${messages(`color/${kind}`, faults)} ${instrument(kind)}
    ${found?.answer ? asked([found.request, found.answer]) : nothing}
  </div>`
}

function fromWhere(pictures) {
  if (!pictures) return 'as read before'
  if (pictures === 1) return 'from one picture; three are surer'
  return `from ${pictures} pictures`
}

/** A reading of an instrument, or a color in digits. */
function instrument(kind) {
  const own = typed[kind]
  const id = `color/${kind}/typed`
  const set = (text) => {
    own.text = text
    const { answer, faults } = text.trim()
      ? reply({ calculate: 'color-reading', instrument: entryOf(own) })
      : { faults: [] }
    own.faults = faults
    if (answer) change({ color: { ...state.color, [kind]: { ...kept(answer), given: entryOf(own) } } })
    else change()
  }
  return html`<details class="instrument">
    <summary>${TITLES[kind]} by an instrument</summary>
    <div class="fields">
      ${field(
        'L*, a*, b*, or #rrggbb, or bands',
        id,
        textInput({ id, value: own.text, size: 22, placeholder: '52, 41, 18', faults: own.faults, set }),
        own.faults,
      )}
      ${field(
        'Light of L*a*b*',
        `${id}/light`,
        choice({
          id: `${id}/light`,
          value: own.light,
          names: ['D65', 'D50'],
          set: (light) => {
            own.light = light
            set(own.text)
          },
        }),
      )}
    </div>
    <p class="hint">Bands: wavelength and reflectance from 0 to 1, one after the other: 400 0.31 420 0.33 …</p>
  </details>`
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
    <summary>In other lights</summary>
    ${answer ? answer.text.map((line) => html`<p>${line}</p>`) : html`<p>${faults[0].message} ${faults[0].help}</p>`}
  </details>`
}
