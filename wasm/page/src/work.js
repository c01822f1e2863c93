// The day that is begun: the plan that is worked by, what is done of it, and how it goes on when something changes. A pot that
// is begun is never planned again from nothing: the library is told what is done, and says what is left to do.
import { askPlan, goOn } from './core.js'
import { adopt, earlier, isChanged, planned } from './planning.js'
import { ofLibrary } from './library.js'
import { change, state } from './state.js'
import { say } from './words.js'

/** Changes of the day that can be taken back. */
const PAST = 5

const texts = new WeakMap()

function textOf(document) {
  if (!texts.has(document)) texts.set(document, JSON.stringify(document))
  return texts.get(document)
}

/** Whether two documents say the same. */
export const isSame = (one, other) => one === other || (Boolean(one) && Boolean(other) && textOf(one) === textOf(other))

/** Whether an item of the plan that is worked by is done. */
const isTicked = (id) => Boolean(state.done[id]?.words)

/** The request to go on with the plan that is worked by: the documents as they are, and what is done. */
export function nowRequest() {
  const { work, orders, book } = state
  const fixes = new Set(work.fix.map(({ id }) => id))
  const ticks = Object.keys(state.done).filter((id) => isTicked(id) && !fixes.has(id))
  return {
    calculate: 'go-on',
    orders_now: orders,
    ticks,
    ...(work.soFar && { so_far: work.soFar }),
    ...(!isSame(book, work.book ?? work.of.book) && { book }),
  }
}

/** Whether the plan that is shown is that of the rest of the day after a change; what is ticked is in it already. */
export const isRest = () => {
  const { plan, base } = planned()
  return state.work !== null && plan !== null && plan !== base
}

/** Begins to work by the plan that is shown, if that is not the case yet. */
export function beginWork() {
  const { plan, base, gone } = planned()
  if (state.work && (plan === base || !plan)) return
  if (plan) take(plan, gone, state.work?.fix.filter(({ id }) => !isTicked(id)) ?? [])
  else if (earlier.plan) take(earlier.plan, null, [], earlier)
}

/** Works by a plan from now on: that of the morning, or one of the rest of the day, with what led to it. */
function take(plan, gone, fix, { book, orders } = state) {
  const { work, done } = state
  const own = plan.made_from
  const next = {
    since: Math.max(Date.now(), (work?.since ?? 0) + 1),
    orders: gone ? own.orders : orders,
    ...(!isSame(own.book, book) && gone && { book: own.book }),
    of: { book, orders },
    soFar: gone?.so_far ?? null,
    lines: gone?.lines ?? null,
    changes: gone ? wordsOf(gone) : [],
    fix,
    past: work && { work: { ...work, past: shorter(work.past, PAST) }, done, good: state.good },
  }
  change(
    {
      work: next,
      workAt: next.since,
      done: {},
      good: work ? {} : state.good,
      tickedOn: work ? state.tickedOn : (orders.day ?? null),
    },
    () => adopt(next, plan),
  )
}

const shorter = (past, most) =>
  past && most > 1 ? { ...past, work: { ...past.work, past: shorter(past.work.past, most - 1) } } : null

/** What changed, for `shownChange`: a text of the library, or what is not made. */
export const wordsOf = ({ changes, not_made: notMade }) => [
  ...changes.map(({ message }) => message),
  ...notMade.map(({ order, what, pieces, because }) => ({ order, what, pieces, because })),
]

/** What changed, or why the day cannot go on: a text of the library, what is not made, or the `key` of a message. */
export function shownChange(one) {
  if (typeof one === 'string') return ofLibrary(one)
  if (one.key) return say(one.key)
  return say('work.notMade', { ...one, pieces: String(one.pieces), because: ofLibrary(one.because) })
}

/** Goes back to the plan before the last change, with its ticks. */
export function takeBackWork() {
  const { work, done, good = {} } = state.work.past
  change({ work, workAt: Date.now(), done, good })
}

/**
 * Goes on with a pot in a way that was offered to put it right: what is added becomes steps of the pot, and the rest of the day
 * is planned with what is in it then. Returns why that cannot be done, for `shownChange`; null if it is.
 */
export function putRight({ pot, key, stage }, way, { instead, cup, hot }) {
  if (isChanged() && !isRest()) return [{ key: 'work.faults' }]
  beginWork()
  const { base } = planned()
  if (!base) return [{ key: 'work.noPlan' }]
  const own = base.steps.filter(({ at }) => at.some((at) => at.pot === pot && at.stage === stage))
  const open = (kinds) =>
    own.filter(({ kind }) => kinds.includes(kind)).flatMap(({ items }) => items.filter(({ id }) => !isTicked(id)))
  const isBase = ({ material }) => base.made_from.book.materials[material]?.kind === 'plastisol'
  const unpoured = open(['measure', 'add']).filter(({ material }) => material && !(material in instead))
  // What is not in yet goes in as the new plan has it; base goes in first.
  const later = new Set(unpoured.filter((item) => !isBase(item)).map(({ material }) => material))
  const before = [...open(['from-shelf']), ...unpoured.filter(isBase)]
  const parts = Object.fromEntries(
    way.then
      .filter(({ material }) => !later.has(material))
      .map(({ material, mass: { value, unit } }) => [material, { value, unit }]),
  )
  const now = { parts, accepted: true, ...(cup && { cup }), ...(hot && { hot: hot === 'hot' }) }
  const { answer, ...faults } = goOn(base, { ...nowRequest(), pots_now: { [pot]: now } })
  if (!answer) return Object.values(faults).flatMap((some) => some.map(({ message, help }) => `${message} ${help}`))
  if (!answer.plan?.pots.some((one) => one.pot === pot)) return wordsOf(answer)
  const since = Date.now()
  const added = way.add.filter(({ material }) => !later.has(material))
  const items = [
    ...before.map(({ text, amount }) => ({ say: text, words: amount })),
    ...added.map((weigh) => ({
      words: weigh.best.measure,
      weigh,
    })),
  ]
  const fix = items.map((item, at) => ({
    ...item,
    id: `fix/${key}/${since}/${at + 1}`,
    pot,
    key,
    details: way.details,
  }))
  const others = state.work.fix.filter(({ id }) => !isTicked(id))
  const { plan, ...gone } = answer
  take(plan, gone, [...others, ...fix])
  return null
}

/** What an earlier version stored of a day that was begun: it knew the plan by the documents alone. */
export function ofEarlier(parts) {
  const { work, book, orders, done = {} } = parts
  if (work || !Object.values(done).some(({ words }) => words)) return parts
  const ticks = Object.entries(done).map(([id, tick], at) => [id, { at: at + 1, ...tick }])
  const begun = {
    since: Date.now(),
    orders,
    of: { book, orders },
    soFar: null,
    lines: null,
    changes: [],
    fix: [],
    past: null,
  }
  return { ...parts, work: begun, workAt: begun.since, done: Object.fromEntries(ticks) }
}

/** The next burst of a heat of a plan, for what the thermometer shows: the library's answer, or its faults. */
export function nextBurst(plan, step, reading) {
  return askPlan(plan, { calculate: 'next-burst', heat_step: step, reading })
}
