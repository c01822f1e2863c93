// German: the messages of `en.js`.
import bench from './de/bench.js'
import heat from './de/heat.js'
import keys from './de/keys.js'
import pad from './de/pad.js'
import page from './de/page.js'
import rail from './de/rail.js'
import step from './de/step.js'
import steps from './de/steps.js'

export default { bench, heat, keys, pad, page, rail, step, steps }
