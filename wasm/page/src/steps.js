// The plan as steps in the order of work. A step has items that are ticked off one by one; an item has an id that stays
// when the day changes, and the words that it is done by, so that a change after the tick is seen.
import { inUnit } from './core.js'
import { about, cupName, short } from './show.js'

/** The steps of a day, in the order in which they are done. */
export function steps(plan) {
  const pots = potsByLetter(plan)
  const begun = new Set()
  const { bench, measures } = plan.made_from.book
  const hotFor = { words: bench.oven?.hot_for, seconds: inUnit(bench.oven?.hot_for, 's', measures) }
  const all = plan.work.flatMap((work) => stepsOf(work, pots, begun, hotFor)).filter((step) => step.items.length)
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
  const seen = new Map()
  return new Map(
    plan.pots.map((pot) => {
      const first = pot.stages[0].formulas.join(' + ')
      const count = (seen.get(first) ?? 0) + 1
      seen.set(first, count)
      return [pot.pot, { pot, key: count > 1 ? `${first} (${count})` : first, shot: new Set(), hot: null }]
    }),
  )
}

function stepsOf(work, pots, begun, hotFor) {
  const from = work.from.map((from) => {
    const held = pots.get(from.pot)
    const { pot, key, shot } = held
    const of = { ...from, pot, key, shot, at: pot.stages[from.stage - 1], name: `${key}/${from.stage}` }
    // A pot that is still hot is shot from by the clock of its last heat.
    if (from.heat) held.hot = hot(of, work, hotFor)
    return { ...of, hot: held.hot }
  })
  const fresh = from.filter(({ name }) => !begun.has(name) && begun.add(name))
  return [
    ...fresh.flatMap((of) => prepare(of)),
    ...from.filter((of) => of.heat).map((of) => heat(of, work)),
    shoot(from, work),
    ...fresh.filter((of) => of.at.sprues_back.value > 0).map((of) => spruesBack(of)),
  ]
}

const step = (kind, of, more) => ({ kind, pots: [of.pot.pot], stage: of.stage, of, ...more })

function prepare(of) {
  const first = of.stage === 1
  const shelf = (first && of.pot.from_shelf?.left_overs) || []
  const weigh = step('weigh', of, {
    items: of.at.weigh.map((weigh) => ({
      id: `${of.name}/${weigh.material}`,
      words: weigh.best.measure,
      say: `${weigh.material}: ${weigh.best.measure}`,
      gives: weigh.best.gives,
      weigh,
    })),
  })
  const fromShelf = step('shelf', of, {
    items: shelf.map((part) => ({
      id: `${of.name}/shelf/${part.name}`,
      words: part.mass.text,
      say: `From the shelf: ${short(part.mass)} of “${part.name}”, cut small`,
      part,
    })),
  })
  return first ? [fromShelf, weigh, degas(of)] : [weigh]
}

function degas(of) {
  const known = of.pot.degas?.known
  const fills = known?.fills ?? 1
  const items = Array.from({ length: fills }, (_, fill) => ({
    id: `${of.name}/degas/${fill + 1}`,
    words: known ? `${known.level.text}` : 'degassed',
    say: known
      ? `Degas ${fills > 1 ? `fill ${fill + 1} of ${fills}: ` : ''}${short(known.level)} with the air in it, in the ${cupName(known.cup)}`
      : 'Degas',
    hold: fills > 1 ? `degassing fill ${fill + 1}` : 'degassing',
  }))
  return step('degas', of, { items })
}

function heat(of, work) {
  const known = of.at.heating?.known
  // A pot that is heated for each of several molds is heated so often; the mold tells these heats apart.
  const name = `${of.name}/heat/${of.at.heats > 1 ? `${work.mold}/` : ''}`
  const items = known
    ? [
        ...known.bands.map((burst, at) => {
          const from = at ? `${short(known.bands[at - 1].below)} to ` : 'under '
          const reading = `${from}${short(burst.below)}`
          return {
            id: `${name}${at + 1}`,
            words: burst.burst.text,
            say: `Burst ${at + 1} of ${known.bands.length}: ${burst.burst.text} while it shows ${reading}`,
            burst,
            reading,
            number: at + 1,
            of: known.bands.length,
          }
        }),
        {
          id: `${name}hot`,
          words: 'in the window',
          say: `It shows ${short(known.shoot_from)} to ${short(known.shoot_to)}: shoot`,
        },
      ]
    : [{ id: `${name}1`, words: 'heated', say: 'Heat in short bursts, with a thermometer' }]
  if (of.hot && items.length) items.at(-1).starts = of.hot
  return step('heat', of, { work, items, again: of.stage > 1 })
}

function shoot(from, work) {
  const [of] = from
  const draws = from.map((of) => {
    const draw = of.at.draws.find((draw) => draw.mold === work.mold && draw.shots === work.shots && !of.shot.has(draw))
    of.shot.add(draw)
    return { of, draw }
  })
  const { draw } = draws[0]
  const loads = Array.from({ length: draw.loads }, (_, load) => {
    const shots = Math.min(draw.shots_per_load, draw.shots - load * draw.shots_per_load)
    return {
      id: `${of.name}/shoot/${work.mold}/${load + 1}`,
      words: `${work.mold}: ${shots} × ${draw.per_shot.text}`,
      say: `Load ${load + 1} of ${draw.loads}: ${shots} × ${work.mold}, ${short(draw.per_shot)} a shot`,
      shots,
    }
  })
  const clocks = from.flatMap(({ hot }) => hot ?? [])
  return step('shoot', of, { pots: from.map(({ pot }) => pot.pot), work, draws, items: loads, hot: clocks })
}

/** How long a pot stays hot, where the book says it: a clock to shoot by, nothing to tick. It starts when the pot is hot. */
function hot(of, work, { words, seconds }) {
  if (!seconds) return null
  return { id: `${of.name}/hot/${work.mold}`, clock: { label: `Pot ${of.pot.pot} stays hot`, seconds, words } }
}

function spruesBack(of) {
  const say = `Put the sprues back in: ${short(of.at.sprues_back)}, weighed`
  return step('sprues', of, { items: [{ id: `${of.name}/sprues`, words: of.at.sprues_back.text, say }] })
}

/** What is in each piece of flakes, `1100 flakes of teal-flake`. */
export function flakes(pieces) {
  return pieces.flakes.map((flake) => `${about(flake.count)} flakes of ${flake.material}`).join(', ')
}
