// What should be in a pot: every material, as the bench measures it.
import { ask, askPlan } from './core.js'
import { state } from './state.js'
import { say } from './words.js'

/** The materials of formulas for an amount of base. */
export function wantedByAmount(formulas, base) {
  if (!formulas.length) return { rows: [], faults: [] }
  const { answer, faults } = ask({ calculate: 'formula', book: state.book, formulas, base_amount: base })
  if (!answer) return { rows: [], faults }
  const rows = answer.parts.map(({ material, mass }) => ({ material, ...measured(material, mass) }))
  const request = { book: state.book, formulas, pot_base: base }
  return { rows, faults: [], mass: answer.mass, volume: answer.volume, request, ask }
}

/** How a mass is measured at the bench. */
export function measured(material, mass) {
  const entry = state.book.materials[material]
  const tolerance = entry.tolerance ?? state.book.limits?.tolerance
  const request = { calculate: 'measure', mass_to_measure: grams(mass), material: entry, bench: state.book.bench }
  const { answer, faults } = ask({ ...request, ...(tolerance && { tolerance }), measures: state.book.measures })
  return answer ? { best: answer.best, others: answer.others } : { mass, why: faults[0].message }
}

const grams = ({ value, unit }) => ({ value, unit })

/** The materials that a stage of one of the day's pots adds. */
export function wantedByPot(pots, of, plan) {
  const held = [...pots.values()].find(({ key }) => key === of.key)
  const stage = held?.pot.stages[of.stage - 1]
  if (!stage) {
    const fault = {
      code: 'no-such-pot',
      path: '',
      message: say('one.noSuchPot'),
      help: say('one.useAmountHelp'),
      own: true,
    }
    return { rows: [], faults: [fault] }
  }
  const { pot } = held
  return {
    rows: stage.weigh.map(({ material, best, others }) => ({ material, best, others })),
    faults: [],
    mass: stage.holds,
    volume: stage.fills,
    before: of.stage > 1 || Boolean(pot.there) || Boolean(pot.from_shelf),
    request: { pot: pot.pot, stage: of.stage },
    ask: (request) => askPlan(plan, request),
  }
}
