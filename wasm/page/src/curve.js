// What salt does to a piece: every point is an answer of the library to the requests `salt` and `sink`, for the mix that
// the piece is shot from, cold and at the temperature of the shot.
import { FORMAT, ask } from './core.js'
import { ofLibrary } from './library.js'
import { state } from './state.js'
import { local, say } from './words.js'

/** Salt goes up in half teaspoons for the base of the formula, as a spoon doses it. */
const STEP = 0.5
const MAX_STEPS = 240

/** The products of one color, one entry for each shape of a mold with several. */
export function piecesOf(book) {
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

/** The first formula of the piece that doses a salt, with that salt and its dose. */
export function saltOf({ formulas }) {
  for (const formula of formulas) {
    const doses = state.book.formulas[formula]?.doses ?? {}
    const salt = Object.keys(doses).find((name) => state.book.materials[name]?.kind === 'salt')
    if (salt) return { formula, salt, dose: doses[salt] }
  }
  return null
}

export const teaspoons = (at) => ({ value: at * STEP, unit: 'tsp' })
export const same = ({ value, unit }) => ({ value, unit })

/** The curve from no salt up to where the library refuses more. */
export function curveOf(piece, salt) {
  const base = basis(piece, salt)
  if (base.fault) return base
  const askFor = (loading) => point(piece, base, loading)
  const points = []
  let end = null
  while (points.length < MAX_STEPS) {
    const next = askFor({ as_scooped: teaspoons(points.length) })
    if (next.fault) {
      if (!points.length) return next
      end = next.fault
      break
    }
    points.push(next)
  }
  if (points.length < 2) return { fault: end ?? { message: say('salt.noneFits'), help: '', own: true } }
  const dosed = base.dosed && askFor({ per_volume: base.dosed })
  // The place of the book's dose on the scale; a step within rounding is taken as a step.
  const exact = dosed?.salt ? dosed.salt.as_scooped.value / (points[1].salt.as_scooped.value || 1) : null
  const now = exact === null ? null : Math.abs(exact - Math.round(exact)) < 1e-6 ? Math.round(exact) : exact
  return {
    piece,
    points,
    end: end ? endOf(end, points.at(-1)) : '',
    now,
    ask: askFor,
    per: base.per,
    formula: base.formula,
    dose: base.dose,
  }
}

const OUT_OF_REACH = 'salt-out-of-reach'

/** Why the plot ends where it does. */
function endOf(fault, { salt }) {
  const most = local(salt.as_scooped.text)
  if (fault.code !== OUT_OF_REACH) {
    return say('salt.refused', { salt: most, why: ofLibrary(`${fault.message} ${fault.help}`) })
  }
  const limit = state.book.limits?.solids
  return limit ? say('salt.solidsOf', { salt: most, limit: local(String(limit)) }) : say('salt.solids', { salt: most })
}

/** The mix without its salt, cold and at the temperature of the shot, and the piece. */
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
  const recipe = (book) => must({ calculate: 'formula', book, formulas: piece.formulas, base_amount: per, ...overlap })
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
      format: FORMAT,
      lines: [{ order: '1', product: piece.product, ...(piece.shape && { shape: piece.shape }), pieces: 1 }],
    },
  }).pots[0].stages[0]
  // The plan assumes a shot in the middle of the window.
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
    noSink: !piece.cavity.body ? say('salt.noBody') : !book.limits?.water ? say('salt.noWater') : '',
    request: {
      calculate: 'salt',
      measures,
      base_volume: per,
      base_density: same(mixed(plastisol, { phase: 'liquid' }).density),
      mix_mass: same(cold.mass),
      mix_volume: same(cold.volume),
      ...(atShot && { hot_volume: same(atShot.volume), shot_temperature: same(aim) }),
      salt: book.materials[salt],
      cavity_volume: cavityOf(piece, must),
      // The plan assumes a feed share of 50 % for a mold that states none.
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

/** The volume of a cavity; from the water that it holds if the book gives that. */
function cavityOf({ cavity: { cavity } }, must) {
  if (typeof cavity !== 'object' || !('water' in cavity)) return cavity
  const { altitude, station_pressure } = state.book
  const air = station_pressure ?? (altitude && same(must({ calculate: 'air', altitude }).pressure))
  const filled = { water_mass: cavity.water, water_temperature: cavity.at }
  return same(must({ calculate: 'water', ...filled, ...(air && { air_pressure: air }) }).volume)
}

/** Weight and sink rate of a piece at a loading. */
function point(piece, base, loading) {
  const request = { ...base.request, loading }
  const { answer: salt, faults } = ask(request)
  if (!salt) return { fault: faults[0] }
  const said = [[request, salt]]
  if (base.noSink) return { salt, sink: null, why: base.noSink, said }
  const sinks = { ...sinking(piece, salt), piece_density: same(salt.density) }
  const answered = ask(sinks)
  if (!answered.answer) return { salt, sink: null, why: ofLibrary(answered.faults[0].message), said }
  return { salt, sink: answered.answer, said: [...said, [sinks, answered.answer]] }
}

/** The request for the sink rate of a piece, its volume from mass and density. */
function sinking(piece, salt) {
  const cast = { kind: 'other', density: same(salt.density) }
  const { answer } = ask({ calculate: 'mix', materials: { cast }, masses: { cast: same(salt.piece) } })
  const hook = piece.cavity.hook ?? piece.mold.hook
  return {
    calculate: 'sink',
    measures: state.book.measures,
    body: piece.cavity.body,
    piece_volume: same(answer.volume),
    fished_water: state.book.limits.water,
    ...(hook && { hook }),
  }
}

/** The salt for a wanted weight or sink rate; if it is refused a `note`, which is the library's or the page's `own`. */
export function saltFor(curve, kind, wanted) {
  if (kind === 'piece') return noted(curve.ask({ piece_mass: wanted }))
  // The volume of a piece depends slightly on its salt: ask again with the salt that results.
  let near = curve.points[0]
  for (let round = 0; round < 3; round += 1) {
    const { answer, faults } = ask({ ...sinking(curve.piece, near.salt), sink_rate: wanted })
    if (!answer) return noted({ fault: faults[0] })
    near = curve.ask({ finished_density: same(answer.density) })
    if (near.fault) return near.fault.code === OUT_OF_REACH ? { note: speedsOf(curve, wanted) } : noted(near)
  }
  return near
}

/** The sink rates in reach, for one that is not. */
function speedsOf({ points }, wanted) {
  const [none, max] = [points[0], points.at(-1)]
  const [slow, fast, salt] = [none.sink.sink_rate, max.sink.sink_rate, max.salt.as_scooped].map(({ text }) =>
    local(text),
  )
  return { message: say('salt.outOfReach', { wanted: local(wanted), slow, fast, salt }), own: true }
}

const noted = (answered) =>
  answered.fault ? { note: { message: `${answered.fault.message} ${answered.fault.help}` } } : answered
