// What should be in a pot: every material, as the bench measures it.
import { ask } from './core.js'
import { state } from './state.js'

/** The materials of formulas for an amount of base. */
export function wantedByAmount(formulas, base) {
  if (!formulas.length) return { rows: [], faults: [] }
  const { answer, faults } = ask({ calculate: 'formula', book: state.book, formulas, base_amount: base })
  if (!answer) return { rows: [], faults }
  const rows = answer.parts.map(({ material, mass }) => ({ material, ...measured(material, mass) }))
  return { rows, faults: [], total: answer, request: { formulas, pot_base: base }, whole: {} }
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

/** The materials of a stage of one of the day's pots: everything in the cup then. */
export function wantedByPot(pots, of) {
  const held = [...pots.values()].find(({ key }) => key === of.key)
  const stage = held?.pot.stages[of.stage - 1]
  if (!stage) {
    const fault = {
      code: 'no-such-pot',
      path: '',
      message: 'This pot is no longer in the plan.',
      help: 'Use an amount instead.',
    }
    return { rows: [], faults: [fault] }
  }
  const { formulas } = stage
  const { answer, faults } = ask({
    calculate: 'formula',
    book: state.book,
    formulas,
    finished_amount: grams(stage.holds),
  })
  if (!answer) return { rows: [], faults }
  const rows = answer.parts.map(({ material, mass }) => {
    const weigh = stage.weigh.find((weigh) => weigh.material === material)
    // With what the stage before left in the cup, the plan's measure is not for the whole: show the mass.
    const fresh = weigh && Math.abs(weigh.wanted.value - mass.value) < 0.005 * mass.value
    return fresh ? { material, best: weigh.best, others: weigh.others } : { material, mass, all: of.stage > 1 }
  })
  const whole = Object.fromEntries(answer.parts.map(({ material, mass }) => [material, grams(mass)]))
  const cup = { value: held.pot.cup.value, unit: held.pot.cup.unit }
  return { rows, faults: [], total: answer, request: { formulas, cup }, whole }
}
