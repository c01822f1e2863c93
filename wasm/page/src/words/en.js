// American English, the language that messages are written in first.
import bench from './en/bench.js'
import cards from './en/cards.js'
import cautions from './en/cautions.js'
import correction from './en/correction.js'
import degas from './en/degas.js'
import heat from './en/heat.js'
import keys from './en/keys.js'
import one from './en/one.js'
import pad from './en/pad.js'
import page from './en/page.js'
import progress from './en/progress.js'
import rail from './en/rail.js'
import step from './en/step.js'
import steps from './en/steps.js'
import work from './en/work.js'

export default {
  bench,
  cards,
  cautions,
  correction,
  degas,
  heat,
  keys,
  one,
  pad,
  page,
  progress,
  rail,
  step,
  steps,
  work,
}
