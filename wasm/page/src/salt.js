// Salt against the weight and the sink rate of a piece: a plot to drag along. Every point is an answer of the library to
// the requests `salt` and `sink`.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { live } from '../vendor/lit-html/directives/live.js'
import { asked } from './asked.js'
import { curveOf, piecesOf, saltFor, saltOf, teaspoons } from './curve.js'
import { choice, field } from './fields.js'
import { plot } from './plot.js'
import { short } from './show.js'
import { editBook } from './edits.js'
import { change, state } from './state.js'

const edit = (parts) => change({ salt: { ...state.salt, ...parts } })

/** The view. */
export function saltView() {
  const pieces = piecesOf(state.book)
  const piece = pieces.find(({ name }) => name === state.salt.product) ?? pieces.find(saltOf) ?? pieces[0]
  const salts = Object.keys(state.book.materials).filter((name) => state.book.materials[name].kind === 'salt')
  if (!piece || !salts.length) {
    return html`<p class="say">This needs a product of one color and a material of the kind “salt” in the book.</p>`
  }
  const salt = salts.includes(state.salt.salt) ? state.salt.salt : (saltOf(piece)?.salt ?? salts[0])
  return html`
    <div class="fields">
      ${field(
        'Piece',
        'salt:piece',
        choice({
          id: 'salt:piece',
          value: piece.name,
          names: pieces.map(({ name }) => name),
          set: (product) => edit({ product, at: null, note: {} }),
        }),
      )}
      ${field(
        'Salt',
        'salt:salt',
        choice({ id: 'salt:salt', value: salt, names: salts, set: (salt) => edit({ salt, at: null, note: {} }) }),
      )}
    </div>
    ${look(piece, salt)}
  `
}

let curve = { key: null }

function look(piece, salt) {
  const key = [state.book, piece.name, salt]
  if (!curve.key || key.some((part, at) => part !== curve.key[at])) curve = { key, ...curveOf(piece, salt) }
  if (curve.fault) {
    return html`<div class="fault">
      <p><strong>${curve.fault.message}</strong> ${curve.fault.help}</p>
    </div>`
  }
  const { points, ask: askFor, per, formula } = curve
  const at = Math.min(state.salt.at ?? curve.now ?? 0, points.length - 1)
  const here = Number.isInteger(at) ? points[at] : askFor({ as_scooped: teaspoons(at) })
  const none = !(here.salt.mass.value > 0)
  const dose = doseOf(here, at)
  const words = `${dose} of salt per ${per}: ${short(here.salt.piece)} a piece${
    here.sink ? `, sinks at ${short(here.sink.sink_rate)}` : ''
  }`
  return html`
    <div class="readout">
      <p>
        <small>salt per ${per} of base</small><strong>${dose}</strong>
        ${dose === here.salt.mass.text ? nothing : html`${short(here.salt.mass)}, `}${here.salt.of_base.text} of base
      </p>
      <p><small>a piece weighs</small><strong>${short(here.salt.piece)}</strong> ${short(here.salt.density)}</p>
      ${
        here.sink
          ? html`<p>
              <small>and sinks at</small><strong>${short(here.sink.sink_rate)}</strong> ${short(here.sink.slowest)} to
              ${short(here.sink.fastest)}${here.sink.motion === 'straight' ? '' : `, ${here.sink.motion.replace('-', ' ')}`}
            </p>`
          : html`<p><small>sink rate</small>${here.why}</p>`
      }
    </div>
    ${plot(points, at, (at) => edit({ at }))}
    <input
      class="along"
      type="range"
      min="0"
      max=${points.length - 1}
      step="1"
      aria-label="Salt per ${per} of base"
      aria-valuetext=${words}
      .value=${live(String(Math.round(at)))}
      @input=${(event) => edit({ at: Number(event.target.value) })}
    />
    <p class="hint">${curve.end}</p>
    <div class="fields wishes">
      ${wish('Weight of a piece', 'g', 'piece')} ${here.sink ? wish('Sink rate', 'cm/s', 'speed') : nothing}
    </div>
    <div class="buttons">
      <button type="button" ?disabled=${at === (curve.now ?? 0)} @click=${() => write(curve, salt, none ? null : dose)}>
        ${none ? takenOut(curve) : `Write ${dose} into “${formula}”`}
      </button>
      ${
        curve.now !== null && at !== curve.now
          ? html`<button type="button" class="quiet" @click=${() => edit({ at: null })}>
              Back to ${curve.dose}, as in the book
            </button>`
          : nothing
      }
    </div>
    <p class="hint">
      This changes the book, and with it the day's plan. Salt settles: stir before every load. Sink rates are from a
      model, with its bounds, for the piece with its hook.
    </p>
    ${asked(...here.said)}
  `
}

/** A field for a target, and the salt that reaches it. */
function wish(label, unit, kind) {
  const wished = (event) => {
    const text = event.target.value.trim()
    const answered = text ? saltFor(curve, kind, /[a-z]/i.test(text) ? text : `${text} ${unit}`) : { note: '' }
    const tsp = answered.salt && curve.points[1].salt.as_scooped.value
    edit({ note: { [kind]: answered.note ?? '' }, ...(tsp && { at: answered.salt.as_scooped.value / tsp }) })
  }
  const note = state.salt.note?.[kind]
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
    ${note ? html`<p class="fault" id="${id}:fault">${note}</p>` : nothing}
  </div>`
}

/** Salt as it is dosed: by the spoon if a spoon measures it, else weighed. */
function doseOf({ salt }, at) {
  return Number.isInteger(at) && !/\b(mL|L)$/.test(salt.as_scooped.text) ? salt.as_scooped.text : salt.mass.text
}

const takenOut = ({ now, formula }) => (now ? `Take the salt out of “${formula}”` : `“${formula}” has no salt`)

/** Writes the salt of a formula into the book (null removes it); the piece stays in view. */
function write({ formula, per, piece }, salt, dose) {
  const entry = state.book.formulas[formula]
  const { [salt]: _, ...others } = entry.doses
  editBook(['formulas', formula], { ...entry, per, doses: dose ? { ...entry.doses, [salt]: dose } : others })
  edit({ product: piece.name, salt, at: null })
}
