// German: the messages of `en.js`.
import cost from './de/cost.js'
import day from './de/day.js'
import learn from './de/learn.js'
import more from './de/more.js'
import notes from './de/notes.js'
import orders from './de/orders.js'
import page from './de/page.js'
import record from './de/record.js'
import shelf from './de/shelf.js'
import trial from './de/trial.js'

export default { cost, day, learn, more, notes, orders, page, record, shelf, trial }
