// The plan's steps as the page uses them: with the parts of the plan that they refer to, and with clocks. A step has items
// to tick one by one.
import { inUnit } from './core.js'
import { isNothing } from './nothing.js'
import { ofLibrary } from './library.js'
import { short } from './show.js'
import { local, message, say } from './words.js'

/** The steps of a day, in the order of work; what puts pots right comes first: `fix` are its items. */
export function steps(plan, fix = []) {
  const pots = potsByLetter(plan)
  const { bench, measures, molds } = plan.made_from.book
  const hotFor = { words: written(bench.oven?.hot_for), seconds: inUnit(bench.oven?.hot_for, 's', measures) }
  for (const entry of pots.values()) {
    // A pot that was hot when the day went on is shot from by the clock of that heat.
    if (entry.pot.there?.hot) entry.hot = hotClock(entry, hotFor)
  }
  const all = [
    ...fixing(fix, pots),
    ...plan.steps.map((step) => withParts(step, plan, pots, { hotFor, molds, measures })),
  ]
  markEnds(all)
  markFirstHeats(all)
  markFilled(all)
  markHeated(all)
  return all
}

/** The sentence of a step at a pot: the library's, but for what puts a pot right. */
export const headOf = ({ kind }, { text }) => (kind === 'put-right' ? text : ofLibrary(text))

/** What to do with an item: the library's, but for what is added to put a pot right. */
export const sayOf = (item) => (isOwn(item) ? item.say : ofLibrary(item.say))

/** Whether the words of an item are the page's. */
export const isOwn = ({ isFix, weigh }) => Boolean(isFix && weigh)

/** The clock of a hot pot ends with the last load of its heat; an entry of the work with its last load. */
function markEnds(steps) {
  const shots = steps.filter(({ kind }) => kind === 'shoot')
  const last = new Map(shots.flatMap((step) => step.hot.map((clock) => [clock, step])))
  for (const [{ id }, step] of last) (step.items.at(-1).ends ??= []).push(id)
  // A reheat divides the shots of an entry of the work; its pieces are counted after the last.
  for (const step of new Map(shots.map((step) => [step.work, step])).values()) step.isLastOfWork = true
  const first = new Map(shots.toReversed().map(({ work, id }) => [work, id]))
  for (const step of shots) step.counted = first.get(step.work)
}

/** A time of the book as it is shown. */
const written = (time) => (typeof time === 'object' && time ? local(`${time.value} ${time.unit}`) : time && local(time))

/** The steps that put pots right, one a pot. */
function fixing(fix, pots) {
  const own = new Map()
  for (const item of fix) {
    const entry = [...pots.values()].find(({ key }) => key === item.key)
    if (!entry) continue
    if (!own.has(entry)) own.set(entry, [])
    own.get(entry).push({ ...item, say: wordsOf(item), isFix: true, isMore: Boolean(item.weigh) })
  }
  return [...own].map(([{ pot, key }, items]) => {
    const at = { pot, key, number: null, stage: 1, at: pot.stages[0], details: items[0].details, notes: [] }
    const of = { ...at, text: say(pot.there?.hot ? 'steps.putRightHot' : 'steps.putRight') }
    return {
      id: items[0].id,
      kind: 'put-right',
      cautions: pot.there?.hot ? ['hot-plastisol'] : [],
      work: null,
      together: [],
      of,
      at: [of],
      pots: [pot.pot],
      stage: 1,
      items,
    }
  })
}

/** What to do to put a pot right: what is added is worded by the page, in the language of now. */
const wordsOf = ({ weigh, say: words }) =>
  weigh ? say('work.more', { material: weigh.material, measure: local(weigh.best.measure) }) : words

/** Marks the first heat of each pot: its cautions are in full. */
function markFirstHeats(steps) {
  const heats = steps.filter(({ kind }) => kind === 'heat').toReversed()
  for (const step of new Map(heats.map((step) => [step.of.key, step])).values()) step.isFirstHeat = true
}

/** Marks the last additions of each stage: what the cup holds is known after them. */
function markFilled(steps) {
  const weighed = steps.filter(({ kind, items }) => kind !== 'put-right' && items[0].weigh)
  const last = new Map(weighed.map((step) => [step.of.at, step]))
  for (const step of last.values()) step.filled = true
}

/** Marks shots with the last heat before them, by pot. */
function markHeated(steps) {
  const last = new Map()
  for (const step of steps) {
    if (step.kind === 'heat') for (const pot of step.pots) last.set(pot, step)
    if (step.kind === 'shoot') step.heated = new Map(last)
  }
}

