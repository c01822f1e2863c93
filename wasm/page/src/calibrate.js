// Calibrates a drop, a level spoonful or what stays in the injector from the shop's own weighings, for the book.
import { html, nothing } from '../vendor/lit-html/lit-html.js'
import { asked } from './asked.js'
import { ask } from './core.js'
import { same } from './curve.js'
import { messages, faultsAt, keys } from './faults.js'
import { choice, field, number, textInput } from './fields.js'
import { once } from './press.js'
import { short } from './show.js'
import { editBook } from './edits.js'
import { ofLibrary } from './library.js'
import { change, state, valueAt } from './state.js'
import { local, say } from './words.js'

const COUNTED = { weighed_count: 'calibrate.count', weighed_mass: 'calibrate.together' }

/**
 * What can be calibrated: for which kinds of material, the likeliest first; the columns of a weighing, with their messages; and the
 * field of the request for the weighings.
 */
const KINDS = {
  drop: {
    title: 'calibrate.drop',
    kinds: ['colorant', 'stabilizer', 'softener', 'hardener', 'scent', 'plastisol', 'other'],
    columns: COUNTED,
    weighings: 'drops_weighed',
    request: (material) => ({ calculate: 'calibrate-drop', calibrated_material: material }),
    answer: ({ drop, scatter }) => [drop, say('calibrate.dropMore', { scatter: local(scatter.text) })],
  },
  spoon: {
    title: 'calibrate.spoon',
    kinds: ['salt', 'pearl', 'flake', 'other'],
    columns: COUNTED,
    weighings: 'scoops_weighed',
    request: (material, spoon) => ({
      calculate: 'calibrate-spoon',
      calibrated_material: material,
      spoon_volume: spoon,
    }),
    answer: ({ as_scooped, spoonful, scatter }) => [
      as_scooped,
      say('calibrate.spoonMore', { spoonful: short(spoonful), scatter: local(scatter.text) }),
    ],
  },
  injector: {
    title: 'calibrate.injector',
    kinds: ['plastisol'],
    columns: { clean_mass: 'calibrate.clean', emptied_mass: 'calibrate.emptied' },
    weighings: 'injector_weighed',
    request: (material) => ({ calculate: 'calibrate-injector', residue_density: hotDensity(material) }),
    answer: ({ keeps, mass, deviation }) => [
      keeps,
      say('calibrate.injectorMore', { mass: short(mass), scatter: local(deviation.text) }),
    ],
  },
}

/** The density of a plastisol in the middle of its shot window; undefined if the book lacks it. */
function hotDensity(material) {
  const entry = state.book.materials[material]
  const [from, to] = (Array.isArray(entry.shot_window) ? entry.shot_window : []).map((amount) => inCelsius(amount))
  const aim = from && to && { temperature: { value: (from.value + to.value) / 2, unit: '°C' } }
  const { answer } = ask({
    calculate: 'mix',
    materials: { [material]: entry },
    masses: { [material]: '1 kg' },
    phase: 'fused',
    measures: state.book.measures,
    ...aim,
  })
  return answer && same(answer.density)
}

const inCelsius = (amount) => ask({ calculate: 'convert', amount, to: '°C', measures: state.book.measures }).answer

const edit = (parts) => change({ calibrate: { ...state.calibrate, ...parts } })

/** The section of the book's view. */
export function calibration() {
  const { kind, rows } = state.calibrate
  const { kinds, columns, weighings } = KINDS[kind]
  const materials = Object.entries(state.book.materials ?? {})
  const names = kinds.flatMap((kind) => materials.filter(([, entry]) => entry?.kind === kind).map(([name]) => name))
  const spoons = (Array.isArray(state.book.bench?.spoons) ? state.book.bench.spoons : []).map(String)
  const [material, spoon] = [oneOf(names, state.calibrate.material), oneOf(spoons, state.calibrate.spoon)]
  const whole = rows.filter((row) => Object.keys(columns).every((key) => row[key]?.trim()))
  const result = material && whole.length > 1 ? resultOf(kind, material, spoon, whole) : null
  const faults = result?.faults ?? []
  const titles = Object.keys(KINDS).map((name) => say(KINDS[name].title))
  const setKind = (title) => edit({ kind: Object.keys(KINDS)[titles.indexOf(title)], rows: [] })
  return html`<section class="calibrate" aria-labelledby="calibrate">
    <h2 id="calibrate">${say('calibrate.title')}</h2>
    <div class="fields">
      ${chosen(say('calibrate.weigh'), 'kind', say(KINDS[kind].title), titles, setKind)}
      ${chosen(say('calibrate.of'), 'material', material, names, (material) => edit({ material, rows: [] }))}
      ${
        kind === 'spoon'
          ? chosen(say('calibrate.withSpoon'), 'spoon', spoon, spoons, (spoon) => edit({ spoon, rows: [] }), faults)
          : nothing
      }
    </div>
    <ol class="weighings">
      ${[...rows, {}].map((row, at) => weighing(columns, row, at, faultsAt(faults, [weighings, whole.indexOf(row)])))}
    </ol>
    <div class="outcome-of" aria-live="polite">${result ? outcome(result, KINDS[kind].answer) : tooFew()}</div>
  </section>`
}

