// Salt against the weight and the sink rate of a piece: a plot to drag along. Every point is an answer of the library to
// the requests `salt` and `sink`.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { live } from '../vendor/lit-html/directives/live.js'
import { asked } from './asked.js'
import { curveOf, piecesOf, saltFor, saltOf, teaspoons } from './curve.js'
import { said } from './faults.js'
import { choice, field } from './fields.js'
import { ofLibrary } from './library.js'
import { plot } from './plot.js'
import { short } from './show.js'
import { editBook } from './edits.js'
import { change, state } from './state.js'
import { language, local, say, typed } from './words.js'

const edit = (parts) => change({ salt: { ...state.salt, ...parts } })

/** The view. */
export function saltView() {
  const pieces = piecesOf(state.book)
  const piece = pieces.find(({ name }) => name === state.salt.product) ?? pieces.find(saltOf) ?? pieces[0]
  const salts = Object.keys(state.book.materials).filter((name) => state.book.materials[name].kind === 'salt')
  if (!piece || !salts.length) {
    return html`<p class="say">${say('salt.needs')}</p>`
  }
  const salt = salts.includes(state.salt.salt) ? state.salt.salt : (saltOf(piece)?.salt ?? salts[0])
  return html`
    <div class="fields">
      ${field(
        say('salt.piece'),
        'salt:piece',
        choice({
          id: 'salt:piece',
          value: piece.name,
          names: pieces.map(({ name }) => name),
          set: (product) => edit({ product, at: null, note: {} }),
        }),
      )}
      ${field(
        say('salt.salt'),
        'salt:salt',
        choice({ id: 'salt:salt', value: salt, names: salts, set: (salt) => edit({ salt, at: null, note: {} }) }),
      )}
    </div>
    ${look(piece, salt)}
  `
}

let curve = { key: null }

function look(piece, salt) {
  const key = [state.book, piece.name, salt, language()]
  if (!curve.key || key.some((part, at) => part !== curve.key[at])) curve = { key, ...curveOf(piece, salt) }
  if (curve.fault) {
    return html`<div class="fault">
      <p><strong>${said(curve.fault, 'message')}</strong> ${said(curve.fault, 'help')}</p>
    </div>`
  }
  const { points, ask: askFor, per, formula } = curve
  const at = Math.min(state.salt.at ?? curve.now ?? 0, points.length - 1)
  const here = Number.isInteger(at) ? points[at] : askFor({ as_scooped: teaspoons(at) })
  const none = !(here.salt.mass.value > 0)
  const { dose } = here.salt
  const shown = { dose: local(dose), per: local(String(per)), piece: short(here.salt.piece) }
  const words = here.sink
    ? say('salt.valueTextSinks', { ...shown, speed: short(here.sink.sink_rate) })
    : say('salt.valueText', shown)
  return html`
    <div class="readout">
      <p>
        <small>${say('salt.perBase', { per: shown.per })}</small><strong>${shown.dose}</strong>
        ${ofBase(here.salt, dose)}
      </p>
      <p><small>${say('salt.weighs')}</small><strong>${short(here.salt.piece)}</strong> ${short(here.salt.density)}</p>
      ${
        here.sink
          ? html`<p>
              <small>${say('salt.sinks')}</small><strong>${short(here.sink.sink_rate)}</strong> ${bounds(here.sink)}
            </p>`
          : html`<p><small>${say('salt.sinkRate')}</small>${here.why}</p>`
      }
    </div>
    ${plot(points, at, (at) => edit({ at }))}
    <input
      class="along"
      type="range"
      min="0"
      max=${points.length - 1}
      step="1"
      aria-label=${say('salt.along', { per: shown.per })}
      aria-valuetext=${words}
      .value=${live(String(Math.round(at)))}
      @input=${(event) => edit({ at: Number(event.target.value) })}
    />
    <p class="hint">${curve.end}</p>
    <div class="fields wishes">
      ${wish(say('salt.wishWeight'), 'g', 'piece')}
      ${here.sink ? wish(say('salt.wishSpeed'), 'cm/s', 'speed') : nothing}
    </div>
    <div class="buttons">
      <button type="button" ?disabled=${at === (curve.now ?? 0)} @click=${() => write(curve, salt, none ? null : dose)}>
        ${none ? takenOut(curve) : say('salt.write', { dose: shown.dose, formula })}
      </button>
      ${
        curve.now !== null && at !== curve.now
          ? html`<button type="button" class="quiet" @click=${() => edit({ at: null })}>
              ${say('salt.back', { dose: local(String(curve.dose)) })}
            </button>`
          : nothing
      }
    </div>
    <p class="hint">${say('salt.hint')}</p>
    ${asked(...here.said)}
  `
}

const ofBase = ({ mass, of_base }, dose) =>
  dose === mass.text
    ? say('salt.ofBase', { share: local(of_base.text) })
    : say('salt.massOfBase', { mass: short(mass), share: local(of_base.text) })

/** How fast a piece sinks at least and at most, and how if not straight down. */
function bounds({ slowest, fastest, motion }) {
  const values = { slowest: short(slowest), fastest: short(fastest) }
  return motion === 'straight'
    ? say('salt.bounds', values)
    : say('salt.boundsMotion', { ...values, motion: ofLibrary(motion.replace('-', ' ')) })
}

/** A field for a target, and the salt that reaches it. */
function wish(label, unit, kind) {
  const wished = (event) => {
    const text = typed(event.target.value.trim())
    const answered = text ? saltFor(curve, kind, /[a-z]/i.test(text) ? text : `${text} ${unit}`) : { note: '' }
    const tsp = answered.salt && curve.points[1].salt.as_scooped.value
    edit({ note: { [kind]: answered.note ?? '' }, ...(tsp && { at: answered.salt.as_scooped.value / tsp }) })
  }
  const note = state.salt.note?.[kind] || null
  const id = `wish:${kind}`
  return html`<div class="field">
    <label for=${id}>${label}</label>
    <span class="with-unit"
      ><input
        id=${id}
        size="7"
        inputmode="decimal"
        autocomplete="off"
        aria-describedby=${note ? `${id}:fault` : nothing}
        @change=${wished}
      />
      ${unit}</span
    >
    ${note ? html`<p class="fault" id="${id}:fault">${said(note, 'message')}</p>` : nothing}
  </div>`
}

const takenOut = ({ now, formula }) => say(now ? 'salt.takeOut' : 'salt.hasNone', { formula })

/** Writes the salt of a formula into the book (null removes it); the piece stays in view. */
function write({ formula, per, piece }, salt, dose) {
  const entry = state.book.formulas[formula]
  const { [salt]: _, ...others } = entry.doses
  editBook(['formulas', formula], { ...entry, per, doses: dose ? { ...entry.doses, [salt]: dose } : others })
  edit({ product: piece.name, salt, at: null })
}
