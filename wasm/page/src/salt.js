// Salt against the weight of a piece and how fast it sinks: a plot to drag along. Every point of it is an answer of the
// library to the requests `salt` and `sink`.
import { html, nothing, svg } from '../vendor/lit-html/lit-html.js'
import { live } from '../vendor/lit-html/directives/live.js'
import { ask } from './core.js'
import { choice, field } from './fields.js'
import { short } from './show.js'
import { change, editBook, state } from './state.js'

/** Salt goes up in half teaspoons for the base of the formula, as a spoon doses it. */
const STEP = 0.5
const MOST_STEPS = 240

const edit = (parts) => change({ salt: { ...state.salt, ...parts } })

/** The view. */
export function saltView() {
  const pieces = piecesOf(state.book)
  const piece = pieces.find(({ name }) => name === state.salt.product) ?? pieces.find(saltOf) ?? pieces[0]
  const salts = Object.keys(state.book.materials).filter((name) => state.book.materials[name].kind === 'salt')
  if (!piece || !salts.length) {
    return html`<p class="say">The book needs a product of one color and a material of the kind “salt” for this.</p>`
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

/** The products of one color, each shape of an unlike mold by itself. */
function piecesOf(book) {
  return Object.entries(book.products ?? {}).flatMap(([product, { mold, formulas, overlap }]) => {
    const entry = book.molds[mold]
    if (!formulas || !entry) return []
    const piece = { product, mold: entry, formulas, overlap }
    if (typeof entry.cavities !== 'object') return [{ ...piece, name: product, shape: null, cavity: entry }]
    return Object.entries(entry.cavities).map(([shape, cavity]) => ({
      ...piece,
      name: `${product}, ${shape}`,
      shape,
      cavity,
    }))
  })
}

/** Which formula of the piece doses a salt, and which. */
function saltOf({ formulas }) {
  for (const formula of formulas) {
    const doses = state.book.formulas[formula]?.doses ?? {}
    const salt = Object.keys(doses).find((name) => state.book.materials[name]?.kind === 'salt')
    if (salt) return { formula, salt, dose: doses[salt] }
  }
  return null
}

let curve = { key: null }

function look(piece, salt) {
  const key = [state.book, piece.name, salt]
  if (!curve.key || key.some((part, at) => part !== curve.key[at])) curve = { key, ...reckon(piece, salt) }
  if (curve.fault) {
    return html`<div class="fault">
      <p><strong>${curve.fault.message}</strong> ${curve.fault.help}</p>
    </div>`
  }
  const { points, ask: askFor, per, formula } = curve
  const at = Math.min(state.salt.at ?? curve.now ?? 0, points.length - 1)
  const here = Number.isInteger(at) ? points[at] : askFor({ as_scooped: teaspoons(at) })
  const words = `${here.salt.as_scooped.text} of salt to ${per}: ${short(here.salt.piece)} a piece${
    here.sink ? `, sinks ${short(here.sink.speed)}` : ''
  }`
  return html`
    <div class="readout">
      <p>
        <small>salt to ${per} of base</small><strong>${here.salt.as_scooped.text}</strong> ${short(here.salt.mass)},
        ${here.salt.of_base.text} of base
      </p>
      <p><small>a piece weighs</small><strong>${short(here.salt.piece)}</strong> ${short(here.salt.density)}</p>
      ${
        here.sink
          ? html`<p>
              <small>and sinks</small><strong>${short(here.sink.speed)}</strong> ${short(here.sink.slowest)} to
              ${short(here.sink.fastest)}${here.sink.motion === 'straight' ? '' : `, ${here.sink.motion.replace('-', ' ')}`}
            </p>`
          : html`<p><small>sink rate</small>${curve.noSink}</p>`
      }
    </div>
    ${plot(points, at)}
    <input
      class="along"
      type="range"
      min="0"
      max=${points.length - 1}
      step="1"
      aria-label="Salt to ${per} of base"
      aria-valuetext=${words}
      .value=${live(String(Math.round(at)))}
      @input=${(event) => edit({ at: Number(event.target.value) })}
    />
    <p class="hint">${curve.end}</p>
    <div class="fields wishes">
      ${wish('A piece shall weigh', 'g', 'piece')} ${here.sink ? wish('It shall sink at', 'cm/s', 'speed') : nothing}
    </div>
    <div class="buttons">
      <button type="button" ?disabled=${at === curve.now} @click=${() => write(formula, salt, per, here)}>
        Write ${here.salt.as_scooped.text} into “${formula}”
      </button>
      ${
        curve.now !== null && at !== curve.now
          ? html`<button type="button" class="quiet" @click=${() => edit({ at: null })}>
              Back to the book's ${curve.dose}
            </button>`
          : nothing
      }
    </div>
    <p class="hint">
      The book is changed, and the day's plan with it. Salt settles: stir before every load. Sink rates are a model,
      with its bounds, for the piece with its hook.
    </p>
  `
}

const teaspoons = (at) => ({ value: at * STEP, unit: 'tsp' })
const same = ({ value, unit }) => ({ value, unit })

/** What the library says, from no salt up to where it refuses. */
function reckon(piece, salt) {
  const base = basis(piece, salt)
  if (base.fault) return base
  const askFor = (loading) => point(piece, base, loading)
  const points = []
  let end = ''
  while (points.length < MOST_STEPS) {
    const next = askFor({ as_scooped: teaspoons(points.length) })
    if (next.fault) {
      if (!points.length) return next
      end = `More is refused: ${next.fault.message} ${next.fault.help}`
      break
    }
    points.push(next)
  }
  if (points.length < 2) return { fault: { message: `No salt goes in. ${end}`, help: '' } }
  const dosed = base.dosed && askFor({ mass: base.dosed })
  // Where on the scale the book's dose lies; a step of it is a step of the scale within rounding.
  const exact = dosed?.salt ? dosed.salt.as_scooped.value / (points[1].salt.as_scooped.value || 1) : null
  const now = exact === null ? null : Math.abs(exact - Math.round(exact)) < 1e-6 ? Math.round(exact) : exact
  return {
    piece,
    points,
    end,
    now,
    ask: askFor,
    per: base.per,
    formula: base.formula,
    dose: base.dose,
    noSink: base.noSink,
  }
}

/** The mix without its salt, cold and as hot as it is shot, and the piece. */
function basis(piece, salt) {
  try {
    return basisOf(piece, salt, (request) => {
      const { answer, faults } = ask(request)
      if (!answer) throw faults
      return answer
    })
  } catch (faults) {
    if (Array.isArray(faults)) return { fault: faults[0] }
    throw faults
  }
}

function basisOf(piece, salt, must) {
  const { book } = state
  const { measures } = book
  const held = saltOf(piece)
  const formula = held?.formula ?? piece.formulas.at(-1)
  const per = book.formulas[formula].per ?? '1 cup'
  const overlap = piece.overlap && { overlap: piece.overlap }
  const recipe = (book) => must({ calculate: 'formula', book, formulas: piece.formulas, base: per, ...overlap })
  const parts = recipe(withoutSalt(book, piece.formulas)).parts
  const mixed = (parts, more) =>
    must({
      calculate: 'mix',
      materials: Object.fromEntries(parts.map(({ material }) => [material, book.materials[material]])),
      masses: Object.fromEntries(parts.map(({ material, mass }) => [material, same(mass)])),
      measures,
      ...more,
    })
  const hot = must({
    calculate: 'plan',
    book,
    orders: {
      format: 'pourwright/1.0',
      lines: [{ order: '1', product: piece.product, ...(piece.shape && { shape: piece.shape }), pieces: 1 }],
    },
  }).pots[0].stages[0]
  // The plan reckons a shot in the middle of the window.
  const aim = hot.shoot_from && { value: (hot.shoot_from.value + hot.shoot_to.value) / 2, unit: hot.shoot_from.unit }
  const cold = mixed(parts, { phase: 'fused' })
  const atShot = aim ? mixed(parts, { phase: 'fused', temperature: same(aim) }) : null
  const plastisol = parts.filter(({ material }) => book.materials[material].kind === 'plastisol')
  const dosed = held && recipe(book).parts.find(({ material }) => material === held.salt)
  return {
    formula,
    per,
    dose: held?.dose,
    dosed: dosed && same(dosed.mass),
    noSink: !piece.cavity.body ? 'the mold states no body' : !book.limits?.water ? 'the book states no water' : '',
    request: {
      calculate: 'salt',
      measures,
      base: per,
      base_density: same(mixed(plastisol, { phase: 'liquid' }).density),
      mix: same(cold.mass),
      volume: same(cold.volume),
      ...(atShot && { hot_volume: same(atShot.volume), shot_temperature: same(aim) }),
      salt: book.materials[salt],
      cavity: cavityOf(piece, must),
      // The plan shows pieces of a mold without a feed share as fed half of their contraction.
      feed: piece.mold.feed ?? '50 %',
      ...(piece.mold.voids && { voids: piece.mold.voids }),
      ...(book.limits?.solids && { most_solids: book.limits.solids }),
    },
  }
}

function withoutSalt(book, formulas) {
  const bare = (entry) => ({
    ...entry,
    doses: Object.fromEntries(Object.entries(entry.doses).filter(([name]) => book.materials[name]?.kind !== 'salt')),
  })
  const changed = Object.fromEntries(formulas.map((name) => [name, bare(book.formulas[name])]))
  return { ...book, formulas: { ...book.formulas, ...changed } }
}

/** The volume of a cavity, by the water that it holds where the book says that. */
function cavityOf({ cavity: { cavity } }, must) {
  if (typeof cavity !== 'object' || !('water' in cavity)) return cavity
  const { altitude, air_pressure } = state.book
  const air = air_pressure ?? (altitude && same(must({ calculate: 'air', altitude }).pressure))
  return same(must({ calculate: 'water', ...cavity, ...(air && { air_pressure: air }) }).volume)
}

/** Weight and fall of a piece at a loading. */
function point(piece, base, loading) {
  const { answer: salt, faults } = ask({ ...base.request, loading })
  if (!salt) return { fault: faults[0] }
  if (base.noSink) return { salt, sink: null }
  const answered = ask({ ...sinking(piece, salt), density: same(salt.density) })
  return { salt, sink: answered.answer ?? null }
}

/** The piece as it sinks: as large as its mass and its density say. */
function sinking(piece, salt) {
  const cast = { kind: 'other', density: same(salt.density) }
  const { answer } = ask({ calculate: 'mix', materials: { cast }, masses: { cast: same(salt.piece) } })
  const hook = piece.cavity.hook ?? piece.mold.hook
  return {
    calculate: 'sink',
    measures: state.book.measures,
    body: piece.cavity.body,
    volume: same(answer.volume),
    water: state.book.limits.water,
    ...(hook && { hook }),
  }
}

/** A wish for the piece, and the salt that it takes. */
function wish(label, unit, kind) {
  const wished = (event) => {
    const text = event.target.value.trim()
    const answered = text ? saltFor(kind, /[a-z]/i.test(text) ? text : `${text} ${unit}`) : { note: '' }
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

function saltFor(kind, wanted) {
  if (kind === 'piece') return noted(curve.ask({ piece: wanted }))
  // The volume of a piece hangs on its salt a little: the speed is asked for once more at the salt that comes out.
  let near = curve.points[0]
  for (let round = 0; round < 3; round += 1) {
    const { answer, faults } = ask({ ...sinking(curve.piece, near.salt), speed: wanted })
    if (!answer) return noted({ fault: faults[0] })
    near = curve.ask({ density: same(answer.density) })
    if (near.fault) return noted(near)
  }
  return near
}

const noted = (answered) => (answered.fault ? { note: `${answered.fault.message} ${answered.fault.help}` } : answered)

function write(formula, salt, per, here) {
  const entry = state.book.formulas[formula]
  const { salt: reckoned } = here
  const dose = /\b(mL|g)$/.test(reckoned.as_scooped.text) ? same(reckoned.mass) : reckoned.as_scooped.text
  const doses = { ...entry.doses }
  if (reckoned.mass.value > 0) doses[salt] = dose
  else delete doses[salt]
  editBook(['formulas', formula], { ...entry, per, doses })
  edit({ at: null })
}

// The drawing.
const [HEIGHT, LEFT, RIGHT, TOP, BOTTOM] = [150, 80, 30, 16, 24]

/** As wide as the screen is, so that the words keep their size. */
const width = () => Math.max(360, Math.min(1000, innerWidth))

function plot(points, at) {
  const wide = width()
  const panels = [
    { name: 'g', title: 'weight of a piece', of: ({ salt }) => [salt.piece.value, salt.piece.value, salt.piece.value] },
  ]
  if (points.every(({ sink }) => sink)) {
    const bounds = ({ sink }) => [sink.slowest.value, sink.speed.value, sink.fastest.value]
    panels.push({ name: 'cm/s', title: 'sink rate, with its bounds', of: bounds })
  }
  const x = (step) => LEFT + (step / Math.max(points.length - 1, 1)) * (wide - LEFT - RIGHT)
  const drag = (event) => {
    if (event.type === 'pointermove' && !event.buttons) return
    const drawing = event.currentTarget
    const { x: along } = new DOMPoint(event.clientX, event.clientY).matrixTransform(drawing.getScreenCTM().inverse())
    const step = Math.round(((along - LEFT) / (wide - LEFT - RIGHT)) * (points.length - 1))
    if (event.type === 'pointerdown') drawing.setPointerCapture(event.pointerId)
    edit({ at: Math.max(0, Math.min(points.length - 1, step)) })
  }
  return html`<svg
    class="plot"
    viewBox="0 0 ${wide} ${panels.length * HEIGHT + 30}"
    aria-hidden="true"
    @pointerdown=${drag}
    @pointermove=${drag}
  >
    ${panels.map((panel, at_) => panelOf(panel, at_ * HEIGHT, points, x, at))}
    ${xAxis(points, x, panels.length * HEIGHT)}
    <line class="handle" x1=${x(at)} x2=${x(at)} y1=${TOP} y2=${panels.length * HEIGHT - BOTTOM + 14} />
    <circle class="grip" cx=${x(at)} cy=${panels.length * HEIGHT - BOTTOM + 14} r="13" />
  </svg>`
}

function panelOf({ name, title, of }, top, points, x, at) {
  const values = points.map(of)
  const [low, high] = [Math.min(...values.map(([low]) => low)), Math.max(...values.map(([, , high]) => high))]
  const y = (value) => top + HEIGHT - BOTTOM - ((value - low) / (high - low || 1)) * (HEIGHT - BOTTOM - TOP - 16)
  const path = (pick, list = values) => list.map((value, step) => `${x(step)} ${y(pick(value))}`).join(' L')
  const band = `M${path(([low]) => low)} L${values
    .map((value, step) => `${x(step)} ${y(value[2])}`)
    .reverse()
    .join(' L')} Z`
  const [floor, ceil] = [values[Math.floor(at)], values[Math.ceil(at)]]
  const here = floor[1] + (ceil[1] - floor[1]) * (at - Math.floor(at))
  return svg`<g>
    <text class="title" x=${LEFT} y=${top + TOP}>${title}</text>
    <line class="axis" x1=${LEFT} x2=${LEFT} y1=${y(low)} y2=${y(high)} />
    ${[low, high].map((value) => svg`<text class="label" x=${LEFT - 8} y=${y(value) + 5}>${rounded(value)} ${name}</text>`)}
    <path class="band" d=${band} />
    <path class="curve" d="M${path(([, middle]) => middle)}" />
    <circle class="dot" cx=${x(at)} cy=${y(here)} r="7" />
  </g>`
}

const rounded = (value) => new Intl.NumberFormat('en-US', { maximumSignificantDigits: 3 }).format(value)

function xAxis(points, x, bottom) {
  const every = points.length > (innerWidth < 640 ? 30 : 60) ? 12 : 6
  const steps = [...points.keys()].filter((step) => step % every === 0)
  return steps.map(
    (step) => svg`<line class="axis" x1=${x(step)} x2=${x(step)} y1=${bottom - BOTTOM + 4} y2=${bottom - BOTTOM + 10} />
      <text class="below" x=${x(step)} y=${bottom + 24}>${step === 0 ? 'none' : points[step].salt.as_scooped.text}</text>`,
  )
}
