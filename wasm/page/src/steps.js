// The steps of the plan as the page works with them: with the parts of the plan that they refer to, and with clocks. A step
// has items that are ticked off one by one; an item has an id that stays when the day changes, and the words that it is done
// by, so that a change after the tick is seen.
import { inUnit } from './core.js'
import { about } from './show.js'

/** The steps of a day, in the order in which they are done. */
export function steps(plan) {
  const pots = potsByLetter(plan)
  const { bench, measures } = plan.made_from.book
  const hotFor = { words: bench.oven?.hot_for, seconds: inUnit(bench.oven?.hot_for, 's', measures) }
  const all = plan.steps.map((step) => withParts(step, plan, pots, hotFor))
  endClocks(all)
  return all
}

/** The clock of a hot pot ends with the last load that is shot from that heat. */
function endClocks(steps) {
  const shots = steps.filter(({ kind }) => kind === 'shoot')
  const last = new Map(shots.flatMap((step) => step.hot.map((clock) => [clock.id, step])))
  for (const [id, step] of last) (step.items.at(-1).ends ??= []).push(id)
}

/** The pots by their letters, each with a key that does not change with its place in the day. */
export function potsByLetter(plan) {
  return new Map(plan.pots.map((pot) => [pot.pot, { pot, key: pot.id, hot: null, heats: new Map() }]))
}

function withParts(step, plan, pots, hotFor) {
  const work = plan.work[step.work - 1]
  const at = step.at.map((at) => {
    const { pot, key } = pots.get(at.pot)
    const stage = pot.stages[at.stage - 1]
    const { heat } = work.from.find((from) => from.pot === at.pot)
    return { ...at, pot, key, at: stage, heat, draw: stage.draws[at.draw - 1] }
  })
  const [of] = at
  const more = PARTS[step.kind]?.({ step, at, of, pots, hotFor }) ?? {}
  return {
    ...more,
    kind: step.kind,
    work,
    of,
    pots: step.at.map(({ pot }) => pot),
    stage: of.stage,
    details: of.details,
    items: step.items.map((item, index) => ({
      id: item.id,
      words: item.amount,
      say: item.text,
      number: item.number,
      shots: item.shots,
      ...more.items?.[index],
    })),
  }
}

/** What the steps of a kind have besides. */
const PARTS = { measure: weighed, add: weighed, degas: held, heat: heated, shoot: shot }

function weighed({ step, of }) {
  const weigh = step.items.map((item) => of.at.weigh.find(({ material }) => material === item.material))
  return { items: weigh.map((weigh) => ({ weigh, gives: weigh.best.gives })) }
}

function held({ step }) {
  const fills = step.items.length
  return { items: step.items.map((_, fill) => ({ hold: fills > 1 ? `degassing fill ${fill + 1}` : 'degassing' })) }
}

function heated({ step, of, pots, hotFor }) {
  const heating = nextHeating(pots.get(of.pot.pot), of)
  const bands = heating?.known?.bands ?? []
  // A pot that is still hot is shot from by the clock of its last heat.
  const clock = hot(step, of, hotFor)
  pots.get(of.pot.pot).hot = clock
  const last = step.items.length - 1
  return {
    heating,
    items: step.items.map((_, index) => ({
      ...(bands[index] && { burst: bands[index], of: bands.length }),
      ...(clock && index === last && { starts: clock }),
    })),
  }
}

/** The table of the next heat of a stage: its own where it is a reheat. */
function nextHeating(pot, { stage, at }) {
  const heats = pot.heats.get(stage) ?? 0
  pot.heats.set(stage, heats + 1)
  return at.clock?.known?.[heats]?.heating ?? at.heating
}

/** How long a pot stays hot, where the book says it: a clock to shoot by, nothing to tick. It starts when the pot is hot. */
function hot(step, of, { words, seconds }) {
  if (!seconds) return null
  return { id: `${step.id}/hot`, clock: { label: `Pot ${of.pot.pot} stays hot`, seconds, words } }
}

function shot({ at, pots }) {
  return {
    draws: at.map((of) => ({ of, draw: of.draw })),
    hot: at.flatMap(({ pot }) => pots.get(pot.pot).hot ?? []),
  }
}

/** What is in each piece of flakes, `1100 flakes of teal-flake`. */
export function flakes(pieces) {
  return pieces.flakes.map((flake) => `${about(flake.count)} flakes of ${flake.material}`).join(', ')
}
