// What was done of a pot, as the library's record takes it: from the ticks at its steps, and from what the maker wrote down. Notes
// of a pot are texts by a key: `in/1/plum` is what went in of plum at stage 1, `good/1/2/long` the good pieces of shape "long" of
// draw 2 there.
import { keys } from './faults.js'
import { isNothing } from './nothing.js'
import { say } from './words.js'

/** Whether an item is ticked. */
const isTicked = (done, { id }) => Boolean(done[id]?.words)

/** The steps of a stage, counted from 1, of a pot of a plan. */
const stepsOf = (plan, { pot }, stage) =>
  plan.steps.filter(({ at }) => at.some((at) => at.pot === pot && at.stage === stage))

/** A number as text is a number; else the text itself, so that the library can report the fault. */
const countOf = (text) => (/^\d+$/.test(text) ? Number(text) : text)

/** A number alone has the unit that its field shows. */
const withUnit = (text, unit) => (/^[\d.,/ ]+$/.test(text) ? `${text} ${unit}` : text)

/** The written note, or undefined. */
const noteOf = (notes, key) => notes[key]?.trim() || undefined

/** An object without what is undefined; undefined if nothing is left. */
function some(object) {
  const entries = Object.entries(object).filter(([, value]) => value !== undefined)
  return entries.length ? Object.fromEntries(entries) : undefined
}

/** The draws of a stage with their number, and their place among those into the same mold. */
export function drawsOf(stage) {
  const into = new Map()
  return stage.draws.map((draw, at) => {
    const place = into.get(draw.mold) ?? 0
    into.set(draw.mold, place + 1)
    return { draw, number: at + 1, place }
  })
}

/** Whether the pieces of a draw are counted at this pot: those of a laminated shot are counted at the first of its pots. */
export const isCounted = (plan, { pot }, { together_with: others }) => {
  const placeOf = (letter) => plan.pots.findIndex((one) => one.pot === letter)
  return others.every((other) => placeOf(pot) < placeOf(other))
}

/** The number of stages of a pot that are begun: those that a record is made of. */
export function begunStages(plan, pot, done, isWhole) {
  if (isWhole) return pot.stages.length
  const begun = pot.stages.map((_, at) =>
    stepsOf(plan, pot, at + 1).some(({ items }) => items.some((item) => isTicked(done, item))),
  )
  return begun.lastIndexOf(true) + 1
}

/** The items of a pot without a tick, those of skipped bursts left out: a heat is done with its last item. */
export function openItems(plan, pot, done) {
  const own = plan.steps.filter(({ at }) => at.some((at) => at.pot === pot.pot))
  return own.flatMap(({ kind, items, at: [{ pot: letter, stage }] }) => {
    const { weigh } = plan.pots.find((one) => one.pot === letter).stages[stage - 1]
    const needed = kind === 'heat' ? items.slice(-1) : items
    return needed.filter((item) => !isTicked(done, item) && !(item.weigh && isNothing(weigh[item.weigh - 1])))
  })
}

/**
 * A pot with the stages that are begun, and their actuals; null if none is. `done` are the ticks, `good` the good pieces as counted
 * at the bench, `notes` what was written; with `isWhole`, all that has no tick counts as done.
 */
export function actualsOf({ plan, done, good }, pot, notes, isWhole) {
  const count = begunStages(plan, pot, done, isWhole)
  if (!count) return null
  const stages = pot.stages.slice(0, count)
  const of = { plan, pot, done, good, notes, isWhole }
  return {
    pot: { ...pot, stages },
    actuals: stages.map((stage, at) => stageOf(of, stage, at + 1, at + 1 === count) ?? {}),
  }
}

function stageOf(of, stage, number, isLast) {
  const { plan, pot, notes } = of
  const steps = stepsOf(plan, pot, number)
  const time = noteOf(notes, `time/${number}`)
  const injector = noteOf(notes, `injector/${number}`)
  const left = isLast ? noteOf(notes, 'left') : undefined
  return some({
    went_in: some(wentIn(of, stage, number, steps)),
    molds: some(shots(of, stage, number, steps)),
    heats: time && [
      some({
        time: withUnit(time, 's'),
        from: noteOf(notes, `from/${number}`),
        to: noteOf(notes, `to/${number}`) ?? readingsOf(of, steps, 'heat')[0],
      }),
    ],
    reheats: heats(of, stage, steps),
    injector: injector && withUnit(injector, 'g'),
    left: left && withUnit(left, 'g'),
    jar: isLast ? noteOf(notes, 'jar') : undefined,
    notes: isLast ? remarks(of) : undefined,
  })
}

/** The readings at the ticks of steps of a kind, in their order. */
const readingsOf = ({ done }, steps, kind) =>
  steps
    .filter((step) => step.kind === kind)
    .flatMap(({ items }) => items)
    .filter((item) => isTicked(done, item) && done[item.id].reading)
    .map(({ id }) => done[id].reading)

/** What the maker wrote of a pot, and what thermometer and gauge showed. */
function remarks(of) {
  const steps = of.plan.steps.filter(({ at }) => at.some(({ pot }) => pot === of.pot.pot))
  const [heats, gauges] = ['heat', 'degas'].map((kind) => readingsOf(of, steps, kind).join(', '))
  const hot = steps.filter(({ kind }) => kind === 'heat').map(({ items }) => items.at(-1))
  const unread = hot.filter((item) => isTicked(of.done, item) && of.done[item.id].skipped).length
  const all = [
    noteOf(of.notes, 'notes'),
    heats && say('record.readHeats', { readings: heats }),
    unread && say('record.notRead', { count: unread }),
    gauges && say('record.readGauges', { readings: gauges }),
  ]
  return all.filter(Boolean).join(' ') || undefined
}

