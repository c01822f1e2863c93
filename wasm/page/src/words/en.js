// American English, the language that messages are written in first.
import bench from './en/bench.js'
import heat from './en/heat.js'
import keys from './en/keys.js'
import pad from './en/pad.js'
import page from './en/page.js'
import rail from './en/rail.js'
import step from './en/step.js'
import steps from './en/steps.js'

export default { bench, heat, keys, pad, page, rail, step, steps }
