// German: the messages of `en.js`.
import page from './de/page.js'
import plan from './de/plan.js'

export default { page, plan }
