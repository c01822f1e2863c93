// German: the messages of `en.js`.
import bench from './de/bench.js'
import cards from './de/cards.js'
import cautions from './de/cautions.js'
import correction from './de/correction.js'
import degas from './de/degas.js'
import heat from './de/heat.js'
import keys from './de/keys.js'
import one from './de/one.js'
import pad from './de/pad.js'
import page from './de/page.js'
import progress from './de/progress.js'
import rail from './de/rail.js'
import step from './de/step.js'
import steps from './de/steps.js'
import work from './de/work.js'

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
