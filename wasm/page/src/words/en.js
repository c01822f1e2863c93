// American English, the language that messages are written in first.
import cost from './en/cost.js'
import day from './en/day.js'
import learn from './en/learn.js'
import more from './en/more.js'
import notes from './en/notes.js'
import orders from './en/orders.js'
import page from './en/page.js'
import record from './en/record.js'
import shelf from './en/shelf.js'
import trial from './en/trial.js'

export default { cost, day, learn, more, notes, orders, page, record, shelf, trial }
