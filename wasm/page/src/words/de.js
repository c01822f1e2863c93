// German: the messages of `en.js`.
import day from './de/day.js'
import learn from './de/learn.js'
import more from './de/more.js'
import page from './de/page.js'
import record from './de/record.js'
import shelf from './de/shelf.js'
import trial from './de/trial.js'

export default { day, learn, more, page, record, shelf, trial }