/** The pots by letter, each with a key that does not depend on its place in the day. */
export function potsByLetter(plan) {
  return new Map(plan.pots.map((pot) => [pot.pot, { pot, key: pot.id, hot: null, heats: new Map() }]))
}

function withParts(step, plan, pots, bench) {
  const work = plan.work[step.work - 1]
  const at = step.at.map((at) => {
    const { pot, key } = pots.get(at.pot)
    const stage = pot.stages[at.stage - 1]
    const { heat } = work.from.find((from) => from.pot === at.pot)
    return { ...at, pot, key, at: stage, heat, draw: stage.draws[at.draw - 1] }
  })
  const [of] = at
  const more = PARTS[step.kind]?.({ step, at, of, pots, ...bench }) ?? {}
  const shown = (text, other) => short({ text, other, scale: plan.scale })
  const all = ({ details, other_details: others }) => details.map((detail, at) => shown(detail, others?.[at]))
  const worded = at.map((of) => ({ ...of, text: shown(of.text, of.other), details: all(of) }))
  return {
    ...more,
    id: step.id,
    kind: step.kind,
    cautions: step.cautions,
    work,
    together: step.kind === 'heat' ? all(work) : [],
    of: worded[0],
    at: worded,
    pots: step.at.map(({ pot }) => pot),
    stage: of.stage,
    items: step.items.map((item, index) => ({
      id: item.id,
      isMore: item.more === true,
      words: item.amount,
      say: shown(item.text, item.other),
      number: item.number,
      shots: item.shots,
      ...more.items?.[index],
    })),
  }
}

/** What the steps of some kinds have in addition. */
const PARTS = { measure: weighed, add: weighed, degas: held, heat: heated, shoot: shot }

function weighed({ step, of }) {
  const weighed = step.items.map((item) => of.at.weigh[item.weigh - 1])
  return { items: weighed.map((weigh) => ({ weigh, isNothing: isNothing(weigh) })) }
}

function held({ step }) {
  const fills = step.items.length
  return {
    items: step.items.map((_, fill) => ({
      hold: fills > 1 ? message('steps.degassingFill', { fill: fill + 1 }) : message('steps.degassing'),
    })),
  }
}

function heated({ step, of, pots, hotFor }) {
  const heating = nextHeating(pots.get(of.pot.pot), of)
  const bands = heating?.known?.bands ?? []
  // A pot that is still hot is shot from by the clock of its last heat.
  const entry = pots.get(of.pot.pot)
  const clock = hotClock(entry, hotFor)
  entry.hot = clock
  const last = step.items.length - 1
  return {
    heating,
    items: step.items.map((_, index) => ({
      ...(bands[index] && { burst: bands[index], of: bands.length }),
      ...(clock && index === last && { starts: clock }),
    })),
  }
}

/** The table of readings of the next heat of a stage: its own for a reheat. */
function nextHeating(pot, { stage, at }) {
  const heats = pot.heats.get(stage) ?? 0
  pot.heats.set(stage, heats + 1)
  return at.clock?.known?.[heats]?.heating ?? at.heating
}

/** The clock of how long a pot stays hot, if the book gives that. It starts when the pot is hot, and has no box. */
function hotClock({ pot, key }, { words, seconds }) {
  if (!seconds) return null
  return { id: `hot/${key}`, clock: { label: message('steps.staysHot', { pot: pot.pot }), seconds, words } }
}

/** What the clock of a mold counts from: of several molds, and of several shots of a load, the one filled last. */
function sinceOf({ items }, mold, seconds) {
  const isOneOfSeveral = mold?.count > 1
  if (!seconds) return isOneOfSeveral ? 'steps.moldSinceSeveral' : 'steps.moldSince'
  if (isOneOfSeveral) return 'steps.moldSetsSeveral'
  return items.some(({ shots }) => shots > 1) ? 'steps.moldSetsAgain' : 'steps.moldSets'
}

function shot({ step, at, pots, molds, measures }) {
  const [{ draw }] = at
  const sets = molds[draw.mold]?.sets
  const seconds = inUnit(sets, 's', measures)
  const mold = {
    id: `mold/${draw.mold}`,
    clock: {
      label: message(sinceOf(step, molds[draw.mold], seconds), { mold: draw.mold }),
      seconds,
      words: written(sets),
    },
  }
  const last = step.items.length - 1
  return {
    hot: at.flatMap(({ pot }) => pots.get(pot.pot).hot ?? []),
    // Each load starts the clock of its mold over. Counted up it ends with the last load: nothing waits for it then.
    items: step.items.map((_, index) => ({
      ends: [mold.id],
      ...((seconds || index < last) && { starts: mold }),
    })),
  }
}