/** What went in by the notes and, of what is not ticked, nothing. */
function wentIn({ done, notes, isWhole }, stage, number, steps) {
  const found = {}
  stage.weigh.forEach((weigh, at) => {
    const items = steps.flatMap(({ items }) => items).filter((item) => item.weigh === at + 1)
    const isOpen = items.length > 0 && !items.every((item) => isTicked(done, item)) && !isNothing(weigh)
    const poured = items.map((item) => isTicked(done, item) && done[item.id].poured).find(Boolean)
    if (poured) found[weigh.material] = { measured: poured }
    else if (isOpen && !isWhole) found[weigh.material] = '0 g'
  })
  for (const [kind, part] of Object.entries({ in: 'measured', on: 'weighed' })) {
    const start = `${kind}/${number}/`
    for (const key of Object.keys(notes).filter((key) => key.startsWith(start))) {
      const text = noteOf(notes, key)
      const material = key.slice(start.length)
      if (text)
        found[material] = { ...(typeof found[material] === 'object' && found[material]), [part]: amountOf(part, text) }
    }
  }
  // A measure without a weight is written as an amount.
  for (const [material, { measured, weighed }] of Object.entries(found)) {
    if (measured && !weighed) found[material] = measured
  }
  return found
}

const amountOf = (part, text) => (part === 'weighed' ? withUnit(text, 'g') : text)

/** The shots by mold: those of a mold that is shot several times as a list. */
function shots(of, stage, number, steps) {
  const entries = drawsOf(stage).map(({ draw, number: at }) => [
    draw.mold,
    shotsOf(of, draw, `${number}/${at}`, steps, at),
  ])
  const molds = {}
  for (const [mold] of entries) {
    const own = entries.filter(([other]) => other === mold).map(([, entry]) => entry)
    if (own.some(Boolean)) molds[mold] = own.length > 1 ? own.map((entry) => entry ?? {}) : own[0]
  }
  return molds
}

function shotsOf({ plan, pot, done, good, notes, isWhole }, draw, place, steps, at) {
  const items = steps
    .filter(({ kind, at: parts }) => kind === 'shoot' && parts.some((part) => part.pot === pot.pot && part.draw === at))
    .flatMap(({ items }) => items)
  const made = items.filter((item) => isTicked(done, item)).reduce((sum, { shots }) => sum + shots, 0)
  const written = noteOf(notes, `shots/${place}`)
  const counted = written ? countOf(written) : isWhole || made === draw.shots ? undefined : made
  const took = noteOf(notes, `took/${place}`)
  if (!isCounted(plan, pot, draw)) return some({ shots: counted })
  const here = good[countedAt(plan, pot, place)] ?? {}
  const pieces = draw.pieces.map(({ shape }) => [shape, piecesOf(notes, `${place}/${shape ?? ''}`, here[shape ?? ''])])
  const shapes = pieces.some(([shape]) => shape !== null)
  return some({
    shots: counted,
    took: took && withUnit(took, 'min'),
    ...(shapes ? { shapes: some(Object.fromEntries(pieces)) } : pieces[0]?.[1]),
  })
}

/** The id of the step at which the bench counts the good pieces of a draw, by its place: the first that shoots them. */
export function countedAt(plan, { pot }, place) {
  const [stage, draw] = place.split('/').map(Number)
  const isOf = (at) => at.pot === pot && at.stage === stage && at.draw === draw
  const shoots = plan.steps.filter(({ kind }) => kind === 'shoot')
  const work = shoots.find(({ at }) => at.some(isOf))?.work
  return shoots.find((step) => step.work === work)?.id
}

function piecesOf(notes, place, counted) {
  const [good, count, weigh] = ['good', 'count', 'weigh'].map((kind) => noteOf(notes, `${kind}/${place}`))
  return some({
    good: good ? countOf(good) : counted,
    weights: weigh && [{ count: countOf(count ?? '1'), weigh: withUnit(weigh, 'g') }],
  })
}

/** The reheats of a stage that is not done: those that are ticked. */
function heats({ done, isWhole }, stage, steps) {
  const own = steps.filter(({ kind }) => kind === 'heat')
  const made = own.filter(({ items }) => isTicked(done, items.at(-1))).length
  return isWhole || made >= own.length ? undefined : Math.max(0, made - 1)
}

/** The key of the note that a fault of the actuals is about; null if it is about none. `stages` are those of the pot. */
export function keyOfFault(path, stages) {
  const [, , , at, field, ...rest] = keys(path)
  const number = Number(at) + 1
  if (['left', 'jar', 'notes'].includes(field)) return field
  if (field === 'injector') return `injector/${number}`
  if (field === 'heats') return `${rest[1] ?? 'time'}/${number}`
  if (field === 'went_in') return `${rest[1] === 'weighed' ? 'on' : 'in'}/${number}/${rest[0]}`
  if (field !== 'molds') return null
  const [mold, ...more] = rest
  const place = /^\d+$/.test(more[0]) ? Number(more.shift()) : 0
  const draw = drawsOf(stages[number - 1]).find((one) => one.draw.mold === mold && one.place === place)
  if (!draw) return null
  const where = `${number}/${draw.number}`
  if (more[0] === 'shots' || more[0] === 'took') return `${more[0]}/${where}`
  const shape = more[0] === 'shapes' ? more[1] : ''
  const kind = more[0] === 'shapes' ? more.slice(2) : more
  const [what, , part] = kind
  return `${what === 'weights' ? (part === 'count' ? 'count' : 'weigh') : 'good'}/${where}/${shape}`
}
