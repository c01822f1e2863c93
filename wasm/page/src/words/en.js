// American English, the language that messages are written in first.
import day from './en/day.js'
import learn from './en/learn.js'
import more from './en/more.js'
import page from './en/page.js'
import record from './en/record.js'
import shelf from './en/shelf.js'
import trial from './en/trial.js'

export default { day, learn, more, page, record, shelf, trial }