const oneOf = (names, wanted) => (names.includes(wanted) ? wanted : (names[0] ?? ''))

/** The fields of a request that have another name here. */
const FIELDS = { spoon: 'spoon_volume' }

function chosen(label, name, value, names, set, faults = []) {
  const id = `calibrate/${name}`
  const own = faultsAt(faults, [FIELDS[name] ?? name])
  return field(label, id, choice({ id, value, names, faults: own, set }), own)
}

const tooFew = () => html`<p class="hint">${say('calibrate.tooFew')}</p>`

/** The fields of a weighing; the count is that of the one before, unless another is written. */
function weighing(columns, row, at, faults) {
  const { rows } = state.calibrate
  const { weighed_count } = rows[at - 1] ?? {}
  const set = (key, text) => {
    const written = { ...(weighed_count && { weighed_count }), ...row, [key]: text }
    edit({ rows: at < rows.length ? rows.with(at, written) : [...rows, written] })
  }
  return html`<li class="fields">
    ${Object.entries(columns).map(([key, title]) => {
      const label = say(title)
      const id = `calibrate/${at}/${key}`
      const own = faults.filter(({ path }) => keys(path).at(-1) === key)
      const control = textInput({
        id,
        value: row[key],
        faults: own,
        set: (text) => set(key, text),
        size: 7,
        placeholder: key === 'weighed_count' ? (weighed_count ?? '') : '',
        label: say('calibrate.weighing', { label, number: at + 1 }),
        numeric: true,
      })
      return field(label, id, control, own)
    })}
    ${
      at < rows.length
        ? html`<div class="field ends">
            <button
              type="button"
              class="quiet"
              aria-label=${say('calibrate.remove', { number: at + 1 })}
              @click=${once(`weighing ${at}`, () => edit({ rows: rows.toSpliced(at, 1) }))}
            >
              <span aria-hidden="true">✕</span>
            </button>
          </div>`
        : nothing
    }
  </li>`
}

/** The result of the weighings; `missing` is what the book must give first. */
function resultOf(kind, material, spoon, rows) {
  const weighings = rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([key, text]) => [key, key === 'weighed_count' ? number(text) : inGrams(text)]),
    ),
  )
  const { bench, measures } = state.book
  const balance_readability = bench?.balance?.reads
  const request = {
    ...KINDS[kind].request(material, spoon),
    [KINDS[kind].weighings]: weighings,
    balance_readability,
    measures,
  }
  const missing = Object.keys(NEEDED).filter((key) => key in request && !request[key])
  return missing.length ? { request, missing, faults: [] } : { request, missing, ...ask(request) }
}

const NEEDED = {
  balance_readability: 'calibrate.readability',
  residue_density: 'calibrate.density',
  spoon_volume: 'calibrate.spoons',
}

const inGrams = (text) => (/[a-z]/i.test(text) ? text : `${text} g`)

/** The result in words, with a button that writes it into the book; or why there is none. */
function outcome({ request, missing, answer, faults }, words) {
  if (missing.length) {
    const what = missing.map((key) => say(NEEDED[key])).reduce((one, other) => say('calibrate.and', { one, other }))
    return html`<p class="fault">${say('calibrate.lacks', { what })}</p>`
  }
  if (!answer) {
    return messages(
      'calibrate',
      faults.filter(({ path }) => !/^\/(\w+_weighed\/|spoon_volume)/.test(path)),
    )
  }
  const [text, more] = words(answer)
  const [written] = answer.write
  const path = keys(written.path)
  const now = valueAt(state.book, path)
  const kept = now?.value ?? now
  return html`<p class="say">${say('calibrate.result', { value: html`<strong>${local(text)}</strong>`, more })}</p>
    ${
      answer.questioned
        ? html`<p class="fault">
            <strong>${say('calibrate.question', { what: ofLibrary(answer.questioned) })}</strong>
            ${say('calibrate.questionHint')}
          </p>`
        : nothing
    }
    <p class="hint">
      ${say('calibrate.inBook', { value: kept === undefined ? say('calibrate.none') : local(String(kept)) })}
    </p>
    <div class="buttons">
      <button type="button" ?disabled=${kept === text} @click=${() => editBook(path, written.value)}>
        ${say('calibrate.write', { value: local(text) })}
      </button>
    </div>
    ${asked([request, answer])}`
}
